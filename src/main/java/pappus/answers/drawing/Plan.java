package pappus.answers.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pappus.document.Numbered;
import pappus.quantity.Require;

/**
 * A drawing to scale; everything in mm from its upper left corner.
 *
 * @param width of the drawing
 * @param height of the drawing
 * @param scale how many times larger it is printed: 1 for true to scale, 0.5 for half
 * @param title from where it is seen
 * @param caption what to know to read it
 * @param circles drawn first
 * @param boxes drawn next
 * @param lines drawn next
 * @param words written on top
 * @param key what the numbers in the drawing stand for, from 1
 * @param distances what is measured in it, in sentences
 */
public record Plan(
    double width,
    double height,
    double scale,
    String title,
    String caption,
    List<Circle> circles,
    List<Box> boxes,
    List<Line> lines,
    List<Word> words,
    List<String> key,
    String distances) {
  private static final String ARM = "arm";
  private static final String TAG = "tag";

  public Plan {
    circles = List.copyOf(circles);
    boxes = List.copyOf(boxes);
    lines = List.copyOf(lines);
    words = List.copyOf(words);
    key = List.copyOf(key);
  }

  /** Lines and areas of one look, as a path of SVG; the look is a class of the style sheet. */
  public record Shape(String look, String path) {}

  /** A circle; its look is a class of the style sheet. */
  public record Circle(double x, double y, double radius, String look) {
    private String path() {
      var round = "a%s %s 0 1 0 %s 0".formatted(plain(radius), plain(radius), "%s");
      return "M%s %s".formatted(plain(x - radius), plain(y))
          + round.formatted(plain(2 * radius))
          + round.formatted(plain(-2 * radius));
    }
  }

  /** A box, turned by so many degrees about its middle. */
  public record Box(double x, double y, double width, double height, double degrees, String look) {
    private String path() {
      var turn = Math.toRadians(degrees);
      var path = new StringBuilder();
      for (var corner : new int[][] {{-1, -1}, {1, -1}, {1, 1}, {-1, 1}}) {
        var right = corner[0] * width / 2;
        var down = corner[1] * height / 2;
        path.append(path.isEmpty() ? "M" : "L")
            .append(
                plain(x + width / 2 + right * StrictMath.cos(turn) - down * StrictMath.sin(turn)))
            .append(' ')
            .append(
                plain(y + height / 2 + right * StrictMath.sin(turn) + down * StrictMath.cos(turn)));
      }
      return path.append('Z').toString();
    }
  }

  /** A straight line. */
  public record Line(double x1, double y1, double x2, double y2, String look) {
    private String path() {
      return "M%s %sL%s %s".formatted(plain(x1), plain(y1), plain(x2), plain(y2));
    }
  }

  /** A text; its anchor is start, middle or end. */
  public record Word(double x, double y, String text, String anchor, String look) {}

  /** A length as SVG has it. */
  public static String plain(double millimetres) {
    return Require.plain(Math.rint(millimetres * 100) / 100);
  }

  /** Width on paper. */
  public String printedWidth() {
    return plain(width * scale) + "mm";
  }

  /** Height on paper. */
  public String printedHeight() {
    return plain(height * scale) + "mm";
  }

  /** What of the drawing is seen: all of it. */
  public String view() {
    return "0 0 %s %s".formatted(plain(width), plain(height));
  }

  /** What is drawn below the words, from the lowest to the uppermost; what is of one look together. */
  public List<Shape> shapes() {
    var shapes = new LinkedHashMap<String, StringBuilder>();
    lines.stream()
        .filter(line -> line.look.equals(ARM))
        .forEach(line -> add(shapes, line.look, line.path()));
    circles.stream()
        .filter(circle -> !circle.look.equals(TAG))
        .forEach(circle -> add(shapes, circle.look, circle.path()));
    boxes.forEach(box -> add(shapes, box.look, box.path()));
    lines.stream()
        .filter(line -> !line.look.equals(ARM))
        .forEach(line -> add(shapes, line.look, line.path()));
    circles.stream()
        .filter(circle -> circle.look.equals(TAG))
        .forEach(circle -> add(shapes, circle.look, circle.path()));
    return shapes.entrySet().stream()
        .map(each -> new Shape(each.getKey(), each.getValue().toString()))
        .toList();
  }

  private static void add(Map<String, StringBuilder> shapes, String look, String path) {
    shapes.computeIfAbsent(look, fresh -> new StringBuilder()).append(path);
  }

  /** The sheets on which it prints true to scale; empty where it does so whole. */
  public List<Tile> tiles() {
    return Tile.of(this);
  }

  /** For those who cannot see it. */
  public String description() {
    return title + ". " + String.join(" ", key) + " " + distances;
  }

  /**
   * For the page's script.
   *
   * @param texts of the page
   */
  public Map<String, Object> content(Numbered texts) {
    var content = new LinkedHashMap<String, Object>();
    content.put("view", view());
    content.put("width", printedWidth());
    content.put("height", printedHeight());
    content.put("title", texts.of(title));
    content.put(
        "caption",
        texts.of(scale < 1 ? caption + " The bench sheet has it in its true size, too." : caption));
    var drawn = new ArrayList<Object>();
    for (var shape : shapes()) {
      var rounds = rounds(shape.look);
      drawn.add(rounds.size() > 1 ? rounds : List.of(shape.look, shape.path));
    }
    content.put("shapes", drawn);
    content.put(
        "words",
        words.stream()
            .map(word -> List.of(
                Math.rint(word.x * 10) / 10,
                Math.rint(word.y * 10) / 10,
                word.text,
                word.anchor,
                word.look))
            .toList());
    content.put("key", key);
    content.put("distances", distances);
    return content;
  }

  /** Circles of one look in few letters: the look, then radius and middle of each. */
  private List<Object> rounds(String look) {
    var rounds = new ArrayList<Object>(List.of(look));
    circles.stream().filter(circle -> circle.look.equals(look)).forEach(circle -> {
      rounds.add(Math.rint(circle.radius * 100) / 100);
      rounds.add(Math.rint(circle.x * 100) / 100);
      rounds.add(Math.rint(circle.y * 100) / 100);
    });
    return rounds;
  }
}
