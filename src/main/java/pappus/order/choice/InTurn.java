package pappus.order.choice;

import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import pappus.order.column.Column;

/**
 * Learner by learner, in the order of the groups: each takes the longest flight that stock, shelf and the money for all so
 * far leave. What a club gets without looking at all at once, and where a better choice begins.
 */
public final class InTurn {
  private static final Comparator<Column> LONGEST =
      Comparator.comparingLong(Column::share).reversed().thenComparingInt(Column::number);

  private InTurn() {}

  /**
   * Everybody's builds.
   *
   * @return with the least that is broken for whom nothing is left
   */
  public static List<Column> choose(Choice choice) {
    var ledger = new Ledger(choice);
    var learners = choice.learners().size();
    for (var learner = 0; learner < learners; learner++) {
      var allowed = choice.inputs().budgetCents() * (learner + 1) / learners;
      ledger.give(learner, next(choice, ledger, learner, allowed));
    }
    return ledger.columns();
  }

  private static Column next(Choice choice, Ledger ledger, int learner, long allowed) {
    @Nullable Column least = null;
    var leastBroken = Long.MAX_VALUE;
    for (var column : choice.of(learner).stream().sorted(LONGEST).toList()) {
      ledger.give(learner, column);
      var broken = ledger.broken() + Math.max(0, ledger.cents() - allowed);
      if (broken == 0) {
        return column;
      }
      if (broken < leastBroken) {
        leastBroken = broken;
        least = column;
      }
    }
    if (least == null) {
      throw new IllegalStateException("Every group has a build.");
    }
    return least;
  }
}
