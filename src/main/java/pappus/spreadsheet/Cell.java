package pappus.spreadsheet;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import pappus.files.CsvTable;

/** What one cell says. */
final class Cell {
  private static final String LIST_OF = "list of ";

  /** What is longer was not typed by a person: a quote stands in the wrong place. */
  private static final int LONGEST_TEXT = 10_000;

  /** A decimal comma, which may as well part thousands. */
  private static final Pattern WITH_COMMA = Pattern.compile("-?[0-9]+(,[0-9]+)+(\\.[0-9]+)?");

  private static final Pattern WITH_UNIT = Pattern.compile("-?[0-9.]+\\s*[^0-9.,\\s].*");

  private Cell() {}

  /** The value of a cell that is not empty, as JSON has it, in the unit of the field; none if it cannot be read. */
  static Optional<Object> value(Column column, String cell) {
    var type = column.leaf().type();
    if (!type.startsWith(LIST_OF)) {
      return one(column, type, cell);
    }
    var values = new ArrayList<Object>();
    for (var item : cell.split(";", -1)) {
      var value = one(column, type.substring(LIST_OF.length()), item.strip());
      if (value.isEmpty()) {
        return Optional.empty();
      }
      values.add(value.get());
    }
    return Optional.of(values);
  }

  private static Optional<Object> one(Column column, String type, String cell) {
    return switch (type) {
      case "number", "whole number" -> number(column, cell);
      case "true or false" ->
        cell.equalsIgnoreCase("true") || cell.equalsIgnoreCase("yes")
            ? Optional.of(true)
            : cell.equalsIgnoreCase("false") || cell.equalsIgnoreCase("no")
                ? Optional.of(false)
                : Optional.empty();
      default ->
        Optional.of(word(type, cell))
            .filter(text -> !text.isEmpty() && text.length() <= LONGEST_TEXT)
            .map(text -> text);
    };
  }

  /** The word of a choice that a cell means whatever its capitals, blanks and hyphens; else the cell as it is. */
  private static String word(String type, String cell) {
    return type.contains(" or ")
        ? Stream.of(type.split(", | or ", -1))
            .filter(word -> key(word).equals(key(cell)))
            .findFirst()
            .orElse(cell)
        : cell;
  }

  private static String key(String word) {
    return word.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9.]", "");
  }

  private static Optional<Object> number(Column column, String cell) {
    if (!CsvTable.isPlainNumber(cell)) {
      return Optional.empty();
    }
    var typed = new BigDecimal(cell);
    if (column.leaf().type().endsWith("whole number")) {
      return Optional.of(typed);
    }
    var value = column.ratio().map(ratio -> ratio.of(typed)).orElse(typed).stripTrailingZeros();
    return Optional.of(value.scale() < 0 ? value.setScale(0) : value);
  }

  /** What a cell of a column must be, after "must be". */
  static String expected(Column column) {
    var type = column.leaf().type();
    var isList = type.startsWith(LIST_OF);
    return switch (isList ? type.substring(LIST_OF.length()) : type) {
      case "number" -> isList ? "plain numbers such as 9; 12.5" : "a plain number such as 12.5";
      case "whole number" -> "a whole number";
      case "true or false" -> "yes or no";
      default ->
        isList
            ? "texts with ; between them"
            : "text of at most %s characters".formatted(LONGEST_TEXT);
    };
  }

  /** How a cell may have been meant, or nothing. */
  static String advice(String cell) {
    if (WITH_COMMA.matcher(cell).matches()) {
      return " Maybe write decimals after a point, and nothing between thousands.";
    }
    return WITH_UNIT.matcher(cell).matches()
        ? " Maybe move what follows the number into the title of the column."
        : "";
  }
}
