package pappus.order.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pappus.order.Order;
import pappus.order.OrderInputs;
import pappus.order.SmallOrders;
import pappus.order.choice.Choice;
import pappus.order.choice.EveryChoice;
import pappus.order.choice.Goal;
import pappus.order.choice.Standing;
import pappus.order.column.Asker;

/** Small orders against trying every build for every learner. */
@Tag("slow")
class SmallOrdersTest {
  private static final int ORDERS = 100;

  /** Orders of more than so many choices are not tried: seconds each. */
  private static final double MOST_CHOICES = 400_000;

  @TempDir
  private Path folder;

  /** Every build there is, met by others than who plan. */
  private static Choice everything(OrderInputs inputs, List<Asker> askers) {
    return Choice.of(
        inputs,
        askers.stream()
            .map(asker -> new Asker(asker.asked(), asker.best(), inputs.wares()))
            .map(EveryChoice::builds)
            .toList());
  }

  @Test
  void boundsHoldAndMostOrdersAreTheBest() throws IOException {
    var tried = 0;
    var best = 0;
    for (var seed = 0; tried < ORDERS; seed++) {
      var inputs = SmallOrders.random(folder.resolve("o" + seed), seed);
      var planner = new Planner(inputs, 500, said -> {});
      var askers = planner.askers();
      if (!askers.stream().allMatch(Asker::hasBuild)) {
        continue;
      }
      var all = everything(inputs, askers);
      if (EveryChoice.number(all) > MOST_CHOICES) {
        continue;
      }
      var plan = planner.plan(askers);
      tried++;
      var goal = Goal.of(inputs.order().aimOrWorst());
      var truly = EveryChoice.best(all, goal);
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
    assertThat(best).isGreaterThanOrEqualTo(ORDERS * 95 / 100);
  }

  /** With as much as wanted of everything the bound is as near as whole selling units let it be. */
  @Test
  void ampleStockLeavesNextToNoGap() {
    var inputs = SmallOrders.read(folder, """
        {"name": "fens", "budget": 1900, "giveUp": 0,
         "groups": [{"name": "one", "scenario": "marsh.json", "pieces": 4},
                    {"name": "two", "scenario": "fen.json", "pieces": 3}],
         "spares": [{"role": "motor", "pieces": 1}, {"role": "propeller", "units": 2}]}""");
    var planner = new Planner(inputs, 2_000, said -> {});
    var plan = planner.plan(planner.askers());

    var standing = plan.standing();
    assertThat(standing.broken()).isZero();
    assertThat(plan.bounds().worst().getAsLong() - standing.worst()).isLessThanOrEqualTo(3);
    assertThat(plan.bounds().sum().getAsLong())
        .isBetween(standing.sum(), standing.sum() * 1003 / 1000);
  }

  private static boolean isAsGood(Standing one, Standing other) {
    return one.broken() == 0 && one.worst() == other.worst() && one.sum() == other.sum();
  }
}
