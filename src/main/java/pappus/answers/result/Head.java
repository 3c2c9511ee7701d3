package pappus.answers.result;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.List;
import java.util.Optional;
import pappus.files.Fingerprint;
import pappus.scenario.Scenario;

/** What every answer to a scenario begins with. */
record Head(
    @JsonPropertyDescription("What the answer is, in a word.")
    String status,

    @JsonPropertyDescription("The tool that wrote it, with version and commit.")
    String tool,

    @JsonPropertyDescription("Seed of the search that tries changes.")
    Optional<Long> seed,

    @JsonPropertyDescription("Changes that search was given.")
    Optional<Long> moves,

    @JsonPropertyDescription("Catalogue folders as given, in order.")
    List<String> catalogs,

    @JsonPropertyDescription("Every file that was read, the scenario first.")
    List<Fingerprint> inputs,

    @JsonPropertyDescription(
        "What was asked otherwise than the scenario's file says, each as PATH=VALUE; absent: nothing.")
    Optional<List<String>> set,

    @JsonPropertyDescription("What was asked for.") Scenario scenario) {
  /** Of an answer that ranks or assesses. */
  static Head ofSearch(Scenario scenario, Run run, String status) {
    return new Head(
        status,
        run.version(),
        Optional.of(run.seed()),
        Optional.of(run.moves()),
        run.catalogs(),
        run.inputs(),
        set(run),
        scenario);
  }

  /** Of an answer that follows a ranking. */
  static Head of(Scenario scenario, Run run, String status) {
    return new Head(
        status,
        run.version(),
        Optional.empty(),
        Optional.empty(),
        run.catalogs(),
        run.inputs(),
        set(run),
        scenario);
  }

  private static Optional<List<String>> set(Run run) {
    return Optional.of(run.set()).filter(set -> !set.isEmpty());
  }
}
