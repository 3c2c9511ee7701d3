package pappus.answers.explain;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import pappus.answers.result.Document;
import pappus.answers.result.Run;
import pappus.answers.result.StandingJson;
import pappus.answers.shape.BuildJson;
import pappus.answers.shape.NamedParts;
import pappus.assessment.Assessment;
import pappus.doubt.Band;
import pappus.ranking.Best;
import pappus.scenario.Scenario;

/** Builds beside each other, with every digit. */
public record ComparisonJson(
    @JsonPropertyDescription("Where they stand against the best.")
    StandingJson standing,

    @JsonPropertyDescription("The builds, in the order asked for.")
    List<BuildJson> builds,

    @JsonPropertyDescription("Them beside each other, as a person reads it.")
    List<Line> rows) {
  /** One line of the table. */
  record Line(
      @JsonPropertyDescription("What it is about.") String what,

      @JsonPropertyDescription("Whether the builds are not all alike in it.")
      boolean differs,

      @JsonPropertyDescription("A text a build.") List<String> values) {}

  /**
   * The whole answer.
   *
   * @param bands of those that fly
   */
  public static String of(
      Scenario scenario,
      Run run,
      List<Assessment> builds,
      List<Optional<Band>> bands,
      Best best,
      String standing) {
    var parts = new NamedParts();
    var answer = new ComparisonJson(
        StandingJson.of(best, standing, scenario, parts),
        IntStream.range(0, builds.size())
            .mapToObj(i -> BuildJson.of(
                builds.get(i), bands.get(i), builds.get(i).shareToPlanWith(), scenario, parts))
            .toList(),
        new SideBySide(scenario, builds)
            .rows().stream()
                .map(row -> new Line(row.label(), row.differs(), row.values()))
                .toList());
    return Document.of(scenario, run, "compared", answer, parts);
  }
}
