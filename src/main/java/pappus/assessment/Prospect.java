package pappus.assessment;

import java.util.Optional;
import java.util.OptionalDouble;
import pappus.catalog.Build;
import pappus.catalog.Role;
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
import pappus.physics.flight.SteadyFlight;
import pappus.scenario.Goal;
import pappus.scenario.Scenario;

/**
 * The most that a build only begun can reach, whatever is added: flown by the same physics as a whole one, with the
 * least mass and draw that any completion has. Prepared once for parts, then asked often; safe for several threads.
 */
public final class Prospect {
  private static final double HALF_CHARGE = 0.5;

  /** Full throttle is known without all that draws: what takes less than this share of it is never slowed down. */
  private static final double SURE_OF_FULL = 0.8;

  /** Masses are looked at from so near, g, twice as far each time. */
  private static final double LEAST_MORE_GRAMS = 0.1;

  /** Between the masses and volts looked at, the rate is hardly less. */
  private static final double SURE_OF_RATE = 0.98;

  /** Twice the largest airspeed and more than any wind adds, m/s. */
  private static final double FASTEST_OVER_GROUND = 160;

  private final Scenario scenario;
  private final FlightModels models;
  private final CoursePlanner courses;
  private final Build begun;
  private final int rotors;
  private final Pack pack;
  private final Limits continuous;
  private final LandingRule landing;

  /**
   * @param begun has motor, propeller and battery; the currents that its board and lead carry count if they are chosen
   * @throws IllegalArgumentException if the physics refuses the pack
   */
  Prospect(Scenario scenario, FlightModels models, CoursePlanner courses, Build begun) {
    this.scenario = scenario;
    this.models = models;
    this.courses = courses;
    this.begun = begun;
    this.rotors = begun.count(Role.MOTOR);
    this.pack = models.bare(begun.battery().orElseThrow());
    this.continuous = Ratings.continuous(begun);
    this.landing = models.landing(begun.battery().orElseThrow());
  }

  /**
   * Numbers that no build of some has less of.
   *
   * @param grams all-up mass, g
   * @param watts draw of everything but the motors at the battery, W
   * @param ohm resistance of board and lead on the way from the pack to the motors, Ω
   * @param loss part-load loss of the controllers; absent: by the law
   * @param dragArea m²
   */
  public record Least(
      double grams, double watts, double ohm, OptionalDouble loss, double dragArea) {}

  /**
   * No build with these parts, and at least these numbers, has a larger figure: seconds, or metres where the goal is
   * range; 0 if it does not fly.
   *
   * @param maySlow whether a heavier one may fly slower than its best, see {@link #maySlow}
   */
  public double figure(Least least, boolean maySlow) {
    try {
      var aircraft = aircraft(least);
      var hover = Hover.of(aircraft);
      var behind = pack.behind(least.ohm);
      if (courses.hovers()) {
        return isCarried(hover, behind)
            ? Endurance.of(hover.steady(), behind, landing, continuous).seconds()
            : 0;
      }
      var forward = new ForwardFlight(aircraft, hover);
      return maySlow
          ? atAnySpeed(forward, behind)
          : courses.unslowed(forward, behind, landing, continuous);
    } catch (IllegalArgumentException outsideTheModel) {
      // What the physics refuses of motor, propeller or pack it refuses of every build with them.
      return 0;
    }
  }

  /** What no speed surpasses: longest in the air at the least power, and that at the largest speed. */
  private double atAnySpeed(ForwardFlight forward, Pack behind) {
    var seconds = Endurance.of(forward.bestEndurance().steady(), behind, landing, continuous)
        .seconds();
    return scenario.goalOrEndurance() == Goal.RANGE ? seconds * FASTEST_OVER_GROUND : seconds;
  }

