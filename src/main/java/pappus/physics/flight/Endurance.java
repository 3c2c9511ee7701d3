package pappus.physics.flight;

import java.util.Optional;
import pappus.physics.battery.Discharge;
import pappus.physics.battery.Pack;
import pappus.physics.battery.Timeline;
import pappus.physics.battery.Until;

/**
 * How long steady flight lasts, and why it ends.
 *
 * @param seconds flight time, s
 * @param ending the first thing that ends it
 * @param discharge charge, volts, currents and energy from start to end
 */
public record Endurance(double seconds, Ending ending, Discharge discharge) {

  /** From take-off until something ends the flight. */
  public static Endurance of(SteadyFlight flight, Pack pack, LandingRule rule, Limits continuous) {
    return of(flight, pack, rule, continuous, pack.startCharge(), Double.POSITIVE_INFINITY);
  }

  /**
   * One leg of a flight.
   *
   * @param fromCharge state of charge at its start
   * @param longestSeconds how long it is to last at most, s
   */
  public static Endurance of(
      SteadyFlight flight,
      Pack pack,
      LandingRule rule,
      Limits continuous,
      double fromCharge,
      double longestSeconds) {
    var motorA = flight.point().currentA();
    if (motorA > continuous.eachMotorA()) {
      return none(
          motorA > continuous.motorA() ? Ending.MOTOR_CURRENT : Ending.CONTROLLER_CURRENT,
          fromCharge);
    }
    var leastVolts = leastVolts(flight, pack, rule, continuous);
    var reason = reason(
        continuous,
        leastVolts,
        rule.voltsPerCell() * pack.series(),
        flight.point().volts());
    if (leastVolts == Double.POSITIVE_INFINITY) {
      return none(reason, fromCharge);
    }
    var discharge = Discharge.of(
        pack, flight.load(), new Until(rule.reserve(), leastVolts, longestSeconds), fromCharge);
    var ending = switch (discharge.ending()) {
      case RESERVE -> Ending.RESERVE;
      case LEAST_VOLTS -> reason;
      case UNDELIVERABLE -> Ending.UNDELIVERABLE;
      case TIME -> Ending.TIME;
    };
    return new Endurance(discharge.seconds(), ending, discharge);
  }

  /** Landing, full duty and a current limit each fix the volts at which they are met: the highest ends it. */
  private static double leastVolts(
      SteadyFlight flight, Pack pack, LandingRule rule, Limits continuous) {
    var busA = continuous.busA();
    return Math.max(
        Math.max(rule.voltsPerCell() * pack.series(), flight.point().volts()),
        busA == Double.POSITIVE_INFINITY ? 0 : flight.load().voltsAtCurrent(busA));
  }

  /** When the same is where, from a state of charge on; empty if there is no flight. */
  static Optional<Timeline> timeline(
      SteadyFlight flight, Pack pack, LandingRule rule, Limits continuous, double fromCharge) {
    var leastVolts = leastVolts(flight, pack, rule, continuous);
    return leastVolts == Double.POSITIVE_INFINITY
            || flight.point().currentA() > continuous.eachMotorA()
        ? Optional.empty()
        : Optional.of(Timeline.of(
            pack,
            flight.load(),
            new Until(rule.reserve(), leastVolts, Double.POSITIVE_INFINITY),
            fromCharge));
  }

  /** Mean power from the battery, W; 0 if there is no flight. */
  public double meanPowerW() {
    return discharge.meanPowerW();
  }

  private static Ending reason(
      Limits continuous, double leastVolts, double landingVolts, double dutyVolts) {
    if (leastVolts == landingVolts) {
      return Ending.LANDING_VOLTS;
    }
    if (leastVolts == dutyVolts) {
      return Ending.FULL_DUTY;
    }
    var busA = continuous.busA();
    if (busA == continuous.packA()) {
      return Ending.PACK_CURRENT;
    }
    return busA == continuous.connectorA() ? Ending.CONNECTOR_CURRENT : Ending.LEAD_CURRENT;
  }

  /** No flight at all, for a reason that stands from the start. */
  public static Endurance none(Ending ending, double charge) {
    return new Endurance(
        0, ending, new Discharge(0, Discharge.Ending.LEAST_VOLTS, charge, 0, 0, 0, 0, 0, 0));
  }
}
