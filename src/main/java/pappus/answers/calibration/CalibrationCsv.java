package pappus.answers.calibration;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pappus.calibration.BenchRow;
import pappus.calibration.Calibration;
import pappus.document.CsvText;

/** Every row beside what the coefficients make of it, for a spreadsheet. */
public final class CalibrationCsv {
  private static final List<String> COLUMNS = List.of(
      "file",
      "line",
      "motor",
      "propeller",
      "thrust_gf",
      "measured_w",
      "predicted_w",
      "error_percent",
      "measured_rpm",
      "predicted_rpm",
      "use");

  private CalibrationCsv() {}

  /**
   * One line a row.
   *
   * @param fitted rows given to the fit, used or not
   * @param compared rows that were only predicted
   */
  public static String of(Calibration calibration, List<BenchRow> fitted, List<BenchRow> compared) {
    var reasons = new HashMap<String, String>();
    calibration
        .leftOut()
        .forEach(
            row -> reasons.merge(row.file() + ":" + row.line(), row.reason(), (one, other) -> one));
    var lines = new ArrayList<List<Object>>();
    fitted.forEach(row -> lines.add(line(calibration, row, fate(row, reasons))));
    compared.forEach(row -> lines.add(line(calibration, row, fate(row, calibration))));
    return CsvText.of(COLUMNS, lines);
  }

  private static String fate(BenchRow row, Map<String, String> reasons) {
    return reasons.getOrDefault(row.file() + ":" + row.line(), "fitted");
  }

  private static String fate(BenchRow row, Calibration calibration) {
    if (!calibration.motors().containsKey(row.motorKey())) {
      return "motor is not known";
    }
    if (!calibration.propellers().containsKey(row.propellerKey())) {
      return "propeller is not known";
    }
    return row.defect().orElse("compared");
  }

  private static List<Object> line(Calibration calibration, BenchRow row, String fate) {
    var prediction = calibration.predict(row);
    return List.of(
        row.file(),
        row.line(),
        row.motorKey(),
        row.propellerKey(),
        row.thrustGrams(),
        rounded(row.busPowerW(), 4),
        prediction.map(found -> rounded(found.busPowerW(), 4)).orElse(""),
        prediction.map(found -> rounded(found.errorPercent(row), 2)).orElse(""),
        row.speedRpm() > 0 ? row.speedRpm() : "",
        prediction.map(found -> rounded(found.speedRpm(), 1)).orElse(""),
        fate);
  }

  private static Object rounded(double value, int digits) {
    return BigDecimal.valueOf(value).setScale(digits, RoundingMode.HALF_EVEN).doubleValue();
  }
}
