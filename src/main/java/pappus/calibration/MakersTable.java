package pappus.calibration;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import pappus.files.CsvTable;
import pappus.files.Problem;
import pappus.files.Problems;
import pappus.files.Shown;
import pappus.files.Source;

/**
 * Reads a maker's thrust table as it is printed: rows of one motor with one propeller, throttle in percent or not at all,
 * thrust, two of amperes, volts and watts, and speed where it was read. Other columns, such as grams per watt, are passed
 * over.
 */
public final class MakersTable {
  /** A column by what it tells. */
  private enum Column {
    THROTTLE("throttle"),
    THRUST("thrust", "pull"),
    AMPS("current", "amps", "amperes"),
    VOLTS("voltage", "volts"),
    WATTS("power", "watts", "input power"),
    RPM("rpm", "speed");

    @SuppressWarnings("ImmutableEnumChecker") // List.of is immutable; the type cannot say so
    private final List<String> titles;

    Column(String... titles) {
      this.titles = List.of(titles);
    }
  }

  private static final Pattern UNIT = Pattern.compile("\\((.*?)\\)|\\[(.*?)\\]");
  private static final Map<String, Double> GRAMS =
      Map.of("", 1.0, "g", 1.0, "gf", 1.0, "kg", 1e3, "kgf", 1e3);

  /** Pulses of no throttle and of full throttle, µs. */
  private static final double IDLE = 1000;

  private static final double FULL = 2000;

  private MakersTable() {}

  /**
   * What a table does not say of itself.
   *
   * @param motor key of the motor
   * @param labelKvRpmPerVolt its Kv
   * @param statorMillimetres diameter of its stator
   * @param propeller key of the propeller
   * @param diameterMillimetres of the propeller
   */
  public record Pair(
      String motor,
      double labelKvRpmPerVolt,
      double statorMillimetres,
      String propeller,
      double diameterMillimetres) {}

  /** The rows of a table in its order; what is wrong with it is added to the problems. */
  public static List<BenchRow> read(Source source, Pair pair, Problems problems) {
    var found = new Problems();
    var table = CsvTable.read(source, true, found)
        .withCells(cell -> cell.replaceFirst("^([0-9.]+)\\s*%$", "$1"));
    if (table.header().isEmpty()) {
      problems.addAll(found);
      return List.of();
    }
    var columns = columns(table, source, found);
    var line = table.header().get().line();
    var electrical = Stream.of(Column.AMPS, Column.VOLTS, Column.WATTS)
        .filter(columns::containsKey)
        .count();
    if (!columns.containsKey(Column.THRUST) || electrical < 2) {
      found.add(new Problem(
          source.name(),
          line,
          "must have columns of thrust and of two of current, voltage and power, but has %s."
              .formatted(
                  table.columns().stream().map(Shown::text).collect(Collectors.joining(", ")))));
    }
    if (!found.isEmpty()) {
      problems.addAll(found);
      return List.of();
    }
    var rows = new ArrayList<BenchRow>();
    for (var row : table.rows()) {
      var bad = new Problems();
      var one = row(table, row, columns, pair, source.name(), bad);
      if (bad.isEmpty()) {
        rows.add(one);
      }
      found.addAll(bad);
    }
    if (rows.isEmpty() && found.isEmpty()) {
      found.add(Problem.ofFile(source.name(), "must hold a row, but holds none."));
    }
    problems.addAll(found);
    return rows;
  }

  private static BenchRow row(
      CsvTable table,
      CsvTable.Row row,
      Map<Column, String> columns,
      Pair pair,
      String file,
      Problems bad) {
    var thrustTitle = columns.getOrDefault(Column.THRUST, "");
    var thrust = table.number(row, thrustTitle, -1000, 100_000, bad)
        * GRAMS.getOrDefault(unit(thrustTitle), 1.0);
    var amps = number(table, row, columns.get(Column.AMPS), 1000, bad);
    var volts = number(table, row, columns.get(Column.VOLTS), 100, bad);
    var watts = number(table, row, columns.get(Column.WATTS), 100_000, bad);
    if (!columns.containsKey(Column.VOLTS) && amps > 0) {
      volts = watts / amps;
    }
    if (!columns.containsKey(Column.AMPS) && volts > 0) {
      amps = watts / volts;
    }
    if (bad.isEmpty() && volts < 0.5) {
      bad.add(new Problem(
          file,
          row.line(),
          String.format(
              Locale.ROOT,
              "row %s: voltage must be at least 0.5 V, but is %.2f V.",
              row.number(),
              volts)));
    }
    var throttle = number(table, row, columns.get(Column.THROTTLE), 100, bad);
    return new BenchRow(
        file,
        row.line(),
        pair.motor(),
        pair.labelKvRpmPerVolt(),
        pair.propeller(),
        Math.max(0.5, volts),
        // Without throttle no row is known to be of full throttle.
        IDLE + (FULL - IDLE) * throttle / 100,
        thrust,
        Math.max(0.5, volts),
        amps,
        number(table, row, columns.get(Column.RPM), 200_000, bad),
        pair.diameterMillimetres(),
        BenchReader.ASSUMED_DENSITY_KG_PER_CUBIC_METRE,
        0,
        pair.statorMillimetres());
  }

  /** Of a column that may not be there, or have no number here: then it was not read. */
  private static double number(
      CsvTable table, CsvTable.Row row, @Nullable String title, double high, Problems bad) {
    return title == null || table.isBlank(row, title) ? 0 : table.number(row, title, 0, high, bad);
  }

  private static Map<Column, String> columns(CsvTable table, Source source, Problems problems) {
    var columns = new EnumMap<Column, String>(Column.class);
    var line = table.header().orElseThrow().line();
    for (var title : table.columns()) {
      var words =
          UNIT.matcher(title).replaceAll("").strip().toLowerCase(Locale.ROOT).replace('_', ' ');
      for (var column : Column.values()) {
        if (!column.titles.contains(words)) {
          continue;
        }
        var earlier = columns.putIfAbsent(column, title);
        if (earlier != null) {
          problems.add(new Problem(
              source.name(),
              line,
              "must have one column of %s, but has %s and %s."
                  .formatted(column.titles.get(0), Shown.text(earlier), Shown.text(title))));
        }
        if (column == Column.THRUST && !GRAMS.containsKey(unit(title))) {
          problems.add(new Problem(
              source.name(),
              line,
              "thrust must be in g or kg, but is in %s.".formatted(Shown.text(unit(title)))));
        }
      }
    }
    return columns;
  }

  private static String unit(String title) {
    var unit = UNIT.matcher(title);
    return unit.find()
        ? String.valueOf(unit.group(1) == null ? unit.group(2) : unit.group(1))
            .strip()
            .toLowerCase(Locale.ROOT)
        : "";
  }
}
