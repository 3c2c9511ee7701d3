package pappus.search.exact;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import pappus.assessment.Assessment;
import pappus.assessment.Assessor;
import pappus.assessment.Limit;
import pappus.assessment.Supply;
import pappus.catalog.Shelf;
import pappus.files.json.Altered;
import pappus.part.Build;
import pappus.part.Kind;
import pappus.part.Part;
import pappus.part.Role;
import pappus.part.Sundry;
import pappus.quantity.Money;
import pappus.scenario.Aircraft;
import pappus.scenario.Scenario;
import pappus.search.Incumbents;
import pappus.search.Question;
import pappus.shop.SmallShop;

/** A quad that is there and may change in some roles, against trying every build with the rest as it is. */
class AircraftSearchTest {
  private static final int CATALOGUES = 200;

  private final Map<Role, Integer> changed = new EnumMap<>(Role.class);
  private int feasible;
  private int brokenAboard;
  private int forgiven;
  private int paid;

  @Tag("slow")
  @Test
  void ranksTwoHundredCataloguesAsTryingEveryBuildDoes() {
    for (var seed = 0; seed < CATALOGUES; seed++) {
      compare(seed, new Random(7000 + seed));
    }
    assertThat(feasible).isGreaterThanOrEqualTo(CATALOGUES / 3);
    assertThat(brokenAboard).isGreaterThanOrEqualTo(CATALOGUES / 10);
    assertThat(forgiven).isPositive();
    assertThat(paid).isGreaterThanOrEqualTo(CATALOGUES / 4);
    assertThat(changed.keySet()).containsAll(Role.MAIN).contains(Role.LEAD);
  }

  private void compare(int seed, Random random) {
    var base = RandomQuestions.of(seed);
    var catalog = RandomQuestions.catalog(seed);
    var quad = quad(seed, base, random);
    if (quad.isEmpty()) {
      return;
    }
    var aboard = quad.get();
    var mayChange = EnumSet.noneOf(Role.class);
    var roles = List.of(Role.values());
    for (var count = 1 + random.nextInt(4); mayChange.size() < count; ) {
      mayChange.add(
          random.nextInt(3) > 0
              ? List.copyOf(Role.FLYING).get(random.nextInt(5))
              : roles.get(random.nextInt(roles.size())));
    }
    if (mayChange.contains(Role.BOARD)) {
      // Most boards want other things about them.
      mayChange.addAll(Role.BOARD.followers());
      mayChange.add(Role.CAPACITOR);
    }
    var aircraft = new Aircraft(aboard.toString(), List.copyOf(mayChange));
    var changes = new HashMap<String, Object>();
    changes.put("aircraft", aircraft);
    changes.put("budget", Money.ofCents(500 + random.nextInt(12000), "EUR"));
    var scenario = Altered.record(Scenario.class, base.assessor().scenario(), changes);
    var assessor = new Supply(catalog, Shelf.EMPTY).aboard(aboard).assessor(scenario);
    var plain = SmallShop.assessor(catalog, base.assessor().scenario());
    var there = plain.assess(aboard);
    brokenAboard += there.broken().isEmpty() ? 0 : 1;

    var all = new Incumbents();
    var kept = new ArrayList<Assessment>();
    for (var build : builds(base, aboard, aircraft)) {
      var assessed = assessor.assess(build);
      assertThat(assessed.cost().cents())
          .as("catalogue %s, %s from %s", seed, build, aboard)
          .isEqualTo(cents(assessed, assessor.assess(aboard)));
      if (isFeasible(build, assessed, plain, aboard)) {
        kept.add(assessed);
        all.offer(assessed);
      }
    }
    feasible += kept.isEmpty() ? 0 : 1;
    forgiven += !kept.isEmpty() && !there.broken().isEmpty() ? 1 : 0;
    paid += kept.stream().anyMatch(build -> build.cost().cents() > 0) ? 1 : 0;
    kept.forEach(build -> roles.stream()
        .filter(role -> !same(build.build(), aboard, role))
        .forEach(role -> changed.merge(role, 1, Integer::sum)));
    var question = Question.of(catalog, assessor);

    assertThat(ExactSearchTest.exact(question, 2))
        .as("catalogue %s, %s of %s", seed, mayChange, aboard)
        .isEqualTo(ExactSearchTest.enumerated(question, all));
  }

