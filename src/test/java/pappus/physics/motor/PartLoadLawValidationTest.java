package pappus.physics.motor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers of the law of part load, worked by hand at half of their last digit. */
class PartLoadLawValidationTest {

  /** c = 0.10 max(1, 18/D)². */
  @ParameterizedTest(name = "{0} mm")
  @CsvSource({"11, .26777", "12, .22500", "14, .16531", "18, .1", "22, .1"})
  void rippleOfSmallStators(double statorMm, double ripple) {
    assertThat(PartLoadLaw.BENCH.rippleOf(statorMm)).isCloseTo(ripple, within(0.000005));
  }
}
