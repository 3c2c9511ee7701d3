package pappus.change;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import pappus.assessment.Assessment;
import pappus.compatibility.CompatibilityRule;
import pappus.compatibility.RolesRule;
import pappus.part.Build;
import pappus.part.Part;
import pappus.part.Role;
import pappus.search.Incumbents;
import pappus.search.Question;

/**
 * Swaps parts of a build. Where a swap breaks a fit rule, small parts that the rule reads change along with it: a
 * lead for another plug, a capacitor for more volts, a receiver where the new board has none.
 *
 * <p>Why: src/site/markdown/decisions.md#a-swap-changes-no-more-than-it-has-to
 */
public final class Swapper {
  /** So many small parts change at once at most. */
  private static final int MOST_ALONGSIDE = 3;

  /** So many ways are tried for one swap at most. */
  private static final int MOST_TRIES = 20_000;

  private final Question question;
  private final Map<String, CompatibilityRule> rules;

  public Swapper(Question question) {
    this.question = question;
    this.rules = new TreeMap<>();
    question.assessor().ruleBook().all().forEach(rule -> rules.put(rule.id(), rule));
  }

  /**
   * The best build with each other part of a role, in the order of ids; of those that nothing makes feasible, the
   * one that comes closest.
   */
  public List<Swap> all(Assessment base, Role role) {
    return question.options(role).stream()
        .filter(part ->
            !base.build().part(role).map(Part::id).filter(part.id()::equals).isPresent())
        .map(part -> swap(base, role, part))
        .toList();
  }

  /** The best build with a part in a role, and all else as it is as far as it goes together. */
  public Swap swap(Assessment base, Role role, Part part) {
    var swapped = assess(base.build().with(role, part), role, part);
    var best = swapped;
    var broken = newlyBroken(swapped, base);
    var free = free(swapped.build(), broken, role);
    var tries = 0;
    var isCutShort = false;
    for (var changes = 1;
        changes <= Math.min(free.size(), MOST_ALONGSIDE)
            && !newlyBroken(best, base).isEmpty();
        changes++) {
      for (var roles : choose(free, changes)) {
        isCutShort |= count(roles) > MOST_TRIES - tries;
        for (var way : ways(swapped.build(), roles, MOST_TRIES - tries)) {
          tries++;
          var tidy = tidy(way, role, part);
          if (broken.stream()
              .noneMatch(rule -> question.assessor().ruleBook().isBroken(rule, tidy))) {
            var cured = question.assessor().assess(tidy);
            best = newlyBroken(cured, base).isEmpty() ? better(best, cured) : best;
          }
        }
      }
    }
    isCutShort |= free.size() > MOST_ALONGSIDE && !newlyBroken(best, base).isEmpty();
    return Swap.of(role, part, base, best, isCutShort);
  }

  /** Ways to fill some roles anew. */
  private long count(List<Role> roles) {
    return roles.stream()
        .mapToLong(role -> question.options(role).size())
        .reduce(1, (one, other) -> one * other);
  }

  /** What a swap breaks; what was broken before is none of its business. */
  private List<CompatibilityRule> newlyBroken(Assessment swapped, Assessment base) {
    return swapped.broken().stream()
        .filter(finding ->
            base.broken().stream().noneMatch(before -> before.rule().equals(finding.rule())))
        .map(finding -> Objects.requireNonNull(rules.get(finding.rule())))
        .toList();
  }

  private Assessment assess(Build build, Role role, Part part) {
    return question.assessor().assess(tidy(build, role, part));
  }

  /** Without what another part brings along; but what is swapped in stays, or the swap would change nothing. */
  private static Build tidy(Build build, Role role, Part part) {
    return Question.tidy(build.parts()).with(role, part);
  }

  private static Assessment better(Assessment held, Assessment other) {
    return held.shortfall() != other.shortfall()
        ? (held.shortfall() < other.shortfall() ? held : other)
        : Incumbents.BEST_FIRST.compare(other, held) < 0 ? other : held;
  }

  /** Small roles that could cure what is broken; none if some rule is broken that no small part cures. */
  private List<Role> free(Build build, List<CompatibilityRule> broken, Role role) {
    var free = EnumSet.noneOf(Role.class);
    for (var rule : broken) {
      var cures = EnumSet.noneOf(Role.class);
      cures.addAll(role.alongside());
      if (rule instanceof RolesRule) {
        cures.removeIf(each -> build.fills(each) && !followsOneThatIsMissing(each, cures, build));
      } else if (rule.reads().size() == Role.values().length) {
        return List.of();
      } else {
        cures.retainAll(rule.reads());
      }
      cures.removeIf(each -> question.options(each).isEmpty());
      if (cures.isEmpty()) {
        return List.of();
      }
      free.addAll(cures);
    }
    return List.copyOf(free);
  }

  /** A new transmitter or receiver may need another antenna than the one that is there. */
  private static boolean followsOneThatIsMissing(Role role, Set<Role> cures, Build build) {
    return Role.ANTENNAS.contains(role)
        && role.bringer()
            .filter(cures::contains)
            .filter(port -> !build.fills(port))
            .isPresent();
  }

  /** Every choice of so many roles. */
  private static List<List<Role>> choose(List<Role> roles, int count) {
    if (count == 0) {
      return List.of(List.of());
    }
    var chosen = new ArrayList<List<Role>>();
    for (var first = 0; first < roles.size(); first++) {
      for (var rest : choose(roles.subList(first + 1, roles.size()), count - 1)) {
        var all = new ArrayList<Role>();
        all.add(roles.get(first));
        all.addAll(rest);
        chosen.add(all);
      }
    }
    return chosen;
  }

  /** Ways to fill some roles of a build anew, so many at most. */
  private List<Build> ways(Build build, List<Role> roles, int most) {
    var ways = Stream.of(build);
    for (var role : roles) {
      ways = ways.flatMap(way -> question.options(role).stream().map(part -> way.with(role, part)));
    }
    return ways.limit(most).toList();
  }

  /** Roles of a build that have another part to offer, in the order of roles. */
  public List<Role> roles(Build build) {
    var others = new EnumMap<Role, Boolean>(Role.class);
    build
        .parts()
        .forEach((role, part) -> others.put(
            role,
            question.options(role).stream().anyMatch(option -> !option.id().equals(part.id()))));
    return others.entrySet().stream()
        .filter(Map.Entry::getValue)
        .map(Map.Entry::getKey)
        .toList();
  }
}
