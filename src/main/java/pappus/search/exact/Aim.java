package pappus.search.exact;

import java.util.OptionalDouble;

/** What a search among accessories makes as large as it can, for parts that are decided. */
interface Aim {
  /** Of builds that cannot be feasible. */
  long HOPELESS = -1;

  /** Of parts that nothing can come of. */
  Aim NOTHING = (least, loss) -> HOPELESS;

  /**
   * No build with at least these numbers reaches more.
   *
   * @param least of the whole build, but for the battery's own resistance
   * @param loss least part-load loss of the controllers; absent: by the law
   */
  long atMost(Adds least, OptionalDouble loss);
}
