package pappus.offer;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * What an offered build costs, whole cents.
 *
 * @param net without tax
 * @param tax of it
 * @param gross with tax: what the customer pays
 */
public record Totals(long net, long tax, long gross) {
  private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

  /**
   * From the sum of all prices; half a cent is rounded up.
   *
   * @param cents sum of the prices as the shop has them
   */
  static Totals of(long cents, ShopSettings settings) {
    var rate = settings.tax() == null ? BigDecimal.ZERO : settings.tax().percent();
    var sum = BigDecimal.valueOf(cents);
    if (settings.pricesIncludeTax()) {
      var net = sum.multiply(HUNDRED).divide(HUNDRED.add(rate), 0, RoundingMode.HALF_UP);
      return new Totals(net.longValueExact(), cents - net.longValueExact(), cents);
    }
    var tax = sum.multiply(rate).divide(HUNDRED, 0, RoundingMode.HALF_UP).longValueExact();
    return new Totals(cents, tax, cents + tax);
  }
}
