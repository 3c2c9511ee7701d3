package pappus.physics.propeller;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * How coefficients change with speed, against R. W. Deters, G. K. Ananda, M. S. Selig, AIAA 2014-2151, and the static
 * tables of the UIUC Propeller Database.
 */
class PropellerCurveValidationTest {
  private static final double INCH_M = 0.0254;
  private static final double RPM = Math.PI / 30;
  private static final double TEST_S_PER_M2 = PropellerModel.DEFAULT_TEST_S_PER_M2;

  private static StaticPoint through(
      double inch, double pitchOverDiameter, int blades, StaticPoint row, double rpm) {
    return PropellerCurve.through(
            inch * INCH_M, pitchOverDiameter * inch * INCH_M, blades, TEST_S_PER_M2, List.of(row))
        .at(rpm * RPM);
  }

  private static StaticPoint row(double rpm, double thrust, double merit) {
    return new StaticPoint(
        rpm * RPM, thrust, Math.pow(thrust, 1.5) / (merit * Math.sqrt(Math.PI / 2)));
  }

  /** The paper's trend through one row of a propeller below 2.5 inch, worked by hand. */
  @ParameterizedTest(name = "p/D {0}")
  @CsvSource({".9, .60, 6000, .5431, .1194", ".55, .57, 8000, .4887, .1229"})
  void goesOnByTheTrendBelowTwoAndAHalfInches(
      double pitch, double merit, double rpm, double meritThere, double thrustThere) {
    var point = through(2, pitch, 4, row(14_000, .13, merit), rpm);

    // A knot every tenth of the speed: straight lines between them take up to .0003 away.
    assertThat(point.figureOfMerit()).isCloseTo(meritThere, within(0.0004));
    assertThat(point.thrustCoefficient()).isCloseTo(thrustThere, within(0.0004));
  }

  /** The static table of a printed 5×3.75 of two blades at 3987 rpm. */
  @Test
  void figureOfMeritOfAPrintedPropeller() {
    assertThat(new StaticPoint(3986.667 * RPM, .125492, .091880).figureOfMerit())
        .isCloseTo(.38605, within(0.000005));
  }

  /**
   * Measured exponents of the figure of merit against speed over each propeller's speeds; of the 5×4.3 the mean of three
   * specimens. Farthest is the 4.2×2, by
   * 1.1 of the deviations that the band counts.
   */
  @ParameterizedTest(name = "{0} x {1}")
  @CsvSource({"4.2, 2, .31", "4.2, 4, .15", "5, 4.3, .16", "5, 3.75, .11", "9, 6.75, .23"})
  void figureOfMeritRisesWithSpeedAsMeasured(double inch, double pitchInch, double exponent) {
    // Reynolds numbers of 9 to 36 thousand, as in the tests.
    var fast = 9300 * 25 / inch / inch;
    var row = row(fast, .12, .55);
    var slow = through(inch, pitchInch / inch, 2, row, fast / 4);

    var found = Math.log(row.figureOfMerit() / slow.figureOfMerit()) / Math.log(4);

    assertThat(found).isCloseTo(exponent, within(1.15 * PropellerCurve.EXPONENT_DOUBT));
  }

  /** Measured exponents of the thrust coefficient of the same propellers, farthest the 4.2×2 by .08. */
  @ParameterizedTest(name = "{0} x {1}")
  @CsvSource({"4.2, 2, .16", "4.2, 4, .035", "5, 4.3, .004", "5, 3.75, .04", "9, 6.75, .08"})
  void thrustCoefficientRisesWithSpeedAsMeasured(double inch, double pitchInch, double exponent) {
    // Reynolds numbers of 9 to 36 thousand, as in the tests.
    var fast = 9300 * 25 / inch / inch;
    var row = row(fast, .12, .55);
    var slow = through(inch, pitchInch / inch, 2, row, fast / 4);

    var found = Math.log(row.thrustCoefficient() / slow.thrustCoefficient()) / Math.log(4);

    assertThat(found).isCloseTo(exponent, within(0.085));
  }

  /**
   * Figures of merit of the eight propellers of P. Cao and J. Strawson, "motor_propeller_testing", 2018 (MIT), at
   * 14 000 rpm: .587 to .624.
   */
  @ParameterizedTest(name = "propeller {0}")
  @CsvFileSource(resources = "five-inch-static.csv")
  void figuresOfMeritOfEightPropellers(
      int number,
      double pitchInch,
      int blades,
      double thrust,
      double power,
      double modelThrust,
      double modelPower) {
    assertThat(new StaticPoint(1, thrust, power).figureOfMerit()).isBetween(.587, .625);
  }

  /** Wind tunnel, nearly standing still: 10×5 at 5400 rpm and J .113, 9×5 at 6397 rpm; outside what was fitted. */
  @ParameterizedTest(name = "{0} x {1}")
  @CsvSource({"10, 5, 5400, .0912, .0381", "9, 5, 6397, .1099, .0402"})
  void bladeElementsMeetPublishedPropellersOutsideTheirFit(
      double inch, double pitchInch, double rpm, double thrust, double power) {
    var model = BladeElements.propeller(inch * INCH_M, pitchInch * INCH_M, 2);
    var point = model.at(rpm * RPM);

    assertThat(Math.log(point.thrustCoefficient() / thrust))
        .isCloseTo(0, within(BladeElements.doubtLnThrust(inch * INCH_M)));
    assertThat(Math.log(point.figureOfMerit() / new StaticPoint(1, thrust, power).figureOfMerit()))
        .isCloseTo(0, within(2 * BladeElements.doubtLnFigureOfMerit(inch * INCH_M)));
  }

  /** A row of a crawling propeller says too much of a fast one. */
  @Test
  void noSpeedIsFlownBetterThanARecordMayState() {
    var curve = PropellerCurve.through(
        0.127,
        0.09,
        2,
        PropellerModel.DEFAULT_TEST_S_PER_M2,
        List.of(new StaticPoint(52, 0.13, 0.0520)));

    assertThat(curve.points()).allMatch(point -> point.figureOfMerit() <= 0.75 + 1e-12);
    assertThat(curve.points()).anyMatch(point -> point.figureOfMerit() > 0.749);
  }
}
