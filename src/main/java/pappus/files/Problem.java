package pappus.files;

import java.util.Comparator;
import java.util.regex.Pattern;

/**
 * One thing that is wrong with the input.
 *
 * @param file as the user typed it
 * @param line from 1; 0 if it concerns the file as a whole
 * @param column in that line, characters from 1; 0 where only the line is known
 * @param text a sentence, advice after it
 */
public record Problem(String file, int line, int column, String text)
    implements Comparable<Problem> {
  private static final Pattern REST = Pattern.compile("and ([0-9]{1,9}) more\\.");

  private static final Comparator<Problem> ORDER = Comparator.comparing(Problem::file)
      .thenComparing(Problem::isRest)
      .thenComparingInt(Problem::line)
      .thenComparing(Problem::text)
      .thenComparingInt(Problem::column);

  /** A problem of a file as a whole. */
  public static Problem ofFile(String file, String text) {
    return new Problem(file, 0, text);
  }

  /** What stands for so many others of a file, after those that are told. */
  static Problem rest(String file, int number) {
    return ofFile(file, "and %s more.".formatted(number));
  }

  boolean isRest() {
    return line == 0 && REST.matcher(text).matches();
  }

  /** How many others this stands for. */
  int rest() {
    return Integer.parseInt(text.replaceAll("[^0-9]", ""));
  }

  /** A problem of a line. */
  public Problem(String file, int line, String text) {
    this(file, line, 0, text);
  }

  /** By file, then line. */
  @Override
  public int compareTo(Problem other) {
    return ORDER.compare(this, other);
  }

  /** The line a person reads. */
  @Override
  public String toString() {
    return Shown.safe(file + (line == 0 ? "" : ":" + line) + ": " + text);
  }
}
