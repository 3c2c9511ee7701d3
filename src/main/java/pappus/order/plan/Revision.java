package pappus.order.plan;

import java.util.List;
import pappus.order.Delivery;
import pappus.order.column.Column;

/**
 * An order that was told before, some of which came, as it is now.
 *
 * @param plan what is to be bought still, and who gets what
 * @param learners one by one, in the order of the earlier bags
 * @param changedAtLeast learners who cannot keep their main parts, whatever is ordered: proven
 * @param centsAtLeast what any order costs that changes as few: proven
 */
public record Revision(
    Delivery delivery, Plan plan, List<Kept> learners, int changedAtLeast, long centsAtLeast) {
  public Revision {
    learners = List.copyOf(learners);
  }

  /**
   * What a learner was to get and gets.
   *
   * @param column of the plan
   */
  public record Kept(Delivery.Bag bag, Column column) {
    /** Whether all main parts are as they were ordered. */
    public boolean keepsMain() {
      return bag.isKeptBy(column.build());
    }
  }

  /** Learners whose main parts are others. */
  public int changed() {
    return (int) learners.stream().filter(learner -> !learner.keepsMain()).count();
  }
}
