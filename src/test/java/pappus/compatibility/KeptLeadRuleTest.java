package pappus.compatibility;

import static org.assertj.core.api.Assertions.assertThat;
import static pappus.part.Parts.battery;
import static pappus.part.Parts.board;
import static pappus.part.Parts.build;
import static pappus.part.Parts.lead;
import static pappus.part.Parts.with;

import org.junit.jupiter.api.Test;
import pappus.part.Build;
import pappus.part.Connector;
import pappus.part.Role;

final class KeptLeadRuleTest {
  private static final Build ABOARD = build(lead(Connector.XT30, Connector.XT30));

  private final KeptLeadRule rule = new KeptLeadRule(ABOARD);
  private final Build changed =
      ABOARD.with(Role.LEAD, with(ABOARD.lead().orElseThrow(), "id", "longer"));

  @Test
  void staysWithItsPackAndBoard() {
    assertThat(Bench.plain().says(rule, ABOARD)).isEqualTo(Bench.FITS);
    assertThat(Bench.plain().says(rule, ABOARD.without(Role.LEAD))).isEqualTo(Bench.FITS);
    assertThat(Bench.plain().says(rule, changed))
        .isEqualTo(
            "clashes: Pack and board are those aboard, so their lead stays, but here it is longer.");
  }

  @Test
  void changesWithEitherOfThem() {
    assertThat(Bench.plain().says(rule, changed.with(Role.BATTERY, with(battery(), "id", "other"))))
        .isEqualTo(Bench.FITS);
    assertThat(Bench.plain().says(rule, changed.with(Role.BOARD, with(board(), "id", "other"))))
        .isEqualTo(Bench.FITS);
  }

  @Test
  void isOfTheQuadAndNobodySetsItAside() {
    assertThat(rule.id()).isEqualTo("kept-lead");
    assertThat(rule.reads()).containsOnly(Role.BOARD, Role.BATTERY, Role.LEAD);
    assertThat(rule.mayBeWaived()).isFalse();
    assertThat(rule.signature(board())).isEqualTo("board");
  }
}
