package pappus.order.column;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pappus.assessment.Assessment;
import pappus.order.AskedGroup;
import pappus.order.OrderInputs;
import pappus.order.SmallOrders;
import pappus.order.plan.Planner;
import pappus.search.Enumeration;
import pappus.search.Question;

/** Builds that are worth most at some prices, against trying every build. */
@Tag("slow")
class OracleTest {
  private static final int ORDERS = 12;

  @TempDir
  private Path folder;

  private static List<Assessment> feasible(AskedGroup group) {
    return Enumeration.feasible(Question.of(group.catalog(), group.assessor()));
  }

  /** Of all but small hardware: of what is equally light the cheapest is taken, and prices may turn that round. */
  private static long[] prices(OrderInputs inputs, Random random) {
    var prices = new long[inputs.wares().all().size()];
    for (var ware : inputs.wares().all()) {
      prices[ware.index()] =
          ware.isSmall() || random.nextInt(3) == 0 ? 0 : random.nextInt(2_000_000);
    }
    return prices;
  }

  @Test
  void areThoseOfTryingEveryBuild() throws IOException {
    var random = new Random(7);
    var compared = 0;
    for (var seed = 0; seed < ORDERS; seed++) {
      var inputs = SmallOrders.random(folder.resolve("o" + seed), seed);
      for (var asker : new Planner(inputs, 100, said -> {}).askers()) {
        var all = feasible(asker.asked());
        if (all.isEmpty() || !asker.hasBuild()) {
          continue;
        }
        var prices = prices(inputs, random);
        var from = all.get(0).objective() / 2;

        var priced = new Oracle(asker, inputs.wares(), Long.MAX_VALUE, 2).ask(prices, from);

        assertThat(priced.isWhole()).isTrue();
        assertThat(best(priced)).isEqualTo(best(all, prices, from, inputs));
        assertThat(priced.least(from).getAsLong())
            .isEqualTo(all.stream()
                .filter(build -> build.objective() >= from)
                .mapToLong(build -> dues(build, prices, inputs))
                .min()
                .getAsLong());
        compared++;
      }
    }
    assertThat(compared).isGreaterThan(5);
  }

  /** In units in which the best of builds are worth about as much as their prices. */
  private static long best(Oracle.Priced priced) {
    return priced.points().stream()
        .mapToLong(point -> point.objective() / 100 - point.dues())
        .max()
        .orElseThrow();
  }

  private static long best(List<Assessment> all, long[] prices, long from, OrderInputs inputs) {
    return all.stream()
        .filter(build -> build.objective() >= from)
        .mapToLong(build -> build.objective() / 100 - dues(build, prices, inputs))
        .max()
        .orElseThrow();
  }

  private static long dues(Assessment build, long[] prices, OrderInputs inputs) {
    return build.cost().lines().stream()
        .mapToLong(line -> line.pieces() * prices[inputs.wares().of(line.part()).index()])
        .sum();
  }
}
