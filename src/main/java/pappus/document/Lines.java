package pappus.document;

import java.util.ArrayList;
import java.util.List;
import pappus.files.Shown;

/** Lines of a text for a terminal, in which no name moves the cursor or hides what is read. */
public final class Lines {
  private final List<String> lines = new ArrayList<>();
  private final int width;
  private final Style style;

  /**
   * @param width columns
   */
  public Lines(int width) {
    this(width, Style.PLAIN);
  }

  /**
   * @param width columns
   */
  public Lines(int width, Style style) {
    this.width = width;
    this.style = style;
  }

  /** A paragraph. */
  public Lines say(String text) {
    lines.addAll(Wrapped.lines(text, 0, width));
    return this;
  }

  /** One of several things, with a dash before it. */
  public Lines item(String text) {
    lines.addAll(Wrapped.lines("- " + text, 2, width));
    return this;
  }

  /** A caution. */
  public Lines caution(String text) {
    Wrapped.lines("! " + text, 2, width).forEach(line -> lines.add(style.faint(line)));
    return this;
  }

  /** A row of a table, as it is but for its end: what is too long goes on below, after so many spaces. */
  public Lines row(String text, int indent) {
    lines.addAll(Wrapped.lines(text, indent, width));
    return this;
  }

  /** The same, to catch the eye on a terminal. */
  public Lines strong(String text) {
    lines.add(style.strong(Shown.safe(text)));
    return this;
  }

  /** A row of a table that is not broken, however long. */
  public Lines whole(String text) {
    lines.add(Shown.safe(text));
    return this;
  }

  /** How many there are so far. */
  public int size() {
    return lines.size();
  }

  public Lines blank() {
    lines.add("");
    return this;
  }

  public String text() {
    return String.join("\n", lines) + "\n";
  }
}
