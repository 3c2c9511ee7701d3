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

  @Test
  void whatMovesTheCursorOrTurnsTheTextIsMadeVisible() {
    assertThat(Spoken.safe("Rüschel 4×1.9 €")).isEqualTo("Rüschel 4×1.9 €");
    assertThat(Spoken.safe("\u001B[31m")).isEqualTo("\\u001b[31m");
    assertThat(Spoken.safe("\u0007\r\n\t")).isEqualTo("\\u0007\\u000d\\u000a\\u0009");
    assertThat(Spoken.safe("a\u202Eb\u2066c\u200B")).isEqualTo("a\\u202eb\\u2066c\\u200b");
    assertThat(Spoken.safe("\u2028\u2029\u009B")).isEqualTo("\\u2028\\u2029\\u009b");
    assertThat(Spoken.safe("\uD800")).isEqualTo("\\ud800");
    assertThat(Spoken.safe(Character.toString(0xE0041) + "1")).isEqualTo("\\u{e0041}1");
  }
}
