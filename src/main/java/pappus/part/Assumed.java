package pappus.part;

import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;
import pappus.quantity.Require;

/**
 * A fact that a record left out and that parts of its class filled.
 *
 * @param path of the field, such as {@code mass.known} or {@code powers[0].watts}
 * @param name in words, as "winding resistance"
 * @param value what counts, with its unit, in words
 * @param spread one standard deviation of ln within the class; 0 for what is no quantity. A quantity counts half of it
 *     the harmful way
 * @param from what it follows from, as "stator and Kv"
 */
public record Assumed(String path, String name, String value, double spread, String from) {
  public Assumed {
    Require.text("path", path);
    Require.text("name", name);
    Require.text("value", value);
    Require.inRange("spread", spread, 0, 3);
    Require.text("from", from);
  }

  /** A list as records hold it: none where nothing was left out. */
  static List<Assumed> listOf(@Nullable List<Assumed> assumed) {
    return assumed == null ? List.of() : List.copyOf(assumed);
  }

  /** The same without those of some fields and of what lies within them. */
  public static List<Assumed> without(List<Assumed> assumed, Collection<String> fields) {
    return assumed.stream()
        .filter(one -> fields.stream()
            .noneMatch(field -> one.path().equals(field)
                || one.path().startsWith(field + ".")
                || one.path().startsWith(field + "[")))
        .toList();
  }

  /** In a line, as "winding resistance 226 mΩ ± 35 %". */
  public String inWords() {
    var share = Math.round(100 * (StrictMath.exp(spread) - 1));
    return name + " " + value + (spread == 0 ? "" : " ± " + share + " %");
  }
}
