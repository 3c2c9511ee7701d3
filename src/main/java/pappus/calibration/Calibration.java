package pappus.calibration;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import pappus.physics.motor.PartLoadLaw;
import pappus.quantity.Units;

/**
 * Coefficients fitted to thrust-stand rows.
 *
 * @param law what all controllers have in common
 * @param motors by key
 * @param propellers by key
 * @param errors of bus power at equal thrust, of the rows fitted
 * @param correlations of two coefficients, ±0.5 and beyond, the strongest first
 * @param wrongPoles motors whose speeds seem to belong to another number of poles, and what tells
 * @param leftOut rows, or their speed, not used, and why
 * @param starts costs of the fits from each start, lowest first; far apart, the fit is in doubt
 */
public record Calibration(
    ControllerLaw law,
    Map<String, MotorFit> motors,
    Map<String, PropellerFit> propellers,
    ErrorSummary errors,
    List<Correlation> correlations,
    Map<String, String> wrongPoles,
    List<LeftOut> leftOut,
    List<Double> starts) {
  /** Costs are equal to many digits where there is one best fit. */
  private static final double STARTS_APART = 1.001;

  /** Four times what published rows show; an engineering estimate. */
  private static final double BAD_FIT_PERCENT = 12;

  /** Eight times what they show: such coefficients are no better than none; an engineering estimate. */
  private static final double WORTHLESS_PERCENT = 25;

  /** Rows that leave more of a coefficient open tell it hardly better than its class; an engineering estimate. */
  private static final double UNTOLD = 0.25;

  private static final double NOT_APART = 0.9;

  public Calibration {
    motors = Collections.unmodifiableMap(new LinkedHashMap<>(motors));
    propellers = Collections.unmodifiableMap(new LinkedHashMap<>(propellers));
    correlations = List.copyOf(correlations);
    wrongPoles = Collections.unmodifiableMap(new LinkedHashMap<>(wrongPoles));
    leftOut = List.copyOf(leftOut);
    starts = List.copyOf(starts);
  }

  /** Why the coefficients should not be trusted, in sentences; empty if nothing speaks against them. */
  public List<String> cautions() {
    var cautions = new ArrayList<String>();
    wrongPoles.forEach((motor, evidence) -> cautions.add(
        "Motor %s %s: maybe its number of poles was set wrong. Its speeds are left out."
            .formatted(motor, evidence)));
    if (starts.get(starts.size() - 1) > STARTS_APART * starts.get(0)) {
      cautions.add(
          "The starts end at different costs: other coefficients fit about as well. Maybe there are too few rows.");
    }
    if (errors.rmsPercent() > BAD_FIT_PERCENT) {
      cautions.add(String.format(
          Locale.ROOT,
          "The rows fitted are missed by %.0f %% rms. Maybe units or keys are mixed up, or a label's Kv is wrong.",
          errors.rmsPercent()));
    }
    if (motors.size() == 1 && propellers.size() == 1) {
      cautions.addAll(untold());
    }
    return cautions;
  }

  /** What rows of one motor with one propeller leave to what is usual, or cannot tell apart. */
  private List<String> untold() {
    var untold = new ArrayList<String>();
    propellers.forEach((key, propeller) -> {
      if (leftOut.stream()
              .filter(row -> row.reason().startsWith(BenchRow.NOT_READ))
              .count()
          >= propeller.rows()) {
        untold.add(
            "No row has its speed: what the rows tell is the power at a thrust; C_T, C_P and Kv of %s cannot be told apart, and stand by the label's Kv."
                .formatted(key));
      }
    });
    motors.forEach((key, motor) -> {
      addUntold("resistance", key, motor.resistanceOhm(), untold);
      addUntold("no-load current", key, motor.noLoadCurrentA(), untold);
    });
    correlations.stream()
        .filter(one -> Math.abs(one.value()) >= NOT_APART)
        .forEach(one -> untold.add(String.format(
            Locale.ROOT,
            "Not told apart: %s and %s (correlation %+.2f); rows of this motor with another propeller would.",
            one.first(),
            one.second(),
            one.value())));
    return untold;
  }

  private static void addUntold(String what, String key, Figure figure, List<String> untold) {
    if (figure.standardError() > UNTOLD * figure.value()) {
      untold.add(String.format(
          Locale.ROOT,
          "Hardly told: the %s of %s, ± %.0f %%; it stays near what is usual.",
          what,
          key,
          100 * figure.standardError() / figure.value()));
    }
  }

  /**
   * Refuses a fit that misses its own rows so far that nothing can be told from it.
   *
   * @throws IllegalArgumentException if it does
   */
  void requireWorth() {
    if (errors.rmsPercent() > WORTHLESS_PERCENT) {
      throw new IllegalArgumentException(String.format(
          Locale.ROOT,
          "rows must be met within %.0f %% rms of power, eight times what sound rows show, but are missed by %.0f %%. Maybe units or keys are mixed up, or a label's Kv is wrong.",
          WORTHLESS_PERCENT,
          errors.rmsPercent()));
    }
  }

  /** The part-load loss k that a board of these controllers states as its {@code controllerLoss}. */
  public Figure statedLoss() {
    var perRipple = PartLoadLaw.USUAL_STATED_LOSS / PartLoadLaw.BENCH.ripple();
    return new Figure(perRipple * law.loss().value(), perRipple * law.loss().standardError());
  }

  /** What the stand should show at the row's thrust and volts; empty if its motor or propeller is not known. */
  public Optional<Prediction> predict(BenchRow row) {
    return predict(PartLoadForm.RIPPLE, row);
  }

  Optional<Prediction> predict(PartLoadForm form, BenchRow row) {
    var motor = motors.get(row.motorKey());
    var propeller = propellers.get(row.propellerKey());
    if (motor == null || propeller == null || row.defect().isPresent()) {
      return Optional.empty();
    }
    var model = RowModel.of(form, RowModel.numbers(law, motor), RowModel.numbers(propeller), row);
    return Optional.of(new Prediction(model.busPowerW(), Units.radPerSToRpm(model.speedRadPerS())));
  }

  /**
   * A row as the coefficients have it.
   *
   * @param busPowerW power the controller takes, W
   * @param speedRpm mechanical
   */
  public record Prediction(double busPowerW, double speedRpm) {
    /** Error of the predicted power of a row, percent. */
    public double errorPercent(BenchRow row) {
      return 100 * (busPowerW / row.busPowerW() - 1);
    }
  }

  /** A number and its standard error. */
  public record Figure(double value, double standardError) {}

  /**
   * The controllers: bus power = v i + c v² (1 − v/V)^1.5/R + V i_idle.
   *
   * @param loss c of a motor whose stator is not small
   * @param idleA i_idle, A
   * @param growth β of every motor's no-load current
   */
  public record ControllerLaw(Figure loss, Figure idleA, Figure growth) {}

  /**
   * A motor with its controller and leads.
   *
   * @param kvRpmPerVolt under load
   * @param resistanceOhm with controller and leads
   * @param noLoadCurrentA at 1000 rad/s
   * @param ripple c of this motor, by its stator
   * @param airRatio density of the air of its rows over the one stated: no two days have the same
   * @param rows used
   */
  public record MotorFit(
      Figure kvRpmPerVolt,
      Figure resistanceOhm,
      Figure noLoadCurrentA,
      Figure ripple,
      Figure airRatio,
      int rows) {}

  /**
   * ln C = a + b x + c x² with x = ln(ω / 1000 rad/s).
   *
   * @param thrust a, b and c of ln C_T
   * @param power a, b and c of ln C_P
   * @param lowestRpm of its rows; below, the curve is only continued
   * @param highestRpm of its rows; above, the curve is only continued
   * @param thrustDoubt one standard error of ln C_T half-way between those speeds
   * @param meritDoubt one standard error there of ln of the figure of merit, C_T^1.5 / (C_P √(π/2))
   * @param diameterMillimetres mean of its rows
   * @param airDensityKgPerCubicMetre mean of its rows
   * @param rows used
   */
  public record PropellerFit(
      List<Figure> thrust,
      List<Figure> power,
      double lowestRpm,
      double highestRpm,
      double thrustDoubt,
      double meritDoubt,
      double diameterMillimetres,
      double airDensityKgPerCubicMetre,
      int rows) {
    public PropellerFit {
      thrust = List.copyOf(thrust);
      power = List.copyOf(power);
    }

    /** C_T at a speed. */
    public double thrustCoefficient(double rpm) {
      return at(thrust, rpm);
    }

    /** C_P at a speed. */
    public double powerCoefficient(double rpm) {
      return at(power, rpm);
    }

    private static double at(List<Figure> curve, double rpm) {
      var x = StrictMath.log(Units.rpmToRadPerS(rpm) / RowModel.REFERENCE_RAD_PER_S);
      return StrictMath.exp(
          curve.get(0).value() + x * (curve.get(1).value() + x * curve.get(2).value()));
    }
  }

  /** How much two coefficients can stand in for each other. */
  public record Correlation(String first, String second, double value) {}

  /** A row not used, or not in full. */
  public record LeftOut(String file, int line, String reason) {}
}
