package pappus.assessment;

import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import pappus.assessment.flight.Factors;
import pappus.assessment.flight.FlightEstimate;
import pappus.assessment.flight.Flights;
import pappus.fitting.Fitting;
import pappus.physics.flight.Limits;

/** Assessed builds flown by the likeliest figures, whatever the outlook of the scenario. Safe for use by several threads. */
public final class Likeliest {
  private final Flights expected;
  private final boolean isTheOutlook;

  /**
   * @param isTheOutlook whether builds are assessed by the same figures
   */
  Likeliest(Flights expected, boolean isTheOutlook) {
    this.expected = expected;
    this.isTheOutlook = isTheOutlook;
  }

  /**
   * What an assessed build is ranked by as a function of changed numbers, all else equal: seconds, or metres over
   * ground where the goal is range; for doubts and what-ifs. Without
   * continuous ratings: a little more current than a rating still flies as long, where the ranking
   * rightly sees no flight.
   *
   * @throws IllegalArgumentException from the function, if the physics refuses what is asked
   */
  public ToDoubleFunction<Factors> whatIf(Assessment assessment) {
    var fitting = assessment.fitting();
    var grams = assessment.mass().grams();
    return factors -> expected.fly(fitting, grams, factors, Limits.NONE).figure();
  }

  /**
   * Charge that an assessed build takes from its pack in so long, mAh, by the likeliest figures and without ratings.
   *
   * @throws IllegalArgumentException if the physics refuses what is asked
   */
  public double milliampHours(Assessment assessment, Factors factors, double seconds) {
    return expected.milliampHours(
        assessment.fitting(), assessment.mass().grams(), factors, seconds);
  }

  /**
   * Volts of an assessed build's pack in flight after so much charge, by the likeliest figures; empty where the pack
   * has not so much.
   *
   * @throws IllegalArgumentException if the physics refuses what is asked
   */
  public OptionalDouble voltsAfter(Assessment assessment, Factors factors, double milliampHours) {
    return expected.voltsAfter(
        assessment.fitting(), assessment.mass().grams(), factors, milliampHours);
  }

  /** What an assessed build that flies is ranked by where flights are. */
  public double figure(Assessment assessment) {
    return figure(
        assessment.fitting(), assessment.mass().grams(), assessment.flight().orElseThrow());
  }

  double figure(Fitting fitting, double grams, FlightEstimate flown) {
    return isTheOutlook ? flown.figure() : expected.fly(fitting, grams).figure();
  }
}
