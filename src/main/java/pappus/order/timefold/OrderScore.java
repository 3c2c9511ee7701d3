package pappus.order.timefold;

import ai.timefold.solver.core.api.score.buildin.bendablelong.BendableLongScore;
import ai.timefold.solver.core.api.score.calculator.IncrementalScoreCalculator;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import pappus.order.choice.Goal;
import pappus.order.choice.Ledger;
import pappus.order.choice.Standing;

/**
 * Lets the solver keep the books that all else of an order goes by: hard is what is broken, then what is given up beyond
 * what may be; soft are the levels of the goal. Public because the solver makes it by reflection.
 *
 * <p>Why: src/site/markdown/decisions.md#the-chooser-of-an-order-keeps-its-books-itself
 */
public final class OrderScore implements IncrementalScoreCalculator<Draft, BendableLongScore> {
  /** Levels of what must be kept. */
  static final int HARD = 2;

  /** Levels of what makes it good. */
  static final int SOFT = 4;

  private @Nullable Ledger ledger;
  private @Nullable Goal goal;

  @Override
  public void resetWorkingSolution(Draft draft) {
    var fresh = new Ledger(draft.asked().choice());
    draft
        .learners()
        .forEach(learner -> fresh.give(learner.id(), learner.option().column()));
    ledger = fresh;
    goal = draft.asked().goal();
  }

  @Override
  public void beforeVariableChanged(Object entity, String variable) {
    // The books know what was there.
  }

  @Override
  public void afterVariableChanged(Object entity, String variable) {
    var learner = (Learner) entity;
    Objects.requireNonNull(ledger).give(learner.id(), learner.option().column());
  }

  @Override
  public void beforeEntityAdded(Object entity) {
    throw new UnsupportedOperationException("Learners do not come.");
  }

  @Override
  public void afterEntityAdded(Object entity) {
    throw new UnsupportedOperationException("Learners do not come.");
  }

  @Override
  public void beforeEntityRemoved(Object entity) {
    throw new UnsupportedOperationException("Learners do not go.");
  }

  @Override
  public void afterEntityRemoved(Object entity) {
    throw new UnsupportedOperationException("Learners do not go.");
  }

  @Override
  public BendableLongScore calculateScore() {
    return score(Objects.requireNonNull(ledger).standing(), Objects.requireNonNull(goal));
  }

  /** How good a choice is, as a score. */
  static BendableLongScore score(Standing standing, Goal goal) {
    var soft = new long[SOFT];
    for (var level = 0; level < SOFT; level++) {
      soft[level] = standing.of(goal.levels().get(level));
    }
    return BendableLongScore.of(
        new long[] {-standing.broken(), -goal.tooLittle(standing.worst(), standing.sum())}, soft);
  }
}
