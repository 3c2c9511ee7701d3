package pappus.files.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.json.JsonMapper;

class JsonTextTest {
  private enum Word {
    @JsonProperty("a-word")
    A_WORD
  }

  /** Its getter is no component, and so no field. */
  public record Inner(String z, int a) {
    public String getMore() {
      return z + a;
    }
  }

  private record Outer(
      double small,
      double whole,
      BigDecimal amount,
      Word word,
      @Nullable String absent,
      Optional<String> empty,
      List<Inner> list,
      List<String> none) {}

  @Test
  void writesRecordsInTheirOrder() {
    var outer = new Outer(
        2e-3,
        4,
        new BigDecimal("1E+3"),
        Word.A_WORD,
        null,
        Optional.empty(),
        List.of(new Inner("ü\n", 1)),
        List.of());

    assertThat(JsonText.of(outer)).isEqualTo("""
        {
          "small": 0.002,
          "whole": 4.0,
          "amount": 1000,
          "word": "a-word",
          "list": [
            {
              "z": "ü\\n",
              "a": 1
            }
          ],
          "none": []
        }
        """);
  }

  /** Each would act on a terminal, and is the same text when it is read again. */
  @Test
  void writesSignsThatSteerByTheirNumbers() {
    var text = "a\u001b[2J\u009b1m\u202eb\u2028c\udb40\udc41d\u00d7";

    assertThat(JsonText.compact(List.of(text)))
        .isEqualToIgnoringCase("[\"a\\u001b[2J\\u009b1m\\u202eb\\u2028c\\udb40\\udc41d\u00d7\"]");
    assertThat(JsonMapper.shared().readTree(JsonText.of(List.of(text))).path(0).asString())
        .isEqualTo(text);
  }

  @Test
  void writesMapsInTheOrderOfTheCaller() {
    var map = new LinkedHashMap<String, Object>();
    map.put("z", 1);
    map.put("a", new LinkedHashMap<String, Object>());

    assertThat(JsonText.of(map)).isEqualTo("{\n  \"z\": 1,\n  \"a\": {}\n}\n");
  }

  /** Double.toString of Java 17 gives the first with 17 digits, that of Java 19 with two. */
  @ParameterizedTest
  @ValueSource(strings = {"2.0E23", "1.0E23", "0.1", "1.0E-5", "-0.0", "4.9E-324"})
  void writesTheShortestDigitsThatGiveTheDoubleAgain(String digits) {
    assertThat(JsonText.of(Double.parseDouble(digits))).isEqualTo(digits + "\n");
  }

  @Test
  void refusesWhatJsonCannotSay() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> JsonText.of(List.of(Double.NaN)))
        .withMessage("value must be finite, but is NaN.");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> JsonText.of(Map.of("a", Double.POSITIVE_INFINITY)))
        .withMessage("value must be finite, but is Infinity.");
  }
}
