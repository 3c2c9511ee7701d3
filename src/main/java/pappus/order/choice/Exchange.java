package pappus.order.choice;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.function.BooleanSupplier;
import pappus.order.choice.Standing.Level;
import pappus.order.column.Column;

/**
 * Gives one learner, or two at once, every other build they may get, as long as something gets better: what is left is the
 * best of all that differ from it in two learners.
 */
public final class Exchange {
  private static final Comparator<Column> LONGEST =
      Comparator.comparingLong(Column::share).reversed().thenComparingInt(Column::number);

  /** Where only money is short, pairs are tried if there are no more than half as many: seconds. */
  private static final long MOST_PAIRS = 4_000_000;

  private final Choice choice;
  private final Goal goal;
  private final BooleanSupplier stopped;
  private final List<List<Column>> sorted;

  /**
   * @param stopped asked now and then whether to keep what there is
   */
  public Exchange(Choice choice, Goal goal, BooleanSupplier stopped) {
    this.choice = choice;
    this.goal = goal;
    this.stopped = stopped;
    this.sorted = choice.columns().stream()
        .map(columns -> columns.stream().sorted(LONGEST).toList())
        .toList();
  }

  /** Improves a choice until no exchange of two does. */
  public List<Column> improve(List<Column> start) {
    var ledger = Ledger.of(choice, start);
    do {
      improveOne(ledger);
    } while (!stopped.getAsBoolean() && mayTryPairs(ledger.standing()) && improveTwo(ledger));
    return ledger.columns();
  }

  /** What cannot be bought has no order of what may help: pairs would all have to be tried. */
  private boolean mayTryPairs(Standing standing) {
    var options =
        choice.learners().stream().mapToLong(group -> sorted.get(group).size()).sum();
    return standing.broken() == 0
        || (standing.broken() < Ledger.PIECE && options * options < MOST_PAIRS);
  }

  private List<Column> options(int learner) {
    return sorted.get(choice.learners().get(learner));
  }

  private void improveOne(Ledger ledger) {
    for (var learner = 0; learner < choice.learners().size(); learner++) {
      var best = ledger.standing();
      var kept = ledger.taken(learner);
      for (var column : options(learner)) {
        ledger.give(learner, column);
        var standing = ledger.standing();
        if (standing.isBetter(best, goal)) {
          best = standing;
          kept = column;
        }
      }
      ledger.give(learner, kept);
    }
  }

  /** Every pair gets its best exchange; whether any helped. */
  private boolean improveTwo(Ledger ledger) {
    var learners = choice.learners().size();
    var better = false;
    var tried = new HashSet<List<Object>>();
    for (var one = 0; one < learners; one++) {
      for (var other = one + 1; other < learners; other++) {
        // Equal learners with equal builds need be tried once.
        if (tried.add(List.of(
                choice.learners().get(one),
                choice.learners().get(other),
                ledger.taken(one),
                ledger.taken(other)))
            && !stopped.getAsBoolean()
            && improve(ledger, one, other)) {
          better = true;
          tried.clear();
        }
      }
    }
    return better;
  }

  private boolean improve(Ledger ledger, int one, int other) {
    var best = ledger.standing();
    var first = ledger.taken(one);
    var second = ledger.taken(other);
    var keptOne = first;
    var keptOther = second;
    ledger.give(one, null);
    ledger.give(other, null);
    var rest = ledger.worstOfOthers(one, other);
    var restSum = best.sum() - first.share() - second.share();
    for (var column : options(one)) {
      ledger.give(one, column);
      for (var with : options(other)) {
        var worst = Math.min(rest, Math.min(column.thousandths(), with.thousandths()));
        var sum = restSum + column.share() + with.share();
        if (!mayBeBetter(worst, sum, best)) {
          // By share: whatever follows has less.
          break;
        }
        ledger.give(other, with);
        var standing = ledger.standing();
        if (standing.isBetter(best, goal)) {
          best = standing;
          keptOne = column;
          keptOther = with;
        }
      }
      ledger.give(other, null);
    }
    ledger.give(one, keptOne);
    ledger.give(other, keptOther);
    return !keptOne.equals(first) || !keptOther.equals(second);
  }

  /** Whether a choice that broke nothing and cost nothing would be better with so much. */
  private boolean mayBeBetter(long worst, long sum, Standing best) {
    if (best.broken() > 0) {
      return true;
    }
    var lacks = goal.tooLittle(worst, sum);
    var lacked = goal.tooLittle(best.worst(), best.sum());
    if (lacks != lacked) {
      return lacks < lacked;
    }
    for (var level : goal.levels()) {
      if (level != Level.WORST && level != Level.SUM) {
        return true;
      }
      var now = level == Level.WORST ? worst : sum;
      if (now != best.of(level)) {
        return now > best.of(level);
      }
    }
    return false;
  }
}
