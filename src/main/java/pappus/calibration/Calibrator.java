package pappus.calibration;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
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
import pappus.physics.motor.PartLoadLaw;

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
 * <p>Loss and no-load current can stand in for each other, so priors hold them: c of {@link PartLoadLaw}, by the stator
 * as there, ± 35 %, idle 0.04 ± 0.02 A, growth 0.5 ± 0.1; loaded Kv 1/1.055 of the label's ± 5 %, resistance and no-load current of small
 * motors within a factor of two, R Kv² of a motor within 40 % of the others', air of a motor's day on the stand within
 * 2 % of the one stated, a figure of merit that rises with the speed to the power of 0.15 ± 0.07.
 *
 * <p>Rows far from all others are left out, and the fit is repeated. Speeds that no propeller turns at for the thrust,
 * or that belong to another number of poles, are left out before; a reading off by more than two deviations counts by
 * its distance, not by its square. A fit that misses its rows by too much is refused.
 *
 * <p>Why: src/site/markdown/decisions.md#calibration-fits-the-law-that-is-flown
 *
 * <p>Why: src/site/markdown/decisions.md#a-glitch-counts-by-its-distance
 */
public final class Calibrator {
  private static final double[] LOSS_STARTS = {0.1, 0.05, 0.2};
  private static final double[] OHM_STARTS = {0.15, 0.08, 0.30};
  private static final double STEP = 1e-6;

  private static final Calibration.ControllerLaw PRIOR = new Calibration.ControllerLaw(
      new Figure(
          PartLoadLaw.BENCH.ripple(), PartLoadLaw.DOUBT_LN_RIPPLE * PartLoadLaw.BENCH.ripple()),
      new Figure(PartLoadLaw.BENCH.idleA(), 0.02),
      new Figure(PartLoadLaw.BENCH.noLoadExponent(), 0.1));

  /** Scatters of the rows beyond which one is no longer believed. */
  private static final double OUTLIER_SCATTERS = 8;

  private final List<BenchRow> rows;
  private final Calibration.ControllerLaw law;
  private final double[] lossStarts;
  private final Unknowns unknowns;
  private final RowResiduals ofRow;
  private final Priors priors;

  private Calibrator(
      PartLoadForm form, List<BenchRow> used, Calibration.ControllerLaw law, double[] lossStarts) {
    this.rows = List.copyOf(used);
    this.law = law;
    this.lossStarts = lossStarts;
    this.unknowns = new Unknowns(rows);
    this.ofRow = new RowResiduals(form, rows);
    this.priors = new Priors(unknowns, law);
  }

  /**
   * The coefficients.
   *
   * @throws IllegalArgumentException if no row is of use, no start leads anywhere, or the fit is worthless
   */
  public static Calibration fit(List<BenchRow> rows) {
    return fit(PartLoadForm.RIPPLE, rows, PRIOR, LOSS_STARTS);
  }

  /**
   * The coefficients under a law of the controllers that is known; each of its numbers stays within its
   * standard error, which must be above zero.
   *
   * @throws IllegalArgumentException if no row is of use, no start leads anywhere, or the fit is worthless
   */
  public static Calibration fit(List<BenchRow> rows, Calibration.ControllerLaw known) {
    var loss = known.loss().value();
    return fit(PartLoadForm.RIPPLE, rows, known, loss, loss, loss);
  }

