package pappus.change;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import pappus.assessment.Assessment;
import pappus.assessment.LimitKind;
import pappus.assessment.Supply;
import pappus.files.json.Altered;
import pappus.part.Part;
import pappus.part.Role;
import pappus.ranking.Best;
import pappus.ranking.Finder;
import pappus.scenario.Choice;
import pappus.scenario.FixedParts;
import pappus.scenario.Scenario;
import pappus.scenario.Where;
import pappus.search.Question;

/**
 * Why a part that the builder likes is not in a build.
 *
 * <p>Why: src/site/markdown/decisions.md#what-keeps-a-part-down-is-asked-of-a-limit-a-fifth-looser
 *
 * @param part the part
 * @param role what it would be for
 * @param isLeftOut whether the scenario itself leaves it out, by exclusion, a list of others or another part fixed
 * @param unmet wishes by property that it, or what is built into it, does not meet
 * @param isOutOfStock whether there are too few of it
 * @param swap the build with the part put in, and nothing more changed than has to be
 * @param cures for each rule that it breaks there, parts that would cure that
 * @param best the best build that has the part
 * @param loosened each limit a fifth looser, and what that would let in; empty where the part is in already
 */
public record WhyNot(
    Part part,
    Role role,
    boolean isLeftOut,
    List<Where.Wished> unmet,
    boolean isOutOfStock,
    Swap swap,
    List<Cure> cures,
    Best best,
    List<Loosened> loosened) {
  public WhyNot {
    unmet = List.copyOf(unmet);
    cures = List.copyOf(cures);
    loosened = List.copyOf(loosened);
  }

  /**
   * How much looser limits are tried. Without any limit the longest flights are giants, beside which every part of a
   * small quad would look kept down.
   */
  private static final double MORE = 1.2;

  private static final double LESS = 0.8;

  /** Whether the build has it. */
  public boolean isIn() {
    return isIn(swap.base(), part, role);
  }

  private static boolean isIn(Assessment winner, Part part, Role role) {
    return winner.build().part(role).map(Part::id).filter(part.id()::equals).isPresent();
  }

  /**
   * Parts that would cure a clash.
   *
   * @param rule that is broken
   * @param role whose part would have to change
   * @param parts that the rule takes beside the part asked about, and all else as it is
   */
  public record Cure(String rule, Role role, List<Part> parts) {
    public Cure {
      parts = List.copyOf(parts);
    }
  }

  /**
   * A limit a fifth looser.
   *
   * @param limit which
   * @param at what it is then, in its own unit: g, gf a gf, or money
   * @param with the best build with the part then
   * @param any the best build of all then; absent where none with the part does better than the one it is not in
   */
  public record Loosened(LimitKind limit, double at, Best with, Optional<Best> any) {
    /** Whether the limit keeps the part down: then no build was found to be better without it. */
    public boolean keepsDown() {
      return any.isPresent()
          && any.get().build().stream()
              .noneMatch(other -> other.objective() > with.build().orElseThrow().objective());
    }

    /** Whether what is said of it is proven. */
    public boolean isProof() {
      return with.isProof() && any.stream().allMatch(Best::isProof);
    }
  }

  /**
   * Looks for it.
   *
   * @param winner the build it is not in
   */
  public static WhyNot of(
      Part part, Role role, Assessment winner, Scenario scenario, Supply supply, Finder finder) {
    var fixed = fixed(scenario, part, role, supply);
    var assessor = supply.assessor(fixed);
    var question = Question.of(supply.catalog(), assessor);
    var open = Question.of(supply.catalog(), supply.assessor(scenario));
    var swap = new Swapper(open).swap(winner, role, part);
    var best = finder.best(question);
    var surpassed = isBetter(best, winner) ? best.build().orElseThrow() : winner;
    return new WhyNot(
        part,
        role,
        isLeftOut(scenario, part, role, supply),
        scenario.whereOrAny().unmet(role, part),
        !open.assessor().purse().canHave(part, role.pieces()),
        swap,
        cures(part, role, swap, open),
        best,
        isIn(winner, part, role)
            ? List.of()
            : loosened(scenario, fixed, supply, finder, surpassed));
  }

  private static boolean isLeftOut(Scenario scenario, Part part, Role role, Supply supply) {
    var choice = scenario.choice();
    return !choice.fixedIds().contains(part.id())
        && (choice.excludedIds().contains(part.id())
            || choice.allowedParts().stream()
                .anyMatch(list -> list.role() == role && !list.parts().contains(part.id()))
            || !fixing(scenario, part, role, supply).fixedIds().containsAll(choice.fixedIds())
            || (Role.EXTRAS.contains(role) && !scenario.wants(role)));
  }

  /** The scenario with the part fixed, and nothing in it that leaves the part out. */
  private static Scenario fixed(Scenario scenario, Part part, Role role, Supply supply) {
    var changes = new TreeMap<String, Object>();
    changes.put("parts", fixing(scenario, part, role, supply));
    var where = scenario.whereOrAny();
    changes.put("where", where.without(where.unmet(role, part)));
    if (role == Role.FRAME) {
      changes.put("draftFrame", null);
    }
    return Altered.record(Scenario.class, scenario, changes);
  }

  /** The part fixed, and of the others that are fixed all that leave room for it. */
  private static Choice fixing(Scenario scenario, Part part, Role role, Supply supply) {
    var choice = scenario.choice();
    var allowed =
        choice.allowedParts().stream().filter(list -> list.role() != role).toList();
    var excluded =
        choice.excludedIds().stream().filter(id -> !id.equals(part.id())).toList();
    var fixing = new Choice(List.of(part.id()), allowed, excluded, choice.ownedIds());
    for (var id : choice.fixedIds()) {
      var more = fixing.fixing(id);
      fixing = FixedParts.of(more, supply.catalog()).goTogether() ? more : fixing;
    }
    return fixing;
  }

  private static List<Cure> cures(Part part, Role role, Swap swap, Question question) {
    var swapped = swap.assessment().build();
    var assessor = question.assessor();
    var cures = new ArrayList<Cure>();
    for (var finding : swap.broken()) {
      var rule = assessor.ruleBook().all().stream()
          .filter(each -> each.id().equals(finding.rule()))
          .findFirst()
          .orElseThrow();
      if (rule.reads().size() == Role.values().length) {
        continue;
      }
      for (var other : Role.values()) {
        if (other == role || !rule.reads().contains(other)) {
          continue;
        }
        var parts = question.options(other).stream()
            .filter(option ->
                !assessor.ruleBook().isBroken(rule, swapped.with(role, part).with(other, option)))
            .toList();
        if (!parts.isEmpty()) {
          cures.add(new Cure(rule.id(), other, parts));
        }
      }
    }
    return cures;
  }

  /** Whether the best build with the part does better than the one it is not in, as the scenario is. */
  public boolean isBetter() {
    return isBetter(best, swap.base());
  }

  private static boolean isBetter(Best best, Assessment winner) {
    return best.build().filter(build -> build.objective() > winner.objective()).isPresent();
  }

  private static List<Loosened> loosened(
      Scenario scenario, Scenario fixed, Supply supply, Finder finder, Assessment surpassed) {
    var loosened = new ArrayList<Loosened>();
    looser(scenario).forEach((limit, bound) -> {
      if (finder.isStopped()) {
        return;
      }
      var with = finder.best(new Asked(fixed, supply).with(limit, bound).question());
      var isMore = with.build()
          .filter(build -> build.objective() > surpassed.objective())
          .isPresent();
      var any = isMore
          ? Optional.of(
              finder.best(new Asked(scenario, supply).with(limit, bound).question()))
          : Optional.<Best>empty();
      loosened.add(new Loosened(limit, bound.doubleValue(), with, any));
    });
    return loosened;
  }

  /** Bounds a fifth looser, as far as a scenario takes them. */
  private static Map<LimitKind, BigDecimal> looser(Scenario scenario) {
    var looser = new TreeMap<LimitKind, BigDecimal>(Comparator.comparing(LimitKind::id));
    LimitKind.stated()
        .forEach(limit -> limit.bound(scenario).ifPresent(bound -> {
          var field = limit.field();
          if (limit.isAtMost() && bound < field.loosest()) {
            looser.put(limit, field.rounded(Math.min(field.loosest(), MORE * bound)));
          } else if (!limit.isAtMost() && LESS * bound >= field.loosest()) {
            looser.put(limit, field.rounded(LESS * bound));
          }
        }));
    return looser;
  }
}
