package pappus.physics.airframe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class AirframeTest {

  @Test
  void weighsItsMassTimesStandardGravity() {
    assertThat(new Airframe(0.25, 0, 0).weightN()).isCloseTo(2.4516625, within(1e-12));
  }

  @Test
  void dragGoesWithTheSquareOfTheSpeed() {
    var airframe = new Airframe(0.25, 0, 0.008);

    assertThat(airframe.dragN(10, 1.225)).isCloseTo(0.49, within(1e-12));
    assertThat(airframe.dragN(20, 1.225)).isCloseTo(1.96, within(1e-12));
  }

  @Test
  void refusesToLoseMoreThanHalfOfTheThrust() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Airframe(0.25, 0.6, 0))
        .withMessage("thrustLost must be from 0 to 0.5, but is 0.6.");
  }
}
