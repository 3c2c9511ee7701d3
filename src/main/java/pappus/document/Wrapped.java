package pappus.document;

import java.util.ArrayList;
import java.util.List;

/** Text for a terminal of some width. */
public final class Wrapped {
  private static final int NARROWEST = 40;

  private Wrapped() {}

  /**
   * Breaks a line at spaces.
   *
   * @param indent spaces before every line but the first
   * @param width columns; fewer than 40 count as 40
   */
  public static List<String> lines(String text, int indent, int width) {
    var columns = Math.max(NARROWEST, width);
    var lines = new ArrayList<String>();
    var rest = text;
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
