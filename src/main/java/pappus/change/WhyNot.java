package pappus.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import pappus.assessment.Assessment;
import pappus.assessment.Supply;
import pappus.catalog.Antenna;
import pappus.catalog.Part;
import pappus.catalog.Role;
import pappus.files.Altered;
import pappus.quantity.Money;
import pappus.ranking.Best;
import pappus.ranking.Finder;
import pappus.scenario.Choice;
import pappus.scenario.Scenario;
import pappus.search.Question;

/**
 * Why a part that the builder likes is not in a build.
 *
 * @param part the part
 * @param role what it would be for
 * @param isLeftOut whether the scenario itself leaves it out, by exclusion, a list of others or another part fixed
 * @param swap the build with the part put in, and nothing more changed than has to be
 * @param cures for each rule that it breaks there, parts that would cure that
 * @param best the best build that has the part
 * @param keptDown limits that, a fifth looser, would let the part into a build better than the one it is not in
 */
public record WhyNot(
    Part part,
    Role role,
    boolean isLeftOut,
    Swap swap,
    List<Cure> cures,
    Best best,
    List<KeptDown> keptDown) {
  public WhyNot {
    cures = List.copyOf(cures);
    keptDown = List.copyOf(keptDown);
  }

  /**
   * How much looser limits are tried. Without any limit the longest flights are giants, beside which every part of a
   * small quad would look kept down.
   */
  static final double LOOSER = 1.2;

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
   * A limit that keeps the part down.
   *
   * @param limit its name in results
   * @param at what it is a fifth looser, in its own unit: g, gf a gf, or money
   * @param build the best build with the part then
   * @param isBest whether no build without the part is better then
   */
  public record KeptDown(String limit, double at, Assessment build, boolean isBest) {}

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
    return new WhyNot(
        part,
        role,
        !open.options(role).contains(part)
            && open.options(role).stream()
                .noneMatch(option -> open.twins(option).contains(part)),
        swap,
        cures(part, role, swap.assessment(), open),
        best,
        isIn(winner, part, role)
            ? List.of()
            : keptDown(
                scenario,
                fixed,
                supply,
                finder,
                isBetter(best, winner) ? best.build().orElseThrow() : winner));
  }

  /** The scenario with the part fixed, and nothing in it that leaves the part out. */
  private static Scenario fixed(Scenario scenario, Part part, Role role, Supply supply) {
    var choice = scenario.choice();
    var fixed = new ArrayList<String>();
    choice.fixedIds().stream()
        .filter(id ->
            supply.catalog().part(id).stream().noneMatch(other -> isInItsPlace(other, part, role)))
        .forEach(fixed::add);
    fixed.add(part.id());
    var allowed =
        choice.allowedParts().stream().filter(list -> list.role() != role).toList();
    var excluded =
        choice.excludedIds().stream().filter(id -> !id.equals(part.id())).toList();
    return Altered.record(
        Scenario.class,
        scenario,
        Map.of("parts", new Choice(fixed, allowed, excluded, choice.ownedIds())));
  }

  /** Whether a fixed part leaves no room for one; antennas of other bands are for another port. */
  private static boolean isInItsPlace(Part fixed, Part part, Role role) {
    if (part instanceof Antenna antenna) {
      return fixed instanceof Antenna other && other.band() == antenna.band();
    }
    return fixed.fills().contains(role);
  }

  private static List<Cure> cures(Part part, Role role, Assessment swapped, Question question) {
    var assessor = question.assessor();
    var cures = new ArrayList<Cure>();
    for (var finding : swapped.broken()) {
      var rule = assessor.rules().stream()
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
                !assessor.isBroken(rule, swapped.build().with(role, part).with(other, option)))
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

  private static List<KeptDown> keptDown(
      Scenario scenario, Scenario fixed, Supply supply, Finder finder, Assessment surpassed) {
    var down = new ArrayList<KeptDown>();
    looser(scenario).forEach((limit, change) -> {
      var with = best(Altered.record(Scenario.class, fixed, change.fields()), supply, finder);
      with.filter(build -> build.objective() > surpassed.objective()).ifPresent(build -> {
        var any = best(Altered.record(Scenario.class, scenario, change.fields()), supply, finder);
        var isBest = any.stream().noneMatch(other -> other.objective() > build.objective());
        down.add(new KeptDown(limit, change.at(), build, isBest));
      });
    });
    return down;
  }

  private static Optional<Assessment> best(Scenario scenario, Supply supply, Finder finder) {
    return finder.best(Question.of(supply.catalog(), supply.assessor(scenario))).build();
  }

  /** A limit a fifth looser. */
  private record Looser(double at, Map<String, ?> fields) {}

  private static Map<String, Looser> looser(Scenario scenario) {
    var looser = new TreeMap<String, Looser>();
    var grams = LOOSER * scenario.massCap().grams();
    looser.put("mass-cap", new Looser(grams, Map.of("massCap.grams", grams)));
    var thrust = scenario.leastThrustToWeight() / LOOSER;
    if (thrust >= 1) {
      looser.put("thrust-to-weight", new Looser(thrust, Map.of("leastThrustToWeight", thrust)));
    }
    var budget = scenario.budget();
    if (budget != null) {
      var more = Money.ofCents(Math.round(LOOSER * budget.cents()), budget.currency());
      looser.put("budget", new Looser(more.cents() / 100.0, Map.of("budget", more)));
    }
    return looser;
  }
}
