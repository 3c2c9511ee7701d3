package pappus.order.choice;

import java.util.List;
import pappus.order.Order;
import pappus.order.choice.Standing.Level;

/**
 * What is looked at level by level, and what may not be given up for it.
 *
 * @param levels first to last
 * @param leastWorst thousandths that the worst share must have
 * @param leastSum millionths that the sum must have
 */
public record Goal(List<Level> levels, long leastWorst, long leastSum) {
  public Goal {
    levels = List.copyOf(levels);
  }

  /** As an order asks for it at first. */
  public static Goal of(Order.Aim aim) {
    return new Goal(
        switch (aim) {
          case WORST -> List.of(Level.WORST, Level.SUM, Level.MONEY, Level.KINDS);
          case TOTAL -> List.of(Level.SUM, Level.WORST, Level.MONEY, Level.KINDS);
          case THRIFT -> List.of(Level.MONEY, Level.WORST, Level.SUM, Level.KINDS);
        },
        0,
        0);
  }

  /**
   * Less money and fewer kinds, for a little of the sum.
   *
   * @param reached what must be kept of the worst share, and nearly of the sum
   * @param giveUp thousandths of the sum that may be lost
   */
  public static Goal thrift(Order.Aim aim, Standing reached, int giveUp) {
    var worst = aim == Order.Aim.WORST ? reached.worst() : 0;
    var sum = (reached.sum() * (1000 - giveUp) + 999) / 1000;
    return new Goal(List.of(Level.MONEY, Level.KINDS, Level.SUM, Level.WORST), worst, sum);
  }

  /** Fewest changes of what was told before, then the least money. */
  public static Goal revision() {
    return new Goal(List.of(Level.CHANGED, Level.MONEY, Level.WORST, Level.SUM), 0, 0);
  }

  /** How much is given up beyond what may be. */
  public long tooLittle(long worst, long sum) {
    return 1000 * Math.max(0, leastWorst - worst) + Math.max(0, leastSum - sum);
  }
}
