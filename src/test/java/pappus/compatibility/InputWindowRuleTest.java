package pappus.compatibility;

import static org.assertj.core.api.Assertions.assertThat;
import static pappus.compatibility.Bench.FITS;
import static pappus.part.Parts.battery;
import static pappus.part.Parts.board;
import static pappus.part.Parts.build;
import static pappus.part.Parts.with;

import java.util.List;
import org.junit.jupiter.api.Test;
import pappus.part.Board;

final class InputWindowRuleTest {
  private final InputWindowRule rule = new InputWindowRule();

  @Test
  void fitsWhenEveryConsumerHasASource() {
    assertThat(Bench.plain().says(rule, build())).isEqualTo(FITS);
  }

  @Test
  void clashesWhenARailDropsOutOnFewCells() {
    var battery = with(with(battery(), "cellsInSeries", 2), "capacityMilliampHours", 1700);

    assertThat(Bench.plain().says(rule, build(battery)))
        .isEqualTo(
            "clashes: transmitter takes 7 to 26 V, but the pack gives 6 to 8.4 V and the board's rails that stand then give 5 V.");
  }

  @Test
  void clashesWhenThereAreNoRails() {
    assertThat(Bench.plain().says(rule, build(with(board(), "regulators", List.of()))))
        .isEqualTo(
            "clashes: receiver takes 4.5 to 5.5 V, but the pack gives 12 to 16.8 V and the board's rails that stand then give nothing.");
  }

  @Test
  void leavesOverloadsToAnotherRule() {
    assertThat(Bench.plain()
            .says(
                rule,
                build(with(board(), "regulators", List.of(new Board.Regulator(5, 0.1, null))))))
        .isEqualTo(FITS);
  }

  @Test
  void cannotBeWaived() {
    assertThat(rule.mayBeWaived()).isFalse();
  }
}
