package pappus.document;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import pappus.files.Shown;

/**
 * A table for a terminal, a spreadsheet or a page.
 *
 * @param columns from left to right
 * @param rows cells of texts and numbers, as many as columns; an empty text for none
 */
public record Table(List<Column> columns, List<List<Object>> rows) {
  private static final int NARROWEST_TEXT = 24;
  private static final String GAP = "  ";

  public Table {
    columns = List.copyOf(columns);
    rows = rows.stream().map(List::copyOf).toList();
  }

  /**
   * One column.
   *
   * @param title for people
   * @param key for spreadsheets: small letters, with the unit
   * @param isNumber whether it is set to the right
   * @param told its numbers as a terminal and a page tell them
   */
  public record Column(String title, String key, boolean isNumber, DoubleFunction<String> told) {
    /** Numbers with so many decimals. */
    public static Column number(String title, String key, int decimals) {
      return number(title, key, value -> Spoken.number(value, decimals));
    }

    /** Numbers that are told in a way of their own. */
    public static Column number(String title, String key, DoubleFunction<String> told) {
      return new Column(title, key, true, told);
    }

    public static Column text(String title, String key) {
      return new Column(title, key, false, value -> Spoken.number(value, 0));
    }

    private String shown(Object cell) {
      return cell instanceof Number number
          ? told.apply(number.doubleValue())
          : Shown.safe(cell.toString());
    }
  }

  /** This table without its last column. */
  public Table withoutLast() {
    return new Table(
        columns.subList(0, columns.size() - 1),
        rows.stream().map(row -> row.subList(0, row.size() - 1)).toList());
  }

  /** Every digit, with titles that say the unit. */
  public String csv() {
    return CsvText.of(columns.stream().map(Column::key).toList(), rows);
  }

  /** Rounded as a person reads it. */
  public String markdown() {
    var shown = new ArrayList<List<Object>>();
    for (var row : rows) {
      shown.add(List.copyOf(shown(row)));
    }
    return MarkdownText.of(
        columns.stream().map(Column::title).map(Shown::safe).toList(),
        columns.stream().map(Column::isNumber).toList(),
        shown);
  }

  /** The cells of a row rounded as a person reads them, with nothing in them that a terminal would obey. */
  public List<String> shown(List<Object> row) {
    var shown = new ArrayList<String>();
    for (var i = 0; i < columns.size(); i++) {
      shown.add(columns.get(i).shown(row.get(i)));
    }
    return shown;
  }

  /**
   * Lines for a terminal. The last column goes on below where it is too long, or has lines of its own where the
   * others leave it no room.
   */
  public List<String> lines(int width) {
    var titles = columns.stream().map(Column::title).map(Shown::safe).toList();
    var all = rows.stream().map(this::shown).toList();
    var widths = new ArrayList<Integer>();
    for (var i = 0; i < columns.size() - 1; i++) {
      var column = i;
      widths.add(Math.max(
          titles.get(i).length(),
          all.stream().mapToInt(row -> row.get(column).length()).max().orElse(0)));
    }
    var taken = widths.stream().mapToInt(one -> one + GAP.length()).sum();
    var lines = new ArrayList<String>();
    add(titles, widths, taken, width, lines);
    all.forEach(row -> add(row, widths, taken, width, lines));
    return lines;
  }

  private void add(
      List<String> cells, List<Integer> widths, int taken, int width, List<String> lines) {
    var line = new StringBuilder();
    for (var i = 0; i < widths.size(); i++) {
      var blanks = " ".repeat(widths.get(i) - cells.get(i).length());
      line.append(columns.get(i).isNumber() ? blanks + cells.get(i) : cells.get(i) + blanks)
          .append(GAP);
    }
    var last = cells.get(cells.size() - 1);
    if (width - taken >= NARROWEST_TEXT || last.length() <= width - taken) {
      lines.addAll(Wrapped.lines((line + last).stripTrailing(), taken, width));
    } else {
      lines.add(line.toString().stripTrailing());
      if (!last.isEmpty()) {
        lines.addAll(Wrapped.lines("    " + last, 4, width));
      }
    }
  }
}
