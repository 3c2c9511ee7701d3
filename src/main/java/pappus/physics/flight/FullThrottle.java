package pappus.physics.flight;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import pappus.physics.airframe.Airframe;
import pappus.physics.battery.Pack;
import pappus.physics.motor.OperatingPoint;
import pappus.quantity.Require;

/**
 * The most thrust the aircraft has at a state of charge, with the battery sagging under all motors and the
 * avionics for a second. If a part allows less than fully open controllers would draw, thrust is what that part
 * allows: more resistance or fewer amps then never give more.
 *
 * @param thrustN thrust of all rotors, N, before what arms and body take away; 0 if the battery cannot even
 *     carry the avionics above the floor
 * @param duty how far the controllers are open, 0 to 1
 * @param limit what keeps it from being more
 * @param point each motor
 * @param busCurrentA current from the battery, A
 * @param busVolts volts at its terminals
 * @param isBeyondTest true if the propeller was not tested at the speed
 */
public record FullThrottle(
    double thrustN,
    double duty,
    ThrottleLimit limit,
    OperatingPoint point,
    double busCurrentA,
    double busVolts,
    boolean isBeyondTest) {

  /**
   * Solves for the speed of the motors.
   *
   * @param charge state of charge, 0 to 1
   * @param floorVoltsPerCell volts a cell that must not be passed; above half the rested volts, where less
   *     throttle always means less thrust
   * @param burst what the parts allow for a short time
   */
  public static FullThrottle of(
      Aircraft aircraft, Pack pack, double charge, double floorVoltsPerCell, Limits burst) {
    var floorVolts = Require.positive("floorVoltsPerCell", floorVoltsPerCell) * pack.series();
    return new ThrottleSearch(aircraft, pack.openVolts(charge), pack.burstOhm(charge), floorVolts)
        .within(burst);
  }

  /**
   * The throttle at which each limit is met that would be passed at full throttle, were it the only one;
   * limits that are not reached are absent.
   */
  public static Map<ThrottleLimit, Double> throttles(
      Aircraft aircraft, Pack pack, double charge, double floorVoltsPerCell, Limits burst) {
    var inf = Double.POSITIVE_INFINITY;
    var single = new EnumMap<ThrottleLimit, Limits>(ThrottleLimit.class);
    single.put(ThrottleLimit.MOTOR, new Limits(burst.motorA(), inf, inf, inf, inf));
    single.put(ThrottleLimit.CONTROLLER, new Limits(inf, burst.controllerA(), inf, inf, inf));
    single.put(ThrottleLimit.PACK, new Limits(inf, inf, burst.packA(), inf, inf));
    single.put(ThrottleLimit.CONNECTOR, new Limits(inf, inf, inf, burst.connectorA(), inf));
    single.put(ThrottleLimit.LEAD, new Limits(inf, inf, inf, inf, burst.leadA()));
    var duties = new EnumMap<ThrottleLimit, Double>(ThrottleLimit.class);
    single.forEach((limit, limits) -> {
      var full = of(aircraft, pack, charge, floorVoltsPerCell, limits);
      if (full.limit() != ThrottleLimit.FULL_DUTY) {
        duties.put(full.limit(), full.duty());
      }
    });
    return duties;
  }

  /**
   * Less throttle, step by step up to a full throttle that was found: thrust, currents and volts at evenly spaced
   * speeds of the motors, the battery sagging under each for a second.
   *
   * @param full found for the same aircraft, pack, charge and floor
   * @return so many steps, the last of them {@code full}; empty if it lifts nothing
   */
  public static List<FullThrottle> upTo(
      FullThrottle full,
      Aircraft aircraft,
      Pack pack,
      double charge,
      double floorVoltsPerCell,
      int steps) {
    if (full.thrustN == 0) {
      return List.of();
    }
    var search = new ThrottleSearch(
        aircraft, pack.openVolts(charge), pack.burstOhm(charge), floorVoltsPerCell * pack.series());
    var found = new ArrayList<FullThrottle>();
    for (var step = 1; step < steps; step++) {
      found.add(search.at(full.point.speedRadPerS() * step / steps));
    }
    found.add(full);
    return found;
  }

  /** Thrust left for flying over weight. */
  public double thrustToWeight(Airframe airframe) {
    return thrustN * (1 - airframe.thrustLost()) / airframe.weightN();
  }
}
