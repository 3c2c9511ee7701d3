package pappus.calibration;

import java.util.ArrayList;
import java.util.List;
import pappus.files.CsvTable;
import pappus.files.Problem;
import pappus.files.Problems;
import pappus.files.Source;

/** Reads thrust-stand rows from CSV. */
public final class BenchReader {
  private static final List<String> REQUIRED = List.of(
      "motor_key",
      "label_kv_rpm_per_v",
      "propeller_key",
      "supply_label_v",
      "esc_pulse_us",
      "thrust_gf",
      "voltage_v",
      "current_a",
      "speed_rpm");
  private static final String DIAMETER = "diameter_mm";
  private static final String DENSITY = "air_density_kg_per_m3";
  private static final String TORQUE = "torque_mnm";
  private static final String STATOR = "stator_diameter_mm";

  /** Of a 5-inch propeller: taken where no column says otherwise. */
  static final double ASSUMED_DIAMETER_MILLIMETRES = 127;

  /** Some 20 °C at 150 m: taken where no column says otherwise. */
  static final double ASSUMED_DENSITY_KG_PER_CUBIC_METRE = 1.2;

  private BenchReader() {}

  /** The rows of a file in its order; what is wrong with it is added to the problems. */
  public static List<BenchRow> read(Source source, Problems problems) {
    var found = new Problems();
    var table = CsvTable.read(source, REQUIRED, List.of(DIAMETER, DENSITY, TORQUE, STATOR), found);
    if (!REQUIRED.stream().allMatch(table::has)) {
      // Without its column every cell would be a problem of its own.
      problems.addAll(found);
      return List.of();
    }
    var rows = new ArrayList<BenchRow>();
    for (var row : table.rows()) {
      var bad = new Problems();
      var motor = table.text(row, "motor_key", bad);
      var kv = table.number(row, "label_kv_rpm_per_v", 100, 60_000, bad);
      var propeller = table.text(row, "propeller_key", bad);
      var supply = table.number(row, "supply_label_v", 1, 100, bad);
      var pulse = table.number(row, "esc_pulse_us", 0, 3000, bad);
      var thrust = table.number(row, "thrust_gf", -1000, 100_000, bad);
      var volts = table.number(row, "voltage_v", 0.5, 100, bad);
      var current = table.number(row, "current_a", 0, 1000, bad);
      var speed = orNotRead(table, row, "speed_rpm", 200_000, bad);
      var diameter = table.has(DIAMETER)
          ? table.number(row, DIAMETER, 25, 1000, bad)
          : ASSUMED_DIAMETER_MILLIMETRES;
      var density = table.has(DENSITY)
          ? table.number(row, DENSITY, 0.5, 1.5, bad)
          : ASSUMED_DENSITY_KG_PER_CUBIC_METRE;
      var torque = orNotRead(table, row, TORQUE, 10_000, bad);
      var stator = table.isBlank(row, STATOR) ? 0 : table.number(row, STATOR, 4, 100, bad);
      if (bad.isEmpty()) {
        rows.add(new BenchRow(
            source.name(),
            row.line(),
            motor,
            kv,
            propeller,
            supply,
            pulse,
            thrust,
            volts,
            current,
            speed,
            diameter,
            density,
            torque,
            stator));
      }
      found.addAll(bad);
    }
    if (rows.isEmpty() && found.isEmpty()) {
      found.add(Problem.ofFile(source.name(), "must hold a row, but holds none."));
    }
    problems.addAll(found);
    return rows;
  }

  /** A number that may be missing, as an empty cell or as 0. */
  private static double orNotRead(
      CsvTable table, CsvTable.Row row, String column, double high, Problems problems) {
    return table.isBlank(row, column) ? 0 : table.number(row, column, 0, high, problems);
  }
}
