package pappus.files;

import java.util.Comparator;

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
  private static final Comparator<Problem> ORDER = Comparator.comparing(Problem::file)
      .thenComparingInt(Problem::line)
      .thenComparing(Problem::text)
      .thenComparingInt(Problem::column);

  /** A problem of a file as a whole. */
  public static Problem ofFile(String file, String text) {
    return new Problem(file, 0, text);
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
