package pappus.answers.result;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.Optional;
import pappus.answers.build.Against;
import pappus.answers.shape.BriefJson;
import pappus.answers.shape.FlightJson;
import pappus.answers.shape.NamedParts;
import pappus.assessment.Assessment;
import pappus.ranking.Best;
import pappus.scenario.Scenario;
import pappus.search.Proof;

/** How far the search for the best build came. */
public record StandingJson(
    @JsonPropertyDescription("Whether no other build can be better.")
    boolean proven,

    @JsonPropertyDescription("The same in sentences.") String text,
    @JsonPropertyDescription("What ended the search.") String endedBy,

    @JsonPropertyDescription(
        "What no build that was not seen surpasses, s, or m where the goal is range.")
    Optional<Double> atMost,

    @JsonPropertyDescription("The best build.") Optional<BriefJson> best) {
  public static StandingJson of(Best best, String text, Scenario scenario, NamedParts parts) {
    return new StandingJson(
        best.isProof(),
        text,
        FlightJson.key(best.proof().ending()),
        atMost(best.proof()),
        best.build().map(build -> BriefJson.of(build, scenario, parts)));
  }

  /** Where a build stands against the best. */
  public static StandingJson of(
      Best best, Assessment assessment, Scenario scenario, NamedParts parts) {
    return of(best, new Against(scenario).of(assessment, best), scenario, parts);
  }

  /** What no build that was not seen surpasses, s or m; empty where nothing is known. */
  public static Optional<Double> atMost(Proof proof) {
    return proof.atMost().isPresent()
        ? Optional.of(Assessment.figure(proof.atMost().getAsLong()))
        : Optional.empty();
  }
}
