package pappus.answers.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * What one sheet of paper shows of a drawing that is printed true to scale on several, with marks to join them by.
 *
 * @param name of the sheet: a letter for its row, a number for its column
 * @param left edge in the drawing, mm
 * @param top edge in the drawing, mm
 * @param width without what overlaps, mm
 * @param height without what overlaps, mm
 * @param joins what lies beyond its edges, in words
 */
public record Tile(
    String name, double left, double top, double width, double height, String joins) {
  /** What sheets show of each other, so that marks lie on both, mm. */
  private static final double OVERLAP = 3;

  /** What an A4 sheet holds with margins of 12 mm beside what overlaps, and below a line of words, mm. */
  private static final double MOST_WIDE = 186 - 2 * OVERLAP;

  private static final double MOST_TALL = 265 - 2 * OVERLAP;

  /** Row by row, all of one size; empty where the drawing is whole on one sheet already. */
  static List<Tile> of(Plan plan) {
    var tiles = new ArrayList<Tile>();
    if (plan.scale() >= 1) {
      return tiles;
    }
    var across = (int) Math.ceil(plan.width() / MOST_WIDE);
    var down = (int) Math.ceil(plan.height() / MOST_TALL);
    var wide = plan.width() / across;
    var tall = plan.height() / down;
    for (var row = 0; row < down; row++) {
      for (var column = 0; column < across; column++) {
        var beyond = new ArrayList<String>();
        if (column > 0) {
          beyond.add(name(row, column - 1) + " to the left");
        }
        if (column < across - 1) {
          beyond.add(name(row, column + 1) + " to the right");
        }
        if (row > 0) {
          beyond.add(name(row - 1, column) + " above");
        }
        if (row < down - 1) {
          beyond.add(name(row + 1, column) + " below");
        }
        tiles.add(new Tile(
            name(row, column), column * wide, row * tall, wide, tall, String.join(", ", beyond)));
      }
    }
    return tiles;
  }

  private static String name(int row, int column) {
    return String.valueOf((char) ('A' + row)) + (column + 1);
  }

  /** What of the drawing is seen. */
  public String view() {
    return "%s %s %s %s"
        .formatted(
            Plan.plain(left - OVERLAP),
            Plan.plain(top - OVERLAP),
            Plan.plain(width + 2 * OVERLAP),
            Plan.plain(height + 2 * OVERLAP));
  }

  /** Width on paper. */
  public String printedWidth() {
    return Plan.plain(width + 2 * OVERLAP) + "mm";
  }

  /** Height on paper. */
  public String printedHeight() {
    return Plan.plain(height + 2 * OVERLAP) + "mm";
  }

  /** A cross at each corner, where those of its neighbours lie. */
  public String marks() {
    var path = new StringBuilder();
    for (var right : new double[] {left, left + width}) {
      for (var down : new double[] {top, top + height}) {
        path.append("M%s %sh%sM%s %sv%s"
            .formatted(
                Plan.plain(right - OVERLAP),
                Plan.plain(down),
                Plan.plain(2 * OVERLAP),
                Plan.plain(right),
                Plan.plain(down - OVERLAP),
                Plan.plain(2 * OVERLAP)));
      }
    }
    return path.toString();
  }

  /** A bar to check the print by. */
  public String bar() {
    return "M%s %sh%s"
        .formatted(
            Plan.plain(left + OVERLAP),
            Plan.plain(top + height - OVERLAP),
            Plan.plain(PlanMeasures.BAR_MM));
  }
}
