package pappus.answers.explain;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.List;
import java.util.Optional;
import pappus.answers.result.Document;
import pappus.answers.result.Run;
import pappus.answers.result.StandingJson;
import pappus.answers.result.SwapJson;
import pappus.answers.shape.AssessmentJson;
import pappus.answers.shape.BriefJson;
import pappus.answers.shape.NamedParts;
import pappus.assessment.Assessment;
import pappus.assessment.flight.FlightEstimate;
import pappus.change.WhyNot;
import pappus.part.Role;
import pappus.ranking.Best;
import pappus.scenario.Scenario;
import pappus.scenario.Where;

/** Why a part is not in a build, with every digit. */
public record WhyNotJson(
    @JsonPropertyDescription("How far the search for the best with it came.")
    StandingJson standing,

    @JsonPropertyDescription("Id of the part.") String part,
    @JsonPropertyDescription("The role it would fill.") Role role,

    @JsonPropertyDescription("Whether the scenario leaves it out.")
    boolean leftOutByTheScenario,

    @JsonPropertyDescription("Where the wishes by property stand that it does not meet.")
    List<String> unmetWishes,

    @JsonPropertyDescription("Whether there are too few of it.")
    boolean outOfStock,

    @JsonPropertyDescription("The build that it is not in.") BriefJson inBuild,
    @JsonPropertyDescription("It put into that build.") SwapJson putIn,
    @JsonPropertyDescription("The best build with it.") Optional<AssessmentJson> bestWithIt,

    @JsonPropertyDescription("That against the build it is not in.")
    Optional<Difference> difference,

    @JsonPropertyDescription("For each rule that it breaks there, parts that would cure that.")
    List<Cure> cures,

    @JsonPropertyDescription("Each limit a fifth looser, and what that would let in.")
    List<Looser> looser,

    @JsonPropertyDescription("The same in sentences.") List<String> text) {
  /** One build against another. */
  record Difference(
      @JsonPropertyDescription(
          "What it gains, s, or m where the goal is range; below 0 for a loss.")
      double gained,

      @JsonPropertyDescription("Mass added, g; below 0 for less.")
      double gramsMore,

      @JsonPropertyDescription("Price added, cents; below 0 for less.")
      long centsMore,

      @JsonPropertyDescription("Power added as flown, W.") Optional<Double> wattsMore) {
    static Difference of(Assessment winner, Assessment other) {
      return new Difference(
          Assessment.figure(other.flown() - winner.flown()),
          other.mass().grams() - winner.mass().grams(),
          other.cost().cents() - winner.cost().cents(),
          winner
              .flight()
              .map(FlightEstimate::flownW)
              .flatMap(before -> other.flight().map(flight -> flight.flownW() - before)));
    }
  }

  /** Parts that would cure a broken rule. */
  record Cure(
      @JsonPropertyDescription("Id of the rule.") String rule,

      @JsonPropertyDescription("The role of those that would cure it.")
      Role role,

      @JsonPropertyDescription("Ids of the parts.") List<String> parts) {}

  /** What another limit would do. */
  record Looser(
      @JsonPropertyDescription("Id of the limit.") String limit,
      @JsonPropertyDescription("What it would be.") double at,

      @JsonPropertyDescription("Whether that limit is what keeps the part down.")
      boolean keepsDown,

      @JsonPropertyDescription("Whether the builds then are proven.")
      boolean proven,

      @JsonPropertyDescription("The best with the part then.")
      Optional<BriefJson> bestWithIt,

      @JsonPropertyDescription("The best of all then.") Optional<BriefJson> bestOfAll) {
    static Looser of(WhyNot.Loosened one, Scenario scenario, NamedParts parts) {
      return new Looser(
          one.limit().id(),
          one.at(),
          one.keepsDown(),
          one.isProof(),
          one.with().build().map(build -> BriefJson.of(build, scenario, parts)),
          one.any().flatMap(Best::build).map(build -> BriefJson.of(build, scenario, parts)));
    }
  }

  /** The whole answer. */
  public static String of(Scenario scenario, Run run, WhyNot why) {
    var parts = new NamedParts();
    var best = why.best();
    var base = why.swap().base();
    var answer = new WhyNotJson(
        StandingJson.of(best, best.isProof() ? "Proven." : "Not proven.", scenario, parts),
        parts.id(why.part()),
        why.role(),
        why.isLeftOut(),
        why.unmet().stream().map(Where.Wished::path).toList(),
        why.isOutOfStock(),
        BriefJson.of(base, scenario, parts),
        SwapJson.of(why.swap(), scenario, parts),
        best.build()
            .map(build -> AssessmentJson.of(build, scenario, build.shareToPlanWith(), parts)),
        best.build().map(build -> Difference.of(base, build)),
        why.cures().stream()
            .map(cure -> new Cure(
                cure.rule(), cure.role(), cure.parts().stream().map(parts::id).toList()))
            .toList(),
        why.loosened().stream().map(one -> Looser.of(one, scenario, parts)).toList(),
        new WhyNots(scenario, why).all());
    return Document.of(
        scenario, run, best.build().isPresent() ? "found" : "infeasible", answer, parts);
  }
}
