package pappus.compatibility;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pappus.catalog.Catalog;
import pappus.catalog.Shipped;
import pappus.fitting.Fitter;
import pappus.fitting.Stock;
import pappus.part.Antenna;
import pappus.part.Build;
import pappus.part.Part;
import pappus.part.Role;
import pappus.scenario.Scenarios;

/**
 * What a rule does not say it reads, it does not read. Whoever concludes from a few parts that no
 * build with them can fit relies on this.
 */
final class ReadsTest {
  private static final int BUILDS = 300;
  private static final Catalog CATALOG = Shipped.CATALOG;
  private static final Map<Role, List<Part>> OPTIONS = options();
  private static final Fitter FITTER =
      new Fitter(Scenarios.plain(), Stock.of(List.copyOf(CATALOG.parts())));

  private static Map<Role, List<Part>> options() {
    var options = new EnumMap<Role, List<Part>>(Role.class);
    for (var role : Role.values()) {
      options.put(
          role, CATALOG.parts().stream().filter(part -> mayFill(part, role)).toList());
    }
    return options;
  }

  private static boolean mayFill(Part part, Role role) {
    return part instanceof Antenna
        ? role == Role.VIDEO_ANTENNA || role == Role.RADIO_ANTENNA
        : !part.fills().isEmpty() && part.fills().get(0) == role;
  }

  static Stream<CompatibilityRule> rulesThatReadAPart() {
    return Rules.ALL.stream().filter(rule -> rule.reads().size() < Role.values().length);
  }

  @ParameterizedTest
  @MethodSource("rulesThatReadAPart")
  void noOtherRoleChangesTheVerdict(CompatibilityRule rule) {
    var random = new Random(rule.id().hashCode());
    var others = EnumSet.complementOf(EnumSet.copyOf(rule.reads()));

    for (var i = 0; i < BUILDS; i++) {
      var build = change(Build.empty(), EnumSet.allOf(Role.class), random);
      var changed = change(build, others, random);

      assertThat(rule.check(FITTER.fit(changed)))
          .as("%s of %s against %s", rule.id(), build, changed)
          .isEqualTo(rule.check(FITTER.fit(build)));
    }
  }

  /** Random parts in some roles; one role in eight is left empty. */
  private static Build change(Build build, EnumSet<Role> roles, Random random) {
    var changed = build;
    for (var role : roles) {
      var options = OPTIONS.getOrDefault(role, List.of());
      changed = random.nextInt(8) == 0
          ? changed.without(role)
          : changed.with(role, options.get(random.nextInt(options.size())));
    }
    return changed;
  }

  @Test
  void onlyRulesOnTheWholeReadEverything() {
    assertThat(Rules.ALL.stream()
            .filter(rule -> rule.reads().size() == Role.values().length)
            .map(CompatibilityRule::id))
        .containsExactly("roles", "battery-bay", "balance");
  }
}
