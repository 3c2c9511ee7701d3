package pappus.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static pappus.part.Parts.board;
import static pappus.part.Parts.with;

import org.junit.jupiter.api.Test;
import pappus.part.Board;
import pappus.part.Known;

class BoardFiguresTest {
  private static double share(Board board) {
    return Evidence.NONE.board(board).rippleShare(Weighing.EXPECTED).orElse(1);
  }

  @Test
  void aBoardOfWhichNothingIsKnownIsAsUsual() {
    assertThat(Evidence.NONE.board(board()).rippleShare(Weighing.EXPECTED)).isEmpty();
  }

  @Test
  void aStatedLossIsDrawnToTheUsualOneAndNeverBelowHalfOfItUnlessMeasured() {
    var good = with(board(), "controllerLoss", 0.3);
    var best = with(board(), "controllerLoss", 0.1);
    var measured = with(best, "controllerLossKnown", Known.MEASURED);

    // ln of the share, by the squares of .35 and .25, and a slip once in a hundred.
    assertThat(share(good)).isCloseTo(Math.pow(0.3 / 0.39, 0.1225 / 0.185), within(1e-3));
    assertThat(share(best)).isEqualTo(0.5);
    assertThat(share(measured)).isLessThan(0.4);
  }

  @Test
  void switchingOftenAndSineWavesCountWhereNoLossIsStated() {
    var often = with(board(), "pwmKilohertz", 32.0);
    var stated = with(often, "controllerLoss", 0.39);

    assertThat(share(often)).isCloseTo(Math.pow(24.0 / 32, 2), within(1e-12));
    assertThat(share(with(board(), "pwmKilohertz", 96.0))).isEqualTo(0.3);
    assertThat(share(with(board(), "drive", Board.Drive.FIELD_ORIENTED))).isEqualTo(0.4);
    assertThat(share(stated)).isCloseTo(1, within(1e-12));
  }

  @Test
  void howALossIsKnownSaysNothingWithoutOne() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> with(board(), "controllerLossKnown", Known.MEASURED))
        .withMessageEndingWith(
            "controllerLossKnown must come with controllerLoss, but that is left out.");
  }
}
