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
 * @param proof how far the search came
 */
public record Best(Optional<Assessment> build, Proof proof) {
  static Best of(Question question, Incumbents incumbents, Proof proof) {
    return new Best(incumbents.bestFirst().stream().findFirst().map(question::held), proof);
  }

  /** Whether no other build can be better, or none can be feasible. */
  public boolean isProof() {
    return proof.ending() == Ending.PROVEN;
  }
}
