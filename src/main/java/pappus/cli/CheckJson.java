package pappus.cli;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import pappus.files.Problem;
import pappus.files.json.JsonText;

/** What is wrong with a catalogue, and what is doubtful in it. */
public record CheckJson(
    @JsonPropertyDescription("What the answer is, in a word.")
    String status,

    @JsonPropertyDescription("What is wrong.") List<Remark> problems,
    @JsonPropertyDescription("What is doubtful.") List<Remark> warnings) {
  /** One remark; what is not known of its place is left out. */
  record Remark(
      @JsonPropertyDescription("The file.") String file,
      @JsonPropertyDescription("Line of it, from 1.") Optional<Integer> line,
      @JsonPropertyDescription("Column of that, from 1.") Optional<Integer> column,
      @JsonPropertyDescription("What there is to say.") String text) {
    static Remark of(Problem problem) {
      return new Remark(
          problem.file(), known(problem.line()), known(problem.column()), problem.text());
    }

    private static Optional<Integer> known(int place) {
      return Optional.of(place).filter(from -> from > 0);
    }
  }

  /** The whole answer. */
  static String of(Collection<Problem> problems, Collection<Problem> warnings) {
    return JsonText.of(new CheckJson(
        !problems.isEmpty() ? "bad-data" : warnings.isEmpty() ? "sound" : "doubtful",
        problems.stream().map(Remark::of).toList(),
        warnings.stream().map(Remark::of).toList()));
  }
}