  /** A build that goes together, or any; some have an extra that nobody asks for. */
  private static Optional<Build> quad(int seed, Question base, Random random) {
    var good = RandomQuestions.feasible(seed);
    Build quad;
    if (!good.isEmpty() && random.nextInt(3) > 0) {
      quad = good.get(random.nextInt(good.size())).build();
    } else {
      var chosen = new EnumMap<Role, Part>(Role.class);
      for (var role : Role.values()) {
        var options = base.options(role);
        if (!options.isEmpty()) {
          chosen.put(role, options.get(random.nextInt(options.size())));
        }
      }
      quad = Question.tidy(chosen);
    }
    if (random.nextInt(4) == 0 && quad.gps().isEmpty()) {
      var gps = RandomQuestions.catalog(seed).ofKind(Kind.GPS);
      quad = gps.isEmpty() ? quad : quad.with(Role.GPS, gps.get(0));
    }
    return Role.FLYING.stream().allMatch(quad.parts()::containsKey)
        ? Optional.of(quad)
        : Optional.empty();
  }

  /** Every build with what may not change as it is. */
  private static Set<Build> builds(Question base, Build aboard, Aircraft aircraft) {
    var builds = new LinkedHashSet<Build>();
    fill(base, aboard, aircraft, List.of(Role.values()), new EnumMap<>(Role.class), builds);
    builds.removeIf(build -> !Question.tidy(build.parts()).equals(build)
        || List.of(Role.values()).stream()
            .anyMatch(role -> !isOpen(aircraft, role) && !same(build, aboard, role))
        || (!aircraft.mayChange().contains(Role.LEAD)
            && build.lead().isPresent()
            && same(build, aboard, Role.BATTERY)
            && same(build, aboard, Role.BOARD)
            && !same(build, aboard, Role.LEAD)));
    return builds;
  }

  private static boolean isOpen(Aircraft aircraft, Role role) {
    var may = aircraft.mayChange();
    return may.contains(role)
        || (role == Role.LEAD && (may.contains(Role.BATTERY) || may.contains(Role.BOARD)));
  }

  private static boolean same(Build one, Build other, Role role) {
    return one.part(role).map(Part::id).equals(other.part(role).map(Part::id));
  }

  private static void fill(
      Question base,
      Build aboard,
      Aircraft aircraft,
      List<Role> left,
      Map<Role, Part> chosen,
      Set<Build> builds) {
    if (left.isEmpty()) {
      builds.add(Question.tidy(chosen));
      return;
    }
    var role = left.get(0);
    var there = aboard.part(role);
    var options = new ArrayList<Part>();
    if (isOpen(aircraft, role)) {
      options.addAll(base.options(role));
      there.ifPresent(part -> options.addAll(base.twins(part)));
    } else {
      there.ifPresent(options::add);
    }
    if (options.isEmpty()) {
      fill(base, aboard, aircraft, left.subList(1, left.size()), chosen, builds);
    }
    for (var part : options) {
      chosen.put(role, part);
      fill(base, aboard, aircraft, left.subList(1, left.size()), chosen, builds);
      chosen.remove(role);
    }
  }

  /** What is aboard costs nothing, solder only as long as nothing soldered changes. */
  private static long cents(Assessment build, Assessment there) {
    var aboard = new HashMap<String, Integer>();
    there
        .cost()
        .lines()
        .forEach(line -> aboard.merge(line.part().id(), line.pieces(), Integer::sum));
    var unsoldered = Set.of("propeller", "battery", "video antenna", "radio antenna");
    var isSoldered = List.of(Role.values()).stream()
        .anyMatch(role ->
            !unsoldered.contains(role.label()) && !same(build.build(), there.build(), role));
    var sum = 0L;
    for (var line : build.cost().lines()) {
      var isUsedUp = isSoldered
          && line.part() instanceof Sundry sundry
          && sundry.purpose() == Sundry.Purpose.SOLDER_AND_TIES;
      var left = isUsedUp ? 0 : aboard.getOrDefault(line.part().id(), 0);
      var fresh = Math.max(0, line.pieces() - left);
      aboard.put(line.part().id(), left - line.pieces() + fresh);
      sum += line.part().sold().unitsFor(fresh) * line.part().price().cents();
    }
    return sum;
  }

  /** A rule that is broken counts, unless it sees only what is aboard and is broken there too. */
  private static boolean isFeasible(
      Build build, Assessment assessed, Assessor plain, Build aboard) {
    var before = plain.assess(aboard);
    var breaks = plain.assess(build).findings().stream()
        .filter(finding -> finding.breaks())
        .anyMatch(finding -> {
          var rule = plain.ruleBook().all().stream()
              .filter(each -> each.id().equals(finding.rule()))
              .findFirst()
              .orElseThrow();
          var isBrokenThere =
              before.broken().stream().anyMatch(there -> there.rule().equals(finding.rule()));
          var isLacking = rule.id().equals("roles")
              && before.broken().stream()
                  .anyMatch(there -> there.verdict().equals(finding.verdict()));
          return !isLacking
              && !(isBrokenThere
                  && rule.reads().stream().allMatch(role -> same(build, aboard, role)));
        });
    return !breaks
        && assessed.flight().isPresent()
        && assessed.limits().stream().allMatch(Limit::met);
  }
}
