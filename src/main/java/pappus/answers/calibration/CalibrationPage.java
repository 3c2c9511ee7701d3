package pappus.answers.calibration;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;
import pappus.answers.build.Cautions;
import pappus.calibration.BenchRow;
import pappus.calibration.Calibration;
import pappus.calibration.Comparison;
import pappus.calibration.ErrorSummary;
import pappus.document.Chart;
import pappus.document.Chart.Axis;
import pappus.document.Chart.Mark;
import pappus.document.Chart.Point;
import pappus.document.Chart.Series;
import pappus.document.Chart.Style;
import pappus.document.FiguresPage;
import pappus.document.Spoken;
import pappus.document.Table;

/** Fitted coefficients in pictures: how far each row is missed, and the propellers' curves. */
public final class CalibrationPage {
  private static final int CURVE_STEPS = 12;

  private final Calibration calibration;

  private CalibrationPage(Calibration calibration) {
    this.calibration = calibration;
  }

  /**
   * The page.
   *
   * @param fitted rows given to the fit
   * @param compared rows that were only predicted
   * @param tool its version, told at the foot
   */
  public static String of(
      Calibration calibration,
      List<BenchRow> fitted,
      List<BenchRow> compared,
      Optional<Comparison> against,
      String tool) {
    return new CalibrationPage(calibration).page(fitted, compared, against, tool);
  }

  private String page(
      List<BenchRow> fitted, List<BenchRow> compared, Optional<Comparison> against, String tool) {
    var lines = new ArrayList<String>();
    lines.add("Thrust-stand rows and what the coefficients make of them");
    lines.add("Error of bus power at equal thrust, rows fitted: %s."
        .formatted(said(calibration.errors())));
    against.ifPresent(
        other -> lines.add("Rows that were only predicted: %s.".formatted(said(other.all()))));
    lines.addAll(calibration.cautions());
    var charts = new ArrayList<Chart>();
    charts.add(errors("fitted", "Rows fitted", fitted));
    if (!compared.isEmpty()) {
      charts.add(errors("compared", "Rows only predicted", compared));
    }
    charts.add(coefficients(
        "thrust-coefficient",
        "Thrust coefficient of the propellers",
        "C_T",
        propeller -> propeller::thrustCoefficient));
    charts.add(coefficients(
        "power-coefficient",
        "Power coefficient of the propellers",
        "C_P",
        propeller -> propeller::powerCoefficient));
    var tables = new LinkedHashMap<String, Table>();
    tables.put("Motors with their controllers", motors());
    return FiguresPage.of(lines.get(0), lines, charts, tables, List.of(Cautions.general()), tool);
  }

  private static String said(ErrorSummary errors) {
    return errors.n() == 0
        ? "none"
        : "%s, rms %s %%, bias %s %%"
            .formatted(
                errors.n(),
                Spoken.number(errors.rmsPercent(), 1),
                Spoken.number(errors.biasPercent(), 1));
  }

  private Chart errors(String id, String title, List<BenchRow> rows) {
    var byMotor = new TreeMap<String, List<Point>>();
    for (var row : rows) {
      calibration.predict(row).ifPresent(found -> {
        byMotor
            .computeIfAbsent(row.motorKey(), key -> new ArrayList<>())
            .add(new Point(
                row.thrustGrams(),
                found.errorPercent(row),
                "%s with %s".formatted(row.motorKey(), row.propellerKey())));
      });
    }
    var cells = new ArrayList<List<Object>>();
    Comparison.of(calibration, rows)
        .byMotor()
        .forEach((motor, sum) -> cells.add(List.of(
            motor,
            sum.n(),
            sum.medianPercent(),
            sum.p90Percent(),
            sum.rmsPercent(),
            sum.biasPercent())));
    return Chart.xy(
        id,
        title + ": error of predicted power",
        "Each point is a row; above zero more power was predicted than was read. calibrate --format csv has every row.",
        Axis.fromZero("thrust", "gf", 0),
        Axis.of("error", "%", 1),
        byMotor.entrySet().stream()
            .map(each -> new Series(each.getKey(), Style.SMALL_POINTS, each.getValue()))
            .toList(),
        List.of(Mark.across(0, "as read")),
        new Table(
            List.of(
                Table.Column.text("motor", "motor"),
                Table.Column.number("rows", "rows", 0),
                Table.Column.number("median %", "median_percent", 2),
                Table.Column.number("90th percentile %", "p90_percent", 2),
                Table.Column.number("rms %", "rms_percent", 2),
                Table.Column.number("bias %", "bias_percent", 2)),
            cells));
  }

  private interface Curve {
    DoubleUnaryOperator of(Calibration.PropellerFit propeller);
  }

  private Chart coefficients(String id, String title, String symbol, Curve curve) {
    var series = new ArrayList<Series>();
    var cells = new ArrayList<List<Object>>();
    for (Map.Entry<String, Calibration.PropellerFit> each :
        calibration.propellers().entrySet()) {
      var propeller = each.getValue();
      var points = new ArrayList<Point>();
      for (var step = 0; step <= CURVE_STEPS; step++) {
        var rpm = propeller.lowestRpm()
            + (propeller.highestRpm() - propeller.lowestRpm()) * step / CURVE_STEPS;
        var value = curve.of(propeller).applyAsDouble(rpm);
        points.add(Point.of(rpm, value));
        if (step % (CURVE_STEPS / 2) == 0) {
          cells.add(List.of(each.getKey(), rpm, value));
        }
      }
      series.add(new Series(each.getKey(), Style.LINE, points));
    }
    return Chart.xy(
        id,
        title,
        "Between the lowest and the highest speed of its rows; beyond them a curve is only continued.",
        Axis.of("speed", "rpm", 0),
        Axis.of(symbol, "", 4),
        series,
        List.of(),
        new Table(
            List.of(
                Table.Column.text("propeller", "propeller"),
                Table.Column.number("rpm", "rpm", 0),
                Table.Column.number(symbol, "coefficient", 4)),
            cells));
  }

  private Table motors() {
    var rows = new ArrayList<List<Object>>();
    calibration
        .motors()
        .forEach((key, motor) -> rows.add(List.of(
            key,
            motor.kvRpmPerVolt().value(),
            motor.kvRpmPerVolt().standardError(),
            1000 * motor.resistanceOhm().value(),
            1000 * motor.resistanceOhm().standardError(),
            motor.noLoadCurrentA().value(),
            motor.noLoadCurrentA().standardError(),
            motor.ripple().value(),
            motor.ripple().standardError(),
            motor.rows())));
    return new Table(
        List.of(
            Table.Column.text("motor", "motor"),
            Table.Column.number("loaded Kv, rpm/V", "kv_rpm_per_v", 0),
            Table.Column.number("±", "kv_error", 0),
            Table.Column.number("mΩ", "resistance_mohm", 1),
            Table.Column.number("±", "resistance_error", 1),
            Table.Column.number("no-load A", "no_load_a", 2),
            Table.Column.number("±", "no_load_error", 2),
            Table.Column.number("part-load c", "part_load_c", 3),
            Table.Column.number("±", "part_load_c_error", 3),
            Table.Column.number("rows", "rows", 0)),
        rows);
  }
}
