package pappus.physics.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CurveTest {
  private static final Curve RISING =
      Curve.of(new double[] {0, 0.2, 1}, new double[] {3, 3.5, 4.3});

  @ParameterizedTest
  @CsvSource({"0, 3", "0.1, 3.25", "0.2, 3.5", "0.6, 3.9", "1, 4.3"})
  void isStraightBetweenItsKnotsBothWays(double charge, double value) {
    assertThat(RISING.at(charge)).isCloseTo(value, within(1e-12));
    assertThat(RISING.chargeAt(value)).isCloseTo(charge, within(1e-12));
    assertThat(RISING.times(2).at(charge)).isCloseTo(2 * value, within(1e-12));
  }

  @Test
  void beyondItsValuesItIsEmptyOrFull() {
    assertThat(RISING.chargeAt(2.9)).isZero();
    assertThat(RISING.chargeAt(4.4)).isEqualTo(1);
  }

  @Test
  void evenKnotsAreEqualStepsOfCharge() {
    assertThat(Curve.evenly(1, 2, 4).charges()).containsExactly(0, 0.5, 1);
    assertThat(Curve.evenly(1, 2, 4).at(0.75)).isEqualTo(3);
  }

  @Test
  void knotsOfTwoAreThoseOfEitherEachOnce() {
    var other = Curve.of(new double[] {0, 0.1, 0.2, 0.7, 1}, new double[] {1, 1, 1, 1, 1});

    assertThat(RISING.chargesWith(other)).containsExactly(0, 0.1, 0.2, 0.7, 1);
    assertThat(other.chargesWith(RISING)).containsExactly(0, 0.1, 0.2, 0.7, 1);
    assertThat(RISING.chargesWith(Curve.constant(2))).containsExactly(0, 0.2, 1);
  }

  @ParameterizedTest
  @CsvSource({
    "0.1, 0.5, 1, 3, first state of charge",
    "0, 0.5, 0.9, 3, last state of charge",
    "0, 0, 1, 3, step of state of charge",
    "0, 0.5, 1, 0, value"
  })
  void refusesWhatIsNoCurve(double first, double second, double last, double value, String said) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Curve.of(new double[] {first, second, last}, new double[] {1, 2, value}))
        .withMessageContaining(said);
  }
}
