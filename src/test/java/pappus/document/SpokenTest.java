package pappus.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pappus.quantity.Money;

class SpokenTest {
  @ParameterizedTest(name = "{0} s are {1} min")
  @CsvSource({"0, 0.0", "14, 0.0", "16, 0.5", "60, 1.0", "2729, 45.5", "3600, 60.0"})
  void minutesGoByHalves(double seconds, String minutes) {
    assertThat(Spoken.minutes(seconds)).isEqualTo(minutes);
  }

  @ParameterizedTest(name = "{0} with {1} decimals is {2}")
  @CsvSource({"1234.56, 0, 1235", "0.05, 2, 0.05", "-0.4, 0, 0", "-0.04, 1, 0.0", "-0.5, 1, -0.5"})
  void numbersHaveNoMinusBeforeZero(double value, int decimals, String text) {
    assertThat(Spoken.number(value, decimals)).isEqualTo(text);
  }

  @ParameterizedTest(name = "{0} is {1}")
  @CsvSource(delimiter = '|', textBlock = """
      48      | 48
      999999  | 999,999
      1e6     | 1.0 × 10⁶
      1.35e19 | 1.4 × 10¹⁹
      9.99e19 | 1.0 × 10²⁰
      1e100   | 1.0 × 10¹⁰⁰
      """)
  void largeNumbersAreTimesAPowerOfTen(double value, String text) {
    assertThat(Spoken.large(value)).isEqualTo(text);
  }

  @Test
  void pricesAreWholeUnits() {
    assertThat(Spoken.price(19_433, "EUR")).isEqualTo("EUR 194");
    assertThat(Spoken.price(new Money(new BigDecimal("330.00"), "EUR"))).isEqualTo("EUR 330");
    assertThat(Spoken.price(new Money(new BigDecimal("9.50"), "EUR"))).isEqualTo("EUR 9.5");
  }

  @Test
  void numbersDoNotFollowTheLocale() {
    var usual = Locale.getDefault();
    Locale.setDefault(Locale.GERMANY);
    try {
      assertThat(Spoken.minutes(90)).isEqualTo("1.5");
      assertThat(Spoken.number(1.25, 2)).isEqualTo("1.25");
    } finally {
      Locale.setDefault(usual);
    }
  }
}
