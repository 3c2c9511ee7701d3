package pappus.answers.shape;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pappus.answers.build.ArmWords;
import pappus.answers.build.Cautions;
import pappus.answers.build.Hints;
import pappus.answers.build.Journey;
import pappus.answers.build.LinkWords;
import pappus.answers.build.OutlayWords;
import pappus.answers.build.Reasons;
import pappus.answers.build.SightWords;
import pappus.assessment.Assessment;
import pappus.assessment.Limit;
import pappus.assessment.flight.Course;
import pappus.assessment.flight.FlightEstimate;
import pappus.part.Role;
import pappus.scenario.Scenario;

/** One build with every digit. */
public record AssessmentJson(
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

    @JsonPropertyDescription("What it weighs at take-off.") MassJson mass,
    @JsonPropertyDescription("What it costs.") CostJson cost,

    @JsonPropertyDescription(
        "All that is bought, what the scenario buys beside the build included; left out where it buys nothing so.")
    Optional<CostJson> outlay,

    @JsonPropertyDescription("What a day of flying takes; left out where none is asked for.")
    Optional<WorkdayJson> workday,

    @JsonPropertyDescription("How it flies; left out where that cannot be computed.")
    Optional<FlightJson> flight,

    @JsonPropertyDescription(
        "How far its links reach, of which something is known; permitted power, band and range are local law.")
    List<LinkJson> links,

    @JsonPropertyDescription("Uncertain figures of its parts.")
    Optional<List<FigureJson>> figures,

    @JsonPropertyDescription("Why there is no flight.") Optional<String> whyNoFlight,
    @JsonPropertyDescription("Every limit.") List<LimitJson> limits,

    @JsonPropertyDescription("Id of the limit with the least room.")
    Optional<String> binds,

    @JsonPropertyDescription("What each fit rule says.") List<FindingJson> findings,
    @JsonPropertyDescription("How it is put together.") InstallationJson installation,

    @JsonPropertyDescription(
        "How its arms bend, an engineering estimate; left out where they are not drawn.")
    Optional<List<ArmJson>> arms,

    @JsonPropertyDescription("What its camera sees; left out without frame, propeller or camera.")
    Optional<SightJson> sight,

    @JsonPropertyDescription("Why it is as it is, in sentences.")
    List<String> reasons,

    @JsonPropertyDescription("To heed before building.") List<String> cautions) {
  /**
   * Everything.
   *
   * @param planWith share of the estimate to plan with
   * @param parts gains those that are named by id
   */
  public static AssessmentJson of(
      Assessment assessment, Scenario scenario, double planWith, NamedParts parts) {
    return new AssessmentJson(
        assessment.build().toString(),
        assessment.isFeasible(),
        parts.roles(assessment.build()),
        assessment.milliseconds(),
        range(assessment),
        planWithSeconds(assessment),
        planWithMetres(assessment),
        MassJson.of(assessment.mass(), scenario.massCap(), parts),
        CostJson.of(assessment.cost(), parts),
        assessment.outlay().map(outlay -> CostJson.of(outlay, parts)),
        OutlayWords.workload(assessment, scenario, planWith).map(WorkdayJson::of),
        assessment.flight().map(flight -> FlightJson.of(flight, assessment, scenario, planWith)),
        LinkJson.of(assessment),
        assessment.flight().map(flight -> FigureJson.of(assessment.build(), flight.figures())),
        assessment.whyNoFlight(),
        assessment.limits().stream().map(LimitJson::of).toList(),
        assessment.tightest().map(Limit::id),
        assessment.findings().stream().map(FindingJson::of).toList(),
        InstallationJson.of(assessment),
        ArmJson.of(assessment),
        SightJson.of(assessment),
        reasons(assessment, scenario, planWith),
        Cautions.of(assessment, scenario));
  }

  private static List<String> reasons(Assessment assessment, Scenario scenario, double planWith) {
    var reasons = new ArrayList<String>();
    reasons.add(Reasons.binding(assessment));
    reasons.addAll(OutlayWords.of(assessment, scenario, planWith));
    assessment.flight().ifPresent(flight -> {
      reasons.addAll(Journey.of(assessment, planWith));
      reasons.addAll(LinkWords.of(assessment));
      reasons.add(Reasons.ending(flight));
      Reasons.cap(flight).ifPresent(reasons::add);
      reasons.addAll(Hints.of(assessment));
      ArmWords.sentence(assessment).ifPresent(reasons::add);
      SightWords.sentence(assessment).ifPresent(reasons::add);
    });
    return reasons;
  }

  /** Metres over ground, where the flight leads anywhere. */
  public static Optional<Double> range(Assessment assessment) {
    return assessment
        .flight()
        .filter(flight -> flight.course().filter(Course::coversGround).isPresent())
        .map(FlightEstimate::rangeMetres);
  }

  /** Seconds to plan with, where no range counts. */
  static Optional<Double> planWithSeconds(Assessment assessment) {
    return planWith(assessment, false);
  }

  /** Metres to plan with, where the range counts. */
  static Optional<Double> planWithMetres(Assessment assessment) {
    return planWith(assessment, true);
  }

  private static Optional<Double> planWith(Assessment assessment, boolean isForRange) {
    return assessment
        .flight()
        .filter(flight -> flight.isForRange() == isForRange)
        .map(flight -> assessment.planned() / 1000.0);
  }
}
