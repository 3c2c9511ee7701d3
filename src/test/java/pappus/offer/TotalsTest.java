package pappus.offer;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class TotalsTest {
  private static ShopSettings settings(String percent, boolean included) {
    return new ShopSettings(
        "Windlass Row",
        List.of(),
        List.of(),
        null,
        "EUR",
        new ShopSettings.Tax("sales tax", new BigDecimal(percent)),
        included,
        14,
        null,
        null,
        null,
        null);
  }

  /** Counted by hand, half a cent upwards. */
  @ParameterizedTest
  @CsvSource({
    "12000, 20, 10000, 2000",
    "100, 19, 84, 16",
    "1, 100, 1, 0",
    "29413, 21, 24308, 5105",
    "0, 20, 0, 0",
    "10000, 0, 10000, 0"
  })
  void takesTheTaxOutOfPricesThatHoldIt(long cents, String percent, long net, long tax) {
    assertThat(Totals.of(cents, settings(percent, true))).isEqualTo(new Totals(net, tax, cents));
  }

  @ParameterizedTest
  @CsvSource({
    "10000, 20, 2000, 12000",
    "5, 10, 1, 6",
    "4, 10, 0, 4",
    "24308, 21, 5105, 29413",
    "333, 7.5, 25, 358"
  })
  void putsTheTaxOnPricesWithoutIt(long cents, String percent, long tax, long gross) {
    assertThat(Totals.of(cents, settings(percent, false))).isEqualTo(new Totals(cents, tax, gross));
  }

  @Test
  void tellsNoTaxWhereThereIsNone() {
    var untaxed = new ShopSettings(
        "Windlass Row", List.of(), List.of(), null, "EUR", null, true, 14, null, null, null, null);

    assertThat(Totals.of(12345, untaxed)).isEqualTo(new Totals(12345, 0, 12345));
  }
}
