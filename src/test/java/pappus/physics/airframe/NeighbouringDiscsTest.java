package pappus.physics.airframe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NeighbouringDiscsTest {

  /** 1 − .02 exp(−(g/D − .05)/.10), worked by hand at half of the last digit. */
  @ParameterizedTest(name = "{0} of a diameter")
  @CsvSource({".05, .98000", ".1, .98787", ".2, .99554"})
  void thrustLeft(double gap, double share) {
    assertThat(NeighbouringDiscs.kept(gap)).isCloseTo(share, within(0.000005));
  }

  @Test
  void nearerDiscsLoseNoMore() {
    assertThat(NeighbouringDiscs.kept(0)).isEqualTo(NeighbouringDiscs.kept(0.05));
    assertThat(NeighbouringDiscs.kept(-0.3)).isEqualTo(NeighbouringDiscs.kept(0.05));
    assertThat(NeighbouringDiscs.kept(3)).isCloseTo(1, within(1e-12));
  }
}
