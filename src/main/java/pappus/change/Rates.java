package pappus.change;

import pappus.assessment.Assessment;
import pappus.assessment.Assessor;
import pappus.assessment.Factors;

/**
 * What a gram and a watt are worth to a build that flies: it is flown again with each of them more and less.
 *
 * @param perGram lost of what builds are ranked by for one gram more, seconds or metres
 * @param perWatt lost for one watt more beside the motors
 */
public record Rates(double perGram, double perWatt) {
  /** Far enough that the tolerance of the flight's own solvers does not show, near enough to be straight. */
  private static final double GRAMS = 1;

  private static final double WATTS = 0.25;

  /**
   * Flies a build four times.
   *
   * @throws IllegalArgumentException if the physics refuses what is asked
   */
  public static Rates of(Assessment assessment, Assessor assessor) {
    var flown = assessor.whatIf(assessment);
    return new Rates(
        (flown.applyAsDouble(Factors.added(-GRAMS, 0))
                - flown.applyAsDouble(Factors.added(GRAMS, 0)))
            / (2 * GRAMS),
        (flown.applyAsDouble(Factors.added(0, -WATTS))
                - flown.applyAsDouble(Factors.added(0, WATTS)))
            / (2 * WATTS));
  }
}
