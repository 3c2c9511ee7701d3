package pappus.offer;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pappus.catalog.ShelfEntry;
import pappus.files.CsvTable;
import pappus.files.Problem;
import pappus.files.Problems;
import pappus.files.Shown;
import pappus.files.Source;
import pappus.quantity.Money;

/**
 * What a shop exports of its stock: columns id, stock in selling units, and price of one selling unit. Cells of other
 * columns, such as what the shop paid, are never looked at.
 */
public final class StockList {
  private static final List<String> REQUIRED = List.of("id", "stock");
  private static final String PRICE = "price";
  private static final int MOST_UNITS = 100_000;
  private static final double MOST_PRICE = 1_000_000;

  private StockList() {}

  /**
   * The rows of a file; what is wrong with it is added to the problems.
   *
   * @param currency of its prices
   */
  public static List<ShelfEntry> read(Source source, String currency, Problems problems) {
    var table = CsvTable.read(source, problems);
    var entries = new ArrayList<ShelfEntry>();
    if (table.header().isEmpty()) {
      return entries;
    }
    var line = table.header().get().line();
    for (var column : List.of("id", "stock", PRICE)) {
      var count = table.columns().stream().filter(column::equals).count();
      if (count > 1 || (count == 0 && REQUIRED.contains(column))) {
        problems.add(new Problem(
            source.name(),
            line,
            "must have one column %s, but has %s.".formatted(column, count == 0 ? "none" : count)));
      }
    }
    if (!REQUIRED.stream().allMatch(table::has)) {
      return entries;
    }
    var lines = new HashMap<String, Integer>();
    for (var row : table.rows()) {
      var bad = new Problems();
      var id = table.text(row, "id", bad);
      var stock = table.number(row, "stock", 0, MOST_UNITS, bad);
      var price = table.isBlank(row, PRICE) ? null : price(table, row, currency, source, bad);
      if (bad.isEmpty() && stock != Math.rint(stock)) {
        bad.add(new Problem(
            source.name(),
            row.line(),
            "stock must be a whole number of selling units, but is %s."
                .formatted(pappus.quantity.Require.plain(stock))));
      }
      twice(id, row.line(), lines, source, bad);
      if (bad.isEmpty()) {
        entries.add(new ShelfEntry(id, null, (int) stock, price, null));
      }
      problems.addAll(bad.sorted());
    }
    return entries;
  }

  private static Money price(
      CsvTable table, CsvTable.Row row, String currency, Source source, Problems problems) {
    var amount = BigDecimal.valueOf(table.number(row, PRICE, 0, MOST_PRICE, problems));
    if (amount.stripTrailingZeros().scale() > 2) {
      problems.add(new Problem(
          source.name(),
          row.line(),
          "price must have at most two decimals, but is %s.".formatted(amount.toPlainString())));
      return Money.ofCents(0, currency);
    }
    return new Money(amount, currency);
  }

  private static void twice(
      String id, int line, Map<String, Integer> lines, Source source, Problems problems) {
    var earlier = lines.putIfAbsent(id, line);
    if (earlier != null && !id.isEmpty()) {
      problems.add(new Problem(
          source.name(),
          line,
          "id must be there once, but %s is in line %s already."
              .formatted(Shown.text(id), earlier)));
    }
  }
}
