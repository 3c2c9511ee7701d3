package pappus.search.exact;

import java.util.OptionalDouble;
import java.util.function.DoubleBinaryOperator;

/**
 * Accessories with boards of one sort, as steps from the thriftiest to the lightest: every set of them adds at least
 * the mass and draw of some step.
 *
 * @param loss least ripple of the boards over that of the law; absent: as the law says
 * @param support of any of them, payload included
 * @param grams of each step, falling, g
 * @param watts of each step at the battery, payload included, rising, W
 * @param variance least of any, g²
 * @param cents least of any
 * @param pieces to buy, fewest of any
 * @param ohm least of board and lead on the way from the pack to the motors, Ω
 */
record KitRelaxation(
    OptionalDouble loss,
    Support support,
    Numbers grams,
    Numbers watts,
    double variance,
    long cents,
    int pieces,
    double ohm) {

  /** Least mass, g. */
  double leastGrams() {
    return support.leastGrams();
  }

  /** About the numbers of what is best where a gram costs as much as usual. */
  Adds usual() {
    // Six to eight grams a watt are usual.
    var draw = Math.max(leastWatts(), (support.grams().at(8) - support.grams().at(6)) / 2);
    var weighs = Math.max(leastGrams(), support.grams().at(7) - Support.RATES[7] * draw);
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
