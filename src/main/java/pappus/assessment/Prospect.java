package pappus.assessment;

import java.util.OptionalDouble;
import pappus.catalog.Build;
import pappus.catalog.Role;
import pappus.physics.airframe.Airframe;
import pappus.physics.battery.Delivery;
import pappus.physics.battery.Pack;
import pappus.physics.flight.Aircraft;
import pappus.physics.flight.Endurance;
import pappus.physics.flight.FullThrottle;
import pappus.physics.flight.Hover;
import pappus.physics.flight.LandingRule;
import pappus.physics.flight.Limits;
import pappus.scenario.Goal;
import pappus.scenario.Scenario;

/**
 * The most that a build only begun can reach, whatever is added: flown by the same physics as a whole one, with the
 * least mass and draw that any completion has. Prepared once for parts, then asked often; safe for several threads.
 */
public final class Prospect {
  private static final double HALF_CHARGE = 0.5;

  private final Scenario scenario;
  private final FlightModels models;
  private final CoursePlanner courses;
  private final Build begun;
  private final int rotors;
  private final Pack pack;
  private final Limits continuous;
  private final LandingRule landing;

  /**
   * @param begun has motor, propeller and battery; its board and lead count if they are chosen
   * @throws IllegalArgumentException if the physics refuses the pack
   */
  Prospect(Scenario scenario, FlightModels models, CoursePlanner courses, Build begun) {
    this.scenario = scenario;
    this.models = models;
    this.courses = courses;
    this.begun = begun;
    this.rotors = begun.count(Role.MOTOR);
    this.pack = models.packBegun(begun);
    this.continuous = FlightModels.continuous(begun);
    this.landing = models.landing(begun.battery().orElseThrow());
  }

  /**
   * No build with these parts, and at least these numbers, has a larger figure: seconds, or metres where the goal is
   * range; 0 if it does not fly.
   *
   * @param grams least all-up mass, g
   * @param watts least draw of everything but the motors at the battery, W
   * @param loss least part-load loss of the controllers; absent: by the law
   * @param dragArea least drag area, m²
   */
  public double figure(double grams, double watts, OptionalDouble loss, double dragArea) {
    try {
      var aircraft = aircraft(grams, watts, loss, dragArea);
      var hover = Hover.of(aircraft);
      if (courses.hovers()) {
        return isCarried(hover)
            ? Endurance.of(hover.steady(), pack, landing, continuous).seconds()
            : 0;
      }
      var flown = courses.fly(aircraft, hover, full(aircraft), pack, landing, continuous);
      return scenario.goalOrEndurance() == Goal.RANGE
          ? flown.course().rangeMetres()
          : flown.endurance().seconds();
    } catch (IllegalArgumentException outsideTheModel) {
      // What the physics refuses of motor, propeller or pack it refuses of every build with them.
      return 0;
    }
  }

  /**
   * All-up mass at which thrust is down to so many times the weight, g: no build with these parts is heavier and
   * keeps it.
   *
   * @param watts least draw of everything but the motors at the battery, W
   * @param loss least part-load loss of the controllers; absent: by the law
   */
  public double mostGrams(double leastThrustToWeight, double watts, OptionalDouble loss) {
    try {
      var aircraft = aircraft(1000, watts, loss, 0);
      return 1000 * full(aircraft).thrustToWeight(aircraft.airframe()) / leastThrustToWeight;
    } catch (IllegalArgumentException outsideTheModel) {
      return 0;
    }
  }

  private Aircraft aircraft(double grams, double watts, OptionalDouble loss, double dragArea) {
    return new Aircraft(
        new Airframe(grams / 1000, scenario.flight().thrustLostOrUsual(), dragArea),
        rotors,
        models.rotor(begun.motor().orElseThrow(), begun.propeller().orElseThrow(), loss),
        watts);
  }

  private FullThrottle full(Aircraft aircraft) {
    return FullThrottle.of(
        aircraft,
        pack,
        Math.min(scenario.flight().thrustAtChargeOrMidFlight(), pack.startCharge()),
        models.floorVolts(begun.battery().orElseThrow()),
        FlightModels.burst(begun));
  }

  /** The limits on currents and throttle in hover: what breaks them with the least load is never feasible. */
  private boolean isCarried(Hover hover) {
    var steady = hover.steady();
    var motorA = steady.point().currentA();
    if (motorA > continuous.motorA() || motorA > continuous.controllerA()) {
      return false;
    }
    if (!(pack.deliver(steady.load(), HALF_CHARGE) instanceof Delivery.Delivered now)) {
      return false;
    }
    var amps = now.currentA();
    return amps <= continuous.packA()
        && amps <= continuous.connectorA()
        && amps <= continuous.leadA()
        && steady.duty(now.terminalVolts()) <= LimitTable.MOST_DUTY;
  }
}
