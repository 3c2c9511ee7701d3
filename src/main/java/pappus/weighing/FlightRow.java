package pappus.weighing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import pappus.files.CsvTable;
import pappus.files.Problem;
import pappus.files.Problems;
import pappus.files.Shown;
import pappus.files.Source;

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
        found.addAll(bad.sorted());
      }
    }
    problems.addAll(found.sorted());
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
}
