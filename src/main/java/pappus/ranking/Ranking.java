package pappus.ranking;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pappus.assessment.Assessment;
import pappus.search.Coverage;
import pappus.search.Question;

/**
 * The answer to a question.
 *
 * @param candidates best first; empty if nothing feasible was found
 * @param closest where nothing is feasible, the build with the least shortfall
 * @param coverage how much was looked at
 * @param picks builds to choose among
 */
public record Ranking(
    List<Candidate> candidates, Optional<Assessment> closest, Coverage coverage, Picks picks) {
  public Ranking {
    candidates = List.copyOf(candidates);
  }

  /** Every build in it. */
  List<Assessment> met() {
    return candidates.stream()
        .flatMap(row -> Stream.concat(Stream.of(row.assessment()), row.variants().stream()))
        .toList();
  }

  /** The same builds in the same order, as another question limits them. */
  Ranking as(Question question) {
    return new Ranking(
        candidates.stream().map(row -> row.as(question)).toList(), closest, coverage, picks);
  }

  /** The same with builds to choose among. */
  public Ranking with(Picks other) {
    return new Ranking(candidates, closest, coverage, other);
  }
}
