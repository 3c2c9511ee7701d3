package pappus.physics.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EfficiencyBandTest {
  @ParameterizedTest
  @CsvSource({
    "0.030, 0.12, 0.20, 0.24",
    "0.0499, 0.12, 0.20, 0.24",
    "0.050, 0.13, 0.30, 0.40",
    "0.250, 0.13, 0.30, 0.40",
    "0.575, 0.13, 0.36, 0.46",
    "0.900, 0.13, 0.42, 0.52",
    "2.000, 0.13, 0.42, 0.52"
  })
  void widensWithTheMass(double massKg, double lowest, double highest, double hard) {
    var band = EfficiencyBand.warning(massKg);

    assertThat(band.lowest()).isCloseTo(lowest, within(1e-12));
    assertThat(band.highest()).isCloseTo(highest, within(1e-12));
    assertThat(EfficiencyBand.hard(massKg)).isCloseTo(hard, within(1e-12));
  }

  @Test
  void holdsItsEnds() {
    var band = new EfficiencyBand(0.1, 0.2);

    assertThat(band.contains(0.1)).isTrue();
    assertThat(band.contains(0.2)).isTrue();
    assertThat(band.contains(0.0999)).isFalse();
    assertThat(band.contains(0.2001)).isFalse();
  }
}
