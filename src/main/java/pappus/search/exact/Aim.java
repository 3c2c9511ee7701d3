package pappus.search.exact;

import java.util.OptionalDouble;
import pappus.catalog.Build;

/** What a search among accessories makes as large as it can. */
interface Aim {
  /** Of builds that cannot be feasible. */
  long HOPELESS = -1;

  /**
   * No build with these parts, and at least these numbers, reaches more.
   *
   * @param begun parts decided
   * @param grams least all-up mass, g
   * @param variance least variance of it, g²
   * @param watts least draw beside the motors at the battery, W
   * @param cents least price
   * @param loss least part-load loss of the controllers; absent: by the law
   */
  long atMost(
      Build begun, double grams, double variance, double watts, long cents, OptionalDouble loss);
}
