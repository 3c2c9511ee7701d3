package pappus.assessment.flight;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pappus.part.Build;
import pappus.part.Role;
import pappus.physics.airframe.Airframe;
import pappus.physics.battery.Delivery;
import pappus.physics.battery.Load;
import pappus.physics.battery.Pack;
import pappus.physics.flight.Aircraft;
import pappus.physics.flight.EfficiencyBand;
import pappus.physics.flight.Endurance;
import pappus.physics.flight.ForwardFlight;
import pappus.physics.flight.FullThrottle;
import pappus.physics.flight.Hover;
import pappus.physics.flight.LandingRule;
import pappus.physics.flight.Limits;
import pappus.scenario.Scenario;

/**
 * The most that a build only begun can reach, whatever is added: flown by the same physics as a whole one, with the
 * least mass and draw that any completion has. Prepared once for parts, then asked often; safe for several threads.
 */
public final class PartialBound {
  /** Full throttle is known without all that draws: what takes less than this share of it is never slowed down. */
  private static final double SURE_OF_FULL = 0.8;

  /** What a gram and a watt cost is looked at from so near. */
  private static final double NEAR_GRAMS = 0.25;

  private static final double NEAR_WATTS = 0.05;

  /** Masses are looked at so many times as far away each time. */
  private static final double FURTHER = 3;

  /** More than any small aircraft takes for a gram, W. */
  private static final double MOST_WATTS_PER_GRAM = 5;

  /** Between the masses looked at, a factor is hardly larger. */
  private static final double SURE_OF_FACTOR = 1.2;

  /** A factor moves by less with the draw and the resistance, which it is not asked for. */
  private static final double NOISE = 1e-5;

  /** Masses at which belief is looked at are so many times apart. */
  private static final double HEAVIER = 1.01;

  /** Between two of them it may be less by such a share of how far it moves, and by so much, W. */
  private static final double UNEVEN = 0.25;

  private static final double UNEVEN_WATTS = 0.003;

  /** Far above the rounding of an efficiency. */
  private static final double ROUNDING = 1e-9;

  /** All else may warm the pack by so much of the ideal power, which is about a fifth of what the motors take. */
  private static final double WARMING = 0.6;

  private final Scenario scenario;
  private final FlightModels models;
  private final CoursePlanner courses;
  private final Build begun;
  private final int rotors;
  private final Pack pack;
  private final Limits continuous;
  private final LandingRule landing;
  private final double diameterMm;
  private final double planWith;

  /**
   * @param begun has motor, propeller and battery; the currents that its board and lead carry count if they are chosen
   * @param planWith share of its estimate that what follows a stay is planned with, or more
   * @throws IllegalArgumentException if the physics refuses the pack
   */
  PartialBound(
      Scenario scenario, FlightModels models, CoursePlanner courses, Build begun, double planWith) {
    this.scenario = scenario;
    this.models = models;
    this.courses = courses;
    this.begun = begun;
    this.rotors = begun.count(Role.MOTOR);
    this.pack = models.bare(begun.battery().orElseThrow());
    this.continuous = Ratings.continuous(begun, models.figures(begun.battery().orElseThrow()));
    this.landing = models.landing(begun.battery().orElseThrow());
    this.planWith = planWith;
    this.diameterMm = begun.propeller().orElseThrow().diameterMillimetres();
  }

  /**
   * Numbers that no build of some has less of.
   *
   * @param grams all-up mass, g
   * @param watts draw of everything but the motors at the battery, W
   * @param ohm resistance of board and lead on the way from the pack to the motors, Ω
   * @param loss ripple of the controllers over that of the law; absent: by the law
   * @param air what frames do to it at least
   */
  public record Least(double grams, double watts, double ohm, OptionalDouble loss, FrameAir air) {
    private Least with(double otherGrams, double otherWatts) {
      return new Least(otherGrams, otherWatts, ohm, loss, air);
    }
  }

  /**
   * No build with these parts, and at least these numbers, has a larger figure: seconds, or metres where the goal is
   * range; 0 if it does not fly.
   *
   * @param maySlow whether a heavier one may fly slower than its best, see {@link #maySlow}
   */
  public double figure(Least least, boolean maySlow) {
    try {
      var aircraft = models.steadily(aircraft(least), begun);
      var hover = courses.hover(aircraft, 1);
      var behind = pack.behind(least.ohm).warmedBy(hover.steady().load());
      if (courses.hovers()) {
        return isCarried(hover, behind)
            ? Endurance.of(hover.steady(), behind, landing, continuous).seconds()
            : 0;
      }
      var forward = new ForwardFlight(aircraft, hover);
      return maySlow
          ? atAnySpeed(forward, behind)
          : courses.unslowed(forward, behind, landing, continuous, planWith);
    } catch (IllegalArgumentException outsideTheModel) {
      // What the physics refuses of motor, propeller or pack it refuses of every build with them.
      return 0;
    }
  }

