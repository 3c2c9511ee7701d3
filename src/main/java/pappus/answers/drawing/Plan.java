package pappus.answers.drawing;

import java.util.List;
import pappus.quantity.Require;

/**
 * A drawing to scale from above, forward up; everything in mm from its upper left corner.
 *
 * @param width of the drawing
 * @param height of the drawing
 * @param halves how many times smaller it is printed: 1 for true to scale, 2 for half
 * @param circles drawn first
 * @param boxes drawn next
 * @param lines drawn next
 * @param words written on top
 * @param key what the numbers in the drawing stand for, from 1
 * @param description for those who cannot see it
 */
public record Plan(
    double width,
    double height,
    int halves,
    List<Circle> circles,
    List<Box> boxes,
    List<Line> lines,
    List<Word> words,
    List<String> key,
    String description) {
  public Plan {
    circles = List.copyOf(circles);
    boxes = List.copyOf(boxes);
    lines = List.copyOf(lines);
    words = List.copyOf(words);
    key = List.copyOf(key);
  }

  /** A circle; its look is a class of the style sheet. */
  public record Circle(double x, double y, double radius, String look) {}

  /** A box, turned by so many degrees about its middle. */
  public record Box(double x, double y, double width, double height, double degrees, String look) {
    /** For the drawing. */
    public String turn() {
      return "rotate(%s %s %s)"
          .formatted(plain(degrees), plain(x + width / 2), plain(y + height / 2));
    }
  }

  /** A straight line. */
  public record Line(double x1, double y1, double x2, double y2, String look) {}

  /** A text; its anchor is start, middle or end. */
  public record Word(double x, double y, String text, String anchor, String look) {}

  /** A length as SVG has it. */
  public static String plain(double millimetres) {
    return Require.plain(Math.rint(millimetres * 100) / 100);
  }

  /** Width on paper. */
  public String printedWidth() {
    return plain(width / halves) + "mm";
  }

  /** Height on paper. */
  public String printedHeight() {
    return plain(height / halves) + "mm";
  }

  /** What of the drawing is seen: all of it. */
  public String view() {
    return "0 0 %s %s".formatted(plain(width), plain(height));
  }
}
