package pappus.order.timefold;

import ai.timefold.solver.core.api.score.director.ScoreDirector;
import ai.timefold.solver.core.impl.heuristic.move.AbstractMove;
import java.util.List;

/** Gives some learners other builds. */
final class GiveMove extends AbstractMove<Draft> {
  private final List<Give> gives;

  /** One of them. */
  record Give(int learner, Option option) {}

  GiveMove(List<Give> gives) {
    this.gives = List.copyOf(gives);
  }

  @Override
  public boolean isMoveDoable(ScoreDirector<Draft> director) {
    var learners = director.getWorkingSolution().learners();
    return gives.stream().anyMatch(give -> learners.get(give.learner).option() != give.option);
  }

  @Override
  protected void doMoveOnGenuineVariables(ScoreDirector<Draft> director) {
    var learners = director.getWorkingSolution().learners();
    for (var give : gives) {
      var learner = learners.get(give.learner);
      director.beforeVariableChanged(learner, Learner.OPTION);
      learner.take(give.option);
      director.afterVariableChanged(learner, Learner.OPTION);
    }
  }

  @Override
  public GiveMove rebase(ScoreDirector<Draft> director) {
    // Learners are named by their place and options are facts: they are the same in every copy.
    return this;
  }

  @Override
  public String toString() {
    return gives.toString();
  }
}
