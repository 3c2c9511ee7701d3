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
}
