package pappus.files;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Untrusted text as messages show it: on one line, without control characters, not too long.
 *
 * <p>Why: src/site/markdown/decisions.md#strict-texts
 */
public final class Shown {
  private static final int LONGEST_TEXT = 60;
  private static final int LONGEST_SENTENCE = 400;
  private static final int KEPT_END = 100;

  private static final Pattern STEERING =
      Pattern.compile("[\\p{Cc}\\p{Cf}\\p{Zl}\\p{Zp}&&[^\\t\\n]]");

  private Shown() {}

  /** A value between quotes, its end cut off if it is long. */
  public static String text(String text) {
    var cut = text.codePointCount(0, text.length()) > LONGEST_TEXT
        ? text.substring(0, text.offsetByCodePoints(0, LONGEST_TEXT)) + "…"
        : text;
    return '"' + escaped(cut.replace("\\", "\\\\").replace("\"", "\\\"")) + '"';
  }

  /** The name of a file or a number as typed: all of it, whatever it holds. */
  public static String name(String name) {
    return escaped(name);
  }

  /** A sentence that may quote a value; of a long one the middle is left out. */
  public static String sentence(String sentence) {
    var shown = escaped(sentence);
    if (shown.length() <= LONGEST_SENTENCE) {
      return shown;
    }
    return shown.substring(0, LONGEST_SENTENCE - KEPT_END)
        + "…"
        + shown.substring(shown.length() - KEPT_END);
  }

  /** Words in a row: a, b or c. */
  public static String choice(List<String> words) {
    if (words.size() == 1) {
      return words.get(0);
    }
    return String.join(", ", words.subList(0, words.size() - 1))
        + " or "
        + words.get(words.size() - 1);
  }

  /**
   * A text for a file that may be printed on a terminal: signs that move its cursor, or hide or reorder what is read,
   * are told by their numbers, as JSON writes them; tabs and line feeds stay.
   */
  public static String seen(String text) {
    return STEERING.matcher(text).replaceAll(found -> {
      var numbers = new StringBuilder();
      found
          .group()
          .chars()
          .forEach(sign -> numbers.append(String.format(Locale.ROOT, "\\\\u%04x", sign)));
      return numbers.toString();
    });
  }

  private static String escaped(String text) {
    var shown = new StringBuilder(text.length());
    text.codePoints().forEach(c -> {
      if (isPlain(c)) {
        shown.appendCodePoint(c);
      } else {
        shown.append(String.format(Locale.ROOT, c > 0xFFFF ? "\\u{%X}" : "\\u%04X", c));
      }
    });
    return shown.toString();
  }

  /** Control characters could move the cursor, format characters reorder or hide what is read. */
  private static boolean isPlain(int c) {
    return switch (Character.getType(c)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR,
          Character.SURROGATE,
          Character.PRIVATE_USE,
          Character.UNASSIGNED -> false;
      default -> true;
    };
  }
}
