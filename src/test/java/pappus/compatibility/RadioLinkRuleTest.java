package pappus.compatibility;

import static org.assertj.core.api.Assertions.assertThat;
import static pappus.compatibility.Bench.FITS;
import static pappus.part.Parts.board;
import static pappus.part.Parts.build;
import static pappus.part.Parts.receiver;
import static pappus.part.Parts.with;

import org.junit.jupiter.api.Test;
import pappus.part.BuiltInReceiver;
import pappus.part.Role;
import pappus.scenario.Scenarios;

final class RadioLinkRuleTest {
  private final RadioLinkRule rule = new RadioLinkRule();

  @Test
  void fitsThePilotsLink() {
    assertThat(Bench.with(with(Scenarios.plain(), "pilot", Scenarios.pilot())).says(rule, build()))
        .isEqualTo(FITS);
  }

  @Test
  void fitsAnyLinkWithoutAPilot() {
    assertThat(Bench.plain().says(rule, build(with(receiver(), "link", "link-b"))))
        .isEqualTo(FITS);
  }

  @Test
  void clashesOnAnotherLink() {
    assertThat(Bench.with(with(Scenarios.plain(), "pilot", Scenarios.pilot()))
            .says(rule, build(with(receiver(), "link", "link-b"))))
        .isEqualTo("clashes: The pilot's radio speaks link-a, but the receiver link-b.");
  }

  @Test
  void judgesTheReceiverOnTheBoard() {
    var inside =
        new BuiltInReceiver("link-b", receiver().antenna(), false, receiver().sensitivity());

    assertThat(Bench.with(with(Scenarios.plain(), "pilot", Scenarios.pilot()))
            .says(rule, build(with(board(), "receiver", inside)).without(Role.RECEIVER)))
        .isEqualTo("clashes: The pilot's radio speaks link-a, but the receiver link-b.");
  }
}
