package pappus.order.choice;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import pappus.order.column.Asker;
import pappus.order.column.Column;
import pappus.search.Enumeration;
import pappus.search.Question;

/** Tries every build for every learner. */
public final class EveryChoice {
  private EveryChoice() {}

  /** Every build there is for a group, met. */
  public static List<Column> builds(Asker asker) {
    var asked = asker.asked();
    Enumeration.feasible(Question.of(asked.catalog(), asked.assessor()))
        .forEach(build -> asker.meet(build.build()));
    return asker.allowed();
  }

  /** How many choices there are. */
  public static double number(Choice choice) {
    return choice.learners().stream()
        .mapToDouble(group -> choice.columns().get(group).size())
        .reduce(1, (one, other) -> one * other);
  }

  /** The best of all choices; null if none can be bought. */
  public static @Nullable Standing best(Choice choice, Goal goal) {
    var best = best(choice, goal, new Ledger(choice), new ArrayList<>(), null);
    return best == null || best.broken() > 0 ? null : best;
  }

  private static @Nullable Standing best(
      Choice choice, Goal goal, Ledger ledger, List<Integer> given, @Nullable Standing before) {
    var learner = given.size();
    if (learner == choice.learners().size()) {
      var now = ledger.standing();
      return before == null || now.isBetter(before, goal) ? now : before;
    }
    var best = before;
    // Equal learners: one of them never gets a build that stands before that of the one before.
    var isLike =
        learner > 0 && choice.learners().get(learner).equals(choice.learners().get(learner - 1));
    var columns = choice.of(learner);
    for (var place = isLike ? given.get(learner - 1) : 0; place < columns.size(); place++) {
      ledger.give(learner, columns.get(place));
      given.add(place);
      best = best(choice, goal, ledger, given, best);
      given.remove(learner);
    }
    ledger.give(learner, null);
    return best;
  }
}
