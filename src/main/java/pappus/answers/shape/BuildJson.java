package pappus.answers.shape;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.util.Optional;
import pappus.assessment.Assessment;
import pappus.doubt.Band;
import pappus.scenario.Scenario;

/** A build and how sure its figure is. */
public record BuildJson(
    @JsonUnwrapped AssessmentJson assessment,

    @JsonPropertyDescription("How sure its figure is; left out where it does not fly.")
    Optional<BandJson> band) {
  /**
   * Everything.
   *
   * @param planWith share of the estimate to plan with
   * @param parts gains those that are named by id
   */
  public static BuildJson of(
      Assessment assessment,
      Optional<Band> band,
      double planWith,
      Scenario scenario,
      NamedParts parts) {
    return new BuildJson(
        AssessmentJson.of(assessment, scenario, planWith, parts),
        band.map(found -> BandJson.of(found, scenario.flightGoal())));
  }
}
