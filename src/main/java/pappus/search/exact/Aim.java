package pappus.search.exact;

import java.util.OptionalDouble;

/** What a search among accessories makes as large as it can, for parts that are decided. */
interface Aim {
  /** Of builds that cannot be feasible. */
  long HOPELESS = -1;

  /** Of parts that nothing can come of. */
  Aim NOTHING = (grams, variance, watts, cents, loss) -> HOPELESS;

  /**
   * No build with at least these numbers reaches more.
   *
   * @param grams least all-up mass, g
   * @param variance least variance of it, g²
   * @param watts least draw beside the motors at the battery, W
   * @param cents least price
   * @param loss least part-load loss of the controllers; absent: by the law
   */
  long atMost(double grams, double variance, double watts, long cents, OptionalDouble loss);
}
