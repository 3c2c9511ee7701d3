package pappus.calibration;

import pappus.calibration.Calibration.Figure;

/** What is expected of the unknowns before any row is read, as residuals beside those of the rows. */
final class Priors {
  private static final double KV_DOUBT = 0.05;
  private static final double AIR_DOUBT = 0.02;

  /** Wide enough for motors of different size on one stand; an engineering estimate. */
  private static final double LIKENESS_DOUBT = 0.4;

  /**
   * Exponent of the figure of merit against speed: 0.11 to 0.31 was measured on propellers of 4.2 to 9 inches, the less
   * the more pitch (R. W. Deters, G. K. Ananda, M. S. Selig, AIAA 2014-2151).
   */
  private static final double MERIT_RISE = 0.15;

  private static final double MERIT_DOUBT = 0.07;

  private final Unknowns unknowns;
  private final Calibration.ControllerLaw law;

  /**
   * @param law of the controllers with the deviations it may have
   */
  Priors(Unknowns unknowns, Calibration.ControllerLaw law) {
    this.unknowns = unknowns;
    this.law = law;
  }

  int count() {
    return RowModel.SHARED
        + (RowModel.OF_MOTOR + 1) * unknowns.motors().size()
        + RowModel.OF_PROPELLER * unknowns.propellers().size();
  }

  /** Residuals and slopes from a row of them on. */
  void write(double[] values, double[][] slopes, int from, double[] point) {
    var next = from;
    next = prior(values, slopes, next, point, 0, law.loss());
    next = prior(values, slopes, next, point, 1, law.idleA());
    next = prior(values, slopes, next, point, 2, law.growth());
    for (var m = 0; m < unknowns.motors().size(); m++) {
      var i = unknowns.motorAt(m);
      next = prior(values, slopes, next, point, i, new Figure(unknowns.expectedKv(m), KV_DOUBT));
      next = prior(values, slopes, next, point, i + 1, new Figure(StrictMath.log(0.15), 0.8));
      next = prior(values, slopes, next, point, i + 2, new Figure(StrictMath.log(0.7), 0.5));
      next = prior(values, slopes, next, point, i + 3, new Figure(0, AIR_DOUBT));
      next = likeness(values, slopes, next, point, m);
    }
    for (var p = 0; p < unknowns.propellers().size(); p++) {
      var i = unknowns.propellerAt(p);
      // Only so that a propeller of few rows keeps a sane curve.
      next = prior(values, slopes, next, point, i, new Figure(StrictMath.log(0.16), 2));
      next = prior(values, slopes, next, point, i + 1, new Figure(0, 0.3));
      next = prior(values, slopes, next, point, i + 2, new Figure(0, 0.2));
      next = prior(values, slopes, next, point, i + 3, new Figure(StrictMath.log(0.08), 2));
      next = priorOfMerit(values, slopes, next, point, i + 1, new Figure(MERIT_RISE, MERIT_DOUBT));
      next = priorOfMerit(values, slopes, next, point, i + 2, new Figure(0, MERIT_DOUBT));
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
    for (var m = 0; m < unknowns.motors().size(); m++) {
      var part = ((m == motor ? 1.0 : 0) - 1.0 / unknowns.motors().size()) / LIKENESS_DOUBT;
      var i = unknowns.motorAt(m);
      values[at] += part * (2 * point[i] + point[i + 1]);
      slopes[at][i] = 2 * part;
      slopes[at][i + 1] = part;
    }
    return at + 1;
  }

  /** One coefficient of ln C_T with that of ln C_P behind it, as they make ln of the figure of merit. */
  private static int priorOfMerit(
      double[] values, double[][] slopes, int at, double[] point, int thrust, Figure expected) {
    var power = thrust + 3;
    values[at] = (1.5 * point[thrust] - point[power] - expected.value()) / expected.standardError();
    slopes[at][thrust] = 1.5 / expected.standardError();
    slopes[at][power] = -1 / expected.standardError();
    return at + 1;
  }
}
