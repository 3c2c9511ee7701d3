package pappus.answers.shape;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pappus.assessment.Assessment;
import pappus.assessment.Finding;
import pappus.assessment.Limit;
import pappus.assessment.flight.FlightEstimate;
import pappus.part.Role;
import pappus.scenario.Scenario;

/** A build in a few fields. */
public record BriefJson(
    @JsonPropertyDescription("The build as commands take it: ids with pieces, by commas.")
    String build,

    @JsonPropertyDescription("Whether it goes together, keeps every limit and flies.")
    boolean feasible,

    @JsonPropertyDescription("Ids of its parts, by role.") Map<Role, String> roles,
    @JsonPropertyDescription("In the air, ms.") long milliseconds,

    @JsonPropertyDescription("Over ground, m; where the flight leads anywhere.")
    Optional<Double> rangeMetres,

    @JsonPropertyDescription("Flight to plan with, s.") Optional<Double> planWithSeconds,

    @JsonPropertyDescription("Range to plan with, m; where the range counts.")
    Optional<Double> planWithMetres,

    @JsonPropertyDescription("At take-off, g.") double grams,

    @JsonPropertyDescription("Chance that it is under the cap, 0 to 1.")
    double chanceUnderCap,

    @JsonPropertyDescription("Full thrust-to-weight.") Optional<Double> thrustToWeight,
    @JsonPropertyDescription("Power as flown, W.") Optional<Double> watts,
    @JsonPropertyDescription("What is to buy, cents.") long cents,

    @JsonPropertyDescription("Whether it flies better than such aircraft are known to.")
    boolean beyondBelief,

    @JsonPropertyDescription("Ids of the fit rules it breaks.")
    List<String> broken,

    @JsonPropertyDescription("Ids of the limits it misses.") List<String> limitsBroken) {
  /**
   * The build of an assessment.
   *
   * @param parts gains those of the build
   */
  public static BriefJson of(Assessment assessment, Scenario scenario, NamedParts parts) {
    var flight = assessment.flight();
    return new BriefJson(
        assessment.build().toString(),
        assessment.isFeasible(),
        parts.roles(assessment.build()),
        assessment.milliseconds(),
        AssessmentJson.range(assessment),
        AssessmentJson.planWithSeconds(assessment),
        AssessmentJson.planWithMetres(assessment),
        assessment.mass().grams(),
        assessment.mass().chanceUnder(scenario.massCap()),
        flight.map(FlightEstimate::thrustToWeight),
        flight.map(FlightEstimate::flownW),
        assessment.cost().cents(),
        assessment.isBeyondBelief(),
        assessment.broken().stream().map(Finding::rule).toList(),
        assessment.limits().stream()
            .filter(limit -> !limit.met())
            .map(Limit::id)
            .toList());
  }
}
