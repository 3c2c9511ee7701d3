package pappus.search.exact;

import java.util.function.IntToDoubleFunction;

/**
 * The least mass plus draw of something, with each watt counted as so many grams, at each of some rates of exchange: its
 * support function. Of several parts the lightest is rarely the thriftiest, and no part has less of both than this.
 *
 * @param grams at each of the {@link #RATES}, the first of which is the least mass, g
 * @param watts least draw, W
 */
record Support(Numbers grams, double watts) {
  /** Grams per watt, rising from none. */
  static final double[] RATES = {0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 14, 17, 20, 25, 40};

  /** Watts a gram, where grams are all that counts. */
  private static final double DEAREST = 100;

  /** Of one part, or of several together. */
  static Support of(double grams, double watts) {
    return of(rate -> grams + RATES[rate] * watts, watts);
  }

  /** @param least at each of the {@link #RATES} */
  static Support of(IntToDoubleFunction least, double watts) {
    return new Support(Numbers.of(RATES.length, least), watts);
  }

  /** Least mass, g. */
  double leastGrams() {
    return grams.at(0);
  }

  /** Least draw with each gram counted as so many watts, W. */
  double traded(double wattsPerGram) {
    if (wattsPerGram <= 0) {
      return watts;
    }
    var rate = 1 / wattsPerGram;
    var last = RATES.length - 1;
    if (rate >= RATES[last]) {
      return wattsPerGram * (grams.at(last) + (rate - RATES[last]) * watts);
    }
    var place = 0;
    while (rate >= RATES[place + 1]) {
      place++;
    }
    // What holds at two rates holds in between.
    var share = (rate - RATES[place]) / (RATES[place + 1] - RATES[place]);
    return wattsPerGram * ((1 - share) * grams.at(place) + share * grams.at(place + 1));
  }

  /**
   * Least draw with each gram counted as so many watts, of what weighs no more than some mass: a gram may then be
   * counted as more, less what all grams up to that mass are counted too much.
   */
  double tradedWithin(double wattsPerGram, double mostGrams) {
    var most = traded(wattsPerGram);
    for (var place = 0; place < RATES.length && 1 / RATES[place] > wattsPerGram; place++) {
      var rate = Math.min(DEAREST, 1 / RATES[place]);
      most = Math.max(most, traded(rate) - (rate - wattsPerGram) * mostGrams);
    }
    return most;
  }

  Support plus(Support other) {
    return new Support(grams.plus(other.grams), watts + other.watts);
  }

  /** The lesser of each. */
  Support least(Support other) {
    return new Support(grams.least(other.grams), Math.min(watts, other.watts));
  }

  Support times(int count) {
    return new Support(grams.times(count), count * watts);
  }

  /** With so many grams more. */
  Support heavier(double more) {
    return of(rate -> grams.at(rate) + more, watts);
  }
}
