package pappus.cli;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.List;
import java.util.Optional;
import pappus.files.json.JsonText;
import pappus.search.plain.PlainSearch;

/** Whether a result is confirmed. */
public record VerifyJson(
    @JsonPropertyDescription("What the answer is, in a word.")
    String status,

    @JsonPropertyDescription("Files that are not as they were when the result was made.")
    List<String> changed,

    @JsonPropertyDescription("What goes against the result.")
    List<String> against,

    @JsonPropertyDescription("Candidates judged anew.") int rows,
    @JsonPropertyDescription("Motors that were done.") Optional<Integer> motorsDone,
    @JsonPropertyDescription("All of them.") Optional<Integer> motors,
    @JsonPropertyDescription("Combinations looked at.") Optional<Long> looks,
    @JsonPropertyDescription("Builds assessed.") Optional<Long> assessed,
    @JsonPropertyDescription("The same in a sentence.") String text) {
  /** The whole answer. */
  static String of(
      boolean confirmed,
      List<String> changed,
      List<String> against,
      int rows,
      Optional<PlainSearch.Found> found,
      String text) {
    return JsonText.of(new VerifyJson(
        confirmed ? "confirmed" : "not-confirmed",
        changed,
        against,
        rows,
        found.map(PlainSearch.Found::motors),
        found.map(PlainSearch.Found::ofMotors),
        found.map(PlainSearch.Found::looks),
        found.map(PlainSearch.Found::assessed),
        text));
  }
}
