package pappus.evidence.prior;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;

/**
 * Between what a figure usually lies, and between what it must lie for such a part to be.
 *
 * @param usualLow below it the figure is unusual
 * @param usualHigh above it the figure is unusual
 * @param hardLow below it no such part is known
 * @param hardHigh above it no such part is known
 */
record Bounds(double usualLow, double usualHigh, double hardLow, double hardHigh) {
  /** Nineteen of twenty ordinary parts lie within two deviations; a tenth more is for rounding. */
  private static final double DEVIATIONS = 2.1;

  private static final MathContext SHOWN = new MathContext(3);
  private static final int MOST_DIGITS = 7;

  /**
   * A median that parts scatter about.
   *
   * @param deviation one standard deviation of the logarithm
   */
  static Bounds about(double median, double deviation, double hardLow, double hardHigh) {
    return new Bounds(
        median * StrictMath.exp(-DEVIATIONS * deviation),
        median * StrictMath.exp(DEVIATIONS * deviation),
        hardLow,
        hardHigh);
  }

  /** Hard bounds alone. */
  static Bounds hard(double low, double high) {
    return new Bounds(low, high, low, high);
  }

  /**
   * What there is to say of a value, if anything.
   *
   * @param figure its name, with which the sentence begins
   * @param unit with a space before it, or nothing
   */
  Optional<String> remark(String figure, double value, String unit) {
    if (value < hardLow || value > hardHigh) {
      return Optional.of("%s is %s%s, but no such part is known outside %s: maybe a slip."
          .formatted(figure, shown(value, hardLow, hardHigh), unit, shown(hardLow, hardHigh)));
    }
    var low = Math.max(usualLow, hardLow);
    var high = Math.min(usualHigh, hardHigh);
    return value < low || value > high
        ? Optional.of("%s is %s%s, but %s is usual."
            .formatted(figure, shown(value, low, high), unit, shown(low, high)))
        : Optional.empty();
  }

  /** With three digits, or as many more as tell it from the bounds as these are shown. */
  private static String shown(double value, double low, double high) {
    var digits = SHOWN.getPrecision();
    while (digits < MOST_DIGITS
        && !isOutside(new BigDecimal(value).round(new MathContext(digits)), low, high)) {
      digits++;
    }
    return shown(value, digits);
  }

  private static boolean isOutside(BigDecimal value, double low, double high) {
    return value.compareTo(new BigDecimal(shown(low))) < 0
        || value.compareTo(new BigDecimal(shown(high))) > 0;
  }

  /** A number with three digits. */
  static String shown(double value) {
    return shown(value, SHOWN.getPrecision());
  }

  private static String shown(double value, int digits) {
    return new BigDecimal(value)
        .round(new MathContext(digits))
        .stripTrailingZeros()
        .toPlainString();
  }

  private static String shown(double low, double high) {
    return shown(low) + " to " + shown(high);
  }
}
