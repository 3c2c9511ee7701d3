package pappus.files;

import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Untrusted text as messages show it: on one line, without control characters, not too long.
 *
 * <p>Why: src/site/markdown/decisions.md#strict-texts
 */
public final class Shown {
  private static final int LONGEST_TEXT = 60;
  private static final int LONGEST_SENTENCE = 400;
  private static final int KEPT_END = 100;

  /** Blanks and hyphens that keep a line from breaking, and a joiner: alike to the eye, and other bytes. */
  private static final String UNSEEN = "\\u00A0\\u034F\\u2007\\u2011\\u202F";

  /** What moves the cursor, reorders or hides what is read, or has no sign of its own. */
  private static final Pattern STEERING = Pattern.compile("[\\p{C}\\p{Zl}\\p{Zp}" + UNSEEN + "]");

  private static final Pattern STEERING_IN_FILE =
      Pattern.compile("[\\p{Cc}\\p{Cf}\\p{Zl}\\p{Zp}" + UNSEEN + "&&[^\\t\\n]]");

  private static final Pattern HIDING =
      Pattern.compile("[\\p{Cc}\\p{Cf}\\p{Cs}\\p{Zl}\\p{Zp}" + UNSEEN + "]");

  private Shown() {}

  /** A value between quotes, its end cut off if it is long. */
  public static String text(String text) {
    var cut = text.codePointCount(0, text.length()) > LONGEST_TEXT
        ? text.substring(0, text.offsetByCodePoints(0, LONGEST_TEXT)) + "…"
        : text;
    return '"' + safe(cut.replace("\\", "\\\\").replace("\"", "\\\"")) + '"';
  }

  /**
   * One line that may hold names from anywhere: each character that would steer a terminal, a line end too, is told by
   * its number. What is safe already stays as it is.
   */
  public static String safe(String line) {
    return numbered(STEERING, line, Shown::number);
  }

  /** A sentence that may quote a value; of a long one the middle is left out. */
  public static String sentence(String sentence) {
    var shown = safe(sentence);
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
    return numbered(
        STEERING_IN_FILE,
        text,
        found -> found.chars().mapToObj(Shown::number).collect(Collectors.joining()));
  }

  /** Whether a text holds what no name needs: signs that act on a terminal, turn the direction, or cannot be seen. */
  public static boolean hides(String text) {
    for (var i = 0; i < text.length(); i++) {
      var c = text.charAt(i);
      if (c < ' ' || (c >= 0x7F && HIDING.matcher(text).find())) {
        return true;
      }
      if (c >= 0x7F) {
        return false;
      }
    }
    return false;
  }

  private static String numbered(Pattern which, String text, UnaryOperator<String> number) {
    return which
        .matcher(text)
        .replaceAll(found -> Matcher.quoteReplacement(number.apply(found.group())));
  }

  private static String number(String found) {
    return number(found.codePointAt(0));
  }

  private static String number(int point) {
    return String.format(Locale.ROOT, point > 0xFFFF ? "\\u{%x}" : "\\u%04x", point);
  }
}
