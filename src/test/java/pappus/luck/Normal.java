package pappus.luck;

import org.hipparchus.special.Erf;

/** The normal distribution of generators and their judges. */
final class Normal {
  private Normal() {}

  /** Probability of less than so many deviations. */
  static double below(double deviations) {
    return Erf.erfc(-deviations / Math.sqrt(2)) / 2;
  }
}
