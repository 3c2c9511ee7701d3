package pappus.compatibility;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
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

  /** Of these roles alone each rule can tell already that nothing mends a build; of fewer, none is asked. */
  private static Map<String, List<Set<Role>>> fewest() {
    var fed = Role.at(Role.Turn.FED)
        .map(role -> Set.of(Role.BOARD, Role.BATTERY, role))
        .toList();
    return Map.ofEntries(
        Map.entry("propeller-seat", List.of(Set.of(Role.MOTOR, Role.PROPELLER))),
        Map.entry("stack-places", List.of(Set.of(Role.FRAME, Role.BOARD))),
        Map.entry(
            "camera-cage",
            List.of(Set.of(Role.FRAME, Role.CAMERA), Set.of(Role.FRAME, Role.TRANSMITTER))),
        Map.entry("video-family", List.of(Set.of(Role.CAMERA), Set.of(Role.TRANSMITTER))),
        Map.entry("input-window", fed),
        Map.entry("regulator-load", fed),
        Map.entry(
            "serial-ports",
            List.of(
                Set.of(Role.BOARD, Role.TRANSMITTER),
                Set.of(Role.BOARD, Role.RECEIVER),
                Set.of(Role.BOARD, Role.GPS))),
        Map.entry("video-antenna", List.of(Set.of(Role.VIDEO_ANTENNA))),
        Map.entry("radio-antenna", List.of(Set.of(Role.RADIO_ANTENNA))),
        Map.entry("battery-plug", List.of(Set.of(Role.LEAD))),
        Map.entry("battery-bay", List.of(Set.of(Role.FRAME, Role.BATTERY))));
  }

  @Test
  void areAskedEarlyOnlyWhereTheyCanTell() {
    for (var rule : Rules.ALL) {
      var fewest = fewest().getOrDefault(rule.id(), List.of());
      var roles = List.copyOf(rule.reads().size() < Role.values().length ? rule.reads() : Set.of());
      for (var some = 0; some < 1 << roles.size(); some++) {
        var bits = some;
        var decided = IntStream.range(0, roles.size())
            .filter(i -> (bits >> i & 1) == 1)
            .mapToObj(roles::get)
            .collect(Collectors.toSet());
        assertThat(rule.foresees(decided))
            .as("%s of %s", rule.id(), decided)
            .isEqualTo(fewest.stream().anyMatch(decided::containsAll));
      }
    }
  }

  /** What video draws follows from how far it must reach only where that is asked. */
  @Test
  void railsReadTheVideoAntennaWhereItDecidesThePower() {
    var chosen = Parts.with(Scenarios.plain(), "reachMetres", 500.0);
    assertThat(Rules.of(Scenarios.plain())).isEqualTo(Rules.ALL);
    assertThat(Rules.of(chosen))
        .extracting(CompatibilityRule::id)
        .isEqualTo(Rules.ALL.stream().map(CompatibilityRule::id).toList());
    for (var i = 0; i < Rules.ALL.size(); i++) {
      var usual = Rules.ALL.get(i).reads();
      var reads = Rules.of(chosen).get(i).reads();
      assertThat(reads.size() - usual.size())
          .as(Rules.ALL.get(i).id())
          .isEqualTo(Rules.ALL.get(i).id().equals("regulator-load") ? 1 : 0);
      assertThat(reads).containsAll(usual);
    }
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
              .filter(rule -> !(rule.check(alone) instanceof Verdict.Fits))
              .map(CompatibilityRule::id))
          .as(part.id())
          .isEmpty();
    }
  }
}
