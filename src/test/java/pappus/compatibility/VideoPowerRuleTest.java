package pappus.compatibility;

import static org.assertj.core.api.Assertions.assertThat;
import static pappus.compatibility.Bench.FITS;
import static pappus.part.Parts.board;
import static pappus.part.Parts.build;
import static pappus.part.Parts.transmitter;
import static pappus.part.Parts.with;

import java.util.List;
import org.junit.jupiter.api.Test;
import pappus.part.BuiltInTransmitter;
import pappus.part.OutputPower;
import pappus.part.Role;
import pappus.scenario.Scenarios;

final class VideoPowerRuleTest {
  private final VideoPowerRule rule = new VideoPowerRule();

  private static Bench asking(double milliwatts) {
    return Bench.with(with(Scenarios.plain(), "transmitterMilliwatts", milliwatts));
  }

  @Test
  void fitsWhereNoPowerIsAskedFor() {
    assertThat(Bench.plain().says(rule, build())).isEqualTo(FITS);
  }

  @Test
  void fitsUpToTheHighestSetting() {
    assertThat(asking(400).says(rule, build())).isEqualTo(FITS);
  }

  @Test
  void clashesAboveIt() {
    assertThat(asking(600).says(rule, build()))
        .isEqualTo("clashes: The transmitter puts out 400 mW at most, but 600 mW are asked for.");
  }

  @Test
  void judgesTheTransmitterOnTheBoard() {
    var inside = new BuiltInTransmitter(
        "analogue", List.of(new OutputPower(25, 1, null)), transmitter().antenna());
    var build = build(with(board(), "transmitter", inside)).without(Role.TRANSMITTER);

    assertThat(asking(100).says(rule, build))
        .isEqualTo("clashes: The transmitter puts out 25 mW at most, but 100 mW are asked for.");
  }

  @Test
  void fitsWithoutATransmitter() {
    assertThat(asking(600).says(rule, build().without(Role.TRANSMITTER))).isEqualTo(FITS);
  }
}
