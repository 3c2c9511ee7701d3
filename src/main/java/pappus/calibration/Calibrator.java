package pappus.calibration;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
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
 * Fits motors, propellers and the controllers' common law to thrust-stand rows at once, by nonlinear least
 * squares from several starts. Rows are held to in logarithms of
 *
 * <ul>
 *   <li>bus power and speed at equal thrust,
 *   <li>the volts and the current of the motor at full throttle and at the speed measured, where the controller
 *       only passes on: they tell Kv, resistance and no-load current apart whatever the stand's thrust reads,
 *   <li>torque where it was measured.
 * </ul>
 *
 * <p>Loss and no-load current can stand in for each other, so priors hold them: k 0.40 ± 0.10, idle 0.10 ±
 * 0.06 A, growth 0.6 ± 0.3; loaded Kv 1/1.055 of the label's ± 5 %, resistance and no-load current of small
 * motors within a factor of two, R Kv² of a motor within 40 % of the others', air of a motor's day on the stand within 2 %
 * of the one stated.
 *
 * <p>Rows far from all others are left out, and the fit is repeated.
 */
public final class Calibrator {
  /** Deviations of rows from the model, relative and in grams; engineering estimates. */
  private static final double POWER_DOUBT = 0.05;

  private static final double THRUST_DOUBT_GRAMS = 0.5;

  /** Power grows with thrust to the power of 1.3 on a small quad's motors. */
  private static final double POWER_PER_THRUST = 1.3;

  private static final double SPEED_DOUBT = 0.02;
  private static final double TORQUE_DOUBT = 0.03;

  /** Speed, volts and current are read far better than thrust. */
  private static final double FULL_THROTTLE_DOUBT = 0.007;

  private static final double FULL_THROTTLE_DOUBT_WITHOUT_SPEED = 0.02;
  private static final double[] LOSS_STARTS = {0.4, 0.25, 0.55};
  private static final double[] OHM_STARTS = {0.15, 0.08, 0.30};
  private static final double STEP = 1e-6;

  /** Residuals of one row. */
  private static final int OF_ROW = 5;

  private static final Calibration.ControllerLaw PRIOR = new Calibration.ControllerLaw(
      new Figure(0.40, 0.10), new Figure(0.10, 0.06), new Figure(0.6, 0.3));

  private static final double KV_DOUBT = 0.05;
  private static final double AIR_DOUBT = 0.02;

  /** Wide enough for motors of different size on one stand; an engineering estimate. */
  private static final double LIKENESS_DOUBT = 0.4;

  /** Scatters of the rows beyond which one is no longer believed. */
  private static final double OUTLIER_SCATTERS = 8;

  /** Throttle ends at 2000 µs; some controllers are set to end below: common practice, no published source. */
  private static final double LOWEST_FULL_MICROSECONDS = 1900;

  private static final double USUAL_FULL_MICROSECONDS = 2000;

  private final List<BenchRow> rows;
  private final List<Calibration.LeftOut> leftOut;
  private final Optional<Calibration.ControllerLaw> known;
  private final List<String> motors;
  private final List<String> propellers;
  private final double[] labelKv;
  private final double fullMicroseconds;
  private final int parameters;

  private Calibrator(
      List<BenchRow> used,
      List<Calibration.LeftOut> leftOut,
      Optional<Calibration.ControllerLaw> known) {
    this.rows = List.copyOf(used);
    this.leftOut = List.copyOf(leftOut);
    this.known = known;
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
    var highest = rows.stream().mapToDouble(BenchRow::pulseMicroseconds).max().orElse(0);
    fullMicroseconds =
        Math.min(USUAL_FULL_MICROSECONDS, Math.max(LOWEST_FULL_MICROSECONDS, highest));
    parameters = RowModel.SHARED
        + RowModel.OF_MOTOR * motors.size()
        + RowModel.OF_PROPELLER * propellers.size();
  }

  /**
   * The coefficients.
   *
   * @throws IllegalArgumentException if no row is of use, or no start leads anywhere
   */
  public static Calibration fit(List<BenchRow> rows) {
    return fit(rows, Optional.empty());
  }

