package pappus.physics.airframe;

import org.hipparchus.distribution.continuous.NormalDistribution;
import pappus.quantity.Require;

/** Chance of staying under a mass, with doubts that add up to a normal distribution. */
public final class MassChance {
  private static final NormalDistribution STANDARD = new NormalDistribution();

  private MassChance() {}

  /**
   * Standard deviations to keep below a cap for a confidence.
   *
   * @param confidence probability, 0.5 to 0.9999
   */
  public static double deviationsFor(double confidence) {
    return STANDARD.inverseCumulativeProbability(
        Require.inRange("confidence", confidence, 0.5, 0.9999));
  }

  /**
   * Standard deviations that a share of all stay below.
   *
   * @param share above 0 and below 1
   */
  public static double deviations(double share) {
    return STANDARD.inverseCumulativeProbability(share);
  }

  /** Probability that a mass is at most the cap; all in one unit. */
  public static double under(double cap, double mean, double deviation) {
    if (deviation <= 0) {
      return mean <= cap ? 1 : 0;
    }
    return STANDARD.cumulativeProbability((cap - mean) / deviation);
  }
}
