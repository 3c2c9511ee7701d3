package pappus.weighing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import pappus.assessment.Assessor;
import pappus.catalog.Catalog;
import pappus.files.Closest;
import pappus.files.CsvTable;
import pappus.files.Problem;
import pappus.files.Problems;
import pappus.files.Shown;
import pappus.files.Source;
import pappus.part.Battery;
import pappus.part.Build;
import pappus.part.Part;
import pappus.quantity.Require;

/**
 * One flight as a builder logs it.
 *
 * <p>Why: src/site/markdown/decisions.md#a-log-is-held-to-what-a-pack-can-give
 *
 * @param file where it stands
 * @param line in it
 * @param style way of flying
 * @param minutes in the air
 * @param chargedMilliampHours what the charger put back
 * @param pack id of the pack; absent: that of the build
 * @param age new, used or tired; absent: that of the scenario
 * @param airCelsius absent: that of the scenario
 * @param packCelsius at take-off; absent: that of the scenario
 * @param landingVolts of the pack when it landed
 * @param sensorMilliampHours what the current sensor counted
 */
public record FlightRow(
    String file,
    int line,
    String style,
    double minutes,
    double chargedMilliampHours,
    Optional<String> pack,
    Optional<String> age,
    OptionalDouble airCelsius,
    OptionalDouble packCelsius,
    OptionalDouble landingVolts,
    OptionalDouble sensorMilliampHours) {
  /** Labels are hardly ever too low by more: engineering estimate. */
  private static final double MOST_OF_LABEL = 1.1;

  private static final List<String> REQUIRED = List.of("style", "minutes", "charged_mah");
  private static final List<String> OPTIONAL =
      List.of("pack", "age", "air_c", "pack_c", "landing_v", "sensor_mah");

  /** The rows of a file in its order; what is wrong with it is added to the problems. */
  public static List<FlightRow> read(Source source, Problems problems) {
    var found = new Problems();
    var table = CsvTable.read(source, REQUIRED, OPTIONAL, found);
    var rows = new ArrayList<FlightRow>();
    if (REQUIRED.stream().allMatch(table::has)) {
      for (var row : table.rows()) {
        var bad = new Problems();
        var style = word(source, table, row, "style", "hover|loiter|cruise|profile", bad);
        var minutes = table.number(row, "minutes", 0.1, 600, bad);
        var charged = table.number(row, "charged_mah", 1, 60_000, bad);
        var pack = given(table, row, "pack")
            ? Optional.of(table.text(row, "pack", bad))
            : Optional.<String>empty();
        var age = given(table, row, "age")
            ? Optional.of(word(source, table, row, "age", "new|used|tired", bad))
            : Optional.<String>empty();
        var air = number(table, row, "air_c", -30, 50, bad);
        var warm = number(table, row, "pack_c", -10, 50, bad);
        var landing = number(table, row, "landing_v", 1, 60, bad);
        var sensor = number(table, row, "sensor_mah", 1, 60_000, bad);
        if (bad.isEmpty()) {
          rows.add(new FlightRow(
              source.name(),
              row.line(),
              style,
              minutes,
              charged,
              pack,
              age,
              air,
              warm,
              landing,
              sensor));
        }
        found.addAll(bad);
      }
    }
    problems.addAll(found);
    return rows;
  }

  private static boolean given(CsvTable table, CsvTable.Row row, String column) {
    return !table.isBlank(row, column);
  }

  private static String word(
      Source source,
      CsvTable table,
      CsvTable.Row row,
      String column,
      String words,
      Problems problems) {
    var word = table.text(row, column, problems).toLowerCase(Locale.ROOT);
    if (!word.matches(words) && !word.isEmpty()) {
      problems.add(new Problem(
          source.name(),
          row.line(),
          "%s must be %s, but is %s."
              .formatted(column, words.replace("|", ", "), Shown.text(word))));
    }
    return word;
  }

  private static OptionalDouble number(
      CsvTable table, CsvTable.Row row, String column, double low, double high, Problems problems) {
    return given(table, row, column)
        ? OptionalDouble.of(table.number(row, column, low, high, problems))
        : OptionalDouble.empty();
  }

  /** What was flown must be a way of the scenario, with packs that can have given it, and a build that flies. */
  public static void check(
      List<FlightRow> rows, Catalog catalog, Assessor assessor, Build build, Problems problems) {
    var batteries = catalog.parts().stream()
        .filter(Battery.class::isInstance)
        .map(part -> part.id())
        .toList();
    for (var row : rows) {
      row.pack()
          .filter(id -> !(catalog.part(id).orElse(null) instanceof Battery))
          .ifPresent(id -> problems.add(new Problem(
              row.file(),
              row.line(),
              "pack must be the id of a battery in the catalogue, but is %s.%s"
                  .formatted(Shown.text(id), Closest.advice(id, batteries)))));
      row.pack()
          .flatMap(id -> catalog.part(id))
          .or(build::battery)
          .ifPresent(pack -> checkPack(row, pack, problems));
      if (!WeighIn.canBeFlown(row.style(), assessor.scenario())) {
        problems.add(
            new Problem(
                row.file(),
                row.line(),
                "style must be that of a scenario with legs, but is profile where the scenario has none."));
      }
    }
    checkFlies(assessor, build, problems);
  }

  /** No pack takes so much more than its label says, nor has so many volts. */
  private static void checkPack(FlightRow row, Part pack, Problems problems) {
    if (!(pack instanceof Battery battery)) {
      return;
    }
    var most = MOST_OF_LABEL * battery.capacityMilliampHours();
    if (row.chargedMilliampHours() > most) {
      problems.add(new Problem(
          row.file(),
          row.line(),
          "charged_mah must be at most %s, a tenth more than the label of %s, but is %s."
              .formatted(
                  Require.plain(Math.rint(most)),
                  battery.id(),
                  Require.plain(row.chargedMilliampHours()))));
    }
    var full = battery.cellsInSeries() * battery.chemistry().fullVolts();
    row.landingVolts().ifPresent(volts -> {
      if (volts > full) {
        problems.add(new Problem(
            row.file(),
            row.line(),
            "landing_v must be at most the %s V of %s when full, but is %s."
                .formatted(
                    Require.plain(Math.rint(100 * full) / 100),
                    battery.id(),
                    Require.plain(volts))));
      }
    });
  }

  private static void checkFlies(Assessor assessor, Build build, Problems problems) {
    assessor
        .assess(build)
        .whyNoFlight()
        .ifPresent(why -> problems.add(Problem.ofFile(
            "BUILD",
            "must fly to be set beside flights, but does not: %s."
                .formatted(why.replaceFirst("\\.$", "")))));
  }
}
