package pappus.compatibility;

import static org.assertj.core.api.Assertions.assertThat;
import static pappus.compatibility.Bench.FITS;
import static pappus.part.Parts.build;
import static pappus.part.Parts.with;

import org.junit.jupiter.api.Test;
import pappus.scenario.Payload;
import pappus.scenario.Scenarios;

final class BalanceRuleTest {
  private final BalanceRule rule = new BalanceRule();

  @Test
  void fitsWhenThePackBalancesTheRest() {
    assertThat(Bench.plain().says(rule, build())).isEqualTo(FITS);
  }

  @Test
  void clashesWhenTheBayDoesNotReach() {
    var payload = new Payload("box", 60, 0, 200, null, null);
    var bench = Bench.with(with(Scenarios.plain(), "payload", payload));

    assertThat(bench.says(rule, build()))
        .isEqualTo(
            "clashes: The centre of mass stays 32.11 mm before the middle of the motors, but 13 mm at most can be flown.");
  }

  @Test
  void clashesBehindTheMiddleToo() {
    var payload = new Payload("box", 60, 0, -200, null, null);
    var bench = Bench.with(with(Scenarios.plain(), "payload", payload));

    assertThat(bench.says(rule, build()))
        .isEqualTo(
            "clashes: The centre of mass stays 29.92 mm behind the middle of the motors, but 13 mm at most can be flown.");
  }

  @Test
  void notesMoreThanFiveMillimetres() {
    var payload = new Payload("box", 25, 0, 200, null, null);
    var bench = Bench.with(with(Scenarios.plain(), "payload", payload));

    assertThat(bench.says(rule, build()))
        .isEqualTo("fits, but: The centre of mass stays 7.53 mm before the middle of the motors.");
  }
}
