package pappus.compatibility;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pappus.catalog.Shipped;
import pappus.fitting.Fitter;
import pappus.fitting.Fitting;
import pappus.fitting.Stock;
import pappus.part.Antenna;
import pappus.part.Board;
import pappus.part.Build;
import pappus.part.Part;
import pappus.part.Parts;
import pappus.part.Role;
import pappus.scenario.Scenarios;

/** What rules say before a build is whole: which parts stand for each other, and what nothing can mend any more. */
class ForesightTest {
  private static final int PAIRS = 600;
  /** Judged late, when nearly everything is chosen. */
  private static final Set<String> BY_NAME =
      Set.of("input-window", "regulator-load", "payload-place");

  private static final Map<Role, List<Part>> OPTIONS = options();
  private static final Fitter FITTER =
      new Fitter(Scenarios.plain(), Stock.of(List.copyOf(Shipped.CATALOG.parts())));

  private static Map<Role, List<Part>> options() {
    var options = new EnumMap<Role, List<Part>>(Role.class);
    for (var role : Role.values()) {
      options.put(
          role,
          Shipped.CATALOG.parts().stream()
              .filter(part -> part instanceof Antenna
                  ? role == Role.VIDEO_ANTENNA || role == Role.RADIO_ANTENNA
                  : !part.fills().isEmpty() && part.fills().get(0) == role)
              .toList());
    }
    // The shipped boards have ports and watts to spare.
    var shipped = options.getOrDefault(Role.BOARD, List.of());
    var boards = new ArrayList<>(shipped);
    for (var part : shipped) {
      var board = (Board) part;
      boards.add(Parts.with(board, "serialPorts", 1));
      boards.add(Parts.with(
          board,
          "regulators",
          board.regulators().stream()
              .map(rail -> Parts.with(rail, "continuousAmps", 0.2 * rail.continuousAmps()))
              .toList()));
    }
    options.put(Role.BOARD, boards);
    return options;
  }

  static Stream<CompatibilityRule> rules() {
    return Rules.ALL.stream().filter(rule -> rule.reads().size() < Role.values().length);
  }

  static Stream<CompatibilityRule> rulesThatForesee() {
    return Rules.ALL.stream().filter(rule -> rule.foresees(rule.reads()));
  }

  private static Part any(Role role, Random random) {
    var parts = OPTIONS.getOrDefault(role, List.of());
    return parts.get(random.nextInt(parts.size()));
  }

  private static Fitting fit(Build build) {
    return FITTER.fit(build);
  }

  /** Pairs of parts in roles that a rule reads, with one of them in the place of another of equal signature. */
  @ParameterizedTest
  @MethodSource("rules")
  void partsOfOneSignatureAreJudgedAlike(CompatibilityRule rule) {
    var random = new Random(rule.id().hashCode());
    var roles = new ArrayList<>(new TreeSet<>(rule.reads()));
    var alike = new HashMap<Role, Map<Object, List<Part>>>();
    for (var role : roles) {
      var groups = new HashMap<Object, List<Part>>();
      OPTIONS
          .getOrDefault(role, List.of())
          .forEach(part -> groups
              .computeIfAbsent(rule.signature(part), fresh -> new ArrayList<>())
              .add(part));
      alike.put(role, groups);
    }
    for (var i = 0; i < PAIRS; i++) {
      var build = Build.empty();
      var left = new ArrayList<>(roles);
      while (!left.isEmpty() && build.parts().size() < 2) {
        var role = left.remove(random.nextInt(left.size()));
        build = build.with(role, any(role, random));
      }
      for (var role : build.parts().keySet()) {
        var part = build.part(role).orElseThrow();
        var others =
            alike.getOrDefault(role, Map.of()).getOrDefault(rule.signature(part), List.of());
        var other = build.with(role, others.get(random.nextInt(others.size())));

        assertThat(rule.check(fit(other)).getClass())
            .as("%s: %s against %s", rule.id(), build, other)
            .isEqualTo(rule.check(fit(build)).getClass());
        assertThat(rule.mayStillFit(fit(other))).isEqualTo(rule.mayStillFit(fit(build)));
      }
    }
  }

  /** Else a search asks of each part by itself what holds for all like it. */
  @Test
  void aPartUnderAnotherNameHasItsSignature() {
    var byName = new TreeSet<String>();
    for (var rule : rules().filter(rule -> !BY_NAME.contains(rule.id())).toList()) {
      for (var role : rule.reads()) {
        for (var part : OPTIONS.getOrDefault(role, List.of())) {
          var twin = (Part) Parts.with((Record) part, "id", part.id() + "-twin");
          if (!rule.signature(twin).equals(rule.signature(part))) {
            byName.add(rule.id() + " by " + role.label());
          }
        }
      }
    }
    assertThat(byName)
        .containsExactly(
            "camera-cage by flight board",
            "propeller-seat by battery",
            "stack-places by camera",
            "stack-places by video transmitter");
  }

  /**
   * Of builds only begun: where a rule is sure that nothing mends it, no further part does without breaking a rule that
   * nobody sets aside.
   */
  @ParameterizedTest
  @MethodSource("rulesThatForesee")
  void whatIsForeseenComes(CompatibilityRule rule) {
    var random = new Random(rule.id().hashCode());
    var foreseen = 0;
    for (var i = 0; i < PAIRS; i++) {
      var begun = Build.empty();
      for (var role : EnumSet.copyOf(rule.reads())) {
        begun = random.nextInt(5) < 2 ? begun : begun.with(role, any(role, random));
      }
      var decided = begun.parts().keySet();
      if (decided.size() == rule.reads().size() || !begun.tidy().equals(begun)) {
        continue;
      }
      var isSure = !rule.mayStillFit(fit(begun));
      var mended = completions(rule, begun, random)
          .filter(build -> Rules.ALL.stream()
              .filter(other -> other == rule || !other.mayBeWaived())
              .filter(other -> !(other instanceof RolesRule))
              .noneMatch(other -> other.check(fit(build)) instanceof Verdict.Clashes))
          .findFirst();
      if (isSure) {
        foreseen++;
        assertThat(mended).as("%s of %s", rule.id(), begun).isEmpty();
        assertThat(rule.foresees(Set.copyOf(decided)))
            .as("%s of %s", rule.id(), begun)
            .isTrue();
      }
    }
    assertThat(foreseen).isPositive();
  }

  private static boolean isNeeded(Role role) {
    return Role.MAIN.contains(role) || role == Role.BOARD || role == Role.FRAME;
  }

  /** Some builds that have all of a begun one, and no part that another one brings along. */
  private static Stream<Build> completions(CompatibilityRule rule, Build begun, Random random) {
    return Stream.generate(() -> {
          var build = begun;
          for (var role : EnumSet.copyOf(rule.reads())) {
            build = build.fills(role) || (!isNeeded(role) && random.nextInt(4) == 0)
                ? build
                : build.with(role, any(role, random));
          }
          return build;
        })
        .limit(40)
        .filter(build -> build.tidy().equals(build));
  }
}
