package pappus.assessment.flight;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.DoubleSupplier;
import java.util.function.Supplier;
import pappus.physics.battery.Delivery;
import pappus.physics.battery.Pack;
import pappus.physics.flight.Aircraft;
import pappus.physics.flight.Circuit;
import pappus.physics.flight.Cruise;
import pappus.physics.flight.Ending;
import pappus.physics.flight.Endurance;
import pappus.physics.flight.ForwardFlight;
import pappus.physics.flight.FullThrottle;
import pappus.physics.flight.Hover;
import pappus.physics.flight.LandingRule;
import pappus.physics.flight.Limits;
import pappus.physics.flight.OnStation;
import pappus.physics.flight.OutAndBack;
import pappus.physics.flight.SteadyFlight;
import pappus.scenario.Flight;
import pappus.scenario.Goal;
import pappus.scenario.Scenario;

/**
 * Flies aircraft as a scenario asks where that is not hover.
 *
 * <p>Why: src/site/markdown/decisions.md#over-a-spot-in-wind-a-leg-flies-as-fast-as-the-wind
 */
final class CoursePlanner {
  /** Twice the largest airspeed and more than any wind adds, m/s. */
  static final double FASTEST_OVER_GROUND = 160;

  private final Flight.Style style;
  private final Goal goal;
  private final List<PlannedStretch> plan;
  private final OptionalInt stay;
  private final double windMPerS;
  private final double gusts;

  /** Endurance and course of one aircraft. */
  record Flown(Endurance endurance, Course course) {}

  CoursePlanner(Scenario scenario) {
    this.style = scenario.flight().style();
    this.goal = scenario.flightGoal();
    this.plan = PlannedStretch.of(scenario.flight());
    this.stay = scenario.flight().stay();
    this.windMPerS = scenario.air().windOrCalm();
    this.gusts = scenario.air().gustsOrUsual();
  }

  private CoursePlanner(CoursePlanner whole, List<PlannedStretch> plan) {
    this.style = whole.style;
    this.goal = Goal.ENDURANCE;
    this.plan = List.copyOf(plan);
    this.stay = OptionalInt.empty();
    this.windMPerS = whole.windMPerS;
    this.gusts = whole.gusts;
  }

  /** What follows a stay, flown over and over: how sure that is says how much to keep back for it. Empty without. */
  Optional<CoursePlanner> wayHome() {
    return stay.isPresent() && stay.getAsInt() + 1 < plan.size()
        ? Optional.of(new CoursePlanner(this, plan.subList(stay.getAsInt() + 1, plan.size())))
        : Optional.empty();
  }

  /** Whether the scenario asks for hover alone, which needs no course. */
  boolean hovers() {
    return plan.isEmpty();
  }

  /**
   * An aircraft standing over a spot, in the wind of the place if that is what is flown.
   *
   * @param by factor on the power that wind takes
   */
  Hover hover(Aircraft aircraft, double by) {
    var calm = Hover.of(aircraft);
    return hovers() && windMPerS > 0
        ? calm.inWind(aircraft, by * new ForwardFlight(aircraft, calm).windFactor(windMPerS, gusts))
        : calm;
  }

  /** Whether the drag of an aircraft matters. */
  boolean asksForDrag() {
    return !hovers() || windMPerS > 0;
  }

  /** Whether some speed over ground is the aircraft's own best one, which full throttle may not reach. */
  boolean choosesSpeeds() {
    return plan.stream().anyMatch(PlannedStretch::choosesSpeed);
  }

  /**
   * Flies it from take-off until something ends the flight.
   *
   * @param full full throttle, which bounds the airspeeds
   * @param planWith share of its estimate that what follows a stay is planned with
   */
  Flown fly(
      Aircraft aircraft,
      Hover hover,
      FullThrottle full,
      Pack pack,
      LandingRule rule,
      Limits continuous,
      double planWith) {
    var forward = new ForwardFlight(aircraft, hover);
    var topSpeed = forward.topSpeedMPerS(full);
    var stretches = stretches(forward, Optional.of(new Top(full, () -> topSpeed)));
    var way = way(stretches, pack, rule, continuous, planWith);
    var mostMotorA = hover.steady().point().currentA();
    var mostBusA = mostBusA(hover.steady(), pack);
    for (var stretch : way.stretches()) {
      var steady = stretch.cruise().steady();
      mostMotorA = Math.max(mostMotorA, steady.point().currentA());
      mostBusA = Math.max(mostBusA, mostBusA(steady, pack));
    }
    return new Flown(
        way.endurance(),
        new Course(
            style,
            goal,
            forward,
            way.stretches(),
            way.stay(),
            way.endsOn(),
            way.metres(),
            topSpeed,
            mostMotorA,
            mostBusA));
  }

  /** As far as the speeds over ground may go; the speed is asked for where full throttle does not do for the best one. */
  private record Top(FullThrottle full, DoubleSupplier speedMPerS) {}

