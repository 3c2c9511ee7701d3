package pappus.ranking;

import java.util.List;
import java.util.Optional;
import pappus.assessment.Assessment;
import pappus.search.Coverage;

/**
 * The answer to a question.
 *
 * @param candidates best first; empty if nothing feasible was found
 * @param closest where nothing is feasible, the build with the least shortfall
 * @param coverage how much was looked at
 */
public record Ranking(List<Candidate> candidates, Optional<Assessment> closest, Coverage coverage) {
  public Ranking {
    candidates = List.copyOf(candidates);
  }
}
