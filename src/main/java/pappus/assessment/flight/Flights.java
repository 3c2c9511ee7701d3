package pappus.assessment.flight;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.ToDoubleFunction;
import pappus.evidence.Evidence;
import pappus.evidence.Weighing;
import pappus.fitting.Fitting;
import pappus.part.Build;
import pappus.part.Frame;
import pappus.part.Role;
import pappus.physics.airframe.Airframe;
import pappus.physics.battery.Delivery;
import pappus.physics.battery.Discharge;
import pappus.physics.battery.Load;
import pappus.physics.battery.Pack;
import pappus.physics.battery.Until;
import pappus.physics.flight.Aircraft;
import pappus.physics.flight.Endurance;
import pappus.physics.flight.FullThrottle;
import pappus.physics.flight.Hover;
import pappus.physics.flight.Limits;
import pappus.scenario.Scenario;

/** Flies builds as a scenario asks, by one weighing of their uncertain figures. */
public final class Flights {
  private final Scenario scenario;
  private final FlightModels models;
  private final CoursePlanner courses;
  private final ToDoubleFunction<Build> planWith;
  private final Map<String, Air> airs;

  public Flights(Scenario scenario, Weighing weighing, double powerFactor, Evidence evidence) {
    this.scenario = scenario;
    this.models = new FlightModels(scenario, weighing, powerFactor, evidence);
    this.courses = new CoursePlanner(scenario);
    this.planWith = main -> 1;
    this.airs = new ConcurrentHashMap<>();
  }

  private Flights(Flights like, CoursePlanner courses, ToDoubleFunction<Build> planWith) {
    this.scenario = like.scenario;
    this.models = like.models;
    this.courses = courses;
    this.planWith = planWith;
    this.airs = like.airs;
  }

  /**
   * The same that keep charge back for what follows a stay.
   *
   * @param share of its estimate that this is planned with, by frame, motor, propeller and battery, 0 to 1
   */
  public Flights planning(ToDoubleFunction<Build> share) {
    return new Flights(this, courses, share);
  }

  /** What follows a stay, flown over and over; empty where nothing does. */
  public Optional<Flights> wayHome() {
    return courses.wayHome().map(home -> new Flights(this, home, main -> 1));
  }

  /** As it is rated, by the figures as they count. */
  public FlightEstimate fly(Fitting fitting, double grams) {
    var build = fitting.build();
    var pack = models.figures(build.battery().orElseThrow());
    return fly(fitting, grams, Factors.NONE, Ratings.continuous(build, pack));
  }

  /**
   * With numbers changed.
   *
   * @param grams all-up mass, g
   * @param continuous currents that steady flight must not pass
   * @throws IllegalArgumentException if the physics refuses what is asked
   */
  public FlightEstimate fly(Fitting fitting, double grams, Factors factors, Limits continuous) {
    return fly(
        fitting.build(),
        loss(fitting.build()),
        grams,
        Avionics.draws(fitting),
        factors,
        continuous);
  }

  /**
   * Main parts by themselves: behind the pack's own lead alone, and without ratings.
   *
   * @param main has frame, motor, propeller and battery, and no other part that counts
   * @param loss ripple of the controllers over that of the law; absent: as the law says
   * @param grams all-up mass, g
   * @param watts draw of everything but the motors at the battery, W
   * @throws IllegalArgumentException if the physics refuses what is asked
   */
  public FlightEstimate fly(
      Build main, OptionalDouble loss, double grams, double watts, Factors factors) {
    return fly(main, loss, grams, rest(watts), factors, Limits.NONE);
  }

  private static List<Draw> rest(double watts) {
    return List.of(new Draw("all else", watts));
  }

  /** What the same reach, s or m, which costs less than all of their flight. */
  public double figure(
      Build main, OptionalDouble loss, double grams, double watts, Factors factors) {
    var aircraft = aircraft(main, loss, grams, factors, rest(watts));
    if (courses.hovers()) {
      return hovered(main, aircraft, factors);
    }
    var battery = main.battery().orElseThrow();
    var steadily = models.steadily(aircraft, main);
    var hover = courses.hover(steadily, factors.wind());
    var pack = models.pack(main, factors).warmedBy(hover.steady().load());
    return courses.figure(
        steadily,
        hover,
        () -> FullThrottle.of(
            aircraft,
            pack,
            thrustCharge(pack),
            models.floorVolts(battery),
            Ratings.burst(main, models.figures(battery))),
        pack,
        models.landing(battery),
        Limits.NONE,
        planWith.applyAsDouble(main));
  }

