package pappus.search.exact;

/**
 * What a part adds to any build at least.
 *
 * @param support least mass and draw at the battery, and what trades between them
 * @param variance of the mass, g²
 * @param cents price
 * @param pieces to buy, but for small hardware
 * @param ohm on the way from the pack to the motors, Ω
 */
record Adds(Support support, double variance, long cents, int pieces, double ohm) {
  static final Adds NOTHING = new Adds(0, 0, 0, 0, 0);

  /** Of one part, or of several together. */
  Adds(double grams, double variance, double watts, long cents, double ohm) {
    this(grams, variance, watts, cents, 0, ohm);
  }

  /** Of one part, or of several together. */
  Adds(double grams, double variance, double watts, long cents, int pieces, double ohm) {
    this(Support.of(grams, watts), variance, cents, pieces, ohm);
  }

  /** Mass, g. */
  double grams() {
    return support.leastGrams();
  }

  /** Draw at the battery, W. */
  double watts() {
    return support.watts();
  }

  Adds plus(Adds other) {
    return new Adds(
        support.plus(other.support),
        variance + other.variance,
        cents + other.cents,
        pieces + other.pieces,
        ohm + other.ohm);
  }

  /** The lesser of each. */
  Adds least(Adds other) {
    return new Adds(
        support.least(other.support),
        Math.min(variance, other.variance),
        Math.min(cents, other.cents),
        Math.min(pieces, other.pieces),
        Math.min(ohm, other.ohm));
  }

  /** Pieces that err together; they are bought in sets, whose price is already that of the pieces. */
  Adds times(int count) {
    return count == 1
        ? this
        : new Adds(support.times(count), count * count * variance, cents, pieces, count * ohm);
  }

  /** With so many grams more. */
  Adds heavier(double more) {
    return more == 0 ? this : new Adds(support.heavier(more), variance, cents, pieces, ohm);
  }

  /** Of one part, or of several together, the same with another mass. */
  Adds weighing(double other) {
    return new Adds(other, variance, watts(), cents, pieces, ohm);
  }

  /** Of one part, or of several together, the same with another draw. */
  Adds drawing(double other) {
    return new Adds(grams(), variance, other, cents, pieces, ohm);
  }
}
