package pappus.physics.propeller;

import pappus.quantity.Require;

/**
 * One row of a static propeller test.
 *
 * @param speedRadPerS shaft speed, rad/s
 * @param thrustCoefficient C_T = T/(ρ n² D⁴), n in rev/s
 * @param powerCoefficient C_P = P/(ρ n³ D⁵)
 */
public record StaticPoint(double speedRadPerS, double thrustCoefficient, double powerCoefficient) {

  public StaticPoint {
    Require.positive("speedRadPerS", speedRadPerS);
    Require.positive("thrustCoefficient", thrustCoefficient);
    Require.positive("powerCoefficient", powerCoefficient);
  }

  /** Ideal power over power of the hovering rotor, C_T^1.5/(C_P √(π/2)); above 1 is impossible. */
  public double figureOfMerit() {
    return thrustCoefficient
        * Math.sqrt(thrustCoefficient)
        / (powerCoefficient * Math.sqrt(Math.PI / 2));
  }
}
