package pappus.physics.propeller;

import pappus.quantity.Require;

/**
 * A propeller standing still in given air: thrust and torque at a speed, and the speed for a thrust.
 *
 * <p>Immutable; build it once per propeller and place, then ask it without allocation. Speeds are in rad/s
 * and not negative.
 */
public final class PropellerInAir {
  private static final double TURN_RAD = 2 * Math.PI;

  private final double diameterM;
  private final double densityKgPerM3;
  private final double reynoldsRatio;
  private final double thrustScale; // T = thrustScale ω² C_T
  private final double torqueScale; // Q = torqueScale ω² C_P
  private final double testedFrom;
  private final double testedTo;
  private final double[] speeds; // where the rows stand in this air
  private final double[] thrustCoefficients;
  private final double[] powerCoefficients;

  PropellerInAir(PropellerModel propeller, double densityKgPerM3, double viscosityPaS) {
    Require.positive("densityKgPerM3", densityKgPerM3);
    Require.positive("viscosityPaS", viscosityPaS);
    this.diameterM = propeller.diameterM();
    this.densityKgPerM3 = densityKgPerM3;
    this.reynoldsRatio = densityKgPerM3 / viscosityPaS / propeller.testSPerM2();
    var d4 = diameterM * diameterM * diameterM * diameterM;
    this.thrustScale = densityKgPerM3 * d4 / (TURN_RAD * TURN_RAD);
    this.torqueScale = densityKgPerM3 * d4 * diameterM / (TURN_RAD * TURN_RAD * TURN_RAD);
    this.testedFrom = propeller.testedFromRadPerS() / reynoldsRatio;
    this.testedTo = propeller.testedToRadPerS() / reynoldsRatio;
    var points = propeller.points();
    this.speeds =
        points.stream().mapToDouble(p -> p.speedRadPerS() / reynoldsRatio).toArray();
    this.thrustCoefficients =
        points.stream().mapToDouble(StaticPoint::thrustCoefficient).toArray();
    this.powerCoefficients =
        points.stream().mapToDouble(StaticPoint::powerCoefficient).toArray();
  }

  public double diameterM() {
    return diameterM;
  }

  public double densityKgPerM3() {
    return densityKgPerM3;
  }

  public double discAreaM2() {
    return Math.PI / 4 * diameterM * diameterM;
  }

  public double thrustN(double speedRadPerS) {
    return thrustScale * speedRadPerS * speedRadPerS * thrustCoefficient(speedRadPerS);
  }

  public double torqueNm(double speedRadPerS) {
    return torqueScale * speedRadPerS * speedRadPerS * powerCoefficient(speedRadPerS);
  }

  public double shaftPowerW(double speedRadPerS) {
    return torqueNm(speedRadPerS) * speedRadPerS;
  }

  /** Speed at which the propeller gives a thrust, rad/s; exact to rounding, and rising with thrust. */
  public double speedForThrustRadPerS(double thrustN) {
    return invert(thrustCoefficients, thrustN / thrustScale, 2);
  }

  /** Speed at which the propeller takes a shaft power, rad/s; exact to rounding, and rising with power. */
  public double speedForPowerRadPerS(double shaftPowerW) {
    return invert(powerCoefficients, shaftPowerW / torqueScale, 3);
  }

  /** True if the speed is outside those of the test; never for a pair that holds at every speed. */
  public boolean isBeyondTest(double speedRadPerS) {
    return speedRadPerS < testedFrom || speedRadPerS > testedTo;
  }

  /** C_T = T/(ρ n² D⁴) at a speed. */
  public double thrustCoefficient(double speedRadPerS) {
    return value(thrustCoefficients, speedRadPerS);
  }

  /** C_P = P/(ρ n³ D⁵) at a speed. */
  public double powerCoefficient(double speedRadPerS) {
    return value(powerCoefficients, speedRadPerS);
  }

  /** Ideal power over power at a speed, C_T^1.5/(C_P √(π/2)). */
  public double figureOfMerit(double speedRadPerS) {
    var cT = thrustCoefficient(speedRadPerS);
    return cT * Math.sqrt(cT) / (powerCoefficient(speedRadPerS) * Math.sqrt(Math.PI / 2));
  }

  private double value(double[] coefficients, double speedRadPerS) {
    var row = row(speedRadPerS);
    if (row < 0) {
      return coefficients[0];
    }
    if (row == speeds.length - 1) {
      return coefficients[row];
    }
    var share = (speedRadPerS - speeds[row]) / (speeds[row + 1] - speeds[row]);
    return coefficients[row] + share * (coefficients[row + 1] - coefficients[row]);
  }

  /** The last row at or below a speed, −1 if none. */
  private int row(double speedRadPerS) {
    var row = -1;
    var above = speeds.length;
    while (above - row > 1) {
      var middle = (row + above) >>> 1;
      if (speeds[middle] > speedRadPerS) {
        above = middle;
      } else {
        row = middle;
      }
    }
    return row;
  }

  /** Solves ω^power C(ω) = target, where the left side rises. */
  private double invert(double[] coefficients, double target, int power) {
    if (target <= 0) {
      return 0;
    }
    var last = speeds.length - 1;
    var row = -1;
    var over = speeds.length;
    while (over - row > 1) {
      var middle = (row + over) >>> 1;
      if (raised(speeds[middle], power) * coefficients[middle] > target) {
        over = middle;
      } else {
        row = middle;
      }
    }
    if (row < 0 || row == last) {
      var held = coefficients[Math.max(row, 0)];
      return power == 2 ? Math.sqrt(target / held) : StrictMath.cbrt(target / held);
    }
    var slope = (coefficients[row + 1] - coefficients[row]) / (speeds[row + 1] - speeds[row]);
    var intercept = coefficients[row] - slope * speeds[row];
    return invertSegment(intercept, slope, target, power, speeds[row], speeds[row + 1]);
  }

  /** Newton's method kept between two speeds that enclose the root. */
  private static double invertSegment(
      double intercept, double slope, double target, int power, double low, double high) {
    var below = low;
    var above = high;
    var speed = 0.5 * (low + high);
    for (var step = 0; step < 60; step++) {
      var lower = power == 2 ? speed : speed * speed;
      var coefficient = intercept + slope * speed;
      var excess = lower * speed * coefficient - target;
      if (excess > 0) {
        above = speed;
      } else {
        below = speed;
      }
      var next = speed - excess / (lower * (power * coefficient + slope * speed));
      if (next < below || next > above) {
        next = 0.5 * (below + above);
      }
      if (Math.abs(next - speed) <= 1e-14 * speed) {
        return next;
      }
      speed = next;
    }
    return speed;
  }

  private static double raised(double speed, int power) {
    return power == 2 ? speed * speed : speed * speed * speed;
  }
}
