package pappus.physics.propeller;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class PropellerTest {
  private static final double DENSITY = 1.2;
  private static final double VISCOSITY = 1.81e-5;

  private static PropellerModel table() {
    return PropellerModel.ofTable(
        0.127,
        DENSITY / VISCOSITY,
        List.of(
            new StaticPoint(600, 0.140, 0.074),
            new StaticPoint(1200, 0.150, 0.076),
            new StaticPoint(1700, 0.148, 0.0765)));
  }

  @Test
  void readsItsOwnRowsAndTheLineBetweenThem() {
    var propeller = table().in(DENSITY, VISCOSITY);

    assertThat(propeller.thrustCoefficient(600)).isCloseTo(0.140, within(1e-15));
    assertThat(propeller.thrustCoefficient(900)).isCloseTo(0.145, within(1e-15));
    assertThat(propeller.powerCoefficient(1450)).isCloseTo(0.07625, within(1e-15));
  }

  @Test
  void holdsTheEndValuesAndSaysSo() {
    var propeller = table().in(DENSITY, VISCOSITY);

    assertThat(propeller.thrustCoefficient(100)).isEqualTo(0.140);
    assertThat(propeller.thrustCoefficient(3000)).isEqualTo(0.148);
    assertThat(propeller.isBeyondTest(100)).isTrue();
    assertThat(propeller.isBeyondTest(600)).isFalse();
    assertThat(propeller.isBeyondTest(1700)).isFalse();
    assertThat(propeller.isBeyondTest(1701)).isTrue();
  }

  @Test
  void aSinglePairHoldsEverywhere() {
    var propeller = PropellerModel.ofPair(0.127, 0.1283, 0.0592).in(1.225, VISCOSITY);

    assertThat(propeller.thrustCoefficient(3000)).isEqualTo(0.1283);
    assertThat(propeller.isBeyondTest(3000)).isFalse();
  }

  @Test
  void readsTheTableAtTheReynoldsNumberOfItsTest() {
    var thin = table().in(DENSITY / 2, VISCOSITY);

    assertThat(thin.thrustCoefficient(1800)).isCloseTo(0.145, within(1e-15));
  }

  @Test
  void shaftPowerIsTheDefinitionOfThePowerCoefficient() {
    var propeller = table().in(DENSITY, VISCOSITY);
    var n = 1200 / (2 * Math.PI);

    assertThat(propeller.shaftPowerW(1200))
        .isCloseTo(0.076 * DENSITY * Math.pow(n, 3) * Math.pow(0.127, 5), within(1e-10));
    assertThat(propeller.thrustN(1200))
        .isCloseTo(0.150 * DENSITY * Math.pow(n, 2) * Math.pow(0.127, 4), within(1e-12));
  }

  @Test
  void speedForThrustAndPowerAgreeWithHipparchus() {
    var propeller = table().in(1.1, VISCOSITY);
    var solver = new BracketingNthOrderBrentSolver(1e-13, 1e-11, 1e-15, 5);
    var random = new Random(7);

    for (var draw = 0; draw < 200; draw++) {
      var thrustN = 0.05 + 8 * random.nextDouble();
      var speed = propeller.speedForThrustRadPerS(thrustN);
      assertThat(speed)
          .isCloseTo(
              solver.solve(200, w -> propeller.thrustN(w) - thrustN, 10, 5000), within(1e-8));
      assertThat(propeller.speedForPowerRadPerS(propeller.shaftPowerW(speed)))
          .isCloseTo(speed, within(1e-8));
    }
  }

  @Test
  void moreThrustAlwaysTakesMoreSpeedAndPower() {
    var propeller = table().in(DENSITY, VISCOSITY);
    var last = 0.0;

    for (var thrustN = 0.01; thrustN < 10; thrustN += 0.01) {
      var speed = propeller.speedForThrustRadPerS(thrustN);
      assertThat(speed).isGreaterThan(last);
      last = speed;
    }
    assertThat(propeller.speedForThrustRadPerS(0)).isZero();
  }

  @Test
  void refusesATableWhoseThrustFallsWithSpeed() {
    var points = List.of(new StaticPoint(600, 0.150, 0.080), new StaticPoint(700, 0.100, 0.080));

    assertThatIllegalArgumentException()
        .isThrownBy(() -> PropellerModel.ofTable(0.127, 66_000, points))
        .withMessageStartingWith("rise of thrust with speed from 600 rad/s must be a positive");
  }

  @Test
  void refusesAPropellerBetterThanTheory() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> PropellerModel.ofPair(0.127, 0.2, 0.05))
        .withMessageStartingWith("figure of merit must be from 0 to 1, but is 1.42");
  }

  @Test
  void scalesItsCoefficients() {
    var scaled = table().scaled(1.02, 0.97).in(DENSITY, VISCOSITY);

    assertThat(scaled.thrustCoefficient(1200)).isCloseTo(0.153, within(1e-12));
    assertThat(scaled.powerCoefficient(1200)).isCloseTo(0.07372, within(1e-12));
  }

  /** Figures of merit of the eight: 0.587 to 0.624, of the same thrust-stand rows. */
  @ParameterizedTest(name = "propeller {0}")
  @CsvFileSource(resources = "five-inch-static.csv")
  void figuresOfMeritOfMeasuredPropellersAreInTheirPublishedRange(
      int number, double pitchInch, int blades, double thrustCoefficient, double powerCoefficient) {
    var point = new StaticPoint(1466, thrustCoefficient, powerCoefficient);

    assertThat(point.figureOfMerit()).isBetween(0.5865, 0.6245);
  }

  /** In air of twice the density over viscosity the rows of a test stand at half their speeds. */
  @ParameterizedTest
  @CsvSource({"749, true", "751, false", "999, false", "1001, true"})
  void theRangeOfATestMovesWithTheAir(double speedRadPerS, boolean isBeyond) {
    var table = PropellerModel.ofTable(
        0.127,
        1.2 / 1.81e-5,
        List.of(new StaticPoint(1500, 0.13, 0.06), new StaticPoint(2000, 0.12, 0.055)));
    var dense = table.in(2.4, 1.81e-5);

    assertThat(dense.isBeyondTest(speedRadPerS)).isEqualTo(isBeyond);
    assertThat(dense.thrustCoefficient(1000)).isCloseTo(0.12, within(1e-12));
    assertThat(dense.figureOfMerit(1000))
        .isCloseTo(table.points().get(1).figureOfMerit(), within(1e-12));
    assertThat(table.testSPerM2()).isEqualTo(1.2 / 1.81e-5);
  }

  /** One row is known a tenth about; several between them alone. */
  @Test
  void aCurveIsTestedWhereItsRowsAre() {
    var slow = new StaticPoint(1500, 0.12, 0.06);
    var fast = new StaticPoint(1800, 0.121, 0.06);

    var one = PropellerCurve.through(0.127, 0.09, 2, 1.2 / 1.81e-5, List.of(slow));
    var two = PropellerCurve.through(0.127, 0.09, 2, 1.2 / 1.81e-5, List.of(slow, fast));

    assertThat(one.testedFromRadPerS()).isCloseTo(1500 / 1.1, within(1e-9));
    assertThat(one.testedToRadPerS()).isCloseTo(1500 * 1.1, within(1e-9));
    assertThat(two.testedFromRadPerS()).isEqualTo(1500);
    assertThat(two.testedToRadPerS()).isEqualTo(1800);
  }

  /** Too small for blade elements: thrust goes with a power of the speed, two blades of much pitch with less of it. */
  @ParameterizedTest
  @CsvSource({"0.84, 2, 0.10", "0.85, 2, 0.03", "0.9, 3, 0.10"})
  void aSmallPropellersThrustGoesWithAPowerOfItsSpeed(double pitch, int blades, double power) {
    var row = new StaticPoint(3000, 0.12, 0.08);
    var points = PropellerCurve.through(0.0508, pitch * 0.0508, blades, 1.2 / 1.81e-5, List.of(row))
        .points();

    for (var i = points.indexOf(row) + 2; i < points.size(); i++) {
      assertThat(points.get(i).speedRadPerS() / points.get(i - 1).speedRadPerS())
          .isCloseTo(1.1, within(1e-9));
      assertThat(points.get(i).thrustCoefficient() / points.get(i - 1).thrustCoefficient())
          .isCloseTo(Math.pow(1.1, power), within(1e-9));
    }
    assertThat(points.get(points.size() - 1).speedRadPerS()).isBetween(6000 / 1.1, 6000.0);
    assertThat(points.get(0).speedRadPerS()).isCloseTo(300, within(1e-9));
  }
}
