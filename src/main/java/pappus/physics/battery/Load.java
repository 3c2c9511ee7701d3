package pappus.physics.battery;

import pappus.quantity.Require;

/**
 * What hangs on a battery: motors behind controllers that lose more the less they are opened, currents and
 * powers that do not change. At V terminal volts it draws
 * {@code motorPowerW / ((1 − partLoadLoss) V + partLoadLoss motorVolts) + steadyA + steadyW / V},
 * which falls with V and is convex in it; the search for a balance relies on both.
 *
 * @param motorPowerW electrical power at all motors, W
 * @param motorVolts volts across a motor
 * @param partLoadLoss k of the controllers, 0 to 0.95
 * @param steadyA current that does not depend on the volts, A
 * @param steadyW power that does not depend on the volts, W
 */
public record Load(
    double motorPowerW, double motorVolts, double partLoadLoss, double steadyA, double steadyW) {

  public Load {
    Require.notNegative("motorPowerW", motorPowerW);
    Require.notNegative("motorVolts", motorVolts);
    Require.inRange("partLoadLoss", partLoadLoss, 0, 0.95);
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

  /** Current in A at terminal volts above zero. */
  public double currentA(double volts) {
    return motorPowerW / ((1 - partLoadLoss) * volts + partLoadLoss * motorVolts)
        + steadyA
        + steadyW / volts;
  }

  public double powerW(double volts) {
    return volts * currentA(volts);
  }

  /** Change of current with the volts, A/V, never positive. */
  double currentSlopeAPerV(double volts) {
    var controllerVolts = (1 - partLoadLoss) * volts + partLoadLoss * motorVolts;
    return -motorPowerW * (1 - partLoadLoss) / (controllerVolts * controllerVolts)
        - steadyW / (volts * volts);
  }

  /**
   * The lowest volts at which the load draws no more than a current: 0 if it never draws more, infinity if
   * it always does.
   */
  public double voltsAtCurrent(double currentA) {
    var restA = currentA - steadyA;
    if (restA <= 0) {
      return motorPowerW > 0 || steadyW > 0 || restA < 0 ? Double.POSITIVE_INFINITY : 0;
    }
    // restA = p/(a V + b) + w/V  ⇒  restA a V² + (restA b − p − w a) V − w b = 0
    var a = 1 - partLoadLoss;
    var b = partLoadLoss * motorVolts;
    var linear = restA * b - motorPowerW - steadyW * a;
    var root = Math.sqrt(linear * linear + 4 * restA * a * steadyW * b);
    return Math.max((root - linear) / (2 * restA * a), 0);
  }

  /**
   * The volts at which source and load agree, the higher of two; −1 if they never do.
   *
   * <p>The excess of volts is concave in V, so Newton's method from the right of the root comes down to it
   * without overshooting, and from the left it jumps to its right first.
   *
   * @param guessVolts a starting point, such as the balance a moment ago
   */
  double balanceVolts(double openVolts, double ohm, double guessVolts) {
    var volts = 1 + ohm * currentSlopeAPerV(guessVolts) > 0 ? guessVolts : openVolts;
    for (var step = 0; step < 60; step++) {
      var downhill = 1 + ohm * currentSlopeAPerV(volts);
      if (downhill <= 0) {
        return -1;
      }
      var next = volts + (openVolts - volts - ohm * currentA(volts)) / downhill;
      if (next <= 0) {
        return -1;
      }
      // Newton's error is squared at each step: what is left after this one is far below rounding.
      if (Math.abs(next - volts) <= 1e-9 * next) {
        return next;
      }
      volts = next;
    }
    return -1;
  }
}
