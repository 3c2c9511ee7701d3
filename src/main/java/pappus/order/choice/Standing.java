package pappus.order.choice;

/**
 * How good a choice is: what it breaks, and what is looked at level by level.
 *
 * @param broken pieces short, cents beyond the budget and kinds too many; 0 where the order can be bought
 * @param worst least share of any learner, whole thousandths
 * @param sum of shares, millionths
 * @param cents all that is paid
 * @param kinds of parts, but for small hardware
 * @param changed learners who do not get what was told before; 0 where nothing was
 */
public record Standing(long broken, long worst, long sum, long cents, int kinds, int changed) {
  /** A level by which choices are told apart. */
  public enum Level {
    WORST,
    SUM,
    MONEY,
    KINDS,
    CHANGED
  }

  /** The larger, the better. */
  public long of(Level level) {
    return switch (level) {
      case WORST -> worst;
      case SUM -> sum;
      case MONEY -> -cents;
      case KINDS -> -kinds;
      case CHANGED -> -changed;
    };
  }

  /** Whether it is better than another, by what both break and then by a goal. */
  public boolean isBetter(Standing other, Goal goal) {
    if (broken != other.broken) {
      return broken < other.broken;
    }
    var lacks = goal.tooLittle(worst, sum);
    var lacked = goal.tooLittle(other.worst, other.sum);
    if (lacks != lacked) {
      return lacks < lacked;
    }
    for (var level : goal.levels()) {
      if (of(level) != other.of(level)) {
        return of(level) > other.of(level);
      }
    }
    return false;
  }
}