  /**
   * How long three main parts would hover on a frame that takes no thrust, s, whatever flight is asked for.
   *
   * @param three has motor, propeller and battery
   * @param grams all-up mass, g
   * @param watts draw of everything but the motors at the battery, W
   * @throws IllegalArgumentException if the physics refuses what is asked
   */
  public double hovered(
      Build three, OptionalDouble loss, double grams, double watts, Factors factors) {
    var airframe = new Airframe((grams + factors.addedGrams()) / 1000, 0, 0);
    var rotor = models.rotor(three, loss, factors);
    var avionicsW = factors.avionics() * watts + factors.addedWatts();
    return hovered(
        three, new Aircraft(airframe, three.count(Role.MOTOR), rotor, avionicsW), factors);
  }

  private double hovered(Build build, Aircraft aircraft, Factors factors) {
    var hover = courses.hover(models.steadily(aircraft, build), factors.wind());
    var pack = models.pack(build, factors).warmedBy(hover.steady().load());
    return Endurance.of(
            hover.steady(), pack, models.landing(build.battery().orElseThrow()), Limits.NONE)
        .seconds();
  }

  private FlightEstimate fly(
      Build build,
      OptionalDouble loss,
      double grams,
      List<Draw> draws,
      Factors factors,
      Limits continuous) {
    var battery = build.battery().orElseThrow();
    var aircraft = aircraft(build, loss, grams, factors, draws);
    var steadily = models.steadily(aircraft, build);
    var hover = courses.hover(steadily, factors.wind());
    var pack = models.pack(build, factors).warmedBy(hover.steady().load());
    var burst = Ratings.burst(build, models.figures(battery));
    var floor = models.floorVolts(battery);
    var full = FullThrottle.of(aircraft, pack, thrustCharge(pack), floor, burst);
    var fresh = FullThrottle.of(aircraft, pack, pack.startCharge(), floor, burst);
    var flown = courses.hovers()
        ? Optional.<CoursePlanner.Flown>empty()
        : Optional.of(courses.fly(
            steadily,
            hover,
            full,
            pack,
            models.landing(battery),
            continuous,
            planWith.applyAsDouble(build)));
    var endurance = flown.isPresent()
        ? flown.get().endurance()
        : Endurance.of(hover.steady(), pack, models.landing(battery), continuous);
    var delivery = pack.deliver(hover.steady().load(), Pack.HALF_CHARGE);
    var volts = delivery instanceof Delivery.Delivered now ? now.terminalVolts() : 0;
    return new FlightEstimate(
        hover,
        volts,
        volts > 0 ? hover.steady().busCurrentA(volts) : 0,
        volts > 0 ? hover.steady().duty(volts) : 1,
        split(hover, volts),
        volts > 0 ? hover.efficiency(volts) : 0,
        draws,
        endurance,
        flown.map(CoursePlanner.Flown::course),
        full.thrustToWeight(aircraft.airframe()),
        fresh.thrustToWeight(aircraft.airframe()),
        full,
        fresh,
        continuous,
        burst,
        aircraft.rotor(),
        aircraft.airframe().thrustLost(),
        models.powerFactor(),
        models.figures(build));
  }

  private OptionalDouble loss(Build build) {
    // The board of a lump is not known: its controllers are as the law says.
    return build.board().map(models::rippleShare).orElse(OptionalDouble.empty());
  }

  private Aircraft aircraft(
      Build build, OptionalDouble loss, double grams, Factors factors, List<Draw> draws) {
    var frame = build.frame().orElseThrow();
    var kept = (1 - thrustLost(build)) * factors.thrustKept();
    var allUp = grams + factors.addedGrams();
    var drag = air(frame).leastDragArea(allUp, build.battery().orElseThrow());
    var airframe = new Airframe(allUp / 1000, Math.max(0, 1 - kept), factors.drag() * drag);
    var avionicsW =
        factors.avionics() * draws.stream().mapToDouble(Draw::watts).sum() + factors.addedWatts();
    return new Aircraft(airframe, frame.rotors(), models.rotor(build, loss, factors), avionicsW);
  }

  private double thrustLost(Build build) {
    return air(build.frame().orElseThrow())
        .leastLost(build.propeller().orElseThrow().diameterMillimetres());
  }

