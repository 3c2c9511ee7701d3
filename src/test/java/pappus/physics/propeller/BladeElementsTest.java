package pappus.physics.propeller;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

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
}
