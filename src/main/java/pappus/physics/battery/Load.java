package pappus.physics.battery;

import pappus.physics.motor.SpeedController;
import pappus.quantity.Require;

/**
 * What hangs on a battery: motors behind controllers whose ripple takes more the less they are opened, currents and
 * powers that do not change. At V terminal volts it takes
 * {@code motorPowerW + steadyW + rippleS v² (1 − v/V)^1.5 + steadyA V} watts, v being the motors' volts.
 *
 * <p>The power rises with V; the current need not fall with it: where the motors are nearly fully open, what ripple
 * adds may outweigh what higher volts save.
 *
 * @param motorPowerW electrical power at all motors, W
 * @param motorVolts volts across a motor
 * @param rippleS ripple of all controllers, S, see {@link SpeedController}
 * @param steadyA current that does not depend on the volts, A
 * @param steadyW power that does not depend on the volts, W
 */
public record Load(
    double motorPowerW, double motorVolts, double rippleS, double steadyA, double steadyW) {
  private static final int BISECTIONS = 60;

  public Load {
    Require.notNegative("motorPowerW", motorPowerW);
    Require.notNegative("motorVolts", motorVolts);
    Require.notNegative("rippleS", rippleS);
    Require.notNegative("steadyA", steadyA);
    Require.notNegative("steadyW", steadyW);
  }

  /** A power that does not depend on the volts. */
  public static Load ofPower(double powerW) {
    return new Load(0, 0, 0, 0, powerW);
  }

  /** A current that does not depend on the volts. */
  public static Load ofCurrent(double currentA) {
    return new Load(0, 0, 0, currentA, 0);
  }

  /** The same with so much more power, W. */
  public Load and(double moreW) {
    return new Load(motorPowerW, motorVolts, rippleS, steadyA, steadyW + moreW);
  }

  /** Current in A at terminal volts above zero. */
  public double currentA(double volts) {
    return (motorPowerW + steadyW + SpeedController.ripplePowerW(rippleS, motorVolts, volts))
            / volts
        + steadyA;
  }

  public double powerW(double volts) {
    return volts * currentA(volts);
  }

  /**
   * The lowest volts from which on upward the load draws no more than a current: 0 if it never draws more, infinity
   * if it draws more at any volts.
   */
  public double voltsAtCurrent(double currentA) {
    var restA = currentA - steadyA;
    if (restA <= 0) {
      return motorPowerW > 0 || steadyW > 0 || restA < 0 ? Double.POSITIVE_INFINITY : 0;
    }
    var powerW = motorPowerW + steadyW;
    var rippleW = rippleS * motorVolts * motorVolts;
    if (rippleW == 0) {
      return powerW / restA;
    }
    // With d = v/V the rest of the current is (P + r (1 − d)^1.5) d/v. It rises with d up to a
    // hump, may fall to a
    // dip, and rises again: the volts asked for lie before the hump if it is too high, else behind
    // the dip.
    var allowed = restA * motorVolts;
    var hump = hump(powerW, rippleW);
    return motorVolts
        / (hump > 0 && drawn(powerW, rippleW, hump) > allowed
            ? dutyOf(allowed, powerW, rippleW, 0, hump)
            : dutyOf(allowed, powerW, rippleW, hump > 0 ? DIP_AFTER : 0, allowed / powerW));
  }

  /** The hump lies before and the dip behind it: P + r √(1 − d) (1 − 2.5 d) is least there. */
  private static final double DIP_AFTER = 0.8;

  private static double drawn(double powerW, double rippleW, double duty) {
    var closed = Math.max(0, 1 - duty);
    return (powerW + rippleW * closed * Math.sqrt(closed)) * duty;
  }

  private static double slope(double powerW, double rippleW, double duty) {
    return powerW + rippleW * Math.sqrt(1 - duty) * (1 - 2.5 * duty);
  }

  /** Duty at which the current stops to rise; −1 if it never does. */
  private static double hump(double powerW, double rippleW) {
    if (slope(powerW, rippleW, DIP_AFTER) >= 0) {
      return -1;
    }
    var rises = 0.0;
    var falls = DIP_AFTER;
    for (var step = 0; step < BISECTIONS; step++) {
      var middle = 0.5 * (rises + falls);
      if (slope(powerW, rippleW, middle) >= 0) {
        rises = middle;
      } else {
        falls = middle;
      }
    }
    return rises;
  }

  /** The largest duty between two up to which no more is drawn than allowed, where it is crossed once. */
  private static double dutyOf(
      double allowed, double powerW, double rippleW, double low, double high) {
    var within = low;
    var beyond = Math.max(low, high);
    if (drawn(powerW, rippleW, beyond) <= allowed) {
      return beyond;
    }
    for (var step = 0; step < BISECTIONS; step++) {
      var middle = 0.5 * (within + beyond);
      if (drawn(powerW, rippleW, middle) <= allowed) {
        within = middle;
      } else {
        beyond = middle;
      }
    }
    return within;
  }

  /**
   * The volts at which source and load agree; −1 if there are none above half the rested volts, where a pack gives its
   * most.
   *
   * <p>Solved by power: above half the rested volts what the pack gives, V (open − V)/ohm, falls with V, and what the
   * load takes rises.
   *
   * @param guessVolts a starting point, such as the balance a moment ago
   */
  public double balanceVolts(double openVolts, double ohm, double guessVolts) {
    if (ohm == 0) {
      return openVolts;
    }
    var low = 0.5 * openVolts;
    var high = openVolts;
    if (low * low < ohm * powerW(low)) {
      return -1;
    }
    // Without what ripple takes it is a parabola.
    var fixedW = motorPowerW + steadyW;
    var freeVolts = openVolts - ohm * steadyA;
    if (rippleS == 0 || motorVolts >= high) {
      return 0.5 * (freeVolts + Math.sqrt(freeVolts * freeVolts - 4 * ohm * fixedW));
    }
    var rippleW = rippleS * motorVolts * motorVolts;
    var volts = guessVolts > low && guessVolts < high ? guessVolts : high;
    for (var step = 0; step < 100; step++) {
      var duty = motorVolts / volts;
      var closed = Math.max(0, 1 - duty);
      var root = Math.sqrt(closed);
      var excess = volts * (freeVolts - volts) - ohm * (fixedW + rippleW * closed * root);
      if (excess >= 0) {
        low = volts;
      } else {
        high = volts;
      }
      var downhill = 2 * volts - freeVolts + ohm * 1.5 * rippleW * root * duty / volts;
      var next = downhill > 0 ? volts + excess / downhill : 0.5 * (low + high);
      if (next < low || next > high) {
        next = 0.5 * (low + high);
      }
      // Newton's error is squared at each step: what is left after this one is near rounding.
      if (Math.abs(next - volts) <= 1e-6 * next) {
        return next;
      }
      volts = next;
    }
    return volts;
  }
}
