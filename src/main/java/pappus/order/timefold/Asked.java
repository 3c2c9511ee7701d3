package pappus.order.timefold;

import java.util.Map;
import pappus.order.Ware;
import pappus.order.choice.Choice;
import pappus.order.choice.Goal;

/**
 * What holds for all learners together.
 *
 * @param goal what may not be given up
 */
record Asked(Choice choice, Goal goal) {
  /** All that is paid for pieces of wares. */
  long cents(Map<Ware, Integer> pieces) {
    var units = new int[choice.inputs().wares().all().size()];
    pieces.forEach((ware, count) -> units[ware.index()] = ware.unitsFor(count));
    var extra = 0L;
    for (var learner : choice.learners()) {
      extra += choice.columns().get(learner).get(0).extraCents();
    }
    return extra + choice.inputs().till().cents(units);
  }

  /** Cents that are paid beyond the budget. */
  long beyond(Map<Ware, Integer> pieces) {
    return Math.max(0, cents(pieces) - choice.inputs().budgetCents());
  }

  /**
   * A rule of sameness.
   *
   * @param number in the order
   */
  record Rule(int number, int most, boolean isWithinGroups) {
    /** Those who are compared with a learner: all together, or each group by itself. */
    int among(Learner learner) {
      return isWithinGroups ? learner.option().column().group() : -1;
    }
  }
}
