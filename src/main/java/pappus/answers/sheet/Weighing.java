package pappus.answers.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pappus.answers.build.BuildLines;
import pappus.answers.build.OutlayWords;
import pappus.assessment.Assessment;
import pappus.assessment.MassTable;
import pappus.document.Spoken;
import pappus.document.Table;
import pappus.fitting.Hardware;
import pappus.part.Battery;
import pappus.part.Part;
import pappus.part.Role;
import pappus.quantity.Money;
import pappus.weighing.MassRow;
import pappus.weighing.WeighIn;

/** What everything should weigh, with room for what the scale says. */
final class Weighing {
  /** Where spares stand among the columns of what is bought. */
  private static final int SPARES = 2;

  private final Assessment assessment;

  Weighing(Assessment assessment) {
    this.assessment = assessment;
  }

  /** Every line of the mass table, then the whole. */
  SheetSection section() {
    var rows = new ArrayList<List<Object>>();
    for (var line : assessment.mass().lines()) {
      rows.add(List.of(
          line.label(),
          line.grams(),
          line.doubtGrams(),
          "",
          line.pieces(),
          line.grams() / line.pieces(),
          line.part().map(Part::id).orElse("")));
    }
    rows.add(whole("dry: all but pack and payload", WeighIn.dry(assessment)));
    rows.add(whole("pack, with leads and plug", pack()));
    rows.add(whole("ready to fly", assessment.mass()));
    return new SheetSection(
        "weighing",
        "On the scale: what each line may weigh, and what it does",
        new Table(
            List.of(
                Table.Column.text("what", "what"),
                Table.Column.number("may weigh, g", "expected_g", 1),
                Table.Column.number("±", "doubt_g", 1),
                Table.Column.text("scale, g", "scale_g"),
                Table.Column.number("pieces", "pieces", 0),
                Table.Column.number("g each", "each_g", 2),
                Table.Column.text("part", "part")),
            rows),
        List.of(
            BenchWords.WEIGHING,
            BenchWords.cap(assessment.fitting().scenario(), assessment.mass().grams())));
  }

  private static List<Object> whole(String what, MassTable table) {
    return List.of(what, table.grams(), table.doubtGrams(), "", 1, table.grams(), "");
  }

  private MassTable pack() {
    return MassTable.of(assessment.mass().lines().stream()
        .filter(line -> isPack(line) || line.label().equals(Hardware.PACK_LEADS))
        .toList());
  }

  private static boolean isPack(MassTable.Line line) {
    return line.label().equals(Role.BATTERY.label());
  }

  /**
   * What {@code weigh --masses} reads once the grams are filled in: a row for each part, since it knows no others,
   * and for the whole. Pieces of one part that serve as several things lie on the scale together.
   */
  Table masses() {
    var grams = new LinkedHashMap<String, Double>();
    var pieces = new LinkedHashMap<String, Integer>();
    for (var line : assessment.mass().lines()) {
      line.part().ifPresent(part -> {
        pieces.merge(part.id(), line.pieces(), Integer::sum);
        // Nobody takes the leads off a pack to weigh it.
        var here = part instanceof Battery ? pack().grams() : line.grams();
        grams.merge(part.id(), here, Double::sum);
      });
    }
    var rows = new ArrayList<List<Object>>();
    pieces.forEach((id, count) -> rows.add(row(id, count, grams)));
    grams.put(MassRow.DRY, WeighIn.dry(assessment).grams());
    grams.put(MassRow.READY, assessment.mass().grams());
    rows.add(row(MassRow.DRY, 1, grams));
    rows.add(row(MassRow.READY, 1, grams));
    return new Table(
        List.of(
            Table.Column.text("what", "what"),
            Table.Column.text("grams", "grams"),
            Table.Column.number("pieces", "pieces", 0),
            Table.Column.text("step g", "step_g"),
            Table.Column.number("expected g", "expected_g", 1)),
        rows);
  }

  private static List<Object> row(String what, int pieces, Map<String, Double> grams) {
    var expected = Optional.ofNullable(grams.get(what)).orElse(0.0);
    return List.of(what, "", pieces, "", Double.parseDouble(Spoken.number(expected, 2)));
  }

  /**
   * What has to be bought, in whole selling units.
   *
   * @param planWith share of the estimate to plan with
   */
  SheetSection purchases(double planWith) {
    var bought = assessment.outlay().orElse(assessment.cost());
    var rows = new ArrayList<List<Object>>();
    for (var line : bought.lines()) {
      var part = line.part();
      rows.add(row(
          line.label(),
          line.pieces(),
          line.spares(),
          line.fromHand(),
          line.unitsToBuy(),
          BenchWords.unit(part),
          Money.sum(line.cents()),
          BenchTable.named(part)));
    }
    for (var own : bought.own()) {
      rows.add(row(own.text(), "", "", "", 1, "", Money.sum(own.cents()), ""));
    }
    var currency = rows.isEmpty() ? "" : BuildLines.currency(assessment);
    if (!rows.isEmpty()) {
      rows.add(row("in all", "", "", "", "", "", Money.sum(bought.cents()), ""));
    }
    var columns = new ArrayList<>(List.of(
        Table.Column.text("what", "what"),
        Table.Column.number("fly", "pieces", 0),
        Table.Column.number("at hand", "at_hand", 0),
        Table.Column.number("buy", "units", 0),
        Table.Column.text("unit", "unit"),
        Table.Column.number(currency, "price", 2),
        Table.Column.text("part", "part")));
    if (hasSpares()) {
      columns.add(SPARES, Table.Column.number("spare", "spares", 0));
    }
    return new SheetSection("purchases", "To buy", new Table(columns, rows), says(planWith));
  }

  private boolean hasSpares() {
    return assessment.outlay().isPresent();
  }

  /** Cells of a row, without that on spares where nothing is bought beside the build. */
  private List<Object> row(Object... cells) {
    var row = new ArrayList<Object>(List.of(cells));
    if (!hasSpares()) {
      row.remove(SPARES);
    }
    return row;
  }

  private List<String> says(double planWith) {
    var says = new ArrayList<String>();
    assessment.fitting().hardware().motorWire().flatMap(BenchWords::wireToBuy).ifPresent(says::add);
    says.addAll(OutlayWords.of(assessment, assessment.fitting().scenario(), planWith));
    if (!hasSpares()) {
      says.add(BenchWords.SPARES);
    }
    return says;
  }
}
