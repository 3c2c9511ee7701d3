package pappus.order.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pappus.order.Order;
import pappus.order.OrderInputs;
import pappus.order.SmallOrders;
import pappus.order.choice.Choice;
import pappus.order.choice.Goal;
import pappus.order.choice.Ledger;
import pappus.order.choice.Standing;
import pappus.order.column.Asker;
import pappus.order.column.Column;
import pappus.search.Enumeration;
import pappus.search.Question;

/** Small orders against trying every build for every learner. */
@Tag("slow")
class SmallOrdersTest {
  private static final int ORDERS = 12;

  /** Orders of more than so many choices are not tried: seconds each. */
  private static final double MOST_CHOICES = 400_000;

  @TempDir
  private Path folder;

  /** The best of all choices; null if none can be bought. */
  private static @Nullable Standing best(Choice choice, Goal goal) {
    var best = best(choice, goal, new Ledger(choice), 0, null);
    return best == null || best.broken() > 0 ? null : best;
  }

  private static @Nullable Standing best(
      Choice choice, Goal goal, Ledger ledger, int learner, @Nullable Standing before) {
    if (learner == choice.learners().size()) {
      var now = ledger.standing();
      return before == null || now.isBetter(before, goal) ? now : before;
    }
    var best = before;
    for (var column : choice.of(learner)) {
      ledger.give(learner, column);
      best = best(choice, goal, ledger, learner + 1, best);
    }
    ledger.give(learner, null);
    return best;
  }

  /** Every build there is, met. */
  private static Choice everything(OrderInputs inputs, List<Asker> askers) {
    var columns = new ArrayList<List<Column>>();
    for (var asker : askers) {
      var asked = asker.asked();
      Enumeration.feasible(Question.of(asked.catalog(), asked.assessor()))
          .forEach(build -> asker.meet(build.build()));
      columns.add(asker.allowed());
    }
    return Choice.of(inputs, columns);
  }

  private static double choices(Choice choice) {
    return choice.learners().stream()
        .mapToDouble(group -> choice.columns().get(group).size())
        .reduce(1, (one, other) -> one * other);
  }

  @Test
  void boundsHoldAndMostOrdersAreTheBest() throws IOException {
    var tried = 0;
    var best = 0;
    for (var seed = 0; tried < ORDERS; seed++) {
      var inputs = SmallOrders.random(folder.resolve("o" + seed), seed);
      var planner = new Planner(inputs, 2_000, said -> {});
      var askers = planner.askers();
      if (!askers.stream().allMatch(Asker::hasBuild)) {
        continue;
      }
      var plan = planner.plan(askers);
      var all = everything(inputs, askers);
      if (choices(all) > MOST_CHOICES) {
        continue;
      }
      tried++;
      var goal = Goal.of(inputs.order().aimOrWorst());
      var truly = best(all, goal);
      if (truly == null) {
        assertThat(plan.isFeasible()).as("order %s", seed).isFalse();
        best++;
        continue;
      }
      best += isAsGood(plan.standing(), truly) ? 1 : 0;
      if (inputs.order().aimOrWorst() == Order.Aim.WORST) {
        assertThat(plan.bounds().worst().getAsLong())
            .as("order %s", seed)
            .isGreaterThanOrEqualTo(truly.worst());
      }
      if (plan.standing().worst() <= truly.worst()
          || inputs.order().aimOrWorst() == Order.Aim.TOTAL) {
        assertThat(plan.bounds().sum().getAsLong())
            .as("order %s", seed)
            .isGreaterThanOrEqualTo(truly.sum());
      }
      if (plan.isFeasible()) {
        assertThat(plan.standing().isBetter(truly, goal)).as("order %s", seed).isFalse();
      }
    }
    // What is not the best is told as unproven: the bounds above hold.
    assertThat(best).isGreaterThanOrEqualTo(ORDERS * 9 / 10);
  }

  private static boolean isAsGood(Standing one, Standing other) {
    return one.broken() == 0 && one.worst() == other.worst() && one.sum() == other.sum();
  }
}
