package pappus.document;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

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
  /** Series that are columns of the table. */
  private static final String CURVES = "curves";

  private static final Set<String> FRAME = Set.of("kind", "title", "x", "y", CURVES);

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
    SMALL_POINTS("small-points");

    private final String key;

    Style(String key) {
      this.key = key;
    }
  }

  /**
   * One point.
   *
   * @param low what to count on, where y is what is expected; y itself where that is sure
   * @param name told when it is pointed at; empty: that of its series
   * @param isDoubted whether it is drawn hollow, since nobody should believe it
   */
  public record Point(double x, double y, double low, String name, boolean isDoubted) {
    public Point(double x, double y, String name) {
      this(x, y, y, name, false);
    }

    public static Point of(double x, double y) {
      return new Point(x, y, "");
    }
  }

  /**
   * Points that belong together.
   *
   * @param columns of the chart's table whose numbers, as they are told, are the points across and up; empty where the
   *     points are given
   */
  public record Series(String name, Style style, List<Point> points, List<Integer> columns) {
    public Series {
      points = List.copyOf(points);
      columns = List.copyOf(columns);
    }

    public Series(String name, Style style, List<Point> points) {
      this(name, style, points, List.of());
    }

    /** A line whose points are the rows of the chart's table, by the columns across and up. */
    public static Series ofTable(String name, int across, int up) {
      return new Series(name, Style.LINE, List.of(), List.of(across, up));
    }

    private boolean isOfTable() {
      return !columns.isEmpty();
    }

    private Map<String, Object> content() {
      var content = new LinkedHashMap<String, Object>();
      content.put("name", name);
      content.put("style", style.key);
      if (isOfTable()) {
        content.put("columns", columns);
      } else {
        content.put("points", points.stream().map(Series::cells).toList());
      }
      return content;
    }

    /** x, y, then name, low end and doubt where there are any: hundreds of points have no room for field names. */
    private static List<Object> cells(Point point) {
      var cells = new ArrayList<Object>(List.of(rounded(point.x), rounded(point.y)));
      var isUnsure = point.low < point.y || point.isDoubted;
      if (!point.name.isEmpty() || isUnsure) {
        cells.add(point.name);
      }
      if (isUnsure) {
        cells.add(rounded(point.low));
      }
      if (point.isDoubted) {
        cells.add(1);
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
    content.put(
        series.stream().allMatch(Series::isOfTable) ? CURVES : "series",
        series.stream().map(Series::content).toList());
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
        shares.stream().map(share -> List.of(share.name, rounded(share.value))).toList());
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

  /**
   * How it is drawn, and its table, which the page's script writes when it is asked for.
   *
   * @param frames what charts of a kind have alike: titles, axes, columns
   * @param rows of all tables that have words in them
   */
  Map<String, Object> packed(Numbered frames, Numbered rows) {
    var frame = new LinkedHashMap<String, Object>();
    var own = new LinkedHashMap<String, Object>();
    content.forEach((key, value) -> (FRAME.contains(key) ? frame : own).put(key, value));
    frame.put(
        "columns",
        table.columns().stream()
            .map(column -> List.of(column.title(), column.isNumber()))
            .toList());
    own.put("frame", frames.of(frame));
    own.put("numbers", numbers(rows));
    return own;
  }

  /** Where there are numbers alone, a text a column with blanks between them; else its rows by number. */
  private List<Object> numbers(Numbered rows) {
    var shown = table.rows().stream().map(table::shown).toList();
    if (!table.columns().stream().allMatch(Table.Column::isNumber)
        || shown.stream().flatMap(List::stream).anyMatch(cell -> cell.contains(" "))) {
      return shown.stream().<Object>map(rows::of).toList();
    }
    return IntStream.range(0, shown.isEmpty() ? 0 : table.columns().size())
        .<Object>mapToObj(
            column -> shown.stream().map(row -> row.get(column)).collect(Collectors.joining(" ")))
        .toList();
  }

  private static Map<String, Object> head(String kind, String title, String reading, Axis x) {
    var content = new LinkedHashMap<String, Object>();
    content.put("kind", kind);
    content.put("title", title);
    content.put("reading", reading);
    content.put("x", x.content());
    return content;
  }

  /** Each where it stands, what it is called, and whether it runs from left to right. */
  private static List<List<Object>> marks(List<Mark> marks) {
    return marks.stream()
        .map(mark -> List.<Object>of(rounded(mark.at), mark.label, mark.across))
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
