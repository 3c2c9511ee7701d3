package pappus.compatibility;

import static org.assertj.core.api.Assertions.assertThat;
import static pappus.compatibility.Bench.FITS;
import static pappus.part.Parts.battery;
import static pappus.part.Parts.board;
import static pappus.part.Parts.build;
import static pappus.part.Parts.lead;
import static pappus.part.Parts.with;

import org.junit.jupiter.api.Test;
import pappus.part.Connector;

final class BatteryPlugRuleTest {
  private final BatteryPlugRule rule = new BatteryPlugRule();

  @Test
  void fitsPlugToPlug() {
    assertThat(Bench.plain().says(rule, build())).isEqualTo(FITS);
  }

  @Test
  void clashesOnAnotherPlugWithoutAnAdapter() {
    assertThat(Bench.plain().says(rule, build(with(battery(), "connector", Connector.XT60))))
        .isEqualTo(
            "clashes: Board board has a XT30 plug, but pack battery has XT60: an adapter is needed.");
  }

  @Test
  void fitsWithTheAdapter() {
    assertThat(Bench.plain()
            .says(
                rule,
                build(
                    with(battery(), "connector", Connector.XT60),
                    lead(Connector.XT30, Connector.XT60))))
        .isEqualTo(FITS);
  }

  @Test
  void asksForAPigtailOnBarePads() {
    assertThat(Bench.plain().says(rule, build(with(board(), "plug", null))))
        .isEqualTo(
            "clashes: Board board has bare pads and pack battery a XT30 plug: a pigtail is needed.");
    assertThat(Bench.plain()
            .says(rule, build(with(board(), "plug", null), lead(null, Connector.XT30))))
        .isEqualTo(FITS);
  }

  @Test
  void clashesWhenTheLeadDoesNotFitThePack() {
    assertThat(Bench.plain().says(rule, build(lead(Connector.XT30, Connector.XT60))))
        .isEqualTo("clashes: Lead lead has a XT60 plug for the pack, but pack battery has XT30.");
  }

  @Test
  void soldersNoPigtailBesideAPlug() {
    assertThat(Bench.plain().says(rule, build(lead(null, Connector.XT30))))
        .isEqualTo(
            "clashes: Lead lead is soldered to bare pads, but board board comes with a XT30 plug.");
  }

  @Test
  void plugsNothingIntoBarePads() {
    assertThat(Bench.plain()
            .says(rule, build(with(board(), "plug", null), lead(Connector.XT30, Connector.XT30))))
        .isEqualTo("clashes: Lead lead plugs into XT30, but board board has bare pads.");
  }

  @Test
  void clashesWhenTheLeadDoesNotFitTheBoard() {
    assertThat(Bench.plain().says(rule, build(lead(Connector.XT60, Connector.XT30))))
        .isEqualTo("clashes: Lead lead plugs into XT60, but board board has XT30.");
  }
}
