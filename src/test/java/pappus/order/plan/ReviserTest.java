package pappus.order.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Random;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pappus.catalog.CatalogFolder;
import pappus.order.Delivery;
import pappus.order.Earlier;
import pappus.order.OrderReader;
import pappus.order.SmallOrders;
import pappus.order.choice.Choice;
import pappus.order.choice.EveryChoice;
import pappus.order.choice.Goal;
import pappus.order.column.Asker;
import pappus.order.column.Column;
import pappus.search.Enumeration;
import pappus.search.Question;

/** Small orders of which some came, against trying every build for every learner. */
@Tag("slow")
class ReviserTest {
  private static final int ORDERS = 16;
  private static final double MOST_CHOICES = 400_000;

  @TempDir
  private Path folder;

  /** Builds drawn for everybody, of which some parts came and some can be had no more. */
  private @Nullable Delivery delivery(Path of, int seed) throws IOException {
    var inputs = SmallOrders.random(of, seed);
    var random = new Random(seed);
    var bags = new ArrayList<Earlier.Bag>();
    var bought = new TreeMap<String, Integer>();
    for (var group : inputs.groups()) {
      var feasible = Enumeration.feasible(Question.of(group.catalog(), group.assessor()));
      if (feasible.isEmpty()) {
        return null;
      }
      for (var learner = 0; learner < group.pieces(); learner++) {
        var build = feasible.get(random.nextInt(feasible.size())).build();
        var roles = new LinkedHashMap<String, String>();
        build.parts().forEach((role, part) -> {
          roles.put(role.key(), part.id());
          bought.merge(part.id(), role.pieces(), Integer::sum);
        });
        bags.add(new Earlier.Bag(group.name(), group.name() + "-" + learner, 1, roles));
      }
    }
    var came = new StringBuilder("id,pieces,name\n");
    var now = new StringBuilder("id,stock\n");
    bought.forEach((id, pieces) -> {
      if (random.nextInt(4) > 0) {
        came.append(id).append(',').append(pieces).append(",any\n");
      }
    });
    Files.readAllLines(of.resolve("stock.csv")).stream()
        .skip(1)
        .filter(line -> random.nextInt(3) > 0)
        .forEach(line -> now.append(line).append('\n'));
    Files.writeString(of.resolve("came.csv"), came);
    Files.writeString(of.resolve("now.csv"), now);
    return OrderReader.delivered(
        of.resolve("order.json"),
        List.of(CatalogFolder.of(of.resolve("parts"))),
        new Earlier(
            bags,
            bought.entrySet().stream()
                .map(one -> new Earlier.Bought(one.getKey(), one.getValue(), 100))
                .toList(),
            0),
        "told.json",
        List.of(of.resolve("came.csv")),
        List.of(of.resolve("now.csv").toString()));
  }

  /** Every build there is for each bag. */
  private static Choice everything(Delivery delivery, List<Asker> askers) {
    var inputs = delivery.byBag();
    var columns = new ArrayList<List<Column>>();
    for (var bag : delivery.bags()) {
      columns.add(EveryChoice.builds(new Asker(
          inputs.groups().get(columns.size()), askers.get(bag.group()).best(), inputs.wares())));
    }
    return Choice.of(
        inputs, columns, column -> !delivery.bags().get(column.group()).isKeptBy(column.build()));
  }

  @Test
  void boundsHoldAndMostRevisionsAreTheBest() throws IOException {
    var tried = 0;
    var best = 0;
    var changed = 0;
    for (var seed = 0; tried < ORDERS; seed++) {
      var delivery = delivery(folder.resolve("o" + seed), seed);
      if (delivery == null) {
        continue;
      }
      var reviser = new Reviser(delivery, 2_000, said -> {});
      var askers = reviser.askers();
      var all = everything(delivery, askers);
      var renewal = reviser.renewal(askers);
      if (all.columns().stream().anyMatch(List::isEmpty)) {
        assertThat(renewal.unserved()).as("order %s", seed).isNotEmpty();
        continue;
      }
      if (EveryChoice.number(all) > MOST_CHOICES) {
        continue;
      }
      var revision = reviser.revise(askers, renewal);
      var goal = Goal.revision();
      var truly = EveryChoice.best(all, goal);
      if (truly == null) {
        assertThat(revision.plan().isFeasible()).as("order %s", seed).isFalse();
        continue;
      }
      tried++;
      assertThat(revision.changedAtLeast())
          .as("order %s", seed)
          .isLessThanOrEqualTo(truly.changed());
      if (!revision.plan().isFeasible()) {
        continue;
      }
      var standing = revision.plan().standing();
      assertThat(revision.changed()).as("order %s", seed).isGreaterThanOrEqualTo(truly.changed());
      if (revision.changed() == truly.changed()) {
        assertThat(standing.cents()).as("order %s", seed).isGreaterThanOrEqualTo(truly.cents());
        assertThat(revision.centsAtLeast()).as("order %s", seed).isLessThanOrEqualTo(truly.cents());
        best += standing.cents() == truly.cents() ? 1 : 0;
      }
      changed += truly.changed();
    }
    // What is not the best is told as unproven: the bounds above hold.
    assertThat(best).isGreaterThanOrEqualTo(ORDERS * 9 / 10);
    assertThat(changed).isPositive();
  }
}
