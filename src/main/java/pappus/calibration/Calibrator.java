package pappus.calibration;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.TreeSet;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer.Optimum;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;
import pappus.calibration.Calibration.Figure;
import pappus.quantity.Units;

/**
 * Fits motors, propellers and the controllers' common law to thrust-stand rows at once: logarithms of bus
 * power and speed at equal thrust, and of the motor's volts at full throttle, by nonlinear least squares
 * from several starts.
 *
 * <p>Loss and no-load current can stand in for each other, so priors hold them: k 0.40 ± 0.10, which at a
 * hover's duty is u = 1.9 ± 0.5 V, idle 0.10 ± 0.06 A, growth 0.6 ± 0.3; loaded Kv 1/1.055 of the label's ± 3 %.
 */
public final class Calibrator {
  /** Relative deviations of rows from the model; engineering estimates. */
  private static final double POWER_DOUBT = 0.03;

  private static final double SPEED_DOUBT = 0.02;
  private static final double VOLTS_DOUBT = 0.02;
  private static final double[] LOSS_STARTS = {1.9, 1.0, 3.0};
  private static final double[] OHM_STARTS = {0.15, 0.08, 0.30};
  private static final double STEP = 1e-6;

  /** Throttle ends at 2000 µs; some controllers are set to end below: common practice, no published source. */
  private static final double LOWEST_FULL_MICROSECONDS = 1900;

  private final List<BenchRow> rows = new ArrayList<>();
  private final List<Calibration.LeftOut> leftOut = new ArrayList<>();
  private final List<String> motors;
  private final List<String> propellers;
  private final double[] labelKv;
  private final double fullMicroseconds;
  private final int parameters;

  private Calibrator(List<BenchRow> all) {
    for (var row : all) {
      if (row.isUsable()) {
        rows.add(row);
        if (row.speedRpm() == 0) {
          leftOut.add(new Calibration.LeftOut(
              row.file(), row.line(), "speed 0 was not read: speed left out, power used"));
        }
      } else {
        leftOut.add(new Calibration.LeftOut(
            row.file(), row.line(), "thrust or current is not above zero: row left out"));
      }
    }
    motors = List.copyOf(new TreeSet<>(rows.stream().map(BenchRow::motorKey).toList()));
    propellers =
        List.copyOf(new TreeSet<>(rows.stream().map(BenchRow::propellerKey).toList()));
    labelKv = motors.stream()
        .mapToDouble(key -> rows.stream()
            .filter(row -> row.motorKey().equals(key))
            .findFirst()
            .orElseThrow()
            .labelKvRpmPerVolt())
        .toArray();
    fullMicroseconds = Math.max(
        LOWEST_FULL_MICROSECONDS,
        rows.stream().mapToDouble(BenchRow::pulseMicroseconds).max().orElse(0));
    parameters = RowModel.SHARED
        + RowModel.OF_MOTOR * motors.size()
        + RowModel.OF_PROPELLER * propellers.size();
  }

  /**
   * The coefficients.
   *
   * @throws IllegalArgumentException if no row has thrust and current, or no start leads anywhere
   */
  public static Calibration fit(List<BenchRow> rows) {
    var calibrator = new Calibrator(rows);
    if (calibrator.rows.isEmpty()) {
      throw new IllegalArgumentException(
          "rows must hold one with thrust and current above zero, but hold none.");
    }
    return calibrator.fit();
  }

  private Calibration fit() {
    var optima = new ArrayList<Optimum>();
    for (var i = 0; i < LOSS_STARTS.length; i++) {
      try {
        optima.add(new LevenbergMarquardtOptimizer()
            .optimize(new LeastSquaresBuilder()
                .model(this::residuals)
                .target(new double[residualCount()])
                .start(start(LOSS_STARTS[i], OHM_STARTS[i]))
                .parameterValidator(Calibrator::physical)
                .maxEvaluations(300)
                .maxIterations(300)
                .checker((iteration, before, after) ->
                    Math.abs(before.getCost() - after.getCost()) < 1e-7 * after.getCost())
                .build()));
      } catch (MathRuntimeException e) {
        // This start leads nowhere; others may.
      }
    }
    optima.sort(Comparator.comparingDouble(Optimum::getCost));
    if (optima.isEmpty()) {
      throw new IllegalArgumentException("rows must lead to a fit, but no start converges.");
    }
    return calibration(optima.get(0), optima.stream().map(Optimum::getCost).toList());
  }

  private double[] start(double lossVolts, double ohm) {
    var point = new double[parameters];
    point[0] = lossVolts;
    point[1] = 0.1;
    point[2] = 0.6;
    for (var m = 0; m < motors.size(); m++) {
      point[motorAt(m)] = expectedKv(m);
      point[motorAt(m) + 1] = StrictMath.log(ohm);
      point[motorAt(m) + 2] = StrictMath.log(0.5);
    }
    for (var p = 0; p < propellers.size(); p++) {
      point[propellerAt(p)] = StrictMath.log(0.16);
      point[propellerAt(p) + 3] = StrictMath.log(0.08);
    }
    return point;
  }

