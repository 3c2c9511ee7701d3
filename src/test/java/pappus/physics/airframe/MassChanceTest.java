package pappus.physics.airframe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against the published table of the normal distribution (NIST/SEMATECH e-Handbook, 1.3.6.7.1). */
class MassChanceTest {
  @ParameterizedTest
  @CsvSource({"0.5, 0", "0.8413447, 1", "0.95, 1.644854", "0.99, 2.326348"})
  void deviationsAreThoseOfTheTable(double confidence, double deviations) {
    assertThat(MassChance.deviationsFor(confidence)).isCloseTo(deviations, within(1e-6));
    assertThat(MassChance.deviations(1 - confidence)).isCloseTo(-deviations, within(1e-6));
    assertThat(MassChance.under(250, 250 - 3 * deviations, 3)).isCloseTo(confidence, within(1e-6));
    assertThat(MassChance.under(250, 250 + 3 * deviations, 3))
        .isCloseTo(1 - confidence, within(1e-6));
  }

  @Test
  void withoutDoubtItIsUnderOrNot() {
    assertThat(MassChance.under(250, 250, 0)).isEqualTo(1);
    assertThat(MassChance.under(250, 249, 0)).isEqualTo(1);
    assertThat(MassChance.under(250, 250.1, 0)).isZero();
  }

  @Test
  void refusesWhatIsNoConfidence() {
    assertThatIllegalArgumentException().isThrownBy(() -> MassChance.deviationsFor(0.4999));
    assertThatIllegalArgumentException().isThrownBy(() -> MassChance.deviationsFor(1));
  }
}
