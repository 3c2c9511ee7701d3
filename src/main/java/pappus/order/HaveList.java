package pappus.order;

import java.util.ArrayList;
import java.util.List;
import pappus.catalog.Catalog;
import pappus.files.Closest;
import pappus.files.CsvTable;
import pappus.files.Problem;
import pappus.files.Problems;
import pappus.files.Shown;
import pappus.files.Source;
import pappus.quantity.Require;

/**
 * What came of an order: columns id and pieces, as lists to buy from have them. A part may stand in several rows; other
 * columns are never looked at.
 */
final class HaveList {
  private static final List<String> COLUMNS = List.of("id", "pieces");
  private static final int MOST_PIECES = 10_000;

  private HaveList() {}

  /** The rows of a file that have any piece; what is wrong with it is added to the problems. */
  static List<Order.Leftover> read(Source source, Catalog catalog, Problems problems) {
    var table = CsvTable.read(source, problems);
    var came = new ArrayList<Order.Leftover>();
    if (table.header().isEmpty()) {
      return came;
    }
    for (var column : COLUMNS) {
      if (!table.has(column)) {
        problems.add(new Problem(
            source.name(),
            table.header().get().line(),
            "must have one column %s, but has none among %s."
                .formatted(
                    column,
                    String.join(", ", table.columns().stream().map(Shown::text).toList()))));
        return came;
      }
    }
    for (var row : table.rows()) {
      var bad = new Problems();
      var id = table.text(row, "id", bad);
      var pieces = table.number(row, "pieces", 0, MOST_PIECES, bad);
      if (bad.isEmpty() && pieces != Math.rint(pieces)) {
        bad.add(new Problem(
            source.name(),
            row.line(),
            "pieces must be a whole number, but is %s.".formatted(Require.plain(pieces))));
      }
      if (bad.isEmpty() && catalog.part(id).isEmpty()) {
        bad.add(new Problem(
            source.name(),
            row.line(),
            "id must name a part of the catalogue, but is %s.%s"
                .formatted(Shown.text(id), Closest.advice(id, catalog.ids()))));
      }
      if (bad.isEmpty() && pieces > 0) {
        came.add(new Order.Leftover(id, (int) pieces));
      }
      problems.addAll(bad);
    }
    return came;
  }
}
