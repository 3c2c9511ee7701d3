package pappus.physics.link;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against figures worked by hand from the same formulas. */
class LinkBudgetTest {
  /** 25 mW of analogue video, 1.5 dBi at both ends. */
  private static LinkBudget video(Mismatch mismatch) {
    return new LinkBudget(
        Propagation.dbm(25),
        3,
        -85,
        mismatch.decibels(),
        LinkBudget.VIDEO_FADE_DB,
        5.8e9,
        Propagation.breakMetres(1.5, 30, 5.8e9));
  }

  /** 100 mW of control at 250 packets a second, 2 and 0 dBi, 1.5 m and 20 m up. */
  private static final LinkBudget CONTROL = new LinkBudget(
      Propagation.dbm(100),
      2,
      -108,
      0,
      LinkBudget.CONTROL_FADE_DB,
      2.44e9,
      Propagation.breakMetres(1.5, 20, 2.44e9));

  @ParameterizedTest
  @CsvSource({"NONE, 163", "LINEAR_TO_CIRCULAR, 116", "OPPOSITE_HANDS, 16"})
  void videoReachesAsFarAsWorkedByHand(Mismatch mismatch, double metres) {
    assertThat(video(mismatch).metres()).isCloseTo(metres, within(0.5));
  }

  /**
   * A wave of one hand has half its power in any plane, 10 lg 2 = 3.01 dB, which leaves .708 of the reach in free space;
   * 20 dB leave a tenth.
   */
  @ParameterizedTest
  @CsvSource({"NONE, 0, 1", "LINEAR_TO_CIRCULAR, 3, 0.7079", "OPPOSITE_HANDS, 20, 0.1"})
  void polarisationsTakeNothingThreeOrTwentyDecibels(
      Mismatch mismatch, double decibels, double share) {
    assertThat(mismatch.decibels()).isEqualTo(decibels);
    assertThat(video(mismatch).hundredths())
        .isEqualTo(video(Mismatch.NONE).hundredths() - Math.round(100 * decibels));
    assertThat(video(mismatch).metres() / video(Mismatch.NONE).metres())
        .isCloseTo(share, within(0.0001));
  }

  @Test
  void controlReachesAsFarAsWorkedByHandOverGround() {
    assertThat(CONTROL.hundredths()).isEqualTo(11_300);
    assertThat(Propagation.metres(113, 2.44e9, 1e9)).isCloseTo(4366, within(2.0));
    assertThat(CONTROL.metres()).isCloseTo(3660, within(1.0));
  }

  /** In free space a deviation is a factor of two; over ground, where loss grows faster, the root of it. */
  @Test
  void aDeviationIsAFactorOfTwoInFreeSpace() {
    var video = video(Mismatch.NONE);

    assertThat(video.metres(LinkBudget.DOUBT_DB) / video.metres()).isCloseTo(0.501, within(0.001));
    assertThat(video.metres(-LinkBudget.DOUBT_DB) / video.metres()).isCloseTo(1.995, within(0.001));
    assertThat(CONTROL.metres(-LinkBudget.DOUBT_DB) / CONTROL.metres())
        .isCloseTo(1.4125, within(0.001));
  }

  @Test
  void theMarginIsNothingWhereItEnds() {
    assertThat(CONTROL.marginDb(CONTROL.metres())).isCloseTo(0, within(1e-9));
    assertThat(CONTROL.marginDb(1000)).isCloseTo(12.80, within(0.005));
    assertThat(CONTROL.marginDb(10_000)).isNegative();
  }

  /** Less than a hundredth of a dB tells nothing apart. */
  @Test
  void countsWholeHundredthsRoundedDown() {
    var less = new LinkBudget(20.004, 2, -108, 0, 15, 2.44e9, 3068);
    var more = new LinkBudget(20.011, 2, -108, 0, 15, 2.44e9, 3068);

    assertThat(less.hundredths()).isEqualTo(11_300);
    assertThat(more.hundredths()).isEqualTo(11_301);
  }
}