  /**
   * Seconds, or metres over ground where the goal is range, of what {@link #fly} flies; of a course with a stay those of
   * the stay.
   *
   * @param full asked for where an aircraft chooses its speeds
   */
  double figure(
      Aircraft aircraft,
      Hover hover,
      Supplier<FullThrottle> full,
      Pack pack,
      LandingRule rule,
      Limits continuous,
      double planWith) {
    var forward = new ForwardFlight(aircraft, hover);
    var top = Optional.<Top>empty();
    if (choosesSpeeds()) {
      var most = full.get();
      top = Optional.of(new Top(most, () -> forward.topSpeedMPerS(most)));
    }
    return figure(way(stretches(forward, top), pack, rule, continuous, planWith));
  }

  private double figure(Way way) {
    if (stay.isPresent()) {
      var stayed = way.stretches().get(stay.getAsInt());
      return goal == Goal.RANGE ? stayed.metres() : stayed.seconds();
    }
    return goal == Goal.RANGE ? way.metres() : way.endurance().seconds();
  }

  private List<Stretch> stretches(ForwardFlight forward, Optional<Top> top) {
    return plan.stream().map(planned -> stretch(planned, forward, top)).toList();
  }

  private Way way(
      List<Stretch> stretches, Pack pack, LandingRule rule, Limits continuous, double planWith) {
    if (stay.isPresent()) {
      return staying(stretches, stay.getAsInt(), pack, rule, continuous, planWith);
    }
    return isOutAndBack(stretches)
        ? outAndBack(stretches, pack, rule, continuous)
        : around(stretches, pack, rule, continuous);
  }

  /**
   * Seconds, or metres over ground where the goal is range, of an aircraft that full throttle never slows down: falling
   * with mass, drag and draw, but for the last millionth where it chooses its speeds. Infinite where the wind is too
   * strong for it: a heavier one may go against it. Of a course with a stay those of the stay: the more the stretches
   * before and after it take, the later it begins and the earlier it ends.
   *
   * @param planWith share of its estimate that what follows a stay is planned with, or more
   */
  double unslowed(
      ForwardFlight forward, Pack pack, LandingRule rule, Limits continuous, double planWith) {
    var stretches = stretches(forward, Optional.empty());
    for (var i = 0; i < stretches.size(); i++) {
      if (plan.get(i).choosesSpeed() && stretches.get(i).groundSpeedMPerS() <= 0) {
        return Double.POSITIVE_INFINITY;
      }
    }
    return figure(way(stretches, pack, rule, continuous, planWith));
  }

  /** Whether a flight is a hover, or one steady flight whose figure depends on its current alone. */
  boolean isSingle() {
    return hovers() || (plan.size() == 1 && !(goal == Goal.RANGE && choosesSpeeds()));
  }

  /** The one steady flight of a plan whose figure depends on its current alone; empty if it is not so simple. */
  Optional<SteadyFlight> single(ForwardFlight forward) {
    return !isSingle()
        ? Optional.empty()
        : Optional.of(stretches(forward, Optional.empty()).get(0).cruise().steady());
  }

  /** Whether speeds that an aircraft chooses take more of full throttle's power and thrust than a share. */
  boolean takesMoreThan(double share, ForwardFlight forward, FullThrottle full) {
    return plan.stream()
        .filter(PlannedStretch::choosesSpeed)
        .mapToDouble(planned -> best(planned, forward).airspeedMPerS())
        .anyMatch(speed -> !forward.reaches(speed, full, share));
  }

  /**
   * Seconds, or metres over ground where the goal is range, below which no aircraft flies a whole round of legs; 0 where
   * no round is asked for.
   */
  double leastOfRound() {
    return style != Flight.Style.PROFILE || stay.isPresent()
        ? 0
        : plan.stream()
            .mapToDouble(
                goal == Goal.RANGE
                    ? PlannedStretch::metresOfRound
                    : planned -> planned.leastSeconds(FASTEST_OVER_GROUND))
            .sum();
  }

  /** Stretches as they are flown to the end. */
  private record Way(
      Endurance endurance,
      List<Stretch> stretches,
      Optional<Course.Stay> stay,
      OptionalInt endsOn,
      double metres) {}

  private boolean isOutAndBack(List<Stretch> stretches) {
    return style == Flight.Style.CRUISE
        && stretches.size() == 2
        && stretches.stream().allMatch(stretch -> stretch.groundSpeedMPerS() > 0);
  }

  private static Way outAndBack(
      List<Stretch> stretches, Pack pack, LandingRule rule, Limits continuous) {
    var out = stretches.get(0);
    var back = stretches.get(1);
    var flown = OutAndBack.of(way(out), way(back), pack, rule, continuous);
    return new Way(
        flown.endurance(),
        List.of(out.lasting(flown.outSeconds()), back.lasting(flown.backSeconds())),
        Optional.empty(),
        flown.endingWay(),
        2 * flown.metresEachWay());
  }