  /** What no speed surpasses: longest in the air at the least power, and that at the largest speed. */
  private double atAnySpeed(ForwardFlight forward, Pack behind) {
    var seconds = Endurance.of(forward.bestEndurance().steady(), behind, landing, continuous)
        .seconds();
    return scenario.isForRange() ? seconds * CoursePlanner.FASTEST_OVER_GROUND : seconds;
  }

  /**
   * Whether full throttle may slow down some build with these parts below its best speed. One that is slowed down
   * stays up the longer the less it can, so that what flies best bounds nothing.
   *
   * @param least numbers, but with the most mass of any; of the air, what frames do to it at most
   */
  public boolean maySlow(Least least) {
    if (!courses.choosesSpeeds()) {
      return false;
    }
    try {
      var aircraft = aircraft(
          least,
          least.air.mostLost(diameterMm),
          least.air.mostDragArea(least.grams, begun.battery().orElseThrow()));
      var steadily = models.steadily(aircraft, begun);
      return courses.takesMoreThan(
          SURE_OF_FULL,
          new ForwardFlight(steadily, Hover.of(steadily)),
          full(aircraft, pack.behind(least.ohm)));
    } catch (IllegalArgumentException outsideTheModel) {
      return true;
    }
  }

  /**
   * All-up mass at which thrust is down to so many times the weight, g: no build with these parts is heavier and
   * keeps it.
   *
   * @param least numbers; mass and drag do not matter
   */
  public double mostGrams(double leastThrustToWeight, Least least) {
    try {
      var aircraft = aircraft(least.with(1000, least.watts), least.air.leastLost(diameterMm), 0);
      return 1000
          * full(aircraft, pack.behind(least.ohm)).thrustToWeight(aircraft.airframe())
          / leastThrustToWeight;
    } catch (IllegalArgumentException outsideTheModel) {
      return 0;
    }
  }

  /**
   * What a gram is worth in watts: a build of g grams has a figure no larger than one of {@code atGrams} that draws
   * {@code wattsPerGram} more for each gram more, times a factor.
   *
   * @param fromGrams no build is lighter, g
   * @param wattsPerGram 0 where it is not known
   * @param factor 1 or hardly more
   */
  public record Trade(double atGrams, double fromGrams, double wattsPerGram, double factor) {
    /** Where nothing is known. */
    public static final Trade NONE = new Trade(0, 0, 0, 1);

    public boolean isKnown() {
      return wattsPerGram > 0;
    }
  }

  /**
   * What a gram is worth in watts where builds are likely to be, of an aircraft that full throttle never slows down.
   * Mass costs more the more there is of it, so that elsewhere the figure is below what the trade makes of it, but for
   * little: that is looked up at many masses.
   *
   * @param at likely numbers
   * @param mostLoss largest ripple over that of the law for which it is to hold; absent: as the law says
   * @param fromGrams least mass of any build, g
   * @param toGrams most mass of any build, g
   */
  public Trade trade(Least at, OptionalDouble mostLoss, double fromGrams, double toGrams) {
    if (!courses.isSingle()) {
      return Trade.NONE;
    }
    var best = figure(at, false);
    var byMass = figure(at.with(at.grams - NEAR_GRAMS, at.watts), false)
        - figure(at.with(at.grams + NEAR_GRAMS, at.watts), false);
    var byDraw = figure(at.with(at.grams, at.watts - NEAR_WATTS), false)
        - figure(at.with(at.grams, at.watts + NEAR_WATTS), false);
    var rate = byMass / NEAR_GRAMS / (byDraw / NEAR_WATTS);
    if (!(best > 0 && best < Double.POSITIVE_INFINITY && rate > 0 && rate < MOST_WATTS_PER_GRAM)) {
      return Trade.NONE;
    }
    var factor = 1.0;
    for (var loss : mostLoss.equals(at.loss) ? List.of(mostLoss) : List.of(at.loss, mostLoss)) {
      var middle = new Least(at.grams, at.watts, at.ohm, loss, at.air);
      var there = loss.equals(at.loss) ? best : figure(middle, false);
      if (there <= 0) {
        return Trade.NONE;
      }
      for (var end : new double[] {fromGrams, toGrams}) {
        for (var grams : awayTo(end, at.grams)) {
          var watts = at.watts - rate * (grams - at.grams);
          if (watts >= 0) {
            factor = Math.max(factor, figure(middle.with(grams, watts), false) / there);
          }
        }
      }
    }
    return new Trade(at.grams, fromGrams, rate, 1 + SURE_OF_FACTOR * (factor - 1) + NOISE);
  }

