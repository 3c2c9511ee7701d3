package pappus.compatibility;

import static org.assertj.core.api.Assertions.assertThat;
import static pappus.compatibility.Bench.FITS;
import static pappus.part.Parts.board;
import static pappus.part.Parts.build;
import static pappus.part.Parts.with;

import java.util.List;
import org.junit.jupiter.api.Test;
import pappus.part.Board;

final class RegulatorLoadRuleTest {
  private final RegulatorLoadRule rule = new RegulatorLoadRule();

  @Test
  void fitsWithinWhatTheRailsDeliver() {
    assertThat(Bench.plain().says(rule, build())).isEqualTo(FITS);
  }

  @Test
  void clashesWhenARailIsOverloaded() {
    assertThat(Bench.plain()
            .says(
                rule,
                build(with(board(), "regulators", List.of(new Board.Regulator(5, 0.1, null))))))
        .isEqualTo(
            "clashes: The board's rails would have to carry 2.8 W and a fifth more, but carry 0.5 W at most, each within its own amps.");
  }

  @Test
  void keepsAFifthToSpare() {
    var rail = new Board.Regulator(5, 0.12, null);

    assertThat(Bench.plain().says(rule, build(with(board(), "regulators", List.of(rail)))))
        .isEqualTo(FITS);
    assertThat(Bench.plain()
            .says(
                rule,
                build(with(board(), "regulators", List.of(with(rail, "continuousAmps", 0.119))))))
        .isEqualTo(
            "clashes: The board's rails would have to carry 2.8 W and a fifth more, but carry 0.6 W at most, each within its own amps.");
  }

  @Test
  void leavesWindowsToAnotherRule() {
    assertThat(Bench.plain().says(rule, build(with(board(), "regulators", List.of()))))
        .isEqualTo(FITS);
  }
}