  private static OutAndBack.Way way(Stretch stretch) {
    return new OutAndBack.Way(stretch.cruise().steady(), stretch.groundSpeedMPerS());
  }

  /** Each once. */
  private static Way staying(
      List<Stretch> stretches,
      int stay,
      Pack pack,
      LandingRule rule,
      Limits continuous,
      double planWith) {
    var turns = turns(stretches, stay);
    if (turns.size() < stretches.size()) {
      return new Way(
          Endurance.none(Ending.WIND, pack.startCharge()),
          stretches,
          Optional.of(new Course.Stay(stay, pack.startCharge(), planWith)),
          OptionalInt.of(turns.size()),
          0);
    }
    var flown = OnStation.of(turns, stay, planWith, pack, rule, continuous);
    var lasting = new ArrayList<>(stretches);
    lasting.set(stay, stretches.get(stay).lasting(flown.staySeconds()));
    return new Way(
        flown.endurance(),
        lasting,
        Optional.of(new Course.Stay(stay, flown.leavesAtCharge(), planWith)),
        flown.endingTurn(),
        flown.endurance().seconds() > 0
            ? lasting.stream().mapToDouble(Stretch::metres).sum()
            : 0);
  }

  /** In turn, over and over. */
  private static Way around(
      List<Stretch> stretches, Pack pack, LandingRule rule, Limits continuous) {
    var circuit = circuit(stretches, pack, rule, continuous);
    var seconds = stretches.stream().mapToDouble(Stretch::seconds).sum();
    var metres = stretches.stream().mapToDouble(Stretch::metres).sum();
    var endurance = circuit.endurance();
    return new Way(
        endurance,
        stretches,
        Optional.empty(),
        circuit.endingTurn(),
        endurance.seconds() > 0 ? endurance.seconds() * metres / seconds : 0);
  }

  private Stretch stretch(PlannedStretch planned, ForwardFlight forward, Optional<Top> top) {
    if (!planned.coversGround()) {
      var asked = planned.airspeedMPerS();
      var still = asked == null ? forward.bestEndurance().airspeedMPerS() : asked;
      var calm = forward.at(Math.max(still, planned.standstillMPerS()));
      var cruise = style == Flight.Style.LOITER ? forward.inGusts(calm, gusts * windMPerS) : calm;
      return new Stretch(planned.where(), planned.seconds(), cruise, 0, false);
    }
    var asked = planned.airspeedMPerS();
    var cruise = asked == null ? best(planned, forward, top) : forward.at(asked);
    var ground = planned.leg().progressMPerS(cruise.airspeedMPerS());
    var metres = planned.metres();
    var seconds = metres == null ? planned.seconds() : ground > 0 ? metres / ground : 0;
    return new Stretch(planned.where(), seconds, cruise, ground, true);
  }

  /** Best range, or as fast as it can where that is slower. */
  private static Cruise best(PlannedStretch planned, ForwardFlight forward, Optional<Top> top) {
    var best = best(planned, forward);
    if (top.isEmpty() || forward.reaches(best.airspeedMPerS(), top.get().full(), 1)) {
      return best;
    }
    var fastest = top.get().speedMPerS().getAsDouble();
    // What cannot even hover has no speed of its own: the limit on the top speed says so.
    return fastest > 0 ? forward.at(fastest) : best;
  }

  private static Cruise best(PlannedStretch planned, ForwardFlight forward) {
    var fastest = forward.fastestMPerS();
    return planned.standstillMPerS() < fastest
        ? forward.bestRange(planned.leg())
        : forward.at(fastest);
  }

  private static Circuit circuit(
      List<Stretch> stretches, Pack pack, LandingRule rule, Limits continuous) {
    var turns = turns(stretches, -1);
    return turns.size() < stretches.size()
        ? new Circuit(Endurance.none(Ending.WIND, pack.startCharge()), OptionalInt.of(turns.size()))
        : Circuit.of(turns, pack, rule, continuous);
  }

  /**
   * Stretches as the battery meets them, up to the first that the wind does not let progress.
   *
   * @param stay which lasts as long as possible, from 0; below 0 if none does
   */
  private static List<Circuit.Turn> turns(List<Stretch> stretches, int stay) {
    var turns = new ArrayList<Circuit.Turn>();
    for (var stretch : stretches) {
      if (stretch.coversGround() && stretch.groundSpeedMPerS() <= 0) {
        return turns;
      }
      turns.add(new Circuit.Turn(
          stretch.cruise().steady(), turns.size() == stay ? 1 : stretch.seconds()));
    }
    return turns;
  }

  private static double mostBusA(SteadyFlight flight, Pack pack) {
    return Math.max(busA(flight, pack, pack.startCharge()), busA(flight, pack, Pack.HALF_CHARGE));
  }

  /** 0 where the pack cannot deliver it, which ends the flight by itself. */
  private static double busA(SteadyFlight flight, Pack pack, double charge) {
    return pack.deliver(flight.load(), charge)
        .match(Delivery.Delivered::currentA, undeliverable -> 0.0);
  }
}
