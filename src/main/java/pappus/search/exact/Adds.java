package pappus.search.exact;

/**
 * What a part adds to any build at least.
 *
 * @param grams mass, g
 * @param variance of it, g²
 * @param watts draw at the battery, W
 * @param cents price
 */
record Adds(double grams, double variance, double watts, long cents) {
  static final Adds NOTHING = new Adds(0, 0, 0, 0);

  Adds plus(Adds other) {
    return new Adds(
        grams + other.grams, variance + other.variance, watts + other.watts, cents + other.cents);
  }

  /** The lesser of each. */
  Adds least(Adds other) {
    return new Adds(
        Math.min(grams, other.grams),
        Math.min(variance, other.variance),
        Math.min(watts, other.watts),
        Math.min(cents, other.cents));
  }

  /** Pieces that err together. */
  Adds times(int pieces) {
    return new Adds(pieces * grams, pieces * pieces * variance, pieces * watts, cents);
  }
}