  /**
   * Whether full throttle may slow down some build with these parts below its best speed. One that is slowed down
   * stays up the longer the less it can, so that what flies best bounds nothing.
   *
   * @param least numbers, but with the most mass and drag area of any
   */
  public boolean maySlow(Least least) {
    if (!courses.choosesSpeeds()) {
      return false;
    }
    try {
      var aircraft = aircraft(least);
      return courses.takesMoreThan(
          SURE_OF_FULL,
          new ForwardFlight(aircraft, Hover.of(aircraft)),
          full(aircraft, pack.behind(least.ohm)));
    } catch (IllegalArgumentException outsideTheModel) {
      return true;
    }
  }

  /**
   * All-up mass at which thrust is down to so many times the weight, g: no build with these parts is heavier and
   * keeps it.
   *
   * @param least numbers; mass and drag area do not matter
   */
  public double mostGrams(double leastThrustToWeight, Least least) {
    try {
      var aircraft = aircraft(new Least(1000, least.watts, least.ohm, least.loss, 0));
      return 1000
          * full(aircraft, pack.behind(least.ohm)).thrustToWeight(aircraft.airframe())
          / leastThrustToWeight;
    } catch (IllegalArgumentException outsideTheModel) {
      return 0;
    }
  }

  /**
   * So many watts beside the motors cost no build more than a gram does: at any volts, the current that each mass
   * beyond one asks for is at least the current that so many watts ask for. Looked at from many masses and volts.
   *
   * @param from least numbers
   * @param toGrams most mass of any build, g
   * @return 0 where the flight is not one steady flight
   */
  public double wattsPerGram(Least from, double toGrams) {
    try {
      var light = steady(from);
      if (light.isEmpty()) {
        return 0;
      }
      var rate = Double.POSITIVE_INFINITY;
      for (var more = LEAST_MORE_GRAMS; from.grams + more <= toGrams; more *= 2) {
        var heavy =
            steady(new Least(from.grams + more, from.watts, from.ohm, from.loss, from.dragArea));
        for (var charge = 0.0; charge <= pack.startCharge() && heavy.isPresent(); charge += 0.1) {
          var volts = pack.openVolts(charge);
          rate =
              Math.min(rate, (heavy.get().busPowerW(volts) - light.get().busPowerW(volts)) / more);
        }
      }
      return Double.isInfinite(rate) ? 0 : Math.max(0, rate * SURE_OF_RATE);
    } catch (IllegalArgumentException outsideTheModel) {
      return 0;
    }
  }

  private Optional<SteadyFlight> steady(Least least) {
    var aircraft = aircraft(least);
    var hover = Hover.of(aircraft);
    return courses.hovers()
        ? Optional.of(hover.steady())
        : courses.single(new ForwardFlight(aircraft, hover));
  }

  private Aircraft aircraft(Least least) {
    return new Aircraft(
        new Airframe(least.grams / 1000, scenario.flight().thrustLostOrUsual(), least.dragArea),
        rotors,
        models.rotor(begun.motor().orElseThrow(), begun.propeller().orElseThrow(), least.loss),
        least.watts);
  }

  private FullThrottle full(Aircraft aircraft, Pack behind) {
    return FullThrottle.of(
        aircraft,
        behind,
        Math.min(scenario.flight().thrustAtChargeOrMidFlight(), behind.startCharge()),
        models.floorVolts(begun.battery().orElseThrow()),
        Ratings.burst(begun));
  }

  /** The limits on currents and throttle in hover: what breaks them with the least load is never feasible. */
  private boolean isCarried(Hover hover, Pack behind) {
    var steady = hover.steady();
    var motorA = steady.point().currentA();
    if (motorA > continuous.motorA() || motorA > continuous.controllerA()) {
      return false;
    }
    if (!(behind.deliver(steady.load(), HALF_CHARGE) instanceof Delivery.Delivered now)) {
      return false;
    }
    var amps = now.currentA();
    return amps <= continuous.packA()
        && amps <= continuous.connectorA()
        && amps <= continuous.leadA()
        && steady.duty(now.terminalVolts()) <= LimitTable.MOST_DUTY;
  }
}
