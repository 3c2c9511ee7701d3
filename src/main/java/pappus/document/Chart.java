package pappus.document;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A picture of numbers, with a table that says the same.
 *
 * <p>Why: src/site/markdown/decisions.md#a-chart-is-drawn-for-the-room-it-has
 *
 * @param id its name in the page: small letters, digits and hyphens
 * @param title what it shows
 * @param reading what to see in it, in a sentence
 * @param content how it is drawn, for the page's script
 * @param table the same in a table
 */
public record Chart(
    String id, String title, String reading, Map<String, Object> content, Table table) {
  public Chart {
    if (!id.matches("[a-z][a-z0-9-]*")) {
      throw new IllegalArgumentException(
          "id must be small letters, digits and hyphens, but is " + id);
    }
    content = Collections.unmodifiableMap(new LinkedHashMap<>(content));
  }

  /**
   * One direction of a chart.
   *
   * @param label what is counted along it
   * @param unit of its numbers; empty for none
   * @param decimals told of a single point
   * @param fromZero whether zero has to be seen
   * @param ticks words in place of numbers, for points at 0, 1, …; empty for numbers
   */
  public record Axis(
      String label, String unit, int decimals, boolean fromZero, List<String> ticks) {
    public Axis {
      ticks = List.copyOf(ticks);
    }

    public static Axis of(String label, String unit, int decimals) {
      return new Axis(label, unit, decimals, false, List.of());
    }

    public static Axis fromZero(String label, String unit, int decimals) {
      return new Axis(label, unit, decimals, true, List.of());
    }

    private Map<String, Object> content() {
      var content = new LinkedHashMap<String, Object>();
      content.put("label", label);
      content.put("unit", unit);
      content.put("decimals", decimals);
      content.put("fromZero", fromZero);
      if (!ticks.isEmpty()) {
        content.put("ticks", ticks);
      }
      return content;
    }
  }

  /** How points are drawn. */
  public enum Style {
    LINE("line"),
    LINE_AND_POINTS("line-points"),
    /** Each value holds up to the next point, as with a limit that is loosened. */
    STEPS("steps"),
    /** Each value holds back to the point before, as with a limit that is tightened. */
    STEPS_BACK("steps-back"),
    POINTS("points"),
    FAINT_POINTS("faint-points");

    private final String key;

    Style(String key) {
      this.key = key;
    }
  }

  /**
   * One point.
   *
   * @param name told when it is pointed at; empty: that of its series
   * @param tag written beside it; empty for none
   */
  public record Point(double x, double y, String name, String tag) {
    public static Point of(double x, double y) {
      return new Point(x, y, "", "");
    }
  }

  /** Points that belong together. */
  public record Series(String name, Style style, List<Point> points) {
    public Series {
      points = List.copyOf(points);
    }

    private Map<String, Object> content() {
      var content = new LinkedHashMap<String, Object>();
      content.put("name", name);
      content.put("style", style.key);
      content.put("points", points.stream().map(Series::cells).toList());
      return content;
    }

    /** x, y, then name and tag where there are any: hundreds of points have no room for field names. */
    private static List<Object> cells(Point point) {
      var cells = new ArrayList<Object>(List.of(rounded(point.x), rounded(point.y)));
      if (!point.name.isEmpty() || !point.tag.isEmpty()) {
        cells.add(point.name);
      }
      if (!point.tag.isEmpty()) {
        cells.add(point.tag);
      }
      return cells;
    }
  }

  /**
   * A line right through the chart.
   *
   * @param across whether it runs from left to right, at a height; else it stands upright
   */
  public record Mark(double at, String label, boolean across) {
    public static Mark upright(double at, String label) {
      return new Mark(at, label, false);
    }

    public static Mark across(double at, String label) {
      return new Mark(at, label, true);
    }
  }

  /** A share of a whole. */
  public record Share(String name, double value) {}

  /**
   * What was expected of something, and what it came to.
   *
   * @param low low end of what was expected
   * @param high high end
   * @param at what it came to
   * @param doubt of that
   */
  public record Beside(String name, double low, double high, double at, double doubt) {}

  /** Points and lines between two axes. */
  public static Chart xy(
      String id,
      String title,
      String reading,
      Axis x,
      Axis y,
      List<Series> series,
      List<Mark> marks,
      Table table) {
    var content = head("xy", title, reading, x);
    content.put("y", y.content());
    content.put("series", series.stream().map(Series::content).toList());
    content.put("marks", marks(marks));
    return new Chart(id, title, reading, content, table);
  }

  /** One bar of shares, with the doubt of their sum. */
  public static Chart bar(
      String id,
      String title,
      String reading,
      Axis x,
      List<Share> shares,
      double total,
      double doubt,
      List<Mark> marks,
      Table table) {
    var content = head("bar", title, reading, x);
    content.put(
        "bars",
        shares.stream()
            .map(share -> Map.of("name", share.name, "value", rounded(share.value)))
            .map(TreeMap::new)
            .toList());
    content.put("total", rounded(total));
    content.put("doubt", rounded(doubt));
    content.put("marks", marks(marks));
    return new Chart(id, title, reading, content, table);
  }

  /** One line a thing: what was expected of it, and what it came to. */
  public static Chart beside(
      String id,
      String title,
      String reading,
      Axis x,
      List<Beside> rows,
      List<Mark> marks,
      Table table) {
    var content = head("rows", title, reading, x);
    content.put("rows", rows);
    content.put("marks", marks(marks));
    return new Chart(id, title, reading, content, table);
  }

  /** How it is drawn, and its table, which the page's script writes when it is asked for. */
  Map<String, Object> withNumbers() {
    var all = new LinkedHashMap<>(content);
    all.put(
        "columns",
        table.columns().stream()
            .map(column -> List.of(column.title(), column.isNumber()))
            .toList());
    all.put("numbers", table.rows().stream().map(table::shown).toList());
    return all;
  }

  private static Map<String, Object> head(String kind, String title, String reading, Axis x) {
    var content = new LinkedHashMap<String, Object>();
    content.put("kind", kind);
    content.put("title", title);
    content.put("reading", reading);
    content.put("x", x.content());
    return content;
  }

  private static List<Map<String, Object>> marks(List<Mark> marks) {
    return marks.stream()
        .map(mark -> {
          Map<String, Object> content = new LinkedHashMap<>();
          content.put("at", rounded(mark.at));
          content.put("label", mark.label);
          content.put("across", mark.across);
          return content;
        })
        .toList();
  }

  /** Five digits are more than any screen shows. */
  public static double rounded(double value) {
    return value == 0
        ? 0
        : new BigDecimal(value)
            .round(new MathContext(6, RoundingMode.HALF_EVEN))
            .doubleValue();
  }
}
