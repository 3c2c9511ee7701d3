package pappus.physics.flight;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class ThrottleLimitTest {
  @Test
  void thePackIsWhatFeedsTheBus() {
    assertThat(Arrays.stream(ThrottleLimit.values()).filter(ThrottleLimit::isOfPack))
        .containsExactly(
            ThrottleLimit.PACK,
            ThrottleLimit.CONNECTOR,
            ThrottleLimit.LEAD,
            ThrottleLimit.FLOOR_VOLTS);
  }
}
