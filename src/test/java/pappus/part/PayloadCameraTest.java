package pappus.part;

import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static pappus.part.Parts.payloadCamera;
import static pappus.part.Parts.with;

import org.junit.jupiter.api.Test;

class PayloadCameraTest {
  @Test
  void refusesOneWithItsOwnCellThatDrawsFromThePack() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> with(payloadCamera(), "input", null))
        .havingCause()
        .withMessage("watts must be 0 with a cell of its own, but is 2. Maybe input is missing.");
  }

  @Test
  void refusesOneThatIsFedAndDrawsNothing() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> with(payloadCamera(), "watts", 0.0))
        .havingCause()
        .withMessage("watts must be from 0.1 to 15, but is 0.");
  }
}
