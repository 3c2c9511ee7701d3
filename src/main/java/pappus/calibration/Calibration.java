package pappus.calibration;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Coefficients fitted to thrust-stand rows.
 *
 * @param law what all controllers have in common
 * @param motors by key
 * @param propellers by key
 * @param errors of bus power at equal thrust, of the rows fitted
 * @param correlations of two coefficients, ±0.5 and beyond, the strongest first
 * @param leftOut rows, or their speed, not used, and why
 * @param starts costs of the fits from each start, lowest first; far apart, the fit is in doubt
 */
public record Calibration(
    ControllerLaw law,
    Map<String, MotorFit> motors,
    Map<String, PropellerFit> propellers,
    ErrorSummary errors,
    List<Correlation> correlations,
    List<LeftOut> leftOut,
    List<Double> starts) {

  public Calibration {
    motors = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(motors));
    propellers = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(propellers));
    correlations = List.copyOf(correlations);
    leftOut = List.copyOf(leftOut);
    starts = List.copyOf(starts);
  }

  /** Bus power at the row's thrust and volts, W; empty if its motor or propeller is not known. */
  public Optional<Double> busPowerW(BenchRow row) {
    var motor = motors.get(row.motorKey());
    var propeller = propellers.get(row.propellerKey());
    if (motor == null || propeller == null || !row.isUsable()) {
      return Optional.empty();
    }
    return Optional.of(RowModel.of(RowModel.numbers(law, motor), RowModel.numbers(propeller), row)
        .busPowerW());
  }

  /** A number and its standard error. */
  public record Figure(double value, double standardError) {}

  /**
   * The controllers: bus power = v i + i u √(0.2 Ω/R) (1 − v/V) + V i_idle.
   *
   * @param lossVolts u, V
   * @param idleA i_idle, A
   * @param growth β of every motor's no-load current
   */
  public record ControllerLaw(Figure lossVolts, Figure idleA, Figure growth) {}

  /**
   * A motor with its controller and leads.
   *
   * @param kvRpmPerVolt under load
   * @param resistanceOhm with controller and leads
   * @param noLoadCurrentA at 1000 rad/s
   */
  public record MotorFit(
      Figure kvRpmPerVolt, Figure resistanceOhm, Figure noLoadCurrentA, int rows) {}

  /**
   * ln C = a + b x + c x² with x = ln(ω / 1000 rad/s).
   *
   * @param thrust a, b and c of ln C_T
   * @param power a, b and c of ln C_P
   */
  public record PropellerFit(List<Figure> thrust, List<Figure> power, int rows) {
    /** C_T at a speed. */
    public double thrustCoefficient(double rpm) {
      return at(thrust, rpm);
    }

    /** C_P at a speed. */
    public double powerCoefficient(double rpm) {
      return at(power, rpm);
    }

    private static double at(List<Figure> curve, double rpm) {
      var x =
          StrictMath.log(pappus.quantity.Units.rpmToRadPerS(rpm) / RowModel.REFERENCE_RAD_PER_S);
      return StrictMath.exp(
          curve.get(0).value() + x * (curve.get(1).value() + x * curve.get(2).value()));
    }
  }

  /** How much two coefficients can stand in for each other. */
  public record Correlation(String first, String second, double value) {}

  /** A row not used, or not in full. */
  public record LeftOut(String file, int line, String reason) {}
}
