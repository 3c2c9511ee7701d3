package pappus.order.column;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import pappus.order.Delivery;
import pappus.order.Earlier;
import pappus.order.OrderInputs;
import pappus.order.column.Oracle.Priced;

/**
 * Finds builds for an order of which some came, and proves how many learners can keep their main parts at most and what the
 * rest costs at least: by the program and the prices of {@link Generator}, where a build is worth something if it keeps the
 * main parts that its learner was to get, and so is money that is left.
 *
 * <p>Why: src/site/markdown/decisions.md#what-came-is-on-the-shelf
 */
public final class Renewal {
  private static final int MOST_ROUNDS = 8;

  /** Above whatever two that keep their builds are worth: all are served. */
  private static final double SERVED = 4;

  /** Prices move so far towards those of the last program. */
  private static final double STEP = 0.6;

  /** Bound and program are near enough. */
  private static final double NEAR = 1e-4;

  /** Sums of some thousand products are as near as this. */
  private static final double ROUNDING = 1e-9;

  private final OrderInputs inputs;
  private final List<Delivery.Bag> bags;
  private final List<Asker> groups;
  private final List<Asker> askers = new ArrayList<>();
  private final List<Oracle> any;
  private final List<Optional<Oracle>> keeping = new ArrayList<>();
  private final Charges charges;
  private final Consumer<String> progress;
  private final BooleanSupplier stopped;
  private @Nullable Prices last;
  private int questions;
  private int mostKept;
  private double mostWorth;

  /**
   * @param groups askers of the order's groups; whatever is found is met by them
   * @param effort nodes that each search branches at most
   * @param threads that share the work; no answer depends on it
   * @param progress told what is being done
   * @param stopped asked whether to end soon
   */
  public Renewal(
      Delivery delivery,
      List<Asker> groups,
      long effort,
      int threads,
      Consumer<String> progress,
      BooleanSupplier stopped) {
    this.inputs = delivery.byBag();
    this.bags = delivery.bags();
    this.groups = List.copyOf(groups);
    this.charges = new Charges(inputs);
    this.progress = progress;
    this.stopped = stopped;
    var wares = inputs.wares();
    this.any =
        groups.stream().map(group -> new Oracle(group, wares, effort, threads)).toList();
    for (var bag : bags) {
      var of = groups.get(bag.group());
      var asker = new Asker(inputs.groups().get(askers.size()), of.best(), wares);
      askers.add(asker);
      asker.meet(bag.build());
      keeping.add(
          canBeHad(bag, asker)
              ? Optional.of(Oracle.keeping(bag.build(), asker, wares, effort, threads))
              : Optional.empty());
    }
  }

  private static boolean canBeHad(Delivery.Bag bag, Asker asker) {
    return bag.build().parts().entrySet().stream()
        .filter(one -> Earlier.MAIN.contains(one.getKey()))
        .map(one -> one.getValue().id())
        .allMatch(id -> asker.asked().catalog().part(id).isPresent());
  }

  /** The order with a group for each bag. */
  public OrderInputs inputs() {
    return inputs;
  }

  /** Questions to the exact search so far. */
  public int questions() {
    return questions;
  }

  /** Whether a build of a bag keeps the main parts that were to be in it. */
  public boolean keeps(Column column) {
    return bags.get(column.group()).isKeptBy(column.build());
  }

  /** Meets builds at the shops' prices, where what is there costs nothing. */
  public void begin() {
    progress.accept("pricing what is left to buy");
    var prices = Oracle.ofUnits(inputs.wares().all());
    for (var ware : inputs.wares().all()) {
      if (ware.leftover() > 0) {
        prices[ware.index()] = 0;
      }
    }
    questions += groups.size() + askers.size();
    IntStream.range(0, groups.size()).parallel().forEach(g -> ask(g, prices));
    keeping.forEach(one -> one.ifPresent(oracle -> oracle.ask(prices, 0)));
    share();
  }

  private Priced ask(int group, long[] prices) {
    return any.get(group).ask(prices, Levels.objective(groups.get(group), 0));
  }

  /** What is found for a group is there for each of its bags. */
  private void share() {
    for (var bag = 0; bag < bags.size(); bag++) {
      var asker = askers.get(bag);
      var group = groups.get(bags.get(bag).group());
      group.allowed().forEach(column -> asker.meet(column.build()));
    }
  }

  /** Builds that a learner of each bag may get: those that keep its main parts, and those that the group allows. */
  private List<List<Column>> columns() {
    var columns = new ArrayList<List<Column>>();
    for (var bag = 0; bag < bags.size(); bag++) {
      var allowed = new LinkedHashSet<String>();
      groups.get(bags.get(bag).group()).allowed().forEach(column -> allowed.add(column.toString()));
      columns.add(askers.get(bag).met().stream()
          .filter(column -> keeps(column) || allowed.contains(column.toString()))
          .toList());
    }
    return columns;
  }

