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
    var course = Course.of(flight, pack, rule, continuous);
    return course.refusal.isPresent()
        ? none(course.refusal.get(), fromCharge)
        : course.flown(
            Discharge.of(pack, flight.load(), course.until(rule, longestSeconds), fromCharge));
  }

  /**
   * What a flight meets on its way.
   *
   * @param refusal why there is no flight; empty if there is one
   * @param leastVolts of the pack, at which it ends
   * @param reason what those volts are
   */
  private record Course(Optional<Ending> refusal, double leastVolts, Ending reason) {
    static Course of(SteadyFlight flight, Pack pack, LandingRule rule, Limits continuous) {
      var motorA = flight.point().currentA();
      var leastVolts = Endurance.leastVolts(flight, pack, rule, continuous);
      var reason = Endurance.reason(
          continuous,
          leastVolts,
          rule.voltsPerCell() * pack.series(),
          flight.point().volts());
      if (motorA > continuous.eachMotorA()) {
        reason = motorA > continuous.motorA() ? Ending.MOTOR_CURRENT : Ending.CONTROLLER_CURRENT;
      } else if (leastVolts < Double.POSITIVE_INFINITY) {
        return new Course(Optional.empty(), leastVolts, reason);
      }
      return new Course(Optional.of(reason), leastVolts, reason);
    }

    Until until(LandingRule rule, double longestSeconds) {
      return new Until(rule.reserve(), leastVolts, longestSeconds);
    }

    Endurance flown(Discharge discharge) {
      var ending = switch (discharge.ending()) {
        case RESERVE -> Ending.RESERVE;
        case LEAST_VOLTS -> reason;
        case UNDELIVERABLE -> Ending.UNDELIVERABLE;
        case TIME -> Ending.TIME;
      };
      return new Endurance(discharge.seconds(), ending, discharge);
    }
  }

  /** Landing, full duty and a current limit each fix the volts at which they are met: the highest ends it. */
  private static double leastVolts(
      SteadyFlight flight, Pack pack, LandingRule rule, Limits continuous) {
    var busA = continuous.busA();
    return Math.max(
        Math.max(rule.voltsPerCell() * pack.series(), flight.point().volts()),
        busA == Double.POSITIVE_INFINITY ? 0 : flight.load().voltsAtCurrent(busA));
  }

  /**
   * A flight and when it is where.
   *
   * @param line empty if there is no flight
   */
  record Timed(Endurance endurance, Optional<Timeline> line) {

    /** From take-off until something ends the flight. */
    static Timed of(SteadyFlight flight, Pack pack, LandingRule rule, Limits continuous) {
      var course = Course.of(flight, pack, rule, continuous);
      if (course.refusal.isPresent()) {
        return new Timed(none(course.refusal.get(), pack.startCharge()), Optional.empty());
      }
      var line = Timeline.of(
          pack, flight.load(), course.until(rule, Double.POSITIVE_INFINITY), pack.startCharge());
      return new Timed(course.flown(line.discharge()), Optional.of(line));
    }

    /** From take-off to a state of charge on the way, s; 0 if there is no flight. */
    double secondsTo(double charge) {
      return line.map(known -> known.secondsTo(charge)).orElse(0.0);
    }

    /** From a state of charge on the way to the end, s; 0 if there is no flight. */
    double secondsFrom(double charge) {
      return line.map(known -> known.secondsFrom(charge)).orElse(0.0);
    }
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
