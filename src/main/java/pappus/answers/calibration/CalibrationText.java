package pappus.answers.calibration;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import pappus.calibration.Calibration;
import pappus.calibration.Calibration.Figure;
import pappus.calibration.Comparison;
import pappus.calibration.ErrorSummary;
import pappus.document.Wrapped;

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
    var lines = new ArrayList<String>();
    lines.add("Controllers: bus power = v i / (1 - k sqrt(0.2 ohm / R) (1 - v/V)) + V idle");
    var law = calibration.law();
    lines.add("  k %s, idle %s A, no-load growth %s"
        .formatted(figure(law.loss(), 3), figure(law.idleA(), 3), figure(law.growth(), 2)));
    lines.add("");
    lines.add("Motors: loaded Kv rpm/V, resistance mohm, no-load current A at 9549 rpm, its own k");
    calibration
        .motors()
        .forEach((key, motor) -> lines.add("  %s: Kv %s, R %s, %s A, k %s, %s rows"
            .formatted(
                key,
                figure(motor.kvRpmPerVolt(), 0),
                figure(scaled(motor.resistanceOhm()), 1),
                figure(motor.noLoadCurrentA(), 2),
                figure(motor.partLoadLoss(), 3),
                motor.rows())));
    lines.add("");
    lines.add(
        "Propellers: C_T and C_P at 6000, 10000 and 14000 rpm; their error at 9549 rpm; rpm measured");
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
      lines.add(line.toString());
    });
    lines.add("");
    lines.add("Error of bus power at equal thrust, rows fitted: " + summary(calibration.errors()));
    lines.add("Costs of the starts: "
        + String.join(
            ", ",
            calibration.starts().stream()
                .map(cost -> String.format(Locale.ROOT, "%.3f", cost))
                .toList()));
    calibration.cautions().forEach(lines::add);
    if (!calibration.correlations().isEmpty()) {
      lines.add("");
      lines.add("Correlations of 0.5 and more:");
      var correlations = calibration.correlations();
      correlations.stream()
          .limit(MOST_CORRELATIONS)
          .forEach(one -> lines.add(String.format(
              Locale.ROOT, "  %+.2f %s, %s", one.value(), one.first(), one.second())));
      if (correlations.size() > MOST_CORRELATIONS) {
        lines.add(
            "  and " + (correlations.size() - MOST_CORRELATIONS) + " weaker ones; JSON has all");
      }
    }
    leftOut(calibration, lines);
    against.ifPresent(comparison -> against(comparison, lines));
    return lines.stream()
        .flatMap(line -> Wrapped.lines(line, 4, width).stream())
        .collect(Collectors.joining("\n", "", "\n"));
  }

  private static void leftOut(Calibration calibration, List<String> lines) {
    var byReason = new TreeMap<String, List<String>>();
    calibration
        .leftOut()
        .forEach(row -> byReason
            .computeIfAbsent(row.file() + ": " + row.reason(), key -> new ArrayList<>())
            .add(Integer.toString(row.line())));
    if (!byReason.isEmpty()) {
      lines.add("");
      lines.add("Left out:");
      byReason.forEach(
          (reason, rows) -> lines.add("  " + reason + "; lines " + String.join(", ", rows)));
    }
  }

  private static void against(Comparison comparison, List<String> lines) {
    lines.add("");
    lines.add("Error of bus power at equal thrust, other rows:");
    lines.add("  all: " + summary(comparison.all()));
    lines.add("  40 to 150 gf: " + summary(comparison.hover()));
    for (Map.Entry<String, ErrorSummary> motor : comparison.byMotor().entrySet()) {
      lines.add("  motor " + motor.getKey() + ": " + summary(motor.getValue()));
    }
    if (!comparison.unknownMotors().isEmpty()) {
      lines.add("  motors not known: " + String.join(", ", comparison.unknownMotors()));
    }
    if (!comparison.unknownPropellers().isEmpty()) {
      lines.add("  propellers not known: " + String.join(", ", comparison.unknownPropellers()));
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