  /** Masses from near one to another end, ever farther apart; none if the end is there. */
  private static List<Double> awayTo(double endGrams, double fromGrams) {
    var masses = new ArrayList<Double>();
    var side = Math.signum(endGrams - fromGrams);
    for (var away = 2 * NEAR_GRAMS; away < Math.abs(endGrams - fromGrams); away *= FURTHER) {
      masses.add(fromGrams + side * away);
    }
    if (side != 0) {
      masses.add(endGrams);
    }
    return masses;
  }

  /**
   * Like {@link #figure}, where not every build is as heavy as one of the numbers, but those that are lighter draw as
   * much: what motors and controllers end counts only if it does with the least.
   *
   * @param at numbers that no build draws less with
   * @param least numbers that no build has less of
   */
  public double figure(Least at, Least least) {
    try {
      var aircraft = models.steadily(aircraft(at), begun);
      var hover = courses.hover(aircraft, 1);
      var behind = pack.behind(at.ohm).warmedBy(hover.steady().load());
      var steady = courses.hovers()
          ? Optional.of(hover.steady())
          : courses.single(new ForwardFlight(aircraft, hover));
      if (steady.isEmpty()) {
        return figure(least, false);
      }
      var point = steady.get().point();
      return point.currentA() > continuous.motorA()
              || point.currentA() > continuous.controllerA()
              || point.volts() > landing.voltsPerCell() * pack.series()
              || (courses.hovers() && !isCarried(hover, behind))
          ? figure(least, false)
          : figure(at, false);
    } catch (IllegalArgumentException outsideTheModel) {
      return figure(least, false);
    }
  }

  /**
   * What builds draw beside the motors at least if their efficiency in hover is one that such aircraft are known to reach.
   * At a mass that is what the ideal power allows less what the motors take at the most volts; both rise smoothly with
   * mass, so that between two masses it is no less than at one of them, but for little.
   *
   * @param fromGrams no such build is lighter
   * @param toGrams no such build is heavier
   * @param ohm least resistance of board and lead, Ω
   * @param losses most ripple of the controllers over that of the law; absent: by the law
   */
  public BelievedDraw believed(
      double fromGrams, double toGrams, double ohm, List<OptionalDouble> losses, FrameAir air) {
    var behind = pack.behind(ohm);
    var draw = new BelievedDraw.Builder();
    try {
      var light = powers(fromGrams, behind, losses, air);
      for (var grams = fromGrams; grams < toGrams; grams *= HEAVIER) {
        var heavier = Math.min(toGrams, grams * HEAVIER);
        var heavy = powers(heavier, behind, losses, air);
        var highest = EfficiencyBand.warning(heavier / 1000).highest();
        var low = light.beside(highest);
        var high = heavy.beside(highest);
        // Of builds that draw more than what warms the pack here nothing is said.
        draw.from(
            grams,
            Math.min(
                light.warming, Math.min(low, high) - UNEVEN * Math.abs(high - low) - UNEVEN_WATTS));
        light = heavy;
      }
      return draw.build();
    } catch (IllegalArgumentException outsideTheModel) {
      return BelievedDraw.ANY;
    }
  }

  /**
   * Whether the efficiency in hover of a build of which all is decided that counts is one that such aircraft are known to
   * reach.
   *
   * @param whole the numbers that it has
   */
  public boolean isBelieved(Least whole) {
    try {
      var airframe = new Airframe(
          whole.grams / 1000,
          whole.air.leastLost(diameterMm),
          whole.air.leastDragArea(whole.grams, begun.battery().orElseThrow()));
      var hover =
          courses.hover(models.steadily(aircraft(airframe, whole.loss, whole.watts), begun), 1);
      var load = hover.steady().load();
      var highest = EfficiencyBand.warning(whole.grams / 1000).highest();
      return !(pack.behind(whole.ohm).warmedBy(load).deliver(load, Pack.HALF_CHARGE)
              instanceof Delivery.Delivered now)
          || hover.efficiency(now.terminalVolts()) <= highest * (1 + ROUNDING);
    } catch (IllegalArgumentException outsideTheModel) {
      return true;
    }
  }

