package pappus.search.exact;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleBinaryOperator;

/**
 * Accessories with boards of one sort, as steps from the thriftiest to the lightest: every set of them adds at least
 * the mass and draw of some step.
 *
 * @param loss least ripple of the boards over that of the law; absent: as the law says
 * @param exchange least mass with each watt counted as so many grams, at each of the {@link #RATES}, g
 * @param grams of each step, falling, g
 * @param watts of each step at the battery, payload included, rising, W
 * @param variance least of any, g²
 * @param cents least of any
 * @param pieces to buy, fewest of any
 * @param ohm least of board and lead on the way from the pack to the motors, Ω
 */
record KitRelaxation(
    OptionalDouble loss,
    Numbers exchange,
    Numbers grams,
    Numbers watts,
    double variance,
    long cents,
    int pieces,
    double ohm) {

  /** Grams per watt. */
  static final List<Double> RATES = List.of(
      0.0, 1.0, 2.0, 3.0, 4.0, 5.0, 6.0, 7.0, 8.0, 9.0, 10.0, 12.0, 14.0, 17.0, 20.0, 25.0, 40.0);

  /** Watts a gram, where grams are all that counts. */
  private static final double DEAREST = 100;

  /** Least mass, g. */
  double leastGrams() {
    return exchange.at(0);
  }

  /** Least draw with each gram counted as so many watts, W. */
  double traded(double wattsPerGram) {
    if (wattsPerGram <= 0) {
      return watts.at(0);
    }
    var rate = 1 / wattsPerGram;
    var last = RATES.size() - 1;
    if (rate >= RATES.get(last)) {
      return wattsPerGram * (exchange.at(last) + (rate - RATES.get(last)) * watts.at(0));
    }
    var place = 0;
    while (rate >= RATES.get(place + 1)) {
      place++;
    }
    var share = (rate - RATES.get(place)) / (RATES.get(place + 1) - RATES.get(place));
    return wattsPerGram * ((1 - share) * exchange.at(place) + share * exchange.at(place + 1));
  }

  /**
   * Least draw of those that weigh no more than some mass, with each gram counted as so many watts, W; see {@link
   * Adds#tradedWithin}.
   */
  double tradedWithin(double wattsPerGram, double mostGrams) {
    var most = traded(wattsPerGram);
    for (var place = 0; place < RATES.size() && 1 / RATES.get(place) > wattsPerGram; place++) {
      var rate = Math.min(DEAREST, 1 / RATES.get(place));
      most = Math.max(most, traded(rate) - (rate - wattsPerGram) * mostGrams);
    }
    return most;
  }

  /** About the numbers of what is best where a gram costs as much as usual. */
  Adds usual() {
    var light = RATES.indexOf(6.0);
    var draw = Math.max(watts.at(0), (exchange.at(light + 2) - exchange.at(light)) / 2);
    var weighs = Math.max(leastGrams(), exchange.at(light + 1) - RATES.get(light + 1) * draw);
    return new Adds(weighs, variance, draw, cents, pieces, ohm);
  }

  int steps() {
    return grams.size();
  }

  /** Least draw, W. */
  double leastWatts() {
    return watts.at(0);
  }

  /**
   * The most that any step gives.
   *
   * @param most of a mass and a draw, falling with either
   */
  double most(DoubleBinaryOperator most) {
    return most(
        most, 0, steps(), most.applyAsDouble(grams.at(steps() - 1), watts.at(0)), Aim.HOPELESS);
  }

  /** @param corner more than any step of the span gives */
  private double most(DoubleBinaryOperator most, int from, int to, double corner, double found) {
    if (corner <= found) {
      return found;
    }
    if (to - from == 1) {
      return corner;
    }
    var middle = (from + to) / 2;
    var thrifty = most.applyAsDouble(grams.at(middle - 1), watts.at(from));
    var light = most.applyAsDouble(grams.at(to - 1), watts.at(middle));
    return thrifty >= light
        ? most(most, middle, to, light, most(most, from, middle, thrifty, found))
        : most(most, from, middle, thrifty, most(most, middle, to, light, found));
  }
}
