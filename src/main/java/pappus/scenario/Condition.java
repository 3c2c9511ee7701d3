package pappus.scenario;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import pappus.files.Closest;
import pappus.files.Shown;
import pappus.part.Property;
import pappus.part.Property.Said;
import pappus.quantity.Require;

/**
 * What a field of a part is to hold, as it is written: a value, a list of values of which it is to be one, or an object
 * with {@code atLeast}, {@code atMost} or {@code noneOf}. Of a list in a record one element is to hold it, and
 * {@code noneOf} every one. What is not known meets no condition.
 */
public record Condition(@JsonValue Object written) {
  public static final String AT_LEAST = "atLeast";
  public static final String AT_MOST = "atMost";
  public static final String NONE_OF = "noneOf";

  private static final List<String> BOUNDS = List.of(AT_LEAST, AT_MOST, NONE_OF);

  /** As it is read; what is wrong with it is told by {@link #check}. */
  @JsonCreator(mode = JsonCreator.Mode.DELEGATING)
  public Condition {
    Require.present("value", written);
  }

  /** Whether a part says what meets it. */
  public boolean isMetBy(Said said) {
    var noneOf = noneOf();
    if (!noneOf.isEmpty()
        && (!said.isComplete() || said.values().stream().anyMatch(value -> holds(noneOf, value)))) {
      return false;
    }
    return said.values().stream().anyMatch(this::isMetBy);
  }

  private boolean isMetBy(Object value) {
    if (!(written instanceof Map<?, ?> bounds)) {
      return holds(values(), value);
    }
    return isWithin(value, bounds.get(AT_LEAST), 1) && isWithin(value, bounds.get(AT_MOST), -1);
  }

  private static boolean isWithin(Object value, @Nullable Object bound, int side) {
    return bound == null
        || (value instanceof BigDecimal number && side * number.compareTo(decimal(bound)) >= 0);
  }

  private static boolean holds(List<Object> values, Object value) {
    return values.stream()
        .anyMatch(each -> (each instanceof Number && value instanceof BigDecimal number)
            ? number.compareTo(decimal(each)) == 0
            : each.equals(value));
  }

  private static BigDecimal decimal(Object number) {
    return new BigDecimal(number.toString());
  }

  /** Values of which it is to be one; none where bounds are stated. */
  private List<Object> values() {
    return written instanceof Map ? List.of() : list(written);
  }

  private List<Object> noneOf() {
    return written instanceof Map<?, ?> bounds && bounds.containsKey(NONE_OF)
        ? list(bounds.get(NONE_OF))
        : List.of();
  }

  private static List<Object> list(Object written) {
    return written instanceof List<?> list ? List.copyOf(list) : List.of(written);
  }

  /** The bounds that are written, by name; none where it is a value or a list. */
  public Map<String, Object> bounds() {
    var named = new LinkedHashMap<String, Object>();
    if (written instanceof Map<?, ?> bounds) {
      bounds.forEach((name, bound) -> named.put(String.valueOf(name), bound));
    }
    return named;
  }

  /** Every value that it names, bounds apart, by where it stands within it, such as {@code .noneOf[1]}. */
  public Map<String, Object> named() {
    return written instanceof Map<?, ?> bounds
        ? (bounds.get(NONE_OF) instanceof List<?> list ? each("." + NONE_OF, list) : Map.of())
        : written instanceof List<?> list ? each("", list) : Map.of("", written);
  }

  private static Map<String, Object> each(String before, List<?> list) {
    var each = new LinkedHashMap<String, Object>();
    for (var i = 0; i < list.size(); i++) {
      each.put(before + "[" + i + "]", list.get(i));
    }
    return each;
  }

  /** What it asks for, in words, as "4" or "at least 3 and at most 4.5". */
  public String inWords() {
    if (!(written instanceof Map<?, ?> bounds)) {
      return Shown.choice(values().stream().map(Condition::word).toList());
    }
    var words = new ArrayList<String>();
    if (bounds.containsKey(AT_LEAST)) {
      words.add("at least " + word(bounds.get(AT_LEAST)));
    }
    if (bounds.containsKey(AT_MOST)) {
      words.add("at most " + word(bounds.get(AT_MOST)));
    }
    if (bounds.containsKey(NONE_OF)) {
      words.add(
          "none of " + noneOf().stream().map(Condition::word).collect(Collectors.joining(", ")));
    }
    return String.join(" and ", words);
  }