  /**
   * Of a hover, W.
   *
   * @param motors the most that they take for it beside no more than {@code warming} of all else
   */
  private record Powers(double ideal, double motors, double warming) {
    double beside(double efficiency) {
      return ideal / efficiency - motors;
    }
  }

  private Powers powers(double grams, Pack behind, List<OptionalDouble> losses, FrameAir air) {
    var ideal = Hover.of(aircraft(new Airframe(grams / 1000, 0, 0), OptionalDouble.empty(), 0))
        .idealPowerW();
    var warming = WARMING * ideal;
    return new Powers(
        ideal,
        losses.stream()
            .mapToDouble(loss -> motorsW(grams, warming, behind, loss, air))
            .max()
            .orElse(0),
        warming);
  }

  /** Most power that the motors take from the pack in hover, at the most volts that it may have, W. */
  private double motorsW(
      double grams, double warming, Pack behind, OptionalDouble loss, FrameAir air) {
    var light = hover(grams, loss, air.leastLost(diameterMm));
    var heavy = hover(grams, loss, air.mostLost(diameterMm));
    var warm =
        behind.warmedBy(Load.ofPower(warming + heavy.steady().busPowerW(behind.openVolts(1))));
    return warm.deliver(light.steady().load(), Pack.HALF_CHARGE) instanceof Delivery.Delivered now
        ? heavy.steady().busPowerW(now.terminalVolts())
        : 0;
  }

  private Hover hover(double grams, OptionalDouble loss, double thrustLost) {
    var airframe = new Airframe(grams / 1000, thrustLost, 0);
    return courses.hover(models.steadily(aircraft(airframe, loss, 0), begun), 1);
  }

  private Aircraft aircraft(Least least) {
    return aircraft(
        least,
        least.air.leastLost(diameterMm),
        least.air.leastDragArea(least.grams, begun.battery().orElseThrow()));
  }

  private Aircraft aircraft(Least least, double thrustLost, double dragArea) {
    var airframe = new Airframe(least.grams / 1000, thrustLost, dragArea);
    var aircraft = aircraft(airframe, least.loss, least.watts);
    // A heavier build may take less only where ripple is most of what is taken: there it is left
    // out.
    return aircraft
            .rotor()
            .controller()
            .risesWithThrust(Hover.of(aircraft).steady().point())
        ? aircraft
        : aircraft(airframe, OptionalDouble.of(0), least.watts);
  }

  private Aircraft aircraft(Airframe airframe, OptionalDouble loss, double watts) {
    return new Aircraft(
        airframe,
        rotors,
        models.rotor(begun.motor().orElseThrow(), begun.propeller().orElseThrow(), loss),
        watts);
  }

  /** Whether frames that do this to the air make no difference to what is reached. */
  public boolean areAlike(FrameAir one, FrameAir other) {
    return one.leastLost(diameterMm) == other.leastLost(diameterMm)
        && one.mostLost(diameterMm) == other.mostLost(diameterMm)
        && (!courses.asksForDrag() || one.hasDragOf(other))
        // How much is kept back for the way home is known of whole main parts alone.
        && (courses.wayHome().isEmpty() || begun.frame().isPresent());
  }

  private FullThrottle full(Aircraft aircraft, Pack behind) {
    return FullThrottle.of(
        aircraft,
        behind,
        Math.min(scenario.flight().thrustAtChargeOrMidFlight(), behind.startCharge()),
        models.floorVolts(begun.battery().orElseThrow()),
        Ratings.burst(begun, models.figures(begun.battery().orElseThrow())));
  }

  /** The limits on currents and throttle in hover: what breaks them with the least load is never feasible. */
  private boolean isCarried(Hover hover, Pack behind) {
    var steady = hover.steady();
    var motorA = steady.point().currentA();
    if (motorA > continuous.motorA() || motorA > continuous.controllerA()) {
      return false;
    }
    if (!(behind.deliver(steady.load(), Pack.HALF_CHARGE) instanceof Delivery.Delivered now)) {
      return false;
    }
    var amps = now.currentA();
    return amps <= continuous.packA()
        && amps <= continuous.connectorA()
        && amps <= continuous.leadA()
        && steady.duty(now.terminalVolts()) <= Ratings.MOST_DUTY;
  }
}
