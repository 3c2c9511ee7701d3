package pappus.scenario.reading;

import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import pappus.files.Shown;
import pappus.files.Source;
import pappus.files.json.Rewriting;
import pappus.files.json.SchemaFields;

/**
 * A value that a scenario is to have in place of what its file says.
 *
 * @param path as messages print it, such as {@code flight.legs[0].seconds}
 * @param value as it was typed; {@code null} takes the field out
 * @param told where problems with it are told to be, such as the option that it was typed with
 */
public record Setting(String path, String value, String told) {
  private static final String LIST = "list of ";
  private static final String OR_LIST = " or list";
  private static final int LONGEST_TOLD = 60;

  /**
   * As it is typed, {@code PATH=VALUE}.
   *
   * @throws IllegalArgumentException saying what it must be
   */
  public static Setting parse(String typed) {
    var equals = typed.indexOf('=');
    var path = equals < 0 ? "" : typed.substring(0, equals);
    if (!Rewriting.isPath(path)) {
      throw new IllegalArgumentException(
          "must be PATH=VALUE, such as massCap.grams=200 or flight.legs[0].seconds=30, but is %s."
              .formatted(Shown.text(typed)));
    }
    var shown = typed.length() > LONGEST_TOLD ? path + "=…" : typed;
    return new Setting(path, typed.substring(equals + 1), "--set " + shown);
  }

  @Override
  public String toString() {
    return path + "=" + value;
  }

  /** What stands there comes from it. */
  Source.Origin origin() {
    return new Source.Origin(told, 0, 0);
  }

  /** The value in JSON, by what the schema takes there; absent where it is to be taken out. */
  @Nullable
  String json() {
    if (value.equals("null")) {
      return null;
    }
    var isElement = path.endsWith("]");
    var general = path.replaceAll("\\[[0-9]+\\]", "[]");
    var name = isElement ? general.substring(0, general.length() - 2) : general;
    var type = type(name).orElse("");
    if (type.startsWith(LIST)) {
      var element = type.substring(LIST.length());
      return isElement ? json(element, value) : list(element);
    }
    // What any part may hold is of no type, and some fields take one word or several.
    var mayBeSeveral = type.isEmpty() || type.endsWith(OR_LIST);
    return mayBeSeveral && value.contains(",") && !isWhole(value)
        ? list(type.replace(OR_LIST, ""))
        : json(type, value);
  }

  private static Optional<String> type(String path) {
    return SchemaFields.of("scenario").stream()
        .filter(field -> field.path().equals(path))
        .map(SchemaFields.Field::type)
        .findFirst();
  }

  private String list(String element) {
    if (value.startsWith("[")) {
      return value;
    }
    return value.isEmpty()
        ? "[]"
        : Stream.of(value.split(",", -1))
            .map(one -> json(element, one.strip()))
            .collect(Collectors.joining(", ", "[", "]"));
  }

  /** What no such value is, is put as text, of which the strict reading says what it must be. */
  private static String json(String type, String typed) {
    var isPlain = typed.matches("-?(0|[1-9][0-9]*)(\\.[0-9]+)?([eE][+-]?[0-9]+)?|true|false");
    var takesPlain = type.contains("number") || type.equals("true or false") || type.isEmpty();
    var takesWhole = type.endsWith("object")
        || type.endsWith("list")
        || type.endsWith(" by name")
        || type.isEmpty();
    return (isPlain && takesPlain) || (isWhole(typed) && takesWhole)
        ? typed
        : Rewriting.quoted(typed);
  }

  private static boolean isWhole(String typed) {
    return typed.startsWith("{") || typed.startsWith("[");
  }
}
