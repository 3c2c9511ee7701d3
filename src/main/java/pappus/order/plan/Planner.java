package pappus.order.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Consumer;
import java.util.stream.Stream;
import pappus.order.Order;
import pappus.order.OrderInputs;
import pappus.order.choice.Choice;
import pappus.order.choice.Goal;
import pappus.order.choice.InTurn;
import pappus.order.choice.Ledger;
import pappus.order.choice.Standing;
import pappus.order.column.Asker;
import pappus.order.column.Column;
import pappus.order.column.Generator;
import pappus.order.column.Generator.Worth;
import pappus.order.column.Oracle;
import pappus.ranking.Finder;
import pappus.search.Question;

/**
 * Plans an order: the best of each group alone, builds at the shops' prices, a first order in turn; then the worst share that
 * is out of reach, an order, the largest sum with its worst share, the order again, its worst share raised step by step; at
 * the end less money and fewer kinds of parts for a little of the sum.
 *
 * <p>Why: src/site/markdown/decisions.md#one-search-prices-every-order
 */
public final class Planner {
  /** Changes tried for each seed each time that an order is chosen. */
  public static final long MOVES = 50_000;

  /** Builds of a group to choose from: what is worth less at the last prices hardly ever is of use. */
  private static final int MOST_COLUMNS = 140;

  /** Share that the first builds have at least, millionths: far fewer than all. */
  private static final long FIRST = 850_000;

  /** Worst shares at which the program is rounded, one below the other, millionths. */
  private static final long STEP = 15_000;

  private static final int MOST_STEPS = 40;

  /** By so much the worst share is raised at least, millionths. */
  private static final long RAISE = 3_000;

  /** So often it is rounded with more held back, and each time by so many cents at least. */
  private static final int MOST_TRIES = 3;

  private static final long MORE_CENTS = 500;

  private final OrderInputs inputs;
  private final Chooser chooser;
  private final Consumer<String> progress;

  /**
   * @param moves changes tried for each seed each time that an order is chosen
   * @param progress told what is being done
   */
  public Planner(OrderInputs inputs, long moves, Consumer<String> progress) {
    this.inputs = inputs;
    this.chooser = new Chooser(moves, progress);
    this.progress = progress;
  }

  /** Ends the run soon, keeping what it has; may be called from another thread. */
  public void stop() {
    chooser.stop();
  }

  /** Groups with the best that each can get alone; of one without any the build is absent. */
  public List<Asker> askers() {
    var finder = new Finder(Finder.Way.AUTO, Finder.EFFORT, Finder.FEWER_MOVES, progress);
    var askers = new ArrayList<Asker>();
    for (var asked : inputs.groups()) {
      progress.accept("the best of " + asked.name() + " alone");
      var alone = asked.alone();
      var best = finder.best(
          Question.of(alone.supply().catalog(), alone.supply().assessor(alone.scenario())));
      var found = best.build();
      var most = found.map(build -> build.objective()).orElse(0L);
      askers.add(new Asker(
          asked,
          new Asker.Best(
              found,
              best.isProof() ? most : Math.max(most, best.proof().atMost().orElse(most)),
              best.isProof()),
          inputs.wares()));
    }
    return askers;
  }

  /**
   * The plan for groups that each have a build.
   *
   * @param askers from {@link #askers}
   */
  public Plan plan(List<Asker> askers) {
    var threads = Runtime.getRuntime().availableProcessors();
    var oracles = askers.stream()
        .map(asker -> new Oracle(asker, inputs.wares(), Finder.EFFORT, threads))
        .toList();
    var generator = new Generator(inputs, askers, oracles, progress, chooser::isStopped);
    var aim = inputs.order().aimOrWorst();
    var goal = Goal.of(aim);
    var most = generator.begin(FIRST);
    var choice = choice(askers, generator, List.of());
    var now = chooser.exchanged(choice, goal, InTurn.choose(choice));
    var worst = OptionalLong.empty();
    if (aim == Order.Aim.WORST) {
      var tooMuch = generator.tooMuchForAll(known(choice, now), most);
      worst = OptionalLong.of((tooMuch - 1) / 1000);
      now = rounded(askers, generator, goal, now, tooMuch);
      choice = choice(askers, generator, now);
      now = raised(askers, generator, goal, chooser.chosen(choice, goal, now));
      choice = choice(askers, generator, now);
    }
    var sum = OptionalLong.empty();
    if (aim != Order.Aim.THRIFT) {
      var least = aim == Order.Aim.WORST ? known(choice, now) : 0;
      sum = OptionalLong.of((long) Math.floor(generator.mostInAll(least) * Column.WHOLE));
      now = better(goal, rounded(generator, least), now);
      choice = choice(askers, generator, now);
      now = chooser.chosen(choice, goal, now);
      if (aim == Order.Aim.WORST) {
        now = raised(askers, generator, goal, now);
        choice = choice(askers, generator, now);
      }
    }
    var reached = Ledger.of(choice, now).standing();
    if (reached.broken() == 0 && inputs.order().giveUpOrUsual() > 0) {
      now = chooser.chosen(choice, Goal.thrift(aim, reached, inputs.order().giveUpOrUsual()), now);
    }
    var standing = Ledger.of(choice, now).standing();
    var all = Choice.of(inputs, askers.stream().map(Asker::allowed).toList());
    progress.accept(String.format(Locale.ROOT, "done, worst %.1f %%", standing.worst() / 10.0));
    return new Plan(
        inputs,
        askers,
        choice,
        now,
        standing,
        Ledger.of(all, InTurn.choose(all)).standing(),
        new Plan.Bounds(worst, sum, generator.questions()),
        chooser.isStopped()
            ? Optional.<Worth>empty()
            : Optional.of(generator.worth(1000 * standing.worst())));
  }

