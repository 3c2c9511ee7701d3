package pappus.order.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Consumer;
import pappus.order.Delivery;
import pappus.order.choice.Choice;
import pappus.order.choice.Goal;
import pappus.order.choice.InTurn;
import pappus.order.choice.Ledger;
import pappus.order.column.Asker;
import pappus.order.column.Renewal;
import pappus.ranking.Finder;

/**
 * Plans an order anew of which some came: what came stays and costs nothing more; as few learners as can be get other main
 * parts than were ordered for them, then as little money as can be is paid.
 *
 * <p>Why: src/site/markdown/decisions.md#what-came-is-on-the-shelf
 */
public final class Reviser {
  /** Builds of a bag to choose from beside those that keep its main parts. */
  private static final int MOST_COLUMNS = 100;

  private final Delivery delivery;
  private final Chooser chooser;
  private final Consumer<String> progress;
  private final Planner before;

  /**
   * @param moves changes tried for each seed when the order is chosen
   * @param progress told what is being done
   */
  public Reviser(Delivery delivery, long moves, Consumer<String> progress) {
    this.delivery = delivery;
    this.progress = progress;
    this.chooser = new Chooser(moves, progress);
    this.before = new Planner(delivery.before(), moves, progress);
  }

  /** Ends the run soon, keeping what it has; may be called from another thread. */
  public void stop() {
    chooser.stop();
  }

  /** Groups by what there is now; shares are of the best that each could get alone when all was ordered. */
  public List<Asker> askers() {
    var askers = new ArrayList<Asker>();
    for (var asker : before.askers()) {
      var group = delivery.now().groups().get(askers.size());
      askers.add(new Asker(group, asker.best(), delivery.now().wares()));
    }
    return askers;
  }

  /** The renewal of an order, its builds met; of a bag that nothing serves there is none. */
  public Renewal renewal(List<Asker> askers) {
    var renewal = new Renewal(
        delivery,
        askers,
        Finder.EFFORT,
        Runtime.getRuntime().availableProcessors(),
        progress,
        chooser::isStopped);
    renewal.begin();
    return renewal;
  }

  /**
   * The order as it is now.
   *
   * @param askers from {@link #askers}
   * @param renewal of them, with a build for each bag
   */
  public Revision revise(List<Asker> askers, Renewal renewal) {
    renewal.bound();
    var rounded = renewal.dive();
    var choice = Choice.of(
        renewal.inputs(), renewal.useful(MOST_COLUMNS, rounded), column -> !renewal.keeps(column));
    var goal = Goal.revision();
    var ordered = chooser.exchanged(choice, goal, renewal.asOrdered());
    var start = Chooser.better(choice, goal, chooser.exchanged(choice, goal, rounded), ordered);
    var columns = chooser.chosen(choice, goal, start);
    var learners = new ArrayList<Revision.Kept>();
    for (var i = 0; i < columns.size(); i++) {
      var bag = delivery.bags().get(choice.learners().get(i));
      learners.add(new Revision.Kept(
          bag, askers.get(bag.group()).meet(columns.get(i).build()).orElseThrow()));
    }
    return new Revision(
        delivery,
        plan(askers, learners, renewal.questions()),
        learners,
        renewal.inputs().learners() - renewal.mostKept(),
        renewal.leastCents(Ledger.of(choice, columns).standing().changed()));
  }

  private Plan plan(List<Asker> askers, List<Revision.Kept> learners, int questions) {
    var inputs = delivery.now();
    var choice = Choice.of(inputs, askers.stream().map(Asker::met).toList());
    var columns = learners.stream().map(Revision.Kept::column).toList();
    return new Plan(
        inputs,
        askers,
        choice,
        columns,
        Ledger.of(choice, columns).standing(),
        Ledger.of(choice, InTurn.choose(choice)).standing(),
        new Plan.Bounds(OptionalLong.empty(), OptionalLong.empty(), questions),
        Optional.empty());
  }
}
