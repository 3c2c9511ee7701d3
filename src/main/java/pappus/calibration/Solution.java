package pappus.calibration;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer.Optimum;
import pappus.calibration.Calibration.Figure;
import pappus.quantity.Units;

/** Where a fit ended, read as coefficients with their standard errors. */
final class Solution {
  private final PartLoadForm form;
  private final List<BenchRow> rows;
  private final Unknowns unknowns;
  private final double[] point;
  private final RealMatrix covariance;
  private final double scatter;
  private final double[] errors;

  /**
   * @param readings how many numbers the rows give
   * @throws IllegalArgumentException if the rows cannot tell the unknowns apart
   */
  Solution(
      PartLoadForm form, List<BenchRow> rows, Unknowns unknowns, int readings, Optimum optimum) {
    this.form = form;
    this.rows = rows;
    this.unknowns = unknowns;
    point = optimum.getPoint().toArray();
    covariance = covariance(optimum);
    // Rows that scatter more than assumed widen the standard errors; fewer rows than that never
    // narrow them. Every number has a prior, so that each reading is one more than is needed.
    scatter = Math.max(1, optimum.getCost() * optimum.getCost() / readings);
    errors = new double[unknowns.count()];
    for (var i = 0; i < errors.length; i++) {
      errors[i] = Math.sqrt(scatter * covariance.getEntry(i, i));
    }
  }

  /**
   * The coefficients.
   *
   * @param wrongPoles motors whose speeds are not used, and why
   * @param leftOut rows not used, and why
   * @param starts costs of the fits from each start
   */
  Calibration calibration(
      Map<String, String> wrongPoles, List<Calibration.LeftOut> leftOut, List<Double> starts) {
    var law = new Calibration.ControllerLaw(
        new Figure(point[0], errors[0]),
        new Figure(point[1], errors[1]),
        new Figure(point[2], errors[2]));
    var fittedMotors = new LinkedHashMap<String, Calibration.MotorFit>();
    for (var m = 0; m < unknowns.motors().size(); m++) {
      var key = unknowns.motors().get(m);
      var i = unknowns.motorAt(m);
      fittedMotors.put(
          key,
          new Calibration.MotorFit(
              ofLogarithm(Units.radPerSToRpm(StrictMath.exp(point[i])), errors[i]),
              ofLogarithm(StrictMath.exp(point[i + 1]), errors[i + 1]),
              ofLogarithm(StrictMath.exp(point[i + 2]), errors[i + 2]),
              times(law.loss(), PartLoadForm.statorFactor(unknowns.statorMillimetres(m))),
              ofLogarithm(StrictMath.exp(point[i + 3]), errors[i + 3]),
              (int) rows.stream().filter(row -> row.motorKey().equals(key)).count()));
    }
    var fittedPropellers = new LinkedHashMap<String, Calibration.PropellerFit>();
    for (var p = 0; p < unknowns.propellers().size(); p++) {
      var key = unknowns.propellers().get(p);
      var figures = new ArrayList<Figure>();
      for (var i = unknowns.propellerAt(p);
          i < unknowns.propellerAt(p) + RowModel.OF_PROPELLER;
          i++) {
        figures.add(new Figure(point[i], errors[i]));
      }
      fittedPropellers.put(key, propeller(figures, p));
    }
    var draft = new Calibration(
        law,
        fittedMotors,
        fittedPropellers,
        ErrorSummary.of(List.of()),
        correlations(),
        wrongPoles,
        leftOut,
        starts);
    return new Calibration(
        law,
        fittedMotors,
        fittedPropellers,
        Comparison.of(form, draft, rows).all(),
        draft.correlations(),
        wrongPoles,
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

  private Calibration.PropellerFit propeller(List<Figure> figures, int index) {
    var key = unknowns.propellers().get(index);
    var own = rows.stream().filter(row -> row.propellerKey().equals(key)).toList();
    var speeds = own.stream()
        .mapToDouble(row -> row.speedRpm() > 0
            ? row.speedRpm()
            : Units.radPerSToRpm(
                RowModel.of(form, unknowns.motor(point, row), unknowns.propeller(point, row), row)
                    .speedRadPerS()))
        .summaryStatistics();
    var middle = 0.5 * (speeds.getMin() + speeds.getMax());
    return new Calibration.PropellerFit(
        figures.subList(0, 3),
        figures.subList(3, 6),
        speeds.getMin(),
        speeds.getMax(),
        doubt(unknowns.propellerAt(index), middle, 1, 0),
        doubt(unknowns.propellerAt(index), middle, 1.5, -1),
        own.stream().mapToDouble(BenchRow::diameterMillimetres).average().orElseThrow(),
        own.stream().mapToDouble(BenchRow::airDensityKgPerCubicMetre).average().orElseThrow(),
        own.size());
  }

  /** One standard deviation of so many ln C_T and so many ln C_P of a propeller at a speed. */
  private double doubt(int at, double rpm, double thrusts, double powers) {
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

  private static Figure times(Figure figure, double factor) {
    return new Figure(factor * figure.value(), factor * figure.standardError());
  }

  private static Figure ofLogarithm(double value, double error) {
    return new Figure(value, value * error);
  }

  private List<Calibration.Correlation> correlations() {
    var names = new ArrayList<>(List.of("controller loss", "controller idle", "no-load growth"));
    for (var key : unknowns.motors()) {
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
