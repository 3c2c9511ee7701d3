package pappus.search.exact;

/**
 * What a part adds to any build at least.
 *
 * @param grams mass, g
 * @param variance of it, g²
 * @param watts draw at the battery, W
 * @param cents price
 * @param ohm on the way from the pack to the motors, Ω
 */
record Adds(double grams, double variance, double watts, long cents, double ohm) {
  static final Adds NOTHING = new Adds(0, 0, 0, 0, 0);

  Adds plus(Adds other) {
    return new Adds(
        grams + other.grams,
        variance + other.variance,
        watts + other.watts,
        cents + other.cents,
        ohm + other.ohm);
  }

  /** The lesser of each. */
  Adds least(Adds other) {
    return new Adds(
        Math.min(grams, other.grams),
        Math.min(variance, other.variance),
        Math.min(watts, other.watts),
        Math.min(cents, other.cents),
        Math.min(ohm, other.ohm));
  }

  /** Pieces that err together. */
  Adds times(int pieces) {
    return new Adds(
        pieces * grams, pieces * pieces * variance, pieces * watts, cents, pieces * ohm);
  }

  /** The same with another mass. */
  Adds weighing(double other) {
    return new Adds(other, variance, watts, cents, ohm);
  }

  /** The same with so much more mass. */
  Adds heavier(double more) {
    return weighing(grams + more);
  }

  /** The same with another draw. */
  Adds drawing(double other) {
    return new Adds(grams, variance, other, cents, ohm);
  }
}