  /**
   * Builds of use: those that keep main parts, and of others those that cost least at the last prices.
   *
   * @param most so many of these at most
   * @param also builds that are of use in any case
   */
  public List<List<Column>> useful(int most, List<Column> also) {
    var useful = new ArrayList<List<Column>>();
    for (var columns : columns()) {
      var now = last;
      var prices = now == null || columns.isEmpty()
          ? Oracle.ofUnits(inputs.wares().all())
          : now.of(columns.get(0).group(), inputs);
      var kept = new LinkedHashSet<>(columns.stream().filter(this::keeps).toList());
      columns.stream()
          .filter(column -> !kept.contains(column))
          .sorted(Comparator.comparingDouble((Column column) -> Generator.dues(column, prices))
              .thenComparingInt(Column::number))
          .limit(most)
          .forEach(kept::add);
      also.stream().filter(columns::contains).forEach(kept::add);
      useful.add(List.copyOf(kept));
    }
    return useful;
  }

  /** An order that is near to the program: everybody's builds by bag; none at all where a bag has none to take. */
  public List<Column> dive() {
    return new Dive(inputs, charges, askers, columns(), stopped).given(0, this::gain, 1);
  }

  private double gain(Column column) {
    return SERVED + (keeps(column) ? 1 : 0);
  }

  /** What everybody was to get, as far as that can be had; else a build that is found for the bag. */
  public List<Column> asOrdered() {
    var ordered = new ArrayList<Column>();
    for (var columns : columns()) {
      var one = columns.stream().filter(this::keeps).findFirst().orElse(columns.get(0));
      for (var i = 0; i < bags.get(one.group()).learners(); i++) {
        ordered.add(one);
      }
    }
    return ordered;
  }

  /** Groups of bags for which there is no build. */
  public List<Asker> unserved() {
    var unserved = new LinkedHashSet<Asker>();
    for (var bag = 0; bag < bags.size(); bag++) {
      if (columns().get(bag).isEmpty()) {
        unserved.add(groups.get(bags.get(bag).group()));
      }
    }
    return List.copyOf(unserved);
  }

  /** Meets builds of use and bounds what can be kept and what has to be paid. */
  public void bound() {
    mostKept = (int) Math.max(0, Math.min(inputs.learners(), Math.floor(most(0) + 1e-6)));
    mostWorth = most(1);
  }

  /** Learners that can keep their main parts at most: proven, after {@link #bound}. */
  public int mostKept() {
    return mostKept;
  }

  /** What any order within the budget costs at least that gives so many learners other main parts, cents: proven, after {@link #bound}. */
  public long leastCents(int changed) {
    var kept = inputs.learners() - changed;
    var least = Math.ceil(budget() * (kept + 1 - mostWorth) - 1e-3);
    return (long) Math.max(0, Math.min((double) inputs.budgetCents(), least));
  }

  private double budget() {
    return Math.max(1.0, (double) inputs.budgetCents());
  }

  /** The most that learners who keep their main parts, one each, and money that is left are worth together. */
  private double most(double saved) {
    var bound = Double.POSITIVE_INFINITY;
    @Nullable Prices best = null;
    var isOwn = true;
    for (var round = 0; round < MOST_ROUNDS && !stopped.getAsBoolean(); round++) {
      progress.accept(
          (saved == 0 ? "who keeps what was ordered, round " : "what is left to pay, round ")
              + (round + 1));
      var solved = new Program(inputs, charges, askers, columns()).maximise(this::gain, saved);
      var prices = best == null || isOwn ? solved.prices() : best.towards(solved.prices(), STEP);
      last = prices;
      var met = met();
      var now = bound(prices, saved);
      if (now < bound) {
        bound = now;
        best = prices;
      }
      var isNew = met() > met;
      if ((isOwn && !isNew) || bound - (solved.value() - SERVED * inputs.learners()) < NEAR) {
        break;
      }
      // Where prices part of the way find nothing new, the program's own may.
      isOwn = !isNew;
    }
    return bound;
  }

  private int met() {
    return askers.stream().mapToInt(asker -> asker.met().size()).sum();
  }

  private double bound(Prices prices, double saved) {
    var least = leastDues(prices);
    var most =
        prices.fixed(inputs, charges, askers) + Math.max(0, saved - prices.cent() * budget());
    for (var bag = 0; bag < bags.size(); bag++) {
      var other = least.get(bags.get(bag).group());
      var worth = other.points().isEmpty() ? 0 : SERVED - dues(other);
      if (keeping.get(bag).isPresent()) {
        var kept = keeping.get(bag).get().ask(prices.of(bag, inputs), 0);
        worth = Math.max(worth, kept.points().isEmpty() ? 0 : SERVED + 1 - dues(kept));
      }
      most += askers.get(bag).pieces() * worth;
    }
    questions += groups.size() + askers.size();
    share();
    return most - SERVED * inputs.learners() + ROUNDING * (1 + Math.abs(most));
  }

  private static double dues(Priced priced) {
    return priced.least(0).orElse(0) / Prices.SCALE;
  }

  /** The least that a build of each group costs at the prices of any of its bags. */
  private List<Priced> leastDues(Prices prices) {
    return IntStream.range(0, groups.size())
        .parallel()
        .mapToObj(g -> {
          long @Nullable [] least = null;
          for (var bag = 0; bag < bags.size(); bag++) {
            if (bags.get(bag).group() == g) {
              var its = prices.of(bag, inputs);
              for (var ware = 0; least != null && ware < its.length; ware++) {
                its[ware] = Math.min(its[ware], least[ware]);
              }
              least = its;
            }
          }
          return ask(g, Objects.requireNonNull(least));
        })
        .toList();
  }
}
