package pappus.answers.result;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.Optional;
import pappus.assessment.Assessment;
import pappus.doubt.Band;
import pappus.scenario.Scenario;

/** What we think of one build. */
public record AssessedJson(
    @JsonPropertyDescription("The build.") BuildJson build) {
  /** The whole answer. */
  public static String of(Scenario scenario, Run run, Assessment assessment, Optional<Band> band) {
    var parts = new NamedParts();
    var planWith = band.map(Band::planWith).orElse(1.0);
    return Document.ofSearch(
        scenario,
        run,
        assessment.isFeasible() ? "feasible" : "infeasible",
        new AssessedJson(BuildJson.of(assessment, band, planWith, scenario, parts)),
        parts);
  }
}
