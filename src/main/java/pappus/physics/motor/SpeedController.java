package pappus.physics.motor;

import pappus.quantity.Require;

/**
 * What a speed controller takes from the battery to feed a motor at part throttle, v volts and i amps at the motor and
 * V at the battery:
 * P_bus = v i + g v² (1 − v/V)^1.5 + V i_idle.
 *
 * <p>The middle term is the heat of the current's ripple. A synchronously rectified bridge chops with
 * ΔI = V d (1 − d)/(L f), d = v/V, which costs R ΔI²/12 = V² d² (1 − d)²/(12 R (f τ)²) with τ = L/R: g = c/R. The
 * power 1.5 in place of 2 meets benches better, see {@link PartLoadLaw}.
 *
 * <p>Why: src/site/markdown/decisions.md#power-rises-with-thrust-or-ripple-is-left-out-of-the-bound
 *
 * @param rippleS g, S, at least 0
 * @param idleA current of one controller that turns nothing, A
 */
public record SpeedController(double rippleS, double idleA) {

  /** Current over ripple conductance and volts from which on power rises with thrust, see {@link #risesWithThrust}. */
  public static final double RISES_WITH_THRUST = 0.16;

  public SpeedController {
    Require.notNegative("rippleS", rippleS);
    Require.notNegative("idleA", idleA);
  }

  /**
   * Whether more thrust surely takes more power from a point on, whatever the battery's volts: what motor and propeller
   * take rises with the speed to the power of 2.5 or more, and the ripple falls by at most .377 g v², at a duty of .85,
   * while speed rises e-fold.
   */
  public boolean risesWithThrust(OperatingPoint point) {
    return point.currentA() > RISES_WITH_THRUST * rippleS * point.volts();
  }

  /** Power from the battery, W, with the motor at a point and the battery's terminals at busVolts. */
  public double busPowerW(OperatingPoint point, double busVolts) {
    return point.electricalPowerW()
        + ripplePowerW(rippleS, point.volts(), busVolts)
        + busVolts * idleA;
  }

  /** Current from the battery, A, with the motor at a point and the battery's terminals at busVolts. */
  public double busCurrentA(OperatingPoint point, double busVolts) {
    return busPowerW(point, busVolts) / busVolts;
  }

  /**
   * Heat of the ripple, W; rises with the battery's volts, none where they do not exceed the motor's.
   *
   * @param rippleS g, S
   */
  public static double ripplePowerW(double rippleS, double motorVolts, double busVolts) {
    var closed = 1 - motorVolts / busVolts;
    return closed > 0 ? rippleS * motorVolts * motorVolts * closed * Math.sqrt(closed) : 0;
  }
}
