package pappus.assessment.flight;

import java.util.Optional;
import java.util.OptionalDouble;
import pappus.part.Build;
import pappus.physics.airframe.Airframe;
import pappus.physics.battery.Delivery;
import pappus.physics.battery.Pack;
import pappus.physics.flight.Aircraft;
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

  private final Scenario scenario;
  private final FlightModels models;
  private final CoursePlanner courses;
  private final Build begun;
  private final BegunAircraft parts;
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
    this.parts = new BegunAircraft(models, begun);
    this.pack = parts.pack();
    this.continuous = Ratings.continuous(begun, models.figures(begun.battery().orElseThrow()));
    this.landing = models.landing(begun.battery().orElseThrow());
    this.planWith = planWith;
    this.diameterMm = parts.diameterMm();
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
    Least with(double otherGrams, double otherWatts) {
      return new Least(otherGrams, otherWatts, ohm, loss, air);
    }

    Least with(OptionalDouble otherLoss) {
      return new Least(grams, watts, ohm, otherLoss, air);
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
      var aircraft = parts.steadily(aircraft(least));
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
      var steadily = parts.steadily(aircraft);
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
   * Like {@link #figure}, where not every build is as heavy as one of the numbers, but those that are lighter draw as
   * much: what motors and controllers end counts only if it does with the least.
   *
   * @param at numbers that no build draws less with
   * @param least numbers that no build has less of
   */
  public double figure(Least at, Least least) {
    try {
      var aircraft = parts.steadily(aircraft(at));
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

  private Aircraft aircraft(Least least) {
    return aircraft(
        least,
        least.air.leastLost(diameterMm),
        least.air.leastDragArea(least.grams, begun.battery().orElseThrow()));
  }

  private Aircraft aircraft(Least least, double thrustLost, double dragArea) {
    var airframe = new Airframe(least.grams / 1000, thrustLost, dragArea);
    var aircraft = parts.aircraft(airframe, least.loss, least.watts);
    // A heavier build may take less only where ripple is most of what is taken: there it is left
    // out.
    return aircraft
            .rotor()
            .controller()
            .risesWithThrust(Hover.of(aircraft).steady().point())
        ? aircraft
        : parts.aircraft(airframe, OptionalDouble.of(0), least.watts);
  }

  /** What belief in its efficiency says of it. */
  public BeliefBound belief() {
    return new BeliefBound(parts, courses);
  }

  /** Whether it is flown in one way alone. */
  boolean isSingle() {
    return courses.isSingle();
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
