package pappus.compatibility;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import pappus.catalog.Shipped;
import pappus.fitting.Fitter;
import pappus.fitting.Stock;
import pappus.part.Antenna;
import pappus.part.Build;
import pappus.part.Parts;
import pappus.part.Role;
import pappus.scenario.Scenarios;

final class RulesTest {
  @Test
  void eachHasAnIdOfItsOwn() {
    assertThat(Rules.ALL).extracting(CompatibilityRule::id).doesNotHaveDuplicates();
    assertThat(Rules.ALL)
        .extracting(CompatibilityRule::id)
        .allMatch(id -> id.matches("[a-z]+(-[a-z]+)*"));
  }

  @Test
  void neitherVoltsNorMissingPartsAreSetAside() {
    assertThat(Rules.ALL.stream().filter(rule -> !rule.mayBeWaived()).map(CompatibilityRule::id))
        .containsExactly("roles", "motor-cells", "board-volts", "input-window");
    assertThat(Rules.waivableIds()).doesNotContain("roles", "motor-cells").contains("motor-mount");
  }

  @Test
  void allOfThemTakeTheExample() {
    assertThat(Rules.ALL)
        .allSatisfy(rule -> assertThat(Bench.plain().says(rule, Parts.build()))
            .as(rule.id())
            .isEqualTo(Bench.FITS));
  }

  /** A build only begun is judged by what is there: no part clashes by itself. */
  @Test
  void allButTheOneOnRolesTakeEveryPartAlone() {
    var catalog = Shipped.CATALOG;
    var fitter = new Fitter(Scenarios.plain(), Stock.of(List.copyOf(catalog.parts())));

    for (var part : catalog.parts()) {
      if (part.fills().isEmpty() && !(part instanceof Antenna)) {
        continue;
      }
      var role = part instanceof Antenna ? Role.VIDEO_ANTENNA : part.fills().get(0);
      var alone = fitter.fit(Build.empty().with(role, part));
      assertThat(Rules.ALL.stream()
              .filter(rule -> !(rule instanceof RolesRule))
              .filter(rule -> rule.check(alone) instanceof Verdict.Clashes)
              .map(CompatibilityRule::id))
          .as(part.id())
          .isEmpty();
    }
  }
}
