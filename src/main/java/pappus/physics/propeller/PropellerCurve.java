package pappus.physics.propeller;

import java.util.ArrayList;
import java.util.List;
import pappus.quantity.Require;

/**
 * How the coefficients of a tested propeller go on at speeds where it was not tested: between rows in straight lines,
 * beyond them by the shape of a propeller of its size, put through the row at the end.
 *
 * <p>The shape is that of {@link BladeElements} where they hold. Their exponents against speed are within 0.08 of those
 * measured on 4.2-inch to 9-inch propellers by Deters, Ananda, Selig, AIAA 2014-2151: figure of merit n^.17 to n^.3,
 * C_T n^.003 to n^.18. Elsewhere the trend of the same paper: figure of merit n^(.32 − .45 (p/D − .45)), held in .08
 * to .32, and C_T n^.10, n^.03 of two blades of high pitch.
 *
 * <p>Why: src/site/markdown/decisions.md#a-propeller-known-by-one-row-turns-at-other-speeds
 */
public final class PropellerCurve {
  /** One standard deviation of the exponent of the figure of merit against speed. */
  public static final double EXPONENT_DOUBT = 0.07;

  /** No small propeller is better: what records may state at most. */
  private static final double BEST_MERIT = 0.75;

  /** Around its one row a propeller is as good as tested. */
  private static final double NEAR_ROW = 1.1;

  /** Blades of high pitch push as well at low speed. */
  private static final double HIGH_PITCH = 0.85;

  private static final double SLOWEST = 0.1;
  private static final double FASTEST = 2;
  private static final double STEP = 1.1;

  private final double diameterM;
  private final double pitchM;
  private final int blades;
  private final double testSPerM2;

  private PropellerCurve(double diameterM, double pitchM, int blades, double testSPerM2) {
    this.diameterM = diameterM;
    this.pitchM = pitchM;
    this.blades = blades;
    this.testSPerM2 = testSPerM2;
  }

  /**
   * A propeller at all speeds.
   *
   * @param diameterM m
   * @param pitchM nominal pitch, m
   * @param testSPerM2 density over viscosity of the air of the test, s/m²
   * @param rows of the test, by rising speed
   * @throws IllegalArgumentException as {@link PropellerModel#ofTable}
   */
  public static PropellerModel through(
      double diameterM, double pitchM, int blades, double testSPerM2, List<StaticPoint> rows) {
    var curve = new PropellerCurve(diameterM, pitchM, blades, testSPerM2);
    Require.notEmpty("rows", rows);
    var first = rows.get(0);
    var last = rows.get(rows.size() - 1);
    var shape = curve.shape(first.speedRadPerS(), last.speedRadPerS());
    var points = new ArrayList<StaticPoint>();
    shape.points().stream()
        .filter(point -> point.speedRadPerS() * NEAR_ROW < first.speedRadPerS())
        .forEach(point -> points.add(carried(shape, first, point)));
    points.addAll(rows);
    shape.points().stream()
        .filter(point -> point.speedRadPerS() > last.speedRadPerS() * NEAR_ROW)
        .forEach(point -> points.add(carried(shape, last, point)));
    var slack = rows.size() == 1 ? NEAR_ROW : 1;
    return PropellerModel.ofTable(diameterM, testSPerM2, points)
        .testedBetween(first.speedRadPerS() / slack, last.speedRadPerS() * slack);
  }

  /** Coefficients at a speed over those at a row, by the shape, as far as a propeller may be good. */
  private static StaticPoint carried(PropellerModel shape, StaticPoint row, StaticPoint point) {
    var atRow = shape.at(row.speedRadPerS());
    var thrust = row.thrustCoefficient() * point.thrustCoefficient() / atRow.thrustCoefficient();
    var power = row.powerCoefficient() * point.powerCoefficient() / atRow.powerCoefficient();
    var least = StrictMath.pow(thrust, 1.5) / (BEST_MERIT * Math.sqrt(Math.PI / 2));
    return new StaticPoint(point.speedRadPerS(), thrust, Math.max(power, least));
  }

  private PropellerModel shape(double fromRadPerS, double toRadPerS) {
    return BladeElements.holdFor(diameterM, pitchM, blades)
        ? BladeElements.propeller(diameterM, pitchM, blades, fromRadPerS, toRadPerS)
            .testedIn(testSPerM2)
        : trend(fromRadPerS, toRadPerS);
  }

  private PropellerModel trend(double fromRadPerS, double toRadPerS) {
    var pitch = pitchM / diameterM;
    var merit = Math.min(0.32, Math.max(0.08, 0.32 - 0.45 * (pitch - 0.45)));
    var thrust = blades == 2 && pitch >= HIGH_PITCH ? 0.03 : 0.10;
    var points = new ArrayList<StaticPoint>();
    for (var speed = SLOWEST * fromRadPerS; speed < FASTEST * toRadPerS; speed *= STEP) {
      var ratio = speed / toRadPerS;
      var thrustCoefficient = 0.1 * StrictMath.pow(ratio, thrust);
      var meritHere = 0.3 * StrictMath.pow(ratio, merit);
      points.add(new StaticPoint(
          speed,
          thrustCoefficient,
          StrictMath.pow(thrustCoefficient, 1.5) / (meritHere * Math.sqrt(Math.PI / 2))));
    }
    return PropellerModel.ofTable(diameterM, testSPerM2, points);
  }
}
