package pappus.offer;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import pappus.catalog.ShelfEntry;
import pappus.files.CsvTable;
import pappus.files.Problem;
import pappus.files.Problems;
import pappus.files.Shown;
import pappus.files.Source;
import pappus.quantity.Money;
import pappus.quantity.Require;

/**
 * What a shop exports of its stock: columns id, stock in selling units, and price of one selling unit. Cells of other
 * columns, such as what the shop paid, are never looked at.
 */
public final class StockList {
  private static final List<String> REQUIRED = List.of("id", "stock");
  private static final String PRICE = "price";
  private static final Pattern PRICED = Pattern.compile("price \\(([a-z]{3})\\)");
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
    var columns = columns(table, currency, source, problems);
    if (!columns.keySet().containsAll(REQUIRED)) {
      return entries;
    }
    var id = Objects.requireNonNull(columns.get("id"));
    var stock = Objects.requireNonNull(columns.get("stock"));
    var price = columns.get(PRICE);
    var lines = new HashMap<String, Integer>();
    for (var row : table.rows()) {
      var bad = new Problems();
      var part = table.text(row, id, bad);
      var units = table.number(row, stock, 0, MOST_UNITS, bad);
      var each = price == null || table.isBlank(row, price)
          ? null
          : price(table, row, price, currency, source, bad);
      if (bad.isEmpty() && units != Math.rint(units)) {
        bad.add(new Problem(
            source.name(),
            row.line(),
            "stock must be a whole number of selling units, but is %s."
                .formatted(Require.plain(units))));
      }
      twice(part, row.line(), lines, source, bad);
      if (bad.isEmpty()) {
        entries.add(new ShelfEntry(part, null, (int) units, each, null));
      }
      problems.addAll(bad);
    }
    return entries;
  }

  /** Whether any price stands in it: without one, those of the catalogue are taken. */
  public static boolean hasPrices(List<ShelfEntry> entries) {
    return entries.stream().anyMatch(entry -> entry.price() != null);
  }

  /** Titles as they stand in the file, by what they are: in any capitals, the price with or without its currency. */
  private static Map<String, String> columns(
      CsvTable table, String currency, Source source, Problems problems) {
    var line = table.header().orElseThrow().line();
    var columns = new TreeMap<String, String>();
    for (var title : table.columns()) {
      var word = title.toLowerCase(Locale.ROOT);
      var unit = PRICED.matcher(word);
      var what = unit.matches() ? PRICE : word;
      if (!List.of("id", "stock", PRICE).contains(what)) {
        continue;
      }
      if (unit.matches() && !unit.group(1).equalsIgnoreCase(currency)) {
        problems.add(new Problem(
            source.name(),
            line,
            "price must be in the currency of the catalogue, %s, but is in %s."
                .formatted(currency, unit.group(1).toUpperCase(Locale.ROOT))));
      }
      if (columns.put(what, title) != null) {
        problems.add(new Problem(
            source.name(), line, "must have one column %s, but has two.".formatted(what)));
      }
    }
    for (var required : REQUIRED) {
      if (!columns.containsKey(required)) {
        problems.add(new Problem(
            source.name(),
            line,
            "must have one column %s, but has none among %s."
                .formatted(
                    required,
                    table.columns().stream().map(Shown::text).collect(Collectors.joining(", ")))));
      }
    }
    return columns;
  }

  private static Money price(
      CsvTable table,
      CsvTable.Row row,
      String column,
      String currency,
      Source source,
      Problems problems) {
    var amount = BigDecimal.valueOf(table.number(row, column, 0, MOST_PRICE, problems));
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
