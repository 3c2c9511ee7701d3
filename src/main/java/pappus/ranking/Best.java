package pappus.ranking;

import java.util.Optional;
import pappus.assessment.Assessment;
import pappus.search.Ending;
import pappus.search.Incumbents;
import pappus.search.Proof;
import pappus.search.Question;

/**
 * The best build of a question.
 *
 * @param build absent if none is feasible, or none was found
 * @param reach how far the search came
 */
public record Best(Optional<Assessment> build, Proof reach) {
  static Best of(Question question, Incumbents pool, Proof reach) {
    return new Best(pool.bestFirst().stream().findFirst().map(question::held), reach);
  }

  /** Whether no other build can be better, or none can be feasible. */
  public boolean isProof() {
    return reach.ending() == Ending.PROVEN;
  }
}