  /** Neither loss nor idle current below zero, nor a no-load current that falls with speed. */
  private static RealVector physical(RealVector point) {
    var held = point.copy();
    held.setEntry(0, Math.max(0, point.getEntry(0)));
    held.setEntry(1, Math.max(0, point.getEntry(1)));
    held.setEntry(2, Math.min(2, Math.max(0, point.getEntry(2))));
    return held;
  }

  private double expectedKv(int motor) {
    return StrictMath.log(Units.rpmToRadPerS(labelKv[motor]) / 1.055);
  }

  private int motorAt(int motor) {
    return RowModel.SHARED + RowModel.OF_MOTOR * motor;
  }

  private int propellerAt(int propeller) {
    return RowModel.SHARED + RowModel.OF_MOTOR * motors.size() + RowModel.OF_PROPELLER * propeller;
  }

  private int residualCount() {
    return 3 * rows.size()
        + RowModel.SHARED
        + RowModel.OF_MOTOR * motors.size()
        + RowModel.OF_PROPELLER * propellers.size();
  }

  /** Residuals over their deviations, and their slopes by forward differences of what a row depends on. */
  private Pair<RealVector, RealMatrix> residuals(RealVector at) {
    var point = at.toArray();
    var values = new double[residualCount()];
    var slopes = new double[residualCount()][parameters];
    var fromMotor = RowModel.SHARED + RowModel.OF_MOTOR;
    for (var r = 0; r < rows.size(); r++) {
      var row = rows.get(r);
      var motorAt = motorAt(motors.indexOf(row.motorKey()));
      var propellerAt = propellerAt(propellers.indexOf(row.propellerKey()));
      var motor = new double[fromMotor];
      System.arraycopy(point, 0, motor, 0, RowModel.SHARED);
      System.arraycopy(point, motorAt, motor, RowModel.SHARED, RowModel.OF_MOTOR);
      var propeller = new double[RowModel.OF_PROPELLER];
      System.arraycopy(point, propellerAt, propeller, 0, RowModel.OF_PROPELLER);
      var base = residuals(row, motor, propeller);
      System.arraycopy(base, 0, values, 3 * r, 3);
      for (var i = 0; i < fromMotor; i++) {
        var kept = motor[i];
        motor[i] = kept + STEP;
        var column = i < RowModel.SHARED ? i : motorAt + i - RowModel.SHARED;
        slope(slopes, 3 * r, column, base, residuals(row, motor, propeller));
        motor[i] = kept;
      }
      for (var i = 0; i < RowModel.OF_PROPELLER; i++) {
        var kept = propeller[i];
        propeller[i] = kept + STEP;
        slope(slopes, 3 * r, propellerAt + i, base, residuals(row, motor, propeller));
        propeller[i] = kept;
      }
    }
    var next = 3 * rows.size();
    next = prior(values, slopes, next, point, 0, 1.9, 0.5);
    next = prior(values, slopes, next, point, 1, 0.10, 0.06);
    next = prior(values, slopes, next, point, 2, 0.6, 0.3);
    for (var m = 0; m < motors.size(); m++) {
      next = prior(values, slopes, next, point, motorAt(m), expectedKv(m), 0.03);
      next = prior(values, slopes, next, point, motorAt(m) + 1, StrictMath.log(0.15), 0.8);
      next = prior(values, slopes, next, point, motorAt(m) + 2, StrictMath.log(0.5), 0.7);
    }
    for (var p = 0; p < propellers.size(); p++) {
      var i = propellerAt(p);
      // Only so that a propeller of few rows keeps a sane curve.
      next = prior(values, slopes, next, point, i, StrictMath.log(0.16), 2);
      next = prior(values, slopes, next, point, i + 1, 0, 0.3);
      next = prior(values, slopes, next, point, i + 2, 0, 0.2);
      next = prior(values, slopes, next, point, i + 3, StrictMath.log(0.08), 2);
      // The figure of merit changes less with speed than the coefficients do.
      next = priorOfDifference(values, slopes, next, point, i + 4, i + 1, 0.1);
      next = priorOfDifference(values, slopes, next, point, i + 5, i + 2, 0.1);
    }
    return new Pair<>(new ArrayRealVector(values, false), new Array2DRowRealMatrix(slopes, false));
  }

