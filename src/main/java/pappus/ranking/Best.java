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

  /** The same, as another question ranks and limits it. */
  Best as(Question question) {
    return new Best(
        build.map(found -> question.held(question.assessor().assess(found.build()))), proof);
  }

  /** The same without its proof. */
  Best unproven() {
    return isProof() ? new Best(build, Proof.of(Ending.EFFORT)) : this;
  }

  /** Whether no other build can be better, or none can be feasible. */
  public boolean isProof() {
    return proof.ending() == Ending.PROVEN;
  }
}
