package pappus.answers.weighing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import pappus.answers.build.Cautions;
import pappus.assessment.Assessor;
import pappus.document.Chart;
import pappus.document.Chart.Axis;
import pappus.document.Chart.Beside;
import pappus.document.Chart.Mark;
import pappus.document.FiguresPage;
import pappus.document.Table;
import pappus.doubt.Doubts;
import pappus.reliance.Doubt;
import pappus.reliance.Reliance;
import pappus.weighing.StyleFit;
import pappus.weighing.WeighIn;

/** Estimate against scale and flights, in a picture. */
public final class WeighPage {
  private WeighPage() {}

  /**
   * The page.
   *
   * @param report the same in words and tables
   * @param written names of the files that were written
   * @param assessor who judges how sure the estimate of a flight is
   * @param tool its version, told at the foot
   */
  public static String of(
      WeighIn result, WeighReport report, List<String> written, Assessor assessor, String tool) {
    var tables = new LinkedHashMap<String, Table>();
    tables.put("Every number", report.everything());
    var said = report.said(written);
    return FiguresPage.of(
        said.get(0) + ": weighed and flown",
        said,
        List.of(chart(result, powerDoubt(result, assessor))),
        tables,
        List.of(Cautions.general()),
        tool);
  }

  /** Of what a flight takes from the pack: that of its power, one standard deviation, share; 0 without flights. */
  private static double powerDoubt(WeighIn result, Assessor assessor) {
    return result.fits().isEmpty()
        ? 0
        : new Doubts(assessor).band(result.assessment()).halfWidthWithout(Doubt.CAPACITY)
            / Reliance.TENTH;
  }

  private static Chart chart(WeighIn result, double powerDoubt) {
    var rows = new ArrayList<Beside>();
    for (var one : result.weighed()) {
      rows.add(beside(
          WeighWords.what(one),
          one.estimatedGrams(),
          one.estimatedDoubt(),
          one.measuredGrams(),
          one.measuredDoubt()));
    }
    for (var fit : result.fits()) {
      var number = 0;
      for (var flight : fit.flights()) {
        number++;
        var charged = flight.row().chargedMilliampHours();
        rows.add(beside(
            "charge of %s flight %s".formatted(fit.style(), number),
            flight.computedMilliampHours(),
            powerDoubt * flight.computedMilliampHours(),
            charged,
            StyleFit.CHARGER * charged));
      }
    }
    var cells = new ArrayList<List<Object>>();
    rows.forEach(
        row -> cells.add(List.of(row.name(), row.low(), row.high(), row.at(), row.doubt())));
    return Chart.beside(
        "beside",
        "What was measured, in percent of what was expected",
        "The bars: what was expected, one standard deviation each way; within two, both agree. The diamonds: what it came to, with the doubt of scale or charger.",
        Axis.of("measured over expected", "%", 1),
        rows,
        List.of(Mark.upright(100, "as expected")),
        new Table(
            List.of(
                Table.Column.text("what", "what"),
                Table.Column.number("expected from %", "low_percent", 1),
                Table.Column.number("to %", "high_percent", 1),
                Table.Column.number("measured %", "measured_percent", 1),
                Table.Column.number("± %", "doubt_percent", 1)),
            cells));
  }

  /** All of it in percent of what was expected. */
  private static Beside beside(
      String name, double expected, double doubt, double measured, double measuredDoubt) {
    var percent = 100 / expected;
    return new Beside(
        name,
        Chart.rounded(percent * (expected - doubt)),
        Chart.rounded(percent * (expected + doubt)),
        Chart.rounded(percent * measured),
        Chart.rounded(percent * measuredDoubt));
  }
}
