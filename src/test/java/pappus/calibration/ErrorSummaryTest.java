package pappus.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class ErrorSummaryTest {
  @Test
  void sumsUpSizesAndKeepsTheSignOfTheBias() {
    var errors = ErrorSummary.of(List.of(-4.0, 1.0, 2.0, -3.0, 5.0));

    assertThat(errors.n()).isEqualTo(5);
    assertThat(errors.medianPercent()).isEqualTo(3);
    assertThat(errors.p90Percent()).isCloseTo(4.6, within(1e-12));
    assertThat(errors.rmsPercent()).isCloseTo(Math.sqrt(11), within(1e-12));
    assertThat(errors.biasPercent()).isCloseTo(0.2, within(1e-12));
  }

  @Test
  void isZeroOfNothing() {
    assertThat(ErrorSummary.of(List.of())).isEqualTo(new ErrorSummary(0, 0, 0, 0, 0));
  }
}
