package pappus.physics.link;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PropagationTest {
  /** ITU-R P.525 in its handy form, 32.4 + 20 lg MHz + 20 lg km, whose constant is rounded to a tenth. */
  @ParameterizedTest
  @CsvSource({"1, 5800", "1, 2440", "0.1, 2440", "20, 892"})
  void freeSpaceIsThatOfTheRecommendation(double kilometres, double megahertz) {
    var told = 32.4 + 20 * Math.log10(megahertz) + 20 * Math.log10(kilometres);

    assertThat(Propagation.freeSpaceDb(1000 * kilometres, 1e6 * megahertz))
        .isCloseTo(told, within(0.05));
  }

  /** Worked by hand: 107.72 dB and 100.20 dB over a kilometre. */
  @Test
  void aKilometreTakesWhatWasWorkedOutByHand() {
    assertThat(Propagation.freeSpaceDb(1000, 5.8e9)).isCloseTo(107.72, within(0.005));
    assertThat(Propagation.freeSpaceDb(1000, 2.44e9)).isCloseTo(100.20, within(0.005));
  }

  /** Beyond the break distance twice as far takes 12 dB more, before it 6. */
  @Test
  void theGroundCountsBeyondTheBreakDistance() {
    var breakMetres = Propagation.breakMetres(1.5, 20, 2.44e9);

    assertThat(breakMetres).isCloseTo(3068, within(1.0));
    assertThat(Propagation.lossDb(1000, 2.44e9, breakMetres)
            - Propagation.lossDb(500, 2.44e9, breakMetres))
        .isCloseTo(6.02, within(0.005));
    assertThat(Propagation.lossDb(8000, 2.44e9, breakMetres)
            - Propagation.lossDb(4000, 2.44e9, breakMetres))
        .isCloseTo(12.04, within(0.005));
    assertThat(Propagation.lossDb(breakMetres * (1 + 1e-9), 2.44e9, breakMetres))
        .isCloseTo(Propagation.lossDb(breakMetres, 2.44e9, breakMetres), within(1e-6));
  }

  @ParameterizedTest
  @CsvSource({"10", "500", "3067", "3069", "12000", "90000"})
  void distanceIsTheInverseOfLoss(double metres) {
    var loss = Propagation.lossDb(metres, 2.44e9, 3068);

    assertThat(Propagation.metres(loss, 2.44e9, 3068)).isCloseTo(metres, within(1e-6 * metres));
  }

  @Test
  void powerIsToldInDecibels() {
    assertThat(Propagation.dbm(1)).isZero();
    assertThat(Propagation.dbm(100)).isCloseTo(20, within(1e-12));
    assertThat(Propagation.dbm(25)).isCloseTo(13.98, within(0.005));
  }

  @Test
  void refusesWhatIsNoDistanceAndNoBand() {
    assertThatIllegalArgumentException().isThrownBy(() -> Propagation.freeSpaceDb(0, 5.8e9));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Propagation.freeSpaceDb(100, 5.8))
        .withMessageStartingWith("hertz must be from ");
    assertThatIllegalArgumentException().isThrownBy(() -> Propagation.breakMetres(0, 3, 1e9));
    assertThatIllegalArgumentException().isThrownBy(() -> Propagation.dbm(0));
  }
}
