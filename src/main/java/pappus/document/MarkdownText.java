package pappus.document;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import pappus.files.Shown;
import pappus.quantity.Require;

/** Writes tables in Markdown in which no text is more than text: no markup, no link, no HTML. */
public final class MarkdownText {
  /** What Markdown gives a meaning to somewhere in a line; a backslash takes it away. */
  private static final String MARKUP = "\\`*_{}[]()!|~$^";

  /** What it gives a meaning to at the beginning of one. */
  private static final String MARKUP_AT_START = "#+-";

  private static final Pattern BREAKING = Pattern.compile("[\\p{Cc}\\p{Zl}\\p{Zp}]");

  private MarkdownText() {}

  /**
   * A table.
   *
   * @param columns its titles
   * @param isNumber which columns are set to the right
   * @param rows cells of texts and numbers, an empty text for none
   */
  public static String of(List<String> columns, List<Boolean> isNumber, List<List<Object>> rows) {
    var text = new StringBuilder();
    line(text, columns.stream().map(MarkdownText::escaped).toList());
    line(text, isNumber.stream().map(right -> right ? "---:" : "---").toList());
    for (var row : rows) {
      line(text, row.stream().map(MarkdownText::cell).toList());
    }
    return text.toString();
  }

  private static void line(StringBuilder text, List<String> cells) {
    text.append(cells.stream().collect(Collectors.joining(" | ", "| ", " |"))).append('\n');
  }

  private static String cell(Object value) {
    if (value instanceof Double number) {
      return Require.plain(number);
    }
    return value instanceof Number ? value.toString() : escaped(value.toString());
  }

  /**
   * A text that stands for itself: what has a meaning gets a backslash, what HTML or links are made of its number,
   * control characters a blank;
   * what would turn or hide the text is told by its number.
   */
  public static String escaped(String text) {
    var escaped = new StringBuilder();
    Shown.safe(BREAKING.matcher(text).replaceAll(" ")).codePoints().forEach(point -> {
      if ("<>&\"':@".indexOf(point) >= 0 || isDotOfAddress(escaped, point)) {
        escaped.append("&#").append(point).append(';');
      } else {
        if (MARKUP.indexOf(point) >= 0
            || (escaped.toString().isBlank() && MARKUP_AT_START.indexOf(point) >= 0)) {
          escaped.append('\\');
        }
        escaped.appendCodePoint(point);
      }
    });
    return escaped.toString().strip();
  }

  /** Some readers make a link of whatever begins with www and a dot. */
  private static boolean isDotOfAddress(StringBuilder before, int point) {
    return point == '.'
        && before.length() >= 3
        && before.substring(before.length() - 3).equalsIgnoreCase("www");
  }
}
