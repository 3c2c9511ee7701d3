package pappus.physics.propeller;

import java.util.List;
import pappus.quantity.Require;

/**
 * A propeller standing still in the air, as a curve of coefficients over speed.
 *
 * <p>Coefficients as in the UIUC PropellerModel Database (Brandt and Selig, AIAA 2011-1255, from memory, not
 * re-read in print). A table is read at the Reynolds number of its test: the speed times the ratio of the
 * air's density over viscosity to that of the test. Between rows it is linear; outside them the end value is
 * held ({@link PropellerCurve} has rows for every speed that is flown).
 */
public final class PropellerModel {
  /** Density over viscosity of a test whose air is not stated, s/m²: 1.2 kg/m³ and 1.81e-5 Pa·s. */
  public static final double DEFAULT_TEST_S_PER_M2 = 1.2 / 1.81e-5;

  private final double diameterM;
  private final double testSPerM2;
  private final List<StaticPoint> points;
  private final double testedFromRadPerS;
  private final double testedToRadPerS;

  private PropellerModel(
      double diameterM,
      double testSPerM2,
      List<StaticPoint> points,
      double testedFromRadPerS,
      double testedToRadPerS) {
    this.testedFromRadPerS = testedFromRadPerS;
    this.testedToRadPerS = testedToRadPerS;
    this.diameterM = Require.positive("diameterM", diameterM);
    this.testSPerM2 = Require.positive("testSPerM2", testSPerM2);
    this.points = List.copyOf(Require.notEmpty("points", points));
  }

  private PropellerModel requirePossible() {
    for (var point : points) {
      Require.inRange("figure of merit", point.figureOfMerit(), 0, 1);
    }
    return this;
  }

  private PropellerModel requireRising() {
    for (var row = 1; row < points.size(); row++) {
      requireRising(points.get(row - 1), points.get(row));
    }
    return this;
  }

  /**
   * From a static test.
   *
   * @param testSPerM2 density over viscosity of the air of the test, s/m²
   * @param points rows by rising speed
   * @throws IllegalArgumentException if the speeds do not rise, a figure of merit is above 1, or thrust or
   *     torque would fall with rising speed
   */
  public static PropellerModel ofTable(
      double diameterM, double testSPerM2, List<StaticPoint> points) {
    Require.notEmpty("points", points);
    return new PropellerModel(
            diameterM,
            testSPerM2,
            points,
            points.get(0).speedRadPerS(),
            points.get(points.size() - 1).speedRadPerS())
        .requirePossible()
        .requireRising();
  }

  /** From one pair of coefficients, taken to hold at every speed. */
  public static PropellerModel ofPair(
      double diameterM, double thrustCoefficient, double powerCoefficient) {
    return new PropellerModel(
            diameterM,
            DEFAULT_TEST_S_PER_M2,
            List.of(new StaticPoint(1, thrustCoefficient, powerCoefficient)),
            0,
            Double.POSITIVE_INFINITY)
        .requirePossible();
  }

  /** The same rows, of which only those between two speeds, rad/s, were tested. */
  PropellerModel testedBetween(double fromRadPerS, double toRadPerS) {
    return new PropellerModel(diameterM, testSPerM2, points, fromRadPerS, toRadPerS);
  }

  /** The same coefficients at the same Reynolds numbers, as if tested in another air. */
  PropellerModel testedIn(double otherSPerM2) {
    var ratio = testSPerM2 / otherSPerM2;
    var moved = points.stream()
        .map(point -> new StaticPoint(
            ratio * point.speedRadPerS(), point.thrustCoefficient(), point.powerCoefficient()))
        .toList();
    return new PropellerModel(
        diameterM, otherSPerM2, moved, ratio * testedFromRadPerS, ratio * testedToRadPerS);
  }

  /** Coefficients at a speed in the air of the test. */
  StaticPoint at(double speedRadPerS) {
    var still = new PropellerInAir(this, testSPerM2, 1);
    return new StaticPoint(
        speedRadPerS, still.thrustCoefficient(speedRadPerS), still.powerCoefficient(speedRadPerS));
  }

  /** The slowest speed it was tested at, rad/s. */
  double testedFromRadPerS() {
    return testedFromRadPerS;
  }

  /** The fastest speed it was tested at, rad/s. */
  double testedToRadPerS() {
    return testedToRadPerS;
  }

  public double diameterM() {
    return diameterM;
  }

  public double testSPerM2() {
    return testSPerM2;
  }

  /** The rows by rising speed; a single one stands for every speed. */
  public List<StaticPoint> points() {
    return points;
  }

  /** That of its best row, above 0 to 1. */
  public double highestFigureOfMerit() {
    return points.stream().mapToDouble(StaticPoint::figureOfMerit).max().orElseThrow();
  }

  /**
   * Multiplies all coefficients of thrust and of power, for shrinkage and doubt.
   *
   * @throws IllegalArgumentException if a figure of merit is then above 1
   */
  public PropellerModel scaled(double thrustFactor, double powerFactor) {
    var scaled = points.stream()
        .map(point -> new StaticPoint(
            point.speedRadPerS(),
            point.thrustCoefficient() * thrustFactor,
            point.powerCoefficient() * powerFactor))
        .toList();
    return new PropellerModel(diameterM, testSPerM2, scaled, testedFromRadPerS, testedToRadPerS)
        .requirePossible();
  }

  /** The same coefficients on a diameter that is so many times as large. */
  public PropellerModel sized(double factor) {
    return new PropellerModel(
        factor * diameterM, testSPerM2, points, testedFromRadPerS, testedToRadPerS);
  }

  /** The propeller in given air, ready to be asked. */
  public PropellerInAir in(double densityKgPerM3, double viscosityPaS) {
    return new PropellerInAir(this, densityKgPerM3, viscosityPaS);
  }

  /**
   * With C = a + b x, the thrust x² C rises if 2 C + b x is positive, and that is linear in x: both ends
   * decide. Without it the speed for a thrust would not be unique.
   */
  private static void requireRising(StaticPoint low, StaticPoint high) {
    var step = high.speedRadPerS() - low.speedRadPerS();
    Require.positive("step of speedRadPerS between rows", step);
    requireRising("thrust", low, high, low.thrustCoefficient(), high.thrustCoefficient());
    requireRising("torque", low, high, low.powerCoefficient(), high.powerCoefficient());
  }

  private static void requireRising(
      String what, StaticPoint low, StaticPoint high, double lowValue, double highValue) {
    var slope = (highValue - lowValue) / (high.speedRadPerS() - low.speedRadPerS());
    var rise = Math.min(
        2 * lowValue + slope * low.speedRadPerS(), 2 * highValue + slope * high.speedRadPerS());
    // Of many rows only one in doubt is worth a sentence.
    if (!(rise > 0)) {
      Require.positive(
          "rise of " + what + " with speed from " + Require.plain(low.speedRadPerS()) + " rad/s",
          rise);
    }
  }
}
