package pappus.compatibility;

import static org.assertj.core.api.Assertions.assertThat;
import static pappus.compatibility.Bench.FITS;
import static pappus.part.Parts.board;
import static pappus.part.Parts.build;
import static pappus.part.Parts.with;

import org.junit.jupiter.api.Test;
import pappus.part.VoltWindow;
import pappus.scenario.Scenarios;

final class BoardVoltsRuleTest {
  private final BoardVoltsRule rule = new BoardVoltsRule();

  @Test
  void fitsFromFullDownToTheFloor() {
    assertThat(Bench.plain().says(rule, build())).isEqualTo(FITS);
  }

  @Test
  void clashesWithAFullPack() {
    assertThat(Bench.plain().says(rule, build(with(board(), "input", new VoltWindow(6, 16.5)))))
        .isEqualTo(
            "clashes: Board board takes 16.5 V at most, but pack battery has 16.8 V when full.");
  }

  @Test
  void clashesAtTheFloor() {
    assertThat(Bench.plain().says(rule, build(with(board(), "input", new VoltWindow(12.5, 26)))))
        .isEqualTo(
            "clashes: Board board needs 12.5 V, but pack battery goes down to 12 V at full throttle.");
  }

  @Test
  void goesDownToTheFloorAskedFor() {
    var flight = with(Scenarios.plain().flight(), "floorVoltsPerCell", 3.2);
    var bench = Bench.with(with(Scenarios.plain(), "flight", flight));

    assertThat(bench.says(rule, build(with(board(), "input", new VoltWindow(12.5, 26)))))
        .isEqualTo(FITS);
  }

  @Test
  void cannotBeWaived() {
    assertThat(rule.mayBeWaived()).isFalse();
  }
}