  /**
   * The coefficients under a law of the controllers that is known; each of its numbers stays within its
   * standard error, which must be above zero.
   *
   * @throws IllegalArgumentException if no row is of use, or no start leads anywhere
   */
  public static Calibration fit(List<BenchRow> rows, Calibration.ControllerLaw known) {
    return fit(rows, Optional.of(known));
  }

  private static Calibration fit(List<BenchRow> rows, Optional<Calibration.ControllerLaw> known) {
    var leftOut = new ArrayList<Calibration.LeftOut>();
    var used = new ArrayList<BenchRow>();
    for (var row : rows) {
      row.defect()
          .ifPresentOrElse(defect -> leftOut.add(leftOut(row, defect)), () -> used.add(row));
    }
    if (used.isEmpty()) {
      throw new IllegalArgumentException(
          "rows must hold one with thrust and current above zero and a power that can lift it, but hold none.");
    }
    var calibrator = new Calibrator(used, leftOut, known);
    var optima = calibrator.optima();
    var outliers = calibrator.outliers(optima.get(0).getPoint().toArray());
    if (!outliers.isEmpty()) {
      outliers.forEach(
          row -> leftOut.add(leftOut(row, "power is far from all other rows: row left out")));
      used.removeAll(outliers);
      calibrator = new Calibrator(used, leftOut, known);
      optima = calibrator.optima();
    }
    for (var row : used) {
      if (row.speedRpm() == 0) {
        leftOut.add(leftOut(row, "speed was not read: speed left out, power used"));
      }
    }
    return new Calibrator(used, leftOut, known)
        .calibration(optima.get(0), optima.stream().map(Optimum::getCost).toList());
  }

  private static Calibration.LeftOut leftOut(BenchRow row, String reason) {
    return new Calibration.LeftOut(row.file(), row.line(), reason);
  }

  /** Rows whose power is off by many times what is usual in this fit; never so many that a key is lost. */
  private List<BenchRow> outliers(double[] point) {
    var sizes = new double[rows.size()];
    for (var r = 0; r < rows.size(); r++) {
      var row = rows.get(r);
      sizes[r] = Math.abs(residuals(row, motor(point, row), propeller(point, row))[0]);
    }
    var sorted = sizes.clone();
    Arrays.sort(sorted);
    // A median over 0.6745 is the deviation of a normal distribution.
    var limit = OUTLIER_SCATTERS * Math.max(1, sorted[sorted.length / 2] / 0.6745);
    var outliers = new ArrayList<BenchRow>();
    for (var r = 0; r < rows.size(); r++) {
      if (sizes[r] > limit) {
        outliers.add(rows.get(r));
      }
    }
    var kept = new ArrayList<>(rows);
    kept.removeAll(outliers);
    outliers.removeIf(row ->
        kept.stream().noneMatch(other -> other.motorKey().equals(row.motorKey()))
            || kept.stream().noneMatch(other -> other.propellerKey().equals(row.propellerKey())));
    return outliers;
  }

