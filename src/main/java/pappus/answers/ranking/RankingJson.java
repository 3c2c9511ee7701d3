package pappus.answers.ranking;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.IntStream;
import pappus.answers.build.GoalWords;
import pappus.answers.build.Reasons;
import pappus.answers.result.Document;
import pappus.answers.result.Run;
import pappus.answers.result.StandingJson;
import pappus.answers.shape.AssessmentJson;
import pappus.answers.shape.BandJson;
import pappus.answers.shape.FlightJson;
import pappus.answers.shape.NamedParts;
import pappus.assessment.Assessment;
import pappus.assessment.Assessor;
import pappus.change.Upgrades;
import pappus.part.Role;
import pappus.ranking.Candidate;
import pappus.ranking.Ranking;
import pappus.scenario.Scenario;
import pappus.search.Ending;

/** A ranking with every digit; later commands work from it. */
public record RankingJson(
    @JsonPropertyDescription("How far it can be trusted.") Trust standing,

    @JsonPropertyDescription("Builds, the best first.") List<Row> candidates,

    @JsonPropertyDescription(
        "Builds to choose among by what they let one plan with, the longest or farthest first.")
    List<PickJson> picks,

    @JsonPropertyDescription("What a little less flight than that of the first pick saves.")
    List<PickJson> givingUp,

    @JsonPropertyDescription("What came nearest, where no build is feasible.")
    Optional<AssessmentJson> closest,

    @JsonPropertyDescription(
        "The quad that is there, where the scenario changes one, and what changes of it gain.")
    Optional<UpgradesJson> aircraft) {
  /** What stands behind a ranking. */
  record Trust(
      @JsonPropertyDescription("Whether no other combination does better.")
      boolean proven,

      @JsonPropertyDescription("The same in sentences.") String text,
      @JsonPropertyDescription("Candidates asked for.") int wanted,

      @JsonPropertyDescription("Builds assessed, counting repeats.")
      long assessed,

      @JsonPropertyDescription("Feasible ones among them.") long feasible,
      @JsonPropertyDescription("Ways to fill the roles.") double combinations,
      @JsonPropertyDescription("What ended the search.") String endedBy,

      @JsonPropertyDescription(
          "What no build that was not seen surpasses, s, or m where the goal is range.")
      Optional<Double> atMost,

      @JsonPropertyDescription("By how much such a build may be better than the first, share.")
      Optional<Double> gap) {
    static Trust of(Ranking ranking, int wanted, Scenario scenario) {
      var coverage = ranking.coverage();
      var proof = coverage.proof();
      var gap = Standing.gap(ranking);
      return new Trust(
          coverage.isProof(),
          Standing.text(ranking, scenario),
          wanted,
          coverage.assessed(),
          coverage.feasible(),
          coverage.combinations(),
          FlightJson.key(proof.ending()),
          StandingJson.atMost(proof),
          gap.isPresent() ? Optional.of(gap.getAsDouble()) : Optional.empty());
    }
  }

  /** One candidate. */
  record Row(
      @JsonPropertyDescription("From 1.") int rank,

      @JsonPropertyDescription("By id of a part of it, those that are the same in every number.")
      Optional<Map<String, List<String>>> twins,

      @JsonPropertyDescription("Rank of the first candidate that it is not surely worse than.")
      Optional<Integer> equalTo,

      @JsonPropertyDescription("Whether it is the cheapest of a group of equals.")
      boolean cheapestOfGroup,

      @JsonUnwrapped AssessmentJson assessment,
      @JsonPropertyDescription("How sure its figure is.") BandJson band,

      @JsonPropertyDescription("Why it stands before the next.")
      Optional<String> standsBecause,

      @JsonPropertyDescription(
          "Builds that differ from it in one main part or in how the frame is ordered, the best first.")
      List<Variant> variants,

      @JsonPropertyDescription("Whether there may be more of them.")
      boolean variantsCutShort) {
    static Row of(int index, List<Candidate> rows, Scenario scenario, NamedParts parts) {
      var row = rows.get(index);
      return new Row(
          index + 1,
          Optional.of(twins(row, parts)).filter(twins -> !twins.isEmpty()),
          row.equalTo().isPresent() ? Optional.of(row.equalTo().getAsInt()) : Optional.empty(),
          row.cheapestOfGroup(),
          AssessmentJson.of(row.assessment(), scenario, row.band().planWith(), parts),
          BandJson.of(row.band(), scenario.flightGoal()),
          index + 1 < rows.size()
              ? Optional.of(Reasons.standing(row, rows.get(index + 1), new GoalWords(scenario)))
              : Optional.empty(),
          row.variants().stream().map(variant -> Variant.of(variant, parts)).toList(),
          row.areVariantsCutShort());
    }

    private static Map<String, List<String>> twins(Candidate row, NamedParts parts) {
      var twins = new TreeMap<String, List<String>>();
      row.twins()
          .forEach((part, others) ->
              twins.put(part.id(), others.stream().map(parts::id).toList()));
      return twins;
    }
  }

  /** A build that differs from a candidate in one main part or in how the frame is ordered. */
  record Variant(
      @JsonPropertyDescription("The build as commands take it.")
      String build,

      @JsonPropertyDescription("In the air, ms.") long milliseconds,

      @JsonPropertyDescription("Over ground, m; where the flight leads anywhere.")
      Optional<Double> rangeMetres,

      @JsonPropertyDescription("At take-off, g.") double grams,
      @JsonPropertyDescription("What is to buy, cents.") long cents,
      @JsonPropertyDescription("Ids of its parts, by role.") Map<Role, String> roles) {
    static Variant of(Assessment variant, NamedParts parts) {
      return new Variant(
          variant.build().toString(),
          variant.milliseconds(),
          AssessmentJson.range(variant),
          variant.mass().grams(),
          variant.cost().cents(),
          parts.roles(variant.build()));
    }
  }

  /**
   * The whole answer.
   *
   * @param wanted candidates asked for: with fewer, it claims that there are no more
   */
  public static String of(Scenario scenario, Run run, Ranking ranking, int wanted) {
    return of(scenario, run, ranking, wanted, parts -> Optional.empty());
  }

  /**
   * The whole answer of a scenario that changes a quad.
   *
   * @param wanted candidates asked for: with fewer, it claims that there are no more
   */
  public static String of(
      Assessor assessor, Run run, Ranking ranking, int wanted, Optional<Upgrades> upgrades) {
    return of(
        assessor.scenario(),
        run,
        ranking,
        wanted,
        parts -> upgrades.map(found -> UpgradesJson.of(found, assessor, parts)));
  }

  private static String of(
      Scenario scenario,
      Run run,
      Ranking ranking,
      int wanted,
      Function<NamedParts, Optional<UpgradesJson>> aircraft) {
    var parts = new NamedParts();
    var rows = ranking.candidates();
    var answer = new RankingJson(
        Trust.of(ranking, wanted, scenario),
        IntStream.range(0, rows.size())
            .mapToObj(index -> Row.of(index, rows, scenario, parts))
            .toList(),
        PickJson.picks(ranking.picks(), scenario, parts),
        PickJson.givingUp(ranking.picks(), scenario, parts),
        ranking
            .closest()
            .map(closest -> AssessmentJson.of(closest, scenario, closest.shareToPlanWith(), parts)),
        aircraft.apply(parts));
    return Document.ofSearch(scenario, run, status(ranking), answer, parts);
  }

  private static String status(Ranking ranking) {
    if (ranking.coverage().proof().ending() == Ending.INTERRUPTED) {
      return "interrupted";
    }
    return ranking.candidates().isEmpty() ? "infeasible" : "found";
  }
}
