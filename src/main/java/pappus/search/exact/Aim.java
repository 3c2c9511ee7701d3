package pappus.search.exact;

import java.util.OptionalDouble;

/** What a search among accessories makes as large as it can, for parts that are decided. */
interface Aim {
  /** Of builds that cannot be feasible. */
  long HOPELESS = -1;

  /** Of parts that nothing can come of. */
  Aim NOTHING = new Aim() {
    @Override
    public long atMost(Adds least, OptionalDouble loss) {
      return HOPELESS;
    }

    @Override
    public boolean isHopeless(Adds least) {
      return true;
    }

    @Override
    public double wattsPerGram(double fromGrams) {
      return 0;
    }
  };

  /**
   * No build with at least these numbers reaches more.
   *
   * @param least of the whole build, but for the battery's own resistance
   * @param loss least part-load loss of the controllers; absent: by the law
   */
  long atMost(Adds least, OptionalDouble loss);

  /** Whether mass or price alone keep builds with at least these numbers from being feasible. */
  boolean isHopeless(Adds least);

  /** So many more watts beside the motors cost no build more than a gram does, beyond a mass; 0 where not known. */
  double wattsPerGram(double fromGrams);
}