  /**
   * The program rounded, at ever lower worst shares until an order can be bought. One that is a little too dear is made
   * cheaper first, with no build below that share: money tells how near it is.
   */
  private List<Column> rounded(
      List<Asker> askers, Generator generator, Goal goal, List<Column> now, long tooMuch) {
    var best = now;
    var share = tooMuch - STEP;
    for (var step = 0;
        step < MOST_STEPS && share > 0 && !chooser.isStopped();
        step++, share -= STEP) {
      best = cheaper(askers, generator, goal, rounded(generator, share), best, share);
      if (isBroken(best)) {
        best = cheaper(askers, generator, goal, generator.dive(share, 0, true), best, share);
      }
      if (!isBroken(best)) {
        break;
      }
    }
    return best;
  }

  private List<Column> cheaper(
      List<Asker> askers,
      Generator generator,
      Goal goal,
      List<Column> start,
      List<Column> than,
      long share) {
    if (start.isEmpty()) {
      return than;
    }
    var choice = choice(askers, generator, start, share);
    return better(goal, chooser.exchanged(choice, goal, start), than);
  }

  /**
   * An order whose worst share is raised as long as one can be bought: whoever has less than a little more than the worst gets
   * what costs least of what has as much, and then builds are changed, none below that share, until there is money for all.
   */
  private List<Column> raised(
      List<Asker> askers, Generator generator, Goal goal, List<Column> start) {
    var best = start;
    while (!chooser.isStopped() && !isBroken(best)) {
      var share = 1000 * standing(best).worst() + RAISE;
      var lifted = new ArrayList<Column>();
      for (var column : best) {
        lifted.add(
            column.share() >= share
                ? column
                : askers.get(column.group()).allowed().stream()
                    .filter(other -> other.share() >= share)
                    .min(
                        Comparator.comparingLong(Column::ownCents).thenComparingInt(Column::number))
                    .orElse(column));
      }
      var found = chooser.chosen(choice(askers, generator, lifted, share), goal, lifted);
      if (better(goal, found, best).equals(best)) {
        break;
      }
      best = found;
    }
    return best;
  }

  /** What is bought in whole units costs more than in fractions: so much is held back then. */
  private List<Column> rounded(Generator generator, long share) {
    var heldBack = 0L;
    for (var tries = 0; ; tries++) {
      var columns = generator.dive(share, heldBack, false);
      if (columns.isEmpty() || tries == MOST_TRIES || chooser.isStopped()) {
        return columns;
      }
      var standing = standing(columns);
      if (standing.broken() == 0) {
        return columns;
      }
      heldBack += Math.max(MORE_CENTS, standing.cents() - inputs.budgetCents());
    }
  }

  private List<Column> better(Goal goal, List<Column> one, List<Column> than) {
    if (one.isEmpty()) {
      return than;
    }
    var both = new ArrayList<List<Column>>();
    for (var group : inputs.groups()) {
      both.add(Stream.concat(one.stream(), than.stream())
          .filter(column -> column.group() == group.index())
          .distinct()
          .toList());
    }
    return Chooser.better(Choice.of(inputs, both), goal, one, than);
  }

  /** What there is to choose from: what is of use by the last prices, and what is chosen now. */
  private Choice choice(List<Asker> askers, Generator generator, List<Column> now) {
    // What cannot be bought says nothing of what the worst need not get.
    var least = now.isEmpty() || isBroken(now)
        ? 0
        : now.stream().mapToLong(Column::share).min().orElse(0);
    return choice(askers, generator, now, least);
  }

  private Choice choice(List<Asker> askers, Generator generator, List<Column> now, long least) {
    var columns = new ArrayList<List<Column>>();
    for (var asker : askers) {
      var useful = new LinkedHashSet<>(generator.useful(asker, least, MOST_COLUMNS));
      now.stream().filter(column -> column.group() == asker.asked().index()).forEach(useful::add);
      columns.add(List.copyOf(useful));
    }
    return Choice.of(inputs, columns);
  }

  private boolean isBroken(List<Column> now) {
    return standing(now).broken() > 0;
  }

  private Standing standing(List<Column> now) {
    var its = new ArrayList<List<Column>>();
    for (var group : inputs.groups()) {
      its.add(now.stream()
          .filter(column -> column.group() == group.index())
          .distinct()
          .toList());
    }
    return Ledger.of(Choice.of(inputs, its), now).standing();
  }

  /** Worst share of a choice that can be bought, millionths; 0 of another. */
  private static long known(Choice choice, List<Column> columns) {
    var standing = Ledger.of(choice, columns).standing();
    return standing.broken() == 0 ? 1000 * standing.worst() : 0;
  }
}