  static String word(Object value) {
    return value instanceof Number number
        ? decimal(number).stripTrailingZeros().toPlainString()
        : Shown.safe(value.toString());
  }

  /**
   * Refuses what no field of this type can hold.
   *
   * @param path of it, with which messages begin
   * @throws IllegalArgumentException through {@link Require#refuse}
   */
  void check(String path, Property property) {
    if (written instanceof Map<?, ?> bounds) {
      checkBounds(path, property, bounds);
    } else if (written instanceof List<?> list) {
      checkList(path, property, list);
    } else {
      checkValue(path, property, written);
    }
  }

  private static void checkBounds(String path, Property property, Map<?, ?> bounds) {
    if (bounds.isEmpty()) {
      Require.refuse("%s must have %s, but is empty.".formatted(path, Shown.choice(BOUNDS)));
    }
    bounds.forEach((name, bound) -> {
      var at = path + "." + name;
      if (!BOUNDS.contains(name)) {
        Require.refuse("%s must be %s, but is neither.%s"
            .formatted(at, Shown.choice(BOUNDS), Closest.advice(String.valueOf(name), BOUNDS)));
      } else if (!name.equals(NONE_OF)) {
        checkBound(at, property, bound);
      } else if (bound instanceof List<?> list) {
        checkList(at, property, list);
      } else {
        Require.refuse("%s must be a list, but is %s.".formatted(at, shown(bound)));
      }
    });
    if (bounds.get(AT_LEAST) instanceof Number least
        && bounds.get(AT_MOST) instanceof Number most
        && isFinite(least)
        && isFinite(most)
        && decimal(least).compareTo(decimal(most)) > 0) {
      Require.refuse("%s.%s must be no more than %s, but is %s."
          .formatted(path, AT_LEAST, word(most), word(least)));
    }
  }

  private static void checkBound(String at, Property property, Object bound) {
    if (!property.isNumber()) {
      Require.refuse("%s must be left out where the field is no number, but %s is %s."
          .formatted(at, property.path(), inWords(property)));
    } else if (!(bound instanceof Number number) || !isFinite(number)) {
      Require.refuse("%s must be a number, but is %s.".formatted(at, shown(bound)));
    }
  }

  private static void checkList(String path, Property property, List<?> list) {
    Require.notEmpty(path, list);
    for (var i = 0; i < list.size(); i++) {
      checkValue(path + "[" + i + "]", property, list.get(i));
    }
  }

  private static void checkValue(String path, Property property, Object value) {
    var isRight = switch (property.type()) {
      case NUMBER -> value instanceof Number number && isFinite(number);
      case WHOLE_NUMBER ->
        value instanceof Number number
            && isFinite(number)
            && decimal(number).stripTrailingZeros().scale() <= 0;
      case TEXT -> value instanceof String text && !Shown.hides(text);
      case WORD -> value instanceof String word && property.words().contains(word);
      case TRUTH -> value instanceof Boolean;
    };
    if (!isRight) {
      var advice = value instanceof String typed ? Closest.advice(typed, property.words()) : "";
      Require.refuse(
          "%s must be %s, but is %s.%s".formatted(path, inWords(property), shown(value), advice));
    }
  }

  private static String inWords(Property property) {
    return switch (property.type()) {
      case NUMBER -> "a number";
      case WHOLE_NUMBER -> "a whole number";
      case TEXT -> "text without hidden characters";
      case WORD -> Shown.choice(property.words());
      case TRUTH -> "true or false";
    };
  }

  private static boolean isFinite(Number number) {
    return Double.isFinite(number.doubleValue());
  }

  private static String shown(Object value) {
    return value instanceof String text
        ? "the text " + Shown.text(text)
        : value instanceof List ? "a list" : value instanceof Map ? "an object" : value.toString();
  }
}
