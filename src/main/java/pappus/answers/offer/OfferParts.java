package pappus.answers.offer;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.function.ToLongFunction;
import pappus.change.Swap;
import pappus.document.Table;
import pappus.offer.Offer;
import pappus.offer.OfferLine;
import pappus.offer.OfferedBuild;
import pappus.offer.Totals;

/** What offered builds are made from, in selling units: one row a part, whatever the builds that have it. */
final class OfferParts {
  /** Columns before those of the builds. */
  private static final int HEAD = 4;

  private final Offer offer;
  private final OfferReport report;
  private final List<OfferedBuild> builds;

  /**
   * @param report the same in words
   */
  OfferParts(Offer offer, OfferReport report) {
    this.offer = offer;
    this.report = report;
    this.builds = offer.builds();
  }

  /** With units alone. */
  Table units() {
    return table(false);
  }

  /** With what the units cost, what the shop adds, the tax, and the sum that is paid. */
  Table amounts() {
    return table(true);
  }

  private Table table(boolean isSummed) {
    var currency = offer.shop().settings().currency();
    var columns = new ArrayList<>(List.of(
        Table.Column.text("what", "what"),
        Table.Column.text("part", "part"),
        Table.Column.text("sold", "unit"),
        Table.Column.number(currency + " each", "price_each", 2)));
    for (var i = 0; i < builds.size(); i++) {
      var letter = report.letter(i);
      var key = letter.toLowerCase(Locale.ROOT);
      columns.add(Table.Column.number(letter, "units_" + key, 0));
      if (isSummed) {
        columns.add(Table.Column.number(currency + " " + letter, "price_" + key, 2));
      }
    }
    if (offer.isCounted()) {
      columns.add(Table.Column.text("stock", "stock"));
    }
    var rows = parts(isSummed, columns.size());
    if (isSummed) {
      addSums(rows, columns.size());
    }
    return new Table(columns, rows);
  }

  /** What serves as the same stands together, in the order of the first build that has it. */
  private List<List<Object>> parts(boolean isSummed, int columns) {
    var rows = new LinkedHashMap<String, List<Object>>();
    for (var i = 0; i < builds.size(); i++) {
      for (var line : builds.get(i).standInLines()) {
        var row = rows.computeIfAbsent(line.part().id(), id -> row(line, columns));
        var at = HEAD + (isSummed ? 2 : 1) * i;
        row.set(at, line.standing() == OfferLine.Standing.CUSTOMERS ? "yours" : line.units());
        if (isSummed) {
          row.set(at + 1, line.cents() / 100.0);
        }
        if (offer.isCounted()) {
          var standing = standing(line, builds.get(i));
          if (!standing.equals(OfferReport.standing(line))
              || line.standing() == OfferLine.Standing.SHORT) {
            row.set(columns - 1, standing);
          }
        }
      }
    }
    var byUse = new LinkedHashMap<Object, List<List<Object>>>();
    rows.values()
        .forEach(
            row -> byUse.computeIfAbsent(row.get(0), what -> new ArrayList<>()).add(row));
    return new ArrayList<>(byUse.values().stream().flatMap(List::stream).toList());
  }

  private List<Object> row(OfferLine line, int columns) {
    var row = blank(columns);
    row.set(0, line.what());
    row.set(1, line.part().name());
    row.set(2, OfferReport.unit(line));
    row.set(3, line.part().price().cents() / 100.0);
    if (offer.isCounted()) {
      row.set(columns - 1, OfferReport.standing(line));
    }
    return row;
  }

  private static List<Object> blank(int columns) {
    return new ArrayList<>(Collections.nCopies(columns, ""));
  }

  /** Whether it can be had, or what it stands in for. */
  private static String standing(OfferLine line, OfferedBuild build) {
    return build.taken().stream()
        .filter(one -> one.swap().map(Swap::part).filter(line.part()::equals).isPresent())
        .findFirst()
        .map(one -> "in place of " + one.line().part().name())
        .orElse(OfferReport.standing(line));
  }

  private void addSums(List<List<Object>> rows, int columns) {
    var settings = offer.shop().settings();
    for (var extra : settings.added()) {
      var row = blank(columns);
      row.set(0, extra.text());
      row.set(3, extra.cents() / 100.0);
      for (var i = 0; i < builds.size(); i++) {
        row.set(HEAD + 2 * i, 1);
        row.set(HEAD + 2 * i + 1, extra.cents() / 100.0);
      }
      rows.add(row);
    }
    var tax = settings.tax();
    if (tax == null) {
      rows.add(sum("in all", Totals::gross, columns));
      return;
    }
    var label =
        "%s %s %%".formatted(tax.label(), tax.percent().stripTrailingZeros().toPlainString());
    if (settings.pricesIncludeTax()) {
      rows.add(sum("in all", Totals::gross, columns));
      rows.add(sum("of that " + label, Totals::tax, columns));
    } else {
      rows.add(sum("without tax", Totals::net, columns));
      rows.add(sum(label, Totals::tax, columns));
      rows.add(sum("in all", Totals::gross, columns));
    }
  }

  private List<Object> sum(String what, ToLongFunction<Totals> cents, int columns) {
    var row = blank(columns);
    row.set(0, what);
    for (var i = 0; i < builds.size(); i++) {
      row.set(HEAD + 2 * i + 1, cents.applyAsLong(builds.get(i).deliveredTotals()) / 100.0);
    }
    return row;
  }
}
