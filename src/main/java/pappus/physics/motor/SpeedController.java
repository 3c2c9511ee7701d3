package pappus.physics.motor;

import pappus.quantity.Require;

/**
 * What a speed controller takes from the battery to feed a motor at part throttle:
 * P_bus = v i / (1 − k (1 − v/V)) + V i_idle.
 *
 * <p>An ideal controller (k = 0) is wrong at part throttle: over 826 thrust-stand rows of seven motors,
 * 704 of them from P. Cao and J. Strawson, "motor_propeller_testing", 2018, it shows a median of .46, .58,
 * .65, .82 and .94 of the measured power at v/V = .3, .4, .5, .7 and 1.
 *
 * @param partLoadLoss k, 0 to 0.95
 * @param idleA current of one controller that turns nothing, A
 */
public record SpeedController(double partLoadLoss, double idleA) {

  public SpeedController {
    Require.inRange("partLoadLoss", partLoadLoss, 0, 0.95);
    Require.notNegative("idleA", idleA);
  }

  /** Power from the battery, W, with the motor at a point and the battery's terminals at busVolts. */
  public double busPowerW(OperatingPoint point, double busVolts) {
    return busVolts * busCurrentA(point, busVolts);
  }

  /** Current from the battery, A, with the motor at a point and the battery's terminals at busVolts. */
  public double busCurrentA(OperatingPoint point, double busVolts) {
    return point.electricalPowerW() / ((1 - partLoadLoss) * busVolts + partLoadLoss * point.volts())
        + idleA;
  }
}
