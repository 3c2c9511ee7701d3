package pappus.quantity;

import java.util.List;
import java.util.Locale;

/**
 * A sentence with its numbers, put into words only when somebody reads it: searches judge far more
 * builds than anybody reads about.
 *
 * @param template with one %s for each value
 * @param values texts and numbers
 */
public record Sentence(String template, List<Object> values) {
  public Sentence {
    values = List.copyOf(values);
  }

  /** A sentence of a template and its values. */
  public static Sentence of(String template, Object... values) {
    return new Sentence(template, List.of(values));
  }

  /** The sentence in words; numbers without trailing zeros, at most two decimals. */
  public String text() {
    return String.format(
        Locale.ROOT, template, values.stream().map(Sentence::spoken).toArray(Object[]::new));
  }

  private static Object spoken(Object value) {
    return value instanceof Double number
        ? Require.plain(StrictMath.rint(number * 100) / 100)
        : value;
  }

  @Override
  public String toString() {
    return text();
  }
}
