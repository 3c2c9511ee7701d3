package pappus.answers.ranking;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import pappus.answers.build.BuildLines;
import pappus.assessment.Assessment;
import pappus.assessment.Assessor;
import pappus.assessment.Limit;
import pappus.assessment.Margins;
import pappus.document.Spoken;
import pappus.document.Table;

/** What a page lists of one build. */
public final class BuildTables {
  private BuildTables() {}

  /** What it is bought from, with all that is bought beside it. */
  static Table parts(Assessment build) {
    var currency = BuildLines.currency(build);
    var hasSpares = build.outlay().isPresent();
    var bought = build.outlay().orElse(build.cost());
    var rows = new ArrayList<List<Object>>();
    for (var line : bought.lines()) {
      var row = new ArrayList<Object>(
          List.of(line.label(), line.part().name(), line.part().id(), line.pieces()));
      if (hasSpares) {
        row.add(line.spares());
      }
      row.add(line.cents() / 100.0);
      rows.add(row);
    }
    for (var own : bought.own()) {
      rows.add(List.of(own.text(), "", "", "", "", own.cents() / 100.0));
    }
    var total = new ArrayList<Object>(List.of("all of it", "", "", ""));
    if (hasSpares) {
      total.add("");
    }
    total.add(bought.cents() / 100.0);
    rows.add(total);
    var columns = new ArrayList<>(List.of(
        Table.Column.text("what", "what"),
        Table.Column.text("part", "part"),
        Table.Column.text("id", "id"),
        Table.Column.number("pieces", "pieces", 0)));
    if (hasSpares) {
      columns.add(Table.Column.number("spare", "spares", 0));
    }
    columns.add(Table.Column.number(currency, "price", 2));
    return new Table(columns, rows);
  }

  /** Room to what bounds it, the least share of it first. */
  static List<Room> rooms(Assessment build, Assessor assessor) {
    return Margins.of(build, assessor).stream()
        .sorted(Comparator.comparingDouble(Limit::relativeMargin))
        .map(limit -> new Room(
            limit.label(),
            number(limit, limit.value()),
            (limit.most() ? "at most " : "at least ") + number(limit, limit.bound()),
            number(limit, limit.margin()),
            limit.unit(),
            100 * limit.relativeMargin()))
        .toList();
  }

  private static String number(Limit limit, double value) {
    return Spoken.number(value, limit.isCount() ? 0 : Math.abs(value) >= 100 ? 1 : 2);
  }

  /**
   * How a build stands to one thing that bounds it.
   *
   * @param what it is
   * @param has what the build has of it
   * @param allowed what is allowed
   * @param left what is left
   * @param unit of all three
   * @param percent what is left of what is allowed
   */
  public record Room(
      String what, String has, String allowed, String left, String unit, double percent) {
    /** Of a bar of a hundred: all that is left of what is allowed, at most the whole. */
    public String bar() {
      return Spoken.number(Math.max(0, Math.min(100, percent)), 0);
    }

    /** In words. */
    public String share() {
      return Spoken.number(percent, percent < 10 ? 1 : 0) + " %";
    }
  }
}
