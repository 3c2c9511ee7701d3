package pappus.answers.weighing;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import pappus.answers.build.BuildWords;
import pappus.answers.build.Cautions;
import pappus.answers.build.Heading;
import pappus.answers.result.Document;
import pappus.answers.result.Run;
import pappus.answers.shape.NamedParts;
import pappus.document.Lines;
import pappus.document.Table;
import pappus.scenario.Scenario;
import pappus.weighing.FlightFit;
import pappus.weighing.StyleFit;
import pappus.weighing.WeighIn;

/** Estimate against scale and flights, for a terminal, a machine or to paste elsewhere. */
public final class WeighReport {
  private final Scenario scenario;
  private final WeighIn result;

  public WeighReport(Scenario scenario, WeighIn result) {
    this.scenario = scenario;
    this.result = result;
  }

  private Table masses() {
    var rows = new ArrayList<List<Object>>();
    for (var one : result.weighed()) {
      rows.add(List.of(
          one.estimatedGrams(),
          one.estimatedDoubt(),
          one.measuredGrams(),
          one.measuredDoubt(),
          one.differenceGrams(),
          WeighWords.what(one),
          WeighWords.agreement(one)));
    }
    return new Table(
        List.of(
            Table.Column.number("estimate g", "estimated_g", 1),
            Table.Column.number("±", "estimated_doubt_g", 1),
            Table.Column.number("scale g", "measured_g", 1),
            Table.Column.number("±", "measured_doubt_g", 1),
            Table.Column.number("more", "difference_g", 1),
            Table.Column.text("what", "what"),
            Table.Column.text("", "agreement")),
        rows);
  }

  /**
   * For a terminal.
   *
   * @param written names of the files that were written; empty where none was asked for
   * @param width columns
   */
  public String text(List<String> written, int width) {
    var lines = new Lines(width);
    lines.say(Heading.line(scenario));
    lines.say(BuildWords.of(result.assessment()));
    if (!result.weighed().isEmpty()) {
      lines.blank();
      masses().lines(width).forEach(line -> lines.row(line, 4));
      lines.blank();
      onTheScale().forEach(lines::say);
    }
    for (var fit : result.fits()) {
      lines.blank().say(WeighWords.fit(fit));
      inTheAir(fit).forEach(lines::item);
    }
    result.sensorScale().ifPresent(scale -> lines.blank().say(WeighWords.sensor(scale)));
    lines.blank().say(kept(written));
    return lines.blank().caution(Cautions.general()).text();
  }

  /** The answer in sentences, the title first; the table stands by itself. */
  public List<String> said(List<String> written) {
    var said = new ArrayList<>(List.of(scenario.name()));
    said.add(Heading.line(scenario));
    said.add(BuildWords.of(result.assessment()));
    if (!result.weighed().isEmpty()) {
      said.addAll(onTheScale());
    }
    for (var fit : result.fits()) {
      said.add(WeighWords.fit(fit));
      said.addAll(inTheAir(fit));
    }
    result.sensorScale().ifPresent(scale -> said.add(WeighWords.sensor(scale)));
    said.add(kept(written));
    return said;
  }

  private List<String> onTheScale() {
    var said = new ArrayList<>(List.of(WeighWords.left(result)));
    WeighWords.contradiction(result).ifPresent(said::add);
    WeighWords.overCap(result, scenario.massCap()).ifPresent(said::add);
    return said;
  }

  private static List<String> inTheAir(StyleFit fit) {
    return fit.flights().stream()
        .map(flight -> WeighWords.flight(flight)
            + WeighWords.landing(flight).map(landed -> " " + landed).orElse(""))
        .toList();
  }

  private static String kept(List<String> written) {
    return written.isEmpty()
        ? "Nothing written: --into FOLDER keeps it, and --catalog FOLDER then counts with it."
        : "Written: " + String.join(", ", written)
            + ". With --catalog and that folder, every command counts with it.";
  }

  /** Masses, charges and volts in one table: a spreadsheet wants no second one. */
  public Table everything() {
    var rows = new ArrayList<List<Object>>();
    for (var one : result.weighed()) {
      rows.add(List.of(
          WeighWords.what(one),
          "g",
          one.estimatedGrams(),
          one.estimatedDoubt(),
          one.measuredGrams(),
          one.measuredDoubt(),
          WeighWords.agreement(one)));
    }
    for (var fit : result.fits()) {
      for (var flight : fit.flights()) {
        var row = flight.row();
        var which = "%s, %s, line %s".formatted(row.style(), row.file(), row.line());
        var charged = row.chargedMilliampHours();
        rows.add(List.of(
            which,
            "mAh",
            flight.computedMilliampHours(),
            "",
            charged,
            StyleFit.CHARGER * charged,
            WeighWords.flight(flight)));
        WeighWords.landing(flight)
            .ifPresent(landed -> rows.add(List.of(
                which,
                "V",
                some(flight.computedLandingVolts()),
                FlightFit.LANDING_DOUBT * flight.cells(),
                row.landingVolts().getAsDouble(),
                "",
                landed)));
      }
      rows.add(List.of(
          fit.style(), "times the power", 1, "", fit.factor(), fit.doubt(), WeighWords.fit(fit)));
    }
    result
        .sensorScale()
        .ifPresent(scale -> rows.add(List.of(
            "current sensor",
            "times its scale",
            1,
            "",
            scale,
            StyleFit.CHARGER,
            WeighWords.sensor(scale))));
    return new Table(
        List.of(
            Table.Column.text("what", "what"),
            Table.Column.text("in", "unit"),
            Table.Column.number("estimate", "estimate", 2),
            Table.Column.number("±", "estimate_doubt", 2),
            Table.Column.number("measured", "measured", 2),
            Table.Column.number("±", "measured_doubt", 2),
            Table.Column.text("says", "says")),
        rows);
  }

  private static Object some(OptionalDouble value) {
    return value.isPresent() ? (Object) value.getAsDouble() : "";
  }

  /** For a spreadsheet. */
  public String csv() {
    return everything().csv();
  }

  /** For a page. */
  public String markdown() {
    return everything().markdown();
  }

  /** With every digit. */
  public String json(Run run, List<String> written) {
    var parts = new NamedParts();
    return Document.of(
        scenario, run, "weighed", WeighJson.of(result, scenario, written, parts), parts);
  }
}
