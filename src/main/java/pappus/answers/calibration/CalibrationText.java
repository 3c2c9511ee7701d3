package pappus.answers.calibration;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import pappus.calibration.Calibration;
import pappus.calibration.Calibration.Figure;
import pappus.calibration.Comparison;
import pappus.calibration.ErrorSummary;
import pappus.document.Lines;

/** Fitted coefficients for a terminal. */
public final class CalibrationText {
  private static final double[] SHOWN_RPM = {6000, 10_000, 14_000};

  private static final int MOST_CORRELATIONS = 12;

  private CalibrationText() {}

  /**
   * Everything, the coefficients first.
   *
   * @param width columns of the terminal
   */
  public static String of(Calibration calibration, Optional<Comparison> against, int width) {
    var lines = new Lines(width);
    lines.row("Controllers: bus power = v i + c v^2 (1 - v/V)^1.5 / R + V idle", 4);
    var law = calibration.law();
    lines.row(
        "  c %s, idle %s A, no-load growth %s"
            .formatted(figure(law.loss(), 3), figure(law.idleA(), 3), figure(law.growth(), 2)),
        4);
    lines.row(
        "  controllerLoss to state for their board: " + figure(calibration.statedLoss(), 2), 4);
    lines.blank();
    lines.row(
        "Motors: loaded Kv rpm/V, resistance mohm, no-load current A at 9549 rpm, its own c", 4);
    calibration
        .motors()
        .forEach((key, motor) -> lines.row(
            "  %s: Kv %s, R %s, %s A, c %s, %s rows"
                .formatted(
                    key,
                    figure(motor.kvRpmPerVolt(), 0),
                    figure(scaled(motor.resistanceOhm()), 1),
                    figure(motor.noLoadCurrentA(), 2),
                    figure(motor.ripple(), 3),
                    motor.rows()),
            4));
    lines.blank();
    lines.row(
        "Propellers: C_T and C_P at 6000, 10000 and 14000 rpm; their error at 9549 rpm; rpm measured",
        4);
    calibration.propellers().forEach((key, propeller) -> {
      var line = new StringBuilder("  " + key + ":");
      for (var rpm : SHOWN_RPM) {
        line.append(String.format(
            Locale.ROOT,
            " %.4f %.4f,",
            propeller.thrustCoefficient(rpm),
            propeller.powerCoefficient(rpm)));
      }
      line.append(String.format(
          Locale.ROOT,
          " ± %.1f %% ± %.1f %%, %.0f to %.0f rpm, %d rows",
          100 * propeller.thrust().get(0).standardError(),
          100 * propeller.power().get(0).standardError(),
          propeller.lowestRpm(),
          propeller.highestRpm(),
          propeller.rows()));
      lines.row(line.toString(), 4);
    });
    lines.blank();
    lines.row(
        "Error in bus power at the same thrust, fitted rows: " + summary(calibration.errors()), 4);
    lines.row(
        "The fit from each start ended at: "
            + String.join(
                ", ",
                calibration.starts().stream()
                    .map(cost -> String.format(Locale.ROOT, "%.3f", cost))
                    .toList()),
        4);
    calibration.cautions().forEach(line -> lines.row(line, 4));
    if (!calibration.correlations().isEmpty()) {
      lines.blank();
      lines.row("Correlations of 0.5 and more:", 4);
      var correlations = calibration.correlations();
      correlations.stream()
          .limit(MOST_CORRELATIONS)
          .forEach(one -> lines.row(
              String.format(Locale.ROOT, "  %+.2f %s, %s", one.value(), one.first(), one.second()),
              4));
      if (correlations.size() > MOST_CORRELATIONS) {
        lines.row(
            "  and " + (correlations.size() - MOST_CORRELATIONS)
                + " weaker ones; --format json has all",
            4);
      }
    }
    leftOut(calibration, lines);
    against.ifPresent(comparison -> against(comparison, lines));
    return lines.text();
  }

  private static void leftOut(Calibration calibration, Lines lines) {
    var byReason = new TreeMap<String, List<String>>();
    calibration
        .leftOut()
        .forEach(row -> byReason
            .computeIfAbsent(row.file() + ": " + row.reason(), key -> new ArrayList<>())
            .add(Integer.toString(row.line())));
    if (!byReason.isEmpty()) {
      lines.blank();
      lines.row("Left out:", 4);
      byReason.forEach(
          (reason, rows) -> lines.row("  " + reason + "; lines " + String.join(", ", rows), 4));
    }
  }

  private static void against(Comparison comparison, Lines lines) {
    lines.blank();
    lines.row("Error in bus power at the same thrust, other rows:", 4);
    lines.row("  all: " + summary(comparison.all()), 4);
    lines.row("  40 to 150 gf: " + summary(comparison.hover()), 4);
    for (Map.Entry<String, ErrorSummary> motor : comparison.byMotor().entrySet()) {
      lines.row("  motor " + motor.getKey() + ": " + summary(motor.getValue()), 4);
    }
    if (!comparison.unknownMotors().isEmpty()) {
      lines.row(
          "  motors not among the fitted rows: " + String.join(", ", comparison.unknownMotors()),
          4);
    }
    if (!comparison.unknownPropellers().isEmpty()) {
      lines.row(
          "  propellers not among the fitted rows: "
              + String.join(", ", comparison.unknownPropellers()),
          4);
    }
  }

  private static String summary(ErrorSummary errors) {
    if (errors.n() == 0) {
      return "no rows";
    }
    return String.format(
        Locale.ROOT,
        "n %d, median %.2f %%, 90th percentile %.2f %%, rms %.2f %%, bias %+.2f %%",
        errors.n(),
        errors.medianPercent(),
        errors.p90Percent(),
        errors.rmsPercent(),
        errors.biasPercent());
  }

  private static Figure scaled(Figure ohm) {
    return new Figure(1000 * ohm.value(), 1000 * ohm.standardError());
  }

  private static String figure(Figure figure, int digits) {
    var format = "%." + digits + "f ± %." + digits + "f";
    return String.format(Locale.ROOT, format, figure.value(), figure.standardError());
  }
}