  private double[] residuals(BenchRow row, double[] motor, double[] propeller) {
    var model = RowModel.of(motor, propeller, row);
    var isFull = row.pulseMicroseconds() >= fullMicroseconds;
    return new double[] {
      StrictMath.log(Math.max(1e-9, model.busPowerW()) / row.busPowerW()) / POWER_DOUBT,
      row.speedRpm() == 0
          ? 0
          : StrictMath.log(model.speedRadPerS() / Units.rpmToRadPerS(row.speedRpm())) / SPEED_DOUBT,
      isFull ? StrictMath.log(model.motorVolts() / row.volts()) / VOLTS_DOUBT : 0
    };
  }

  private static void slope(double[][] slopes, int at, int column, double[] base, double[] moved) {
    for (var i = 0; i < 3; i++) {
      slopes[at + i][column] = (moved[i] - base[i]) / STEP;
    }
  }

  private static int prior(
      double[] values,
      double[][] slopes,
      int at,
      double[] point,
      int index,
      double mean,
      double deviation) {
    values[at] = (point[index] - mean) / deviation;
    slopes[at][index] = 1 / deviation;
    return at + 1;
  }

  private static int priorOfDifference(
      double[] values,
      double[][] slopes,
      int at,
      double[] point,
      int first,
      int second,
      double deviation) {
    values[at] = (point[first] - point[second]) / deviation;
    slopes[at][first] = 1 / deviation;
    slopes[at][second] = -1 / deviation;
    return at + 1;
  }

  private Calibration calibration(Optimum optimum, List<Double> starts) {
    var point = optimum.getPoint().toArray();
    var covariance = optimum.getCovariances(1e-14);
    // Rows that scatter more than assumed widen the standard errors; fewer rows than that never
    // narrow them.
    var freedom = Math.max(1, 2 * rows.size() - parameters);
    var scatter = Math.max(1, optimum.getCost() * optimum.getCost() / freedom);
    var errors = new double[parameters];
    for (var i = 0; i < parameters; i++) {
      errors[i] = Math.sqrt(scatter * covariance.getEntry(i, i));
    }
    var law = new Calibration.ControllerLaw(
        new Figure(point[0], errors[0]),
        new Figure(point[1], errors[1]),
        new Figure(point[2], errors[2]));
    var fittedMotors = new LinkedHashMap<String, Calibration.MotorFit>();
    for (var m = 0; m < motors.size(); m++) {
      var key = motors.get(m);
      var i = motorAt(m);
      fittedMotors.put(
          key,
          new Calibration.MotorFit(
              ofLogarithm(Units.radPerSToRpm(StrictMath.exp(point[i])), errors[i]),
              ofLogarithm(StrictMath.exp(point[i + 1]), errors[i + 1]),
              ofLogarithm(StrictMath.exp(point[i + 2]), errors[i + 2]),
              (int) rows.stream().filter(row -> row.motorKey().equals(key)).count()));
    }
    var fittedPropellers = new LinkedHashMap<String, Calibration.PropellerFit>();
    for (var p = 0; p < propellers.size(); p++) {
      var key = propellers.get(p);
      var figures = new ArrayList<Figure>();
      for (var i = propellerAt(p); i < propellerAt(p) + RowModel.OF_PROPELLER; i++) {
        figures.add(new Figure(point[i], errors[i]));
      }
      fittedPropellers.put(
          key,
          new Calibration.PropellerFit(
              List.copyOf(figures.subList(0, 3)), List.copyOf(figures.subList(3, 6)), (int)
                  rows.stream().filter(row -> row.propellerKey().equals(key)).count()));
    }
    var draft = new Calibration(
        law,
        fittedMotors,
        fittedPropellers,
        ErrorSummary.of(List.of()),
        correlations(covariance),
        leftOut,
        starts);
    return new Calibration(
        law,
        fittedMotors,
        fittedPropellers,
        Comparison.of(draft, rows).all(),
        draft.correlations(),
        leftOut,
        starts);
  }

  private static Figure ofLogarithm(double value, double error) {
    return new Figure(value, value * error);
  }

  private List<Calibration.Correlation> correlations(RealMatrix covariance) {
    var names = new ArrayList<>(List.of("controller loss", "controller idle", "no-load growth"));
    for (var key : motors) {
      names.addAll(List.of("Kv of " + key, "resistance of " + key, "no-load current of " + key));
    }
    var found = new ArrayList<Calibration.Correlation>();
    for (var i = 0; i < names.size(); i++) {
      for (var j = 0; j < i; j++) {
        var value = covariance.getEntry(i, j)
            / Math.sqrt(covariance.getEntry(i, i) * covariance.getEntry(j, j));
        if (Math.abs(value) >= 0.5) {
          found.add(new Calibration.Correlation(names.get(j), names.get(i), value));
        }
      }
    }
    found.sort(Comparator.comparingDouble(correlation -> -Math.abs(correlation.value())));
    return found;
  }
}