  /** What a frame does to the air about an aircraft. */
  @SuppressWarnings("ReferenceEquality") // to compare all of a frame takes longer than its air
  public FrameAir air(Frame frame) {
    var latest = airs.get(frame.id());
    if (latest == null || latest.frame != frame) {
      latest = new Air(frame, FrameAir.of(frame, scenario.flight()));
      airs.put(frame.id(), latest);
    }
    return latest.air;
  }

  /** A frame that can be ordered in several ways is several frames of one id. */
  private record Air(Frame frame, FrameAir air) {}

  /** An assessed flight in curves. */
  public FlightCurves curves(Fitting fitting, double grams, FlightEstimate flown) {
    var build = fitting.build();
    var battery = build.battery().orElseThrow();
    var pack = models.pack(build, Factors.NONE).warmedBy(flown.hover().steady().load());
    var aircraft = aircraft(build, loss(build), grams, Factors.NONE, flown.draws());
    return FlightCurves.of(
        aircraft,
        models.steadily(aircraft, build),
        pack,
        flown.hover(),
        flown.full(),
        thrustCharge(pack),
        models.floorVolts(battery),
        flown.course(),
        flown.endurance());
  }

  /** State of charge at which thrust is judged. */
  private double thrustCharge(Pack pack) {
    return Math.min(scenario.flight().thrustAtChargeOrMidFlight(), pack.startCharge());
  }

  /**
   * Charge out of the pack after so long in the air, mAh: a hover to the end, other flights by their mean current;
   * where the pack would be empty before, as if it went on alike.
   */
  public double milliampHours(Fitting fitting, double grams, Factors factors, double seconds) {
    var flown = fly(fitting, grams, factors, Limits.NONE);
    var used = flown.course().isPresent()
        ? flown.endurance().discharge()
        : Discharge.of(
            models
                .pack(fitting.build(), factors)
                .warmedBy(flown.hover().steady().load()),
            flown.hover().steady().load(),
            new Until(0, 0, seconds));
    return used.seconds() > 0 ? used.usedCoulomb() / 3.6 * seconds / used.seconds() : 0;
  }

  /**
   * Volts of the pack in flight once so much charge is taken from it, under the mean power of the flight; empty where
   * the pack has not so much or cannot carry it any more.
   */
  public OptionalDouble voltsAfter(
      Fitting fitting, double grams, Factors factors, double milliampHours) {
    var flown = fly(fitting, grams, factors, Limits.NONE);
    var pack =
        models.pack(fitting.build(), factors).warmedBy(flown.hover().steady().load());
    var charge = pack.startCharge() - 3.6 * milliampHours / pack.capacityCoulomb();
    if (charge < 0) {
      return OptionalDouble.empty();
    }
    var load = flown.course().isPresent()
        ? Load.ofPower(flown.endurance().discharge().meanPowerW())
        : flown.hover().steady().load();
    return pack.deliver(load, charge) instanceof Delivery.Delivered now
        ? OptionalDouble.of(now.terminalVolts())
        : OptionalDouble.empty();
  }

  /** What a build only begun can reach at most; see {@link PartialBound}. */
  public PartialBound prospect(Build begun) {
    return new PartialBound(
        scenario,
        models,
        courses,
        begun,
        begun.frame().isPresent() ? planWith.applyAsDouble(begun) : 1);
  }

  /** Whether an aircraft is flown at speeds of its own choice. */
  public boolean choosesSpeeds() {
    return courses.choosesSpeeds();
  }

  /** Whether the drag of a frame matters. */
  public boolean asksForDrag() {
    return courses.asksForDrag();
  }

  /**
   * Seconds, or metres over ground where the goal is range, below which no aircraft flies a whole round of legs; 0 where
   * no round is asked for.
   */
  public double leastOfRound() {
    return courses.leastOfRound();
  }

  /** Whether charge is kept back for what follows a stay. */
  public boolean keepsBack() {
    return courses.wayHome().isPresent();
  }

  /** The parts' own models. */
  public FlightModels models() {
    return models;
  }

  private static PowerSplit split(Hover hover, double volts) {
    var steady = hover.steady();
    var electrical = steady.rotorCount() * steady.point().electricalPowerW();
    var rotors = volts > 0 ? steady.busPowerW(volts) - steady.avionicsW() : electrical;
    return new PowerSplit(
        hover.inducedPowerW(),
        hover.profilePowerW(),
        electrical - steady.shaftPowerW(),
        rotors - electrical,
        steady.avionicsW());
  }
}
