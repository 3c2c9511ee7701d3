package pappus.physics.propeller;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BladeElementsTest {

  @Test
  void refusesPropellersBelowTwoAndAHalfInch() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> BladeElements.propeller(0.0508, 0.03, 4))
        .withMessage("diameterM must be from 0.0635 to 0.4, but is 0.0508. "
            + "Maybe give measured coefficients: geometry alone says nothing below 2.5 inch.");
  }

  @Test
  void acceptsEveryGeometryOfItsRange() {
    for (var diameterM = 0.0635; diameterM < 0.4; diameterM *= 1.3) {
      for (var pitch = 0.25; pitch <= 1.5; pitch += 0.25) {
        for (var blades = 2; blades <= 6; blades++) {
          var propeller = BladeElements.propeller(diameterM, pitch * diameterM, blades);

          assertThat(propeller.points()).allMatch(point -> point.figureOfMerit() < 0.8);
        }
      }
    }
  }

  @Test
  void doubtsDoubleOutsideItsFit() {
    assertThat(BladeElements.doubtLnThrust(0.127)).isEqualTo(0.10);
    assertThat(BladeElements.doubtLnThrust(4 * 0.0254)).isEqualTo(0.10);
    assertThat(BladeElements.doubtLnThrust(0.0762)).isEqualTo(0.20);
    assertThat(BladeElements.doubtLnFigureOfMerit(0.127)).isEqualTo(0.05);
    assertThat(BladeElements.doubtLnFigureOfMerit(0.254)).isEqualTo(0.10);
  }

  /** Terms left out are below 1e-10 where the series ends. */
  @Test
  void theSeriesIsThePowerItStandsFor() {
    for (var x = 0.0; x < 0.3; x += 0.001) {
      assertThat(BladeElements.rootOfFlow(x))
          .as("at %s", x)
          .isCloseTo(StrictMath.pow(1 + x, 0.025), within(1e-10));
    }
  }

  @ParameterizedTest
  @CsvSource({
    "0.0635, 0.05, 2, true",
    "0.0634, 0.05, 2, false",
    "0.4, 0.2, 2, true",
    "0.4001, 0.2, 2, false",
    "0.125, 0.025, 2, true",
    "0.125, 0.0249, 2, false",
    "0.125, 0.1875, 2, true",
    "0.125, 0.1876, 2, false",
    "0.125, 0.1, 6, true",
    "0.125, 0.1, 7, false",
    "0.125, 0.1, 1, false"
  })
  void holdsInItsRangeAndNoFarther(double diameterM, double pitchM, int blades, boolean holds) {
    assertThat(BladeElements.holdFor(diameterM, pitchM, blades)).isEqualTo(holds);
    if (holds) {
      assertThat(BladeElements.typical(diameterM, pitchM, blades).thrustCoefficient())
          .isPositive();
    } else {
      assertThatIllegalArgumentException()
          .isThrownBy(() -> BladeElements.typical(diameterM, pitchM, blades));
    }
  }

  /** 14 000 rpm at 5 inches, 7000 at 10. */
  @Test
  void typicalIsAsFastAtTheTips() {
    assertThat(BladeElements.typical(0.127, 0.09, 2))
        .isEqualTo(
            BladeElements.at(0.127, 0.09, 2, 14_000.0 / (0.127 / 0.0254) * 5 * Math.PI / 30));
    assertThat(BladeElements.typical(0.254, 0.18, 2).speedRadPerS())
        .isCloseTo(7_000 * Math.PI / 30, within(1e-9));
  }

  /** Rows follow each other from the inflow of those before; a row alone is searched from nothing. */
  @Test
  void eachRowOfATableIsThatOfItsSpeedAlone() {
    for (var geometry : new double[][] {{0.0635, 0.05, 6}, {0.127, 0.1, 3}, {0.254, 0.3, 2}}) {
      var blades = (int) geometry[2];
      var rows = BladeElements.propeller(geometry[0], geometry[1], blades).points();
      assertThat(rows).hasSize(45);
      assertThat(rows.get(44).speedRadPerS())
          .isCloseTo(225_000 / (geometry[0] / 0.0254) * Math.PI / 30, within(1e-9));
      for (var row : rows) {
        var alone = BladeElements.at(geometry[0], geometry[1], blades, row.speedRadPerS());
        assertThat(row.thrustCoefficient()).isCloseTo(alone.thrustCoefficient(), within(1e-10));
        assertThat(row.powerCoefficient()).isCloseTo(alone.powerCoefficient(), within(1e-10));
      }
    }
  }

  /** Of 45 rows 1963.5 rad/s apart at 5 inches those between are left out, but for the ones beside them. */
  @Test
  void rowsThatAreKnownOtherwiseAreLeftOut() {
    var all = BladeElements.propeller(0.127, 0.09, 2).points();
    var step = all.get(0).speedRadPerS();

    var some = BladeElements.propeller(0.127, 0.09, 2, 10.5 * step, 19.5 * step).points();

    assertThat(some.stream().map(point -> (int) Math.round(point.speedRadPerS() / step)))
        .containsExactlyElementsOf(IntStream.rangeClosed(1, 45)
            .filter(row -> row <= 11 || row >= 19)
            .boxed()
            .toList());
  }

  @ParameterizedTest
  @CsvSource({"0.1016, 1", "0.1397, 1", "0.1015, 2", "0.1398, 2"})
  void isDoubtedOnceFromFourToFiveAndAHalfInches(double diameterM, double factor) {
    assertThat(BladeElements.doubtLnThrust(diameterM)).isEqualTo(0.10 * factor);
  }
}
