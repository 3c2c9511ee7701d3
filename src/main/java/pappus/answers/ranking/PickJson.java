package pappus.answers.ranking;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pappus.answers.shape.AssessmentJson;
import pappus.answers.shape.NamedParts;
import pappus.assessment.Assessment;
import pappus.part.Role;
import pappus.ranking.Picks;
import pappus.scenario.Scenario;

/** A build to choose, or one that saves something for a little less flight. */
record PickJson(
    @JsonPropertyDescription(
        "What it is picked for: longest or farthest, thrifty, strongest, lightest, cheapest, owned; absent for what only saves something.")
    Optional<String> pick,

    @JsonPropertyDescription("The build as commands take it.")
    String build,

    @JsonPropertyDescription("Whether no build with numbers to be believed serves better.")
    Optional<Boolean> proven,

    @JsonPropertyDescription("In the air, ms.") long milliseconds,

    @JsonPropertyDescription("Over ground, m; where the flight leads anywhere.")
    Optional<Double> rangeMetres,

    @JsonPropertyDescription("Flight to plan with, s.") Optional<Double> planWithSeconds,

    @JsonPropertyDescription("Range to plan with, m; where the range counts.")
    Optional<Double> planWithMetres,

    @JsonPropertyDescription("At take-off, g.") double grams,
    @JsonPropertyDescription("Thrust-to-weight.") double thrustToWeight,
    @JsonPropertyDescription("What is to buy, cents.") long cents,

    @JsonPropertyDescription("Whether it keeps every rule and limit.")
    boolean feasible,

    @JsonPropertyDescription("Whether it flies better than such aircraft are known to.")
    boolean beyondBelief,

    @JsonPropertyDescription("Ids of its parts, by role.") Map<Role, String> roles) {

  static List<PickJson> picks(Picks picks, Scenario scenario, NamedParts parts) {
    return picks.picks().stream()
        .map(pick -> of(
            Optional.of(pick.kind().word()),
            Optional.of(pick.isProven()),
            pick.build(),
            pick.band().low(),
            scenario,
            parts))
        .toList();
  }

  static List<PickJson> givingUp(Picks picks, Scenario scenario, NamedParts parts) {
    return picks.givingUp().stream()
        .map(given -> of(
            picks.of(given.build()).map(pick -> pick.kind().word()),
            Optional.empty(),
            given.build(),
            given.planWith() / 1000.0,
            scenario,
            parts))
        .toList();
  }

  private static PickJson of(
      Optional<String> pick,
      Optional<Boolean> proven,
      Assessment build,
      double planWith,
      Scenario scenario,
      NamedParts parts) {
    var isForRange = scenario.isForRange();
    return new PickJson(
        pick,
        build.build().toString(),
        proven,
        build.milliseconds(),
        AssessmentJson.range(build),
        isForRange ? Optional.empty() : Optional.of(planWith),
        isForRange ? Optional.of(planWith) : Optional.empty(),
        build.mass().grams(),
        build.flight().orElseThrow().thrustToWeight(),
        build.cost().cents(),
        build.isFeasible(),
        build.isBeyondBelief(),
        parts.roles(build.build()));
  }
}
