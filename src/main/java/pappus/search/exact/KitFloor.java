package pappus.search.exact;

import java.util.OptionalDouble;
import java.util.function.DoubleBinaryOperator;

/**
 * Accessories with boards of one sort, as steps from the thriftiest to the lightest: every set of them adds at least
 * the mass and draw of some step.
 *
 * @param loss least part-load loss of the boards; absent: by the law
 * @param grams of each step, falling, g
 * @param watts of each step at the battery, payload included, rising, W
 * @param variance least of any, g²
 * @param cents least of any
 * @param ohm least of board and lead on the way from the pack to the motors, Ω
 */
record KitFloor(
    OptionalDouble loss, Numbers grams, Numbers watts, double variance, long cents, double ohm) {

  int steps() {
    return grams.size();
  }

  /** Less than any step from one to before another. */
  double leastGrams(int to) {
    return grams.at(to - 1);
  }

  double leastWatts(int from) {
    return watts.at(from);
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
