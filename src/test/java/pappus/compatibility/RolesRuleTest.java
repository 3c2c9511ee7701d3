package pappus.compatibility;

import static org.assertj.core.api.Assertions.assertThat;
import static pappus.compatibility.Bench.FITS;
import static pappus.part.Parts.board;
import static pappus.part.Parts.build;
import static pappus.part.Parts.gps;
import static pappus.part.Parts.payloadCamera;
import static pappus.part.Parts.receiver;
import static pappus.part.Parts.with;

import java.util.List;
import org.junit.jupiter.api.Test;
import pappus.part.BuiltInReceiver;
import pappus.part.Role;
import pappus.scenario.Scenarios;
import pappus.scenario.Wish;

final class RolesRuleTest {
  private final RolesRule rule = new RolesRule();

  @Test
  void fitsWhenEveryRoleIsFilled() {
    assertThat(Bench.plain().says(rule, build())).isEqualTo(FITS);
  }

  @Test
  void clashesWhenARoleIsEmpty() {
    assertThat(Bench.plain().says(rule, build().without(Role.CAPACITOR)))
        .isEqualTo("clashes: There is no capacitor.");
  }

  @Test
  void countsWhatABoardBringsAlong() {
    var board = with(board(), "buzzer", true);
    var wishing = Bench.with(with(Scenarios.plain(), "wants", List.of(Wish.BUZZER)));

    assertThat(wishing.says(rule, build(board))).isEqualTo(FITS);
    assertThat(wishing.says(rule, build())).isEqualTo("clashes: There is no buzzer.");
  }

  @Test
  void clashesWhenTwoPartsFillOneRole() {
    var inside =
        new BuiltInReceiver("link-a", receiver().antenna(), false, receiver().sensitivity());

    assertThat(Bench.plain().says(rule, build(with(board(), "receiver", inside))))
        .isEqualTo(
            "clashes: receiver fills the role of receiver, which another part fills already.");
  }

  @Test
  void asksForAGpsOnlyWhereItIsWanted() {
    var wishing = Bench.with(with(Scenarios.plain(), "wants", List.of(Wish.GPS)));

    assertThat(wishing.says(rule, build())).isEqualTo("clashes: There is no GPS.");
    assertThat(wishing.says(rule, build(gps()))).isEqualTo(FITS);
    var filming = Bench.with(with(Scenarios.plain(), "wants", List.of(Wish.PAYLOAD_CAMERA)));
    assertThat(filming.says(rule, build())).isEqualTo("clashes: There is no payload camera.");
    assertThat(filming.says(rule, build(payloadCamera()))).isEqualTo(FITS);
  }

  @Test
  void cannotBeWaived() {
    assertThat(rule.mayBeWaived()).isFalse();
  }
}
