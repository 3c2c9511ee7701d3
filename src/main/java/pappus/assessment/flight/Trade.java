package pappus.assessment.flight;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What a gram is worth in watts: a build of g grams has a figure no larger than one of {@code atGrams} that draws
 * {@code wattsPerGram} more for each gram more, times a factor.
 *
 * @param fromGrams no build is lighter, g
 * @param wattsPerGram 0 where it is not known
 * @param factor 1 or hardly more
 */
public record Trade(double atGrams, double fromGrams, double wattsPerGram, double factor) {
  /** Where nothing is known. */
  public static final Trade NONE = new Trade(0, 0, 0, 1);

  /** What a gram and a watt cost is looked at from so near. */
  private static final double NEAR_GRAMS = 0.25;

  private static final double NEAR_WATTS = 0.05;

  /** Masses are looked at so many times as far away each time. */
  private static final double FURTHER = 3;

  /** More than any small aircraft takes for a gram, W. */
  private static final double MOST_WATTS_PER_GRAM = 5;

  /** Between the masses looked at, a factor is hardly larger. */
  private static final double SURE_OF_FACTOR = 1.2;

  /** A factor moves by less with the draw and the resistance, which it is not asked for. */
  private static final double NOISE = 1e-5;

  public boolean isKnown() {
    return wattsPerGram > 0;
  }

  /**
   * What a gram is worth in watts where builds are likely to be, of an aircraft that full throttle never slows down.
   * Mass costs more the more there is of it, so that elsewhere the figure is below what the trade makes of it, but for
   * little: that is looked up at many masses.
   *
   * @param bound of these builds
   * @param at likely numbers
   * @param mostLoss largest ripple over that of the law for which it is to hold; absent: as the law says
   * @param fromGrams least mass of any build, g
   * @param toGrams most mass of any build, g
   */
  public static Trade of(
      PartialBound bound,
      PartialBound.Least at,
      OptionalDouble mostLoss,
      double fromGrams,
      double toGrams) {
    if (!bound.isSingle()) {
      return Trade.NONE;
    }
    var best = bound.figure(at, false);
    var byMass = bound.figure(at.with(at.grams() - NEAR_GRAMS, at.watts()), false)
        - bound.figure(at.with(at.grams() + NEAR_GRAMS, at.watts()), false);
    var byDraw = bound.figure(at.with(at.grams(), at.watts() - NEAR_WATTS), false)
        - bound.figure(at.with(at.grams(), at.watts() + NEAR_WATTS), false);
    var rate = byMass / NEAR_GRAMS / (byDraw / NEAR_WATTS);
    if (!(best > 0 && best < Double.POSITIVE_INFINITY && rate > 0 && rate < MOST_WATTS_PER_GRAM)) {
      return Trade.NONE;
    }
    var factor = 1.0;
    for (var loss : mostLoss.equals(at.loss()) ? List.of(mostLoss) : List.of(at.loss(), mostLoss)) {
      var middle = at.with(loss);
      var there = loss.equals(at.loss()) ? best : bound.figure(middle, false);
      if (there <= 0) {
        return Trade.NONE;
      }
      for (var end : new double[] {fromGrams, toGrams}) {
        for (var grams : awayTo(end, at.grams())) {
          var watts = at.watts() - rate * (grams - at.grams());
          if (watts >= 0) {
            factor = Math.max(factor, bound.figure(middle.with(grams, watts), false) / there);
          }
        }
      }
    }
    return new Trade(at.grams(), fromGrams, rate, 1 + SURE_OF_FACTOR * (factor - 1) + NOISE);
  }

  /** Masses from near one to another end, ever farther apart; none if the end is there. */
  private static List<Double> awayTo(double endGrams, double fromGrams) {
    var masses = new ArrayList<Double>();
    var side = Math.signum(endGrams - fromGrams);
    for (var away = 2 * NEAR_GRAMS; away < Math.abs(endGrams - fromGrams); away *= FURTHER) {
      masses.add(fromGrams + side * away);
    }
    if (side != 0) {
      masses.add(endGrams);
    }
    return masses;
  }
}
