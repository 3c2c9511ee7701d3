package pappus.search.exact;

/**
 * What a part adds to any build at least.
 *
 * @param grams mass, g
 * @param variance of it, g²
 * @param watts draw at the battery, W
 * @param cents price
 * @param pieces to buy, but for small hardware
 * @param ohm on the way from the pack to the motors, Ω
 * @param traded draw with each gram counted as so many watts, at each of the {@link #RATES}, W: of several parts, the
 *     lightest is rarely the thriftiest, and no part has less of both than this
 */
record Adds(
    double grams,
    double variance,
    double watts,
    long cents,
    int pieces,
    double ohm,
    Numbers traded) {
  /** Watts per gram, rising from none. */
  private static final double[] RATES = {
    0, 0.03, 0.06, 0.09, 0.12, 0.15, 0.18, 0.21, 0.25, 0.3, 0.4, 0.6, 1.5, 6
  };

  static final Adds NOTHING = new Adds(0, 0, 0, 0, 0);

  /** Of one part, or of several together. */
  Adds(double grams, double variance, double watts, long cents, double ohm) {
    this(grams, variance, watts, cents, 0, ohm);
  }

  /** Of one part, or of several together. */
  Adds(double grams, double variance, double watts, long cents, int pieces, double ohm) {
    this(grams, variance, watts, cents, pieces, ohm, traded(grams, watts));
  }

  private static Numbers traded(double grams, double watts) {
    return Numbers.of(RATES.length, place -> RATES[place] * grams + watts);
  }

  /** Least draw with each gram counted as so many watts, W. */
  double traded(double wattsPerGram) {
    var last = RATES.length - 1;
    if (wattsPerGram >= RATES[last]) {
      return traded.at(last) + (wattsPerGram - RATES[last]) * grams;
    }
    var place = 0;
    while (wattsPerGram >= RATES[place + 1]) {
      place++;
    }
    // What holds at two rates holds in between.
    var share = (wattsPerGram - RATES[place]) / (RATES[place + 1] - RATES[place]);
    return (1 - share) * traded.at(place) + share * traded.at(place + 1);
  }

  /**
   * Least draw with each gram counted as so many watts, of what weighs no more than some mass: a gram may then be
   * counted as more, less what all grams up to that mass are counted too much.
   */
  double tradedWithin(double wattsPerGram, double mostGrams) {
    var most = traded(wattsPerGram);
    for (var place = RATES.length - 1; RATES[place] > wattsPerGram; place--) {
      most = Math.max(most, traded.at(place) - (RATES[place] - wattsPerGram) * mostGrams);
    }
    return most;
  }

  Adds plus(Adds other) {
    return new Adds(
        grams + other.grams,
        variance + other.variance,
        watts + other.watts,
        cents + other.cents,
        pieces + other.pieces,
        ohm + other.ohm,
        traded.plus(other.traded));
  }

  /** The lesser of each. */
  Adds least(Adds other) {
    return new Adds(
        Math.min(grams, other.grams),
        Math.min(variance, other.variance),
        Math.min(watts, other.watts),
        Math.min(cents, other.cents),
        Math.min(pieces, other.pieces),
        Math.min(ohm, other.ohm),
        traded.least(other.traded));
  }

  /** Pieces that err together. */
  Adds times(int count) {
    return count == 1
        ? this
        : new Adds(
            count * grams,
            count * count * variance,
            count * watts,
            cents,
            pieces,
            count * ohm,
            traded.times(count));
  }

  /** With so many grams more. */
  Adds heavier(double more) {
    return more == 0
        ? this
        : new Adds(grams + more, variance, watts, cents, pieces, ohm, traded.plus(traded(more, 0)));
  }

  /** Of one part, or of several together, the same with another mass. */
  Adds weighing(double other) {
    return new Adds(other, variance, watts, cents, pieces, ohm);
  }

  /** Of one part, or of several together, the same with another draw. */
  Adds drawing(double other) {
    return new Adds(grams, variance, other, cents, pieces, ohm);
  }
}