  /** One from each start that leads anywhere, the best first. */
  private List<Optimum> optima() {
    var optima = new ArrayList<Optimum>();
    for (var i = 0; i < LOSS_STARTS.length; i++) {
      try {
        optima.add(new LevenbergMarquardtOptimizer()
            .optimize(new LeastSquaresBuilder()
                .model(this::residuals)
                .target(new double[residualCount()])
                .start(start(LOSS_STARTS[i], OHM_STARTS[i]))
                .parameterValidator(this::physical)
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
    return optima;
  }

  private double[] start(double loss, double ohm) {
    var point = new double[parameters];
    point[0] = known.map(law -> law.loss().value()).orElse(loss);
    point[1] = known.map(law -> law.idleA().value()).orElse(0.1);
    point[2] = known.map(law -> law.growth().value()).orElse(0.6);
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

  /** Neither loss nor idle current below zero, a growth that a record can hold, and no curve run wild. */
  private RealVector physical(RealVector point) {
    var held = point.copy();
    hold(held, 0, 0, 1.5);
    hold(held, 1, 0, 2);
    hold(held, 2, 0, 1);
    for (var m = 0; m < motors.size(); m++) {
      hold(held, motorAt(m), expectedKv(m) - 0.5, expectedKv(m) + 0.5);
      hold(held, motorAt(m) + 1, StrictMath.log(0.002), StrictMath.log(5));
      hold(held, motorAt(m) + 2, StrictMath.log(0.005), StrictMath.log(20));
      hold(held, motorAt(m) + 3, -0.2, 0.2);
    }
    for (var p = 0; p < propellers.size(); p++) {
      for (var i = propellerAt(p); i < propellerAt(p) + RowModel.OF_PROPELLER; i += 3) {
        hold(held, i, -8, 2);
        hold(held, i + 1, -1.5, 1.5);
        hold(held, i + 2, -1, 1);
      }
    }
    return held;
  }

  private static void hold(RealVector point, int index, double low, double high) {
    point.setEntry(index, Math.min(high, Math.max(low, point.getEntry(index))));
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
    return OF_ROW * rows.size()
        + RowModel.SHARED
        + (RowModel.OF_MOTOR + 1) * motors.size()
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
      var motor = motor(point, row);
      var propeller = propeller(point, row);
      var base = residuals(row, motor, propeller);
      System.arraycopy(base, 0, values, OF_ROW * r, OF_ROW);
      for (var i = 0; i < fromMotor; i++) {
        var kept = motor[i];
        motor[i] = kept + STEP;
        var column = i < RowModel.SHARED ? i : motorAt + i - RowModel.SHARED;
        slope(slopes, OF_ROW * r, column, base, residuals(row, motor, propeller));
        motor[i] = kept;
      }
      for (var i = 0; i < RowModel.OF_PROPELLER; i++) {
        var kept = propeller[i];
        propeller[i] = kept + STEP;
        slope(slopes, OF_ROW * r, propellerAt + i, base, residuals(row, motor, propeller));
        propeller[i] = kept;
      }
    }
    var next = OF_ROW * rows.size();
    var law = known.orElse(PRIOR);
    next = prior(values, slopes, next, point, 0, law.loss());
    next = prior(values, slopes, next, point, 1, law.idleA());
    next = prior(values, slopes, next, point, 2, law.growth());
    for (var m = 0; m < motors.size(); m++) {
      var i = motorAt(m);
      next = prior(values, slopes, next, point, i, new Figure(expectedKv(m), KV_DOUBT));
      next = prior(values, slopes, next, point, i + 1, new Figure(StrictMath.log(0.15), 0.8));
      next = prior(values, slopes, next, point, i + 2, new Figure(StrictMath.log(0.7), 0.5));
      next = prior(values, slopes, next, point, i + 3, new Figure(0, AIR_DOUBT));
      next = likeness(values, slopes, next, point, m);
    }
    for (var p = 0; p < propellers.size(); p++) {
      var i = propellerAt(p);
      // Only so that a propeller of few rows keeps a sane curve.
      next = prior(values, slopes, next, point, i, new Figure(StrictMath.log(0.16), 2));
      next = prior(values, slopes, next, point, i + 1, new Figure(0, 0.3));
      next = prior(values, slopes, next, point, i + 2, new Figure(0, 0.2));
      next = prior(values, slopes, next, point, i + 3, new Figure(StrictMath.log(0.08), 2));
      // The figure of merit changes less with speed than the coefficients do.
      next = priorOfDifference(values, slopes, next, point, i + 4, i + 1, 0.1);
      next = priorOfDifference(values, slopes, next, point, i + 5, i + 2, 0.1);
    }
    return new Pair<>(new ArrayRealVector(values, false), new Array2DRowRealMatrix(slopes, false));
  }

  /** Numbers of the law and of a row's motor, as {@link RowModel} takes them. */
  private double[] motor(double[] point, BenchRow row) {
    var motor = new double[RowModel.SHARED + RowModel.OF_MOTOR];
    System.arraycopy(point, 0, motor, 0, RowModel.SHARED);
    var at = motorAt(motors.indexOf(row.motorKey()));
    System.arraycopy(point, at, motor, RowModel.SHARED, RowModel.OF_MOTOR);
    return motor;
  }

  private double[] propeller(double[] point, BenchRow row) {
    var at = propellerAt(propellers.indexOf(row.propellerKey()));
    return Arrays.copyOfRange(point, at, at + RowModel.OF_PROPELLER);
  }

  /** Power, speed, volts and current at full throttle, torque. */
  private double[] residuals(BenchRow row, double[] motor, double[] propeller) {
    var residuals = new double[OF_ROW];
    var model = RowModel.of(motor, propeller, row);
    var ofThrust = POWER_PER_THRUST * THRUST_DOUBT_GRAMS / row.thrustGrams();
    residuals[0] = StrictMath.log(Math.max(1e-9, model.busPowerW()) / row.busPowerW())
        / Math.sqrt(POWER_DOUBT * POWER_DOUBT + ofThrust * ofThrust);
    var isSpeedRead = row.speedRpm() > 0;
    var speed = isSpeedRead ? Units.rpmToRadPerS(row.speedRpm()) : model.speedRadPerS();
    if (isSpeedRead) {
      residuals[1] = StrictMath.log(model.speedRadPerS() / speed) / SPEED_DOUBT;
    }
    var torque = RowModel.torqueNm(motor, propeller, row, speed);
    if (row.pulseMicroseconds() >= fullMicroseconds) {
      // At full throttle the motor's current is the supply's, but for what the controller itself
      // takes.
      var current = Math.max(0.3 * row.currentA(), row.currentA() - motor[1]);
      var volts = speed / StrictMath.exp(motor[RowModel.SHARED])
          + current * StrictMath.exp(motor[RowModel.SHARED + 1]);
      var doubt = isSpeedRead ? FULL_THROTTLE_DOUBT : FULL_THROTTLE_DOUBT_WITHOUT_SPEED;
      residuals[2] = StrictMath.log(volts / row.volts()) / doubt;
      residuals[3] = isSpeedRead
          ? StrictMath.log(RowModel.currentA(motor, torque, speed) / current) / doubt
          : 0;
    }
    if (row.torqueMillinewtonMetres() > 0) {
      residuals[4] = StrictMath.log(1000 * torque / row.torqueMillinewtonMetres()) / TORQUE_DOUBT;
    }
    return residuals;
  }

  private static void slope(double[][] slopes, int at, int column, double[] base, double[] moved) {
    for (var i = 0; i < OF_ROW; i++) {
      slopes[at + i][column] = (moved[i] - base[i]) / STEP;
    }
  }

  private static int prior(
      double[] values, double[][] slopes, int at, double[] point, int index, Figure expected) {
    values[at] = (point[index] - expected.value()) / expected.standardError();
    slopes[at][index] = 1 / expected.standardError();
    return at + 1;
  }

  /** A motor's ln R Kv² against the mean of all: windings that fill the same iron differ in nothing else. */
  private int likeness(double[] values, double[][] slopes, int at, double[] point, int motor) {
    for (var m = 0; m < motors.size(); m++) {
      var part = ((m == motor ? 1.0 : 0) - 1.0 / motors.size()) / LIKENESS_DOUBT;
      var i = motorAt(m);
      values[at] += part * (2 * point[i] + point[i + 1]);
      slopes[at][i] = 2 * part;
      slopes[at][i + 1] = part;
    }
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
    var covariance = covariance(optimum);
    // Rows that scatter more than assumed widen the standard errors; fewer rows than that never
    // narrow them. Every number has a prior, so that each reading is one more than is needed.
    var scatter = Math.max(1, optimum.getCost() * optimum.getCost() / readings());
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
              loss(point, scatter, covariance, i + 1),
              ofLogarithm(StrictMath.exp(point[i + 3]), errors[i + 3]),
              (int) rows.stream().filter(row -> row.motorKey().equals(key)).count()));
    }
    var fittedPropellers = new LinkedHashMap<String, Calibration.PropellerFit>();
    for (var p = 0; p < propellers.size(); p++) {
      var key = propellers.get(p);
      var figures = new ArrayList<Figure>();
      for (var i = propellerAt(p); i < propellerAt(p) + RowModel.OF_PROPELLER; i++) {
        figures.add(new Figure(point[i], errors[i]));
      }
      fittedPropellers.put(key, propeller(figures, point, scatter, covariance, p));
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

  private static RealMatrix covariance(Optimum optimum) {
    try {
      return optimum.getCovariances(1e-14);
    } catch (MathRuntimeException singular) {
      throw new IllegalArgumentException(
          "rows must tell the coefficients apart, but some of these cannot be told from others.",
          singular);
    }
  }

  /** How many numbers the rows give: power, speed, two more at full throttle, torque. */
  private int readings() {
    var readings = 0;
    for (var row : rows) {
      var isSpeedRead = row.speedRpm() > 0;
      var isFull = row.pulseMicroseconds() >= fullMicroseconds;
      readings += 1
          + (isSpeedRead ? 1 : 0)
          + (isFull ? isSpeedRead ? 2 : 1 : 0)
          + (row.torqueMillinewtonMetres() > 0 ? 1 : 0);
    }
    return readings;
  }

  /** Of a motor; k and its resistance err together. */
  private static Figure loss(double[] point, double scatter, RealMatrix covariance, int ohmAt) {
    var ohm = StrictMath.exp(point[ohmAt]);
    var value = RowModel.lossOf(point[0], ohm);
    var isAtLimit = value >= RowModel.LOSS_LIMIT;
    var perLoss = isAtLimit ? 0 : RowModel.lossOf(1e-3, ohm) / 1e-3;
    var perOhm = isAtLimit ? 0 : -value / 2;
    var variance = perLoss * perLoss * covariance.getEntry(0, 0)
        + perOhm * perOhm * covariance.getEntry(ohmAt, ohmAt)
        + 2 * perLoss * perOhm * covariance.getEntry(0, ohmAt);
    return new Figure(value, Math.sqrt(Math.max(0, scatter * variance)));
  }

  private Calibration.PropellerFit propeller(
      List<Figure> figures, double[] point, double scatter, RealMatrix covariance, int index) {
    var key = propellers.get(index);
    var own = rows.stream().filter(row -> row.propellerKey().equals(key)).toList();
    var speeds = own.stream()
        .mapToDouble(row -> row.speedRpm() > 0
            ? row.speedRpm()
            : Units.radPerSToRpm(
                RowModel.of(motor(point, row), propeller(point, row), row).speedRadPerS()))
        .summaryStatistics();
    var middle = 0.5 * (speeds.getMin() + speeds.getMax());
    return new Calibration.PropellerFit(
        figures.subList(0, 3),
        figures.subList(3, 6),
        speeds.getMin(),
        speeds.getMax(),
        doubt(scatter, covariance, propellerAt(index), middle, 1, 0),
        doubt(scatter, covariance, propellerAt(index), middle, 1.5, -1),
        own.stream().mapToDouble(BenchRow::diameterMillimetres).average().orElseThrow(),
        own.stream().mapToDouble(BenchRow::airDensityKgPerCubicMetre).average().orElseThrow(),
        own.size());
  }

  /** One standard deviation of so many ln C_T and so many ln C_P of a propeller at a speed. */
  private static double doubt(
      double scatter, RealMatrix covariance, int at, double rpm, double thrusts, double powers) {
    var x = StrictMath.log(Units.rpmToRadPerS(rpm) / RowModel.REFERENCE_RAD_PER_S);
    var slopes =
        new double[] {thrusts, thrusts * x, thrusts * x * x, powers, powers * x, powers * x * x};
    var variance = 0.0;
    for (var i = 0; i < slopes.length; i++) {
      for (var j = 0; j < slopes.length; j++) {
        variance += slopes[i] * slopes[j] * covariance.getEntry(at + i, at + j);
      }
    }
    return Math.sqrt(Math.max(0, scatter * variance));
  }

  private static Figure ofLogarithm(double value, double error) {
    return new Figure(value, value * error);
  }

  private List<Calibration.Correlation> correlations(RealMatrix covariance) {
    var names = new ArrayList<>(List.of("controller loss", "controller idle", "no-load growth"));
    for (var key : motors) {
      names.addAll(List.of(
          "Kv of " + key, "resistance of " + key, "no-load current of " + key, "air of " + key));
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
