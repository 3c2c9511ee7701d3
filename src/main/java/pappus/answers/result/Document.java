package pappus.answers.result;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pappus.answers.build.Cautions;
import pappus.answers.shape.NamedParts;
import pappus.answers.shape.PartJson;
import pappus.files.json.JsonText;
import pappus.scenario.Scenario;

/**
 * A whole answer to a scenario, with every digit.
 *
 * @param <A> the record of what was asked
 */
public record Document<A>(
    @JsonUnwrapped Head head,
    @JsonUnwrapped A answer,

    @JsonPropertyDescription("To heed before building; left out where each build has its own.")
    Optional<List<String>> cautions,

    @JsonPropertyDescription("The parts that are named by id, by id.")
    Map<String, PartJson> parts) {
  /** What a ranking or an assessment is written as. */
  public static <A> String ofSearch(
      Scenario scenario, Run run, String status, A answer, NamedParts parts) {
    return JsonText.of(new Document<>(
        Head.ofSearch(scenario, run, status), answer, Optional.empty(), parts.all()));
  }

  /** What an answer that follows a ranking is written as. */
  public static <A> String of(
      Scenario scenario, Run run, String status, A answer, NamedParts parts) {
    return JsonText.of(new Document<>(
        Head.of(scenario, run, status),
        answer,
        Optional.of(List.of(Cautions.brief())),
        parts.all()));
  }
}
