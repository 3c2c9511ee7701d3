package pappus.answers.offer;

import java.util.ArrayList;
import java.util.List;
import pappus.document.Table;
import pappus.offer.Offer;
import pappus.offer.ShopSettings;
import pappus.quantity.Money;

/** An offer as a shop's till takes it. */
final class OfferTill {
  private final Offer offer;
  private final OfferReport report;
  private final ShopSettings settings;

  /**
   * @param report the same in words
   */
  OfferTill(Offer offer, OfferReport report) {
    this.offer = offer;
    this.report = report;
    this.settings = offer.shop().settings();
  }

  /** One line a part and build, then what the shop adds. */
  Table table() {
    var rows = new ArrayList<List<Object>>();
    var percent = settings.tax() == null
        ? ""
        : settings.tax().percent().stripTrailingZeros().toPlainString();
    var included = settings.tax() == null ? "" : settings.pricesIncludeTax() ? "yes" : "no";
    for (var i = 0; i < offer.builds().size(); i++) {
      for (var line : offer.builds().get(i).standInLines()) {
        rows.add(List.of(
            report.letter(i),
            line.part().id(),
            line.part().name(),
            line.pieces(),
            OfferReport.unit(line),
            line.units(),
            line.spareUnits(),
            line.part().price().amount().toPlainString(),
            Money.sum(line.cents()).toPlainString(),
            settings.currency(),
            percent,
            included,
            OfferReport.standing(line)));
      }
      for (var extra : settings.added()) {
        var amount = extra.price().amount().toPlainString();
        rows.add(List.of(
            report.letter(i),
            "",
            extra.text(),
            "",
            "",
            1,
            0,
            amount,
            amount,
            settings.currency(),
            percent,
            included,
            ""));
      }
    }
    return new Table(
        List.of(
            Table.Column.text("build", "build"),
            Table.Column.text("id", "id"),
            Table.Column.text("part", "name"),
            Table.Column.number("pieces", "pieces", 0),
            Table.Column.text("sold", "unit"),
            Table.Column.number("units", "units", 0),
            Table.Column.number("of them spare", "spare_units", 0),
            Table.Column.text("each", "price_each"),
            Table.Column.text("price", "price"),
            Table.Column.text("", "currency"),
            Table.Column.text("tax %", "tax_percent"),
            Table.Column.text("tax in the price", "tax_included"),
            Table.Column.text("stock", "stock")),
        rows);
  }
}