  /**
   * The coefficients under a law of another form.
   *
   * @param lossStarts one to three
   */
  static Calibration fit(
      PartLoadForm form, List<BenchRow> rows, Calibration.ControllerLaw law, double... lossStarts) {
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
    var wrongPoles = PoleCounts.wrong(used);
    used.replaceAll(row -> {
      var defect = row.speedDefect();
      if (row.speedRpm() > 0 && wrongPoles.containsKey(row.motorKey())) {
        defect = Optional.of("speed is another number of poles': speed left out, power used");
      }
      defect.ifPresent(reason -> leftOut.add(leftOut(row, reason)));
      return defect.isPresent() ? row.withoutSpeed() : row;
    });
    var calibrator = new Calibrator(form, used, law, lossStarts);
    var optima = calibrator.optima();
    var outliers = calibrator.outliers(optima.get(0).getPoint().toArray());
    if (!outliers.isEmpty()) {
      outliers.forEach(row ->
          leftOut.removeIf(other -> other.file().equals(row.file()) && other.line() == row.line()));
      outliers.forEach(
          row -> leftOut.add(leftOut(row, "power is far from all other rows: row left out")));
      used.removeAll(outliers);
      calibrator = new Calibrator(form, used, law, lossStarts);
      optima = calibrator.optima();
    }
    var found = new Solution(
            form,
            calibrator.rows,
            calibrator.unknowns,
            calibrator.ofRow.readings(calibrator.rows),
            optima.get(0))
        .calibration(wrongPoles, leftOut, optima.stream().map(Optimum::getCost).toList());
    found.requireWorth();
    return found;
  }

  private static Calibration.LeftOut leftOut(BenchRow row, String reason) {
    return new Calibration.LeftOut(row.file(), row.line(), reason);
  }

  /** Rows whose power is off by many times what is usual in this fit; never so many that a key is lost. */
  private List<BenchRow> outliers(double[] point) {
    var sizes = new double[rows.size()];
    for (var r = 0; r < rows.size(); r++) {
      var row = rows.get(r);
      sizes[r] =
          Math.abs(ofRow.plain(row, unknowns.motor(point, row), unknowns.propeller(point, row))[0]);
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
    for (var i = 0; i < lossStarts.length; i++) {
      try {
        optima.add(new LevenbergMarquardtOptimizer()
            .optimize(new LeastSquaresBuilder()
                .model(this::residuals)
                .target(new double[RowResiduals.COUNT * rows.size() + priors.count()])
                .start(unknowns.start(law, lossStarts[i], OHM_STARTS[i]))
                .parameterValidator(unknowns::physical)
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

  /** Residuals over their deviations, and their slopes by forward differences of what a row depends on. */
  private Pair<RealVector, RealMatrix> residuals(RealVector at) {
    var point = at.toArray();
    var values = new double[RowResiduals.COUNT * rows.size() + priors.count()];
    var slopes = new double[RowResiduals.COUNT * rows.size() + priors.count()][unknowns.count()];
    var fromMotor = RowModel.SHARED + RowModel.OF_MOTOR;
    for (var r = 0; r < rows.size(); r++) {
      var row = rows.get(r);
      var motorAt = unknowns.motorAt(row);
      var propellerAt = unknowns.propellerAt(row);
      var motor = unknowns.motor(point, row);
      var propeller = unknowns.propeller(point, row);
      var base = ofRow.of(row, motor, propeller);
      System.arraycopy(base, 0, values, RowResiduals.COUNT * r, RowResiduals.COUNT);
      for (var i = 0; i < fromMotor; i++) {
        var kept = motor[i];
        motor[i] = kept + STEP;
        var column = i < RowModel.SHARED ? i : motorAt + i - RowModel.SHARED;
        slope(slopes, RowResiduals.COUNT * r, column, base, ofRow.of(row, motor, propeller));
        motor[i] = kept;
      }
      for (var i = 0; i < RowModel.OF_PROPELLER; i++) {
        var kept = propeller[i];
        propeller[i] = kept + STEP;
        slope(
            slopes, RowResiduals.COUNT * r, propellerAt + i, base, ofRow.of(row, motor, propeller));
        propeller[i] = kept;
      }
    }
    priors.write(values, slopes, RowResiduals.COUNT * rows.size(), point);
    return new Pair<>(new ArrayRealVector(values, false), new Array2DRowRealMatrix(slopes, false));
  }

  private static void slope(double[][] slopes, int at, int column, double[] base, double[] moved) {
    for (var i = 0; i < RowResiduals.COUNT; i++) {
      slopes[at + i][column] = (moved[i] - base[i]) / STEP;
    }
  }
}
