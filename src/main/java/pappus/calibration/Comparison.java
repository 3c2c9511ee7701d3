package pappus.calibration;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * How well a calibration predicts bus power at equal thrust of other rows.
 *
 * @param all every row with thrust and current
 * @param hover those from 40 to 150 gf
 * @param byMotor every row by motor
 * @param unknownMotors keys that the calibration does not know
 * @param unknownPropellers keys that the calibration does not know
 */
public record Comparison(
    ErrorSummary all,
    ErrorSummary hover,
    Map<String, ErrorSummary> byMotor,
    List<String> unknownMotors,
    List<String> unknownPropellers) {

  public static Comparison of(Calibration calibration, List<BenchRow> rows) {
    return of(PartLoadForm.RIPPLE, calibration, rows);
  }

  static Comparison of(PartLoadForm form, Calibration calibration, List<BenchRow> rows) {
    var all = new ArrayList<Double>();
    var hover = new ArrayList<Double>();
    var byMotor = new TreeMap<String, List<Double>>();
    var motors = new TreeSet<String>();
    var propellers = new TreeSet<String>();
    for (var row : rows) {
      if (!calibration.motors().containsKey(row.motorKey())) {
        motors.add(row.motorKey());
      }
      if (!calibration.propellers().containsKey(row.propellerKey())) {
        propellers.add(row.propellerKey());
      }
      calibration.predict(form, row).ifPresent(prediction -> {
        var error = prediction.errorPercent(row);
        all.add(error);
        byMotor.computeIfAbsent(row.motorKey(), key -> new ArrayList<>()).add(error);
        if (row.thrustGrams() >= 40 && row.thrustGrams() <= 150) {
          hover.add(error);
        }
      });
    }
    var summaries = new TreeMap<String, ErrorSummary>();
    byMotor.forEach((key, errors) -> summaries.put(key, ErrorSummary.of(errors)));
    return new Comparison(
        ErrorSummary.of(all),
        ErrorSummary.of(hover),
        summaries,
        List.copyOf(motors),
        List.copyOf(propellers));
  }
}
