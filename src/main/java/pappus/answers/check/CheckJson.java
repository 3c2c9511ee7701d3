package pappus.answers.check;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import pappus.files.Problem;
import pappus.files.json.JsonText;
import pappus.inspection.MeasureFirst;

/** What is wrong with a catalogue, and what is doubtful in it. */
public record CheckJson(
    @JsonPropertyDescription("What the answer is, in a word.")
    String status,

    @JsonPropertyDescription("What is wrong.") List<Remark> problems,
    @JsonPropertyDescription("What is doubtful.") List<Remark> warnings,

    @JsonPropertyDescription("What is worth measuring, what costs most in the band first.")
    List<Worth> measureFirst) {
  /** A fact that is not known well. */
  record Worth(
      @JsonPropertyDescription("The fact.") String fact,

      @JsonPropertyDescription("Ids of parts that lack it, what costs most first.")
      List<String> parts,

      @JsonPropertyDescription(
          "What it costs in the band of a usual hover, one standard deviation, share of the minutes.")
      double share,

      @JsonPropertyDescription("What tells it.") String with) {
    static Worth of(MeasureFirst one) {
      return new Worth(one.fact(), one.parts(), one.share(), one.tool().label());
    }
  }

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
  public static String of(
      Collection<Problem> problems,
      Collection<Problem> warnings,
      Collection<MeasureFirst> measureFirst) {
    return JsonText.of(new CheckJson(
        !problems.isEmpty() ? "bad-data" : warnings.isEmpty() ? "sound" : "doubtful",
        problems.stream().map(Remark::of).toList(),
        warnings.stream().map(Remark::of).toList(),
        measureFirst.stream().map(Worth::of).toList()));
  }
}
