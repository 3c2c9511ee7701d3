package pappus.document;

import java.util.ArrayList;
import java.util.List;
import pappus.files.Shown;

/** Lines of a text for a terminal, in which no name moves the cursor or hides what is read. */
public final class Lines {
  private final List<String> lines = new ArrayList<>();
  private final int width;

  /**
   * @param width columns
   */
  public Lines(int width) {
    this.width = width;
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
    lines.addAll(Wrapped.lines("! " + text, 2, width));
    return this;
  }

  /** A row of a table, as it is but for its end: what is too long goes on below, after so many spaces. */
  public Lines row(String text, int indent) {
    lines.addAll(Wrapped.lines(text, indent, width));
    return this;
  }

  /** A row of a table that is not broken, however long. */
  public Lines whole(String text) {
    lines.add(Shown.safe(text));
    return this;
  }

  public Lines blank() {
    lines.add("");
    return this;
  }

  public String text() {
    return String.join("\n", lines) + "\n";
  }
}
