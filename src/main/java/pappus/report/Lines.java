package pappus.report;

import java.util.ArrayList;
import java.util.List;

/** Lines of a text for a terminal. */
final class Lines {
  private final List<String> lines = new ArrayList<>();
  private final int width;

  /**
   * @param width columns
   */
  Lines(int width) {
    this.width = width;
  }

  /** A paragraph. */
  Lines say(String text) {
    lines.addAll(Wrapped.lines(text, 0, width));
    return this;
  }

  /** One of several things, with a dash before it. */
  Lines item(String text) {
    lines.addAll(Wrapped.lines("- " + text, 2, width));
    return this;
  }

  /** A caution. */
  Lines caution(String text) {
    lines.addAll(Wrapped.lines("! " + text, 2, width));
    return this;
  }

  /** A row of a table, as it is but for its end: what is too long goes on below, after so many spaces. */
  Lines row(String text, int indent) {
    lines.addAll(Wrapped.lines(text, indent, width));
    return this;
  }

  Lines blank() {
    lines.add("");
    return this;
  }

  String text() {
    return String.join("\n", lines) + "\n";
  }
}
