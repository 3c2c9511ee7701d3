package pappus.document;

import java.util.ArrayList;
import java.util.List;
import pappus.files.Shown;

/** Text for a terminal of some width, in which no name moves the cursor or hides what is read. */
final class Wrapped {
  private static final int NARROWEST = 40;

  private Wrapped() {}

  /**
   * Breaks a line at spaces, once whatever would steer the terminal is made visible.
   *
   * @param indent spaces before every line but the first
   * @param width columns; fewer than 40 count as 40
   */
  static List<String> lines(String text, int indent, int width) {
    var columns = Math.max(NARROWEST, width);
    var lines = new ArrayList<String>();
    var rest = Shown.safe(text);
    while (rest.length() > columns) {
      var end = rest.lastIndexOf(' ', columns);
      if (end <= indent) {
        end = columns;
      }
      lines.add(rest.substring(0, end).stripTrailing());
      rest = " ".repeat(indent) + rest.substring(end).strip();
    }
    lines.add(rest);
    return lines;
  }
}
