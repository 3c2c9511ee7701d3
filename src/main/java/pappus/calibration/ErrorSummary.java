package pappus.calibration;

import java.util.Arrays;
import java.util.List;

/**
 * Errors of predicted against measured bus power.
 *
 * @param n how many; all else is zero if none
 * @param medianPercent of their size
 * @param p90Percent nine in ten are no larger
 * @param biasPercent mean with its sign: above zero, too much is predicted
 */
public record ErrorSummary(
    int n, double medianPercent, double p90Percent, double rmsPercent, double biasPercent) {

  /** Of signed errors, percent. */
  static ErrorSummary of(List<Double> errors) {
    if (errors.isEmpty()) {
      return new ErrorSummary(0, 0, 0, 0, 0);
    }
    var sizes = errors.stream().mapToDouble(Math::abs).toArray();
    Arrays.sort(sizes);
    var sum = 0.0;
    var squares = 0.0;
    for (var error : errors) {
      sum += error;
      squares += error * error;
    }
    return new ErrorSummary(
        sizes.length,
        quantile(sizes, 0.5),
        quantile(sizes, 0.9),
        Math.sqrt(squares / sizes.length),
        sum / sizes.length);
  }

  private static double quantile(double[] sorted, double part) {
    var place = part * (sorted.length - 1);
    var below = (int) place;
    var above = Math.min(below + 1, sorted.length - 1);
    return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
  }
}
