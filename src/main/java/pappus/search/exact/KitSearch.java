package pappus.search.exact;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.PriorityQueue;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import pappus.catalog.Battery;
import pappus.catalog.Board;
import pappus.catalog.Build;
import pappus.catalog.Role;
import pappus.compatibility.CompatibilityRule;

/**
 * Completes a build only begun with accessories, the most promising first. It can be stopped between two steps and
 * go on later.
 */
final class KitSearch {
  /** The most promising first; of equals the one nearest to its end. */
  private static final Comparator<State> MOST_FIRST = Comparator.comparingLong(State::most)
      .reversed()
      .thenComparing(Comparator.comparingInt(State::stage).reversed())
      .thenComparingLong(State::number);

  private final Goods goods;
  private final Aim aim;
  private final Battery battery;
  private final List<List<CompatibilityRule>> rules;
  private final PriorityQueue<State> open = new PriorityQueue<>(MOST_FIRST);
  private long numbers;
  private long steps;

  /**
   * Parts decided up to a stage, and a branch of those that may fill the role of that stage.
   *
   * @param rest the least of what is to be filled later
   * @param cents least price of the decided
   * @param variance least variance of their mass
   */
  private record State(
      Build build,
      int stage,
      @Nullable Branch branch,
      List<Branch> rest,
      double grams,
      double variance,
      double watts,
      long cents,
      OptionalDouble loss,
      long most,
      long number) {}

  /**
   * @param begun has a battery
   * @param variance least variance of its mass
   * @param cents least price
   */
  KitSearch(Goods goods, Aim aim, Build begun, double variance, long cents) {
    this.goods = goods;
    this.aim = aim;
    this.battery = begun.battery().orElseThrow();
    this.rules = goods.rulesByStage(begun.parts().keySet());
    var from = goods.assessor().begun(begun);
    enter(begun, 0, variance, from.watts(), cents, OptionalDouble.empty(), Long.MAX_VALUE);
  }

  /** No complete build that was not told yet reaches more; below zero where none is left. */
  long most() {
    var first = open.peek();
    return first == null ? Aim.HOPELESS : first.most;
  }

  long steps() {
    return steps;
  }

  /**
   * Looks into what may reach most.
   *
   * @param complete told a build that is complete
   */
  void step(Consumer<Build> complete) {
    steps++;
    var state = Objects.requireNonNull(open.poll());
    if (state.stage == Goods.ORDER.size()) {
      complete.accept(state.build);
      return;
    }
    var branch = Objects.requireNonNull(state.branch);
    if (branch.low() != null && branch.high() != null) {
      push(state, branch.low());
      push(state, branch.high());
      return;
    }
    decide(state, branch);
  }

  /** Takes the one part of a branch, unless a rule that can be asked now says no. */
  private void decide(State state, Branch branch) {
    var role = Goods.ORDER.get(state.stage);
    var build = state.build.with(role, Objects.requireNonNull(branch.part()));
    if (isBroken(build, state.stage)) {
      return;
    }
    var part = Objects.requireNonNull(branch.part());
    var own = goods.own(role, battery);
    enter(
        build,
        state.stage + 1,
        state.variance + own.variance().applyAsDouble(part),
        state.watts + own.watts().applyAsDouble(part),
        state.cents + own.cents().applyAsLong(part),
        part instanceof Board board ? goods.assessor().ownLoss(board) : state.loss,
        state.most);
  }

  private boolean isBroken(Build build, int stage) {
    for (var rule : rules.get(stage)) {
      if (goods.assessor().isBroken(rule, build)) {
        return true;
      }
    }
    return false;
  }

  /** Goes to the next stage whose role needs a part. */
  private void enter(
      Build build,
      int from,
      double variance,
      double watts,
      long cents,
      OptionalDouble loss,
      long atMost) {
    var stage = from;
    while (stage < Goods.ORDER.size() && isLeftOut(build, Goods.ORDER.get(stage))) {
      if (isBroken(build, stage)) {
        return;
      }
      stage++;
    }
    var counted = goods.assessor().begun(build);
    var drawn = stage >= Goods.CONSUMERS ? counted.watts() : watts;
    var rest = stage == Goods.ORDER.size() ? List.<Branch>of() : rest(build, stage);
    var state = new State(
        build, stage, null, rest, counted.grams(), variance, drawn, cents, loss, atMost, 0);
    if (stage == Goods.ORDER.size()) {
      push(state, null);
      return;
    }
    for (var tree : goods.trees(Goods.ORDER.get(stage), battery)) {
      push(state, tree);
    }
  }

  /** Whether a tidy build has no part of its own in a role. */
  private boolean isLeftOut(Build build, Role role) {
    if (goods.question().options(role).isEmpty()) {
      return true;
    }
    if (role != Role.LEAD) {
      return build.fills(role);
    }
    var plug = build.board().map(Board::plug);
    return plug.isPresent() && plug.get().connector() == battery.connector();
  }

  private void push(State state, @Nullable Branch branch) {
    var grams = state.grams;
    var variance = state.variance;
    var watts = state.watts;
    var cents = state.cents;
    var loss = state.loss;
    if (branch != null) {
      var role = Goods.ORDER.get(state.stage);
      if (role == Role.BOARD) {
        loss = goods.leastLoss(branch);
      }
      var least = new ArrayList<>(state.rest);
      least.add(branch);
      for (var one : least) {
        grams += one.grams();
        variance += one.variance();
        watts += one.watts();
        cents += one.cents();
      }
    }
    var most = Math.min(state.most, aim.atMost(state.build, grams, variance, watts, cents, loss));
    if (most >= 0) {
      open.add(new State(
          state.build,
          state.stage,
          branch,
          state.rest,
          state.grams,
          state.variance,
          state.watts,
          state.cents,
          state.loss,
          most,
          numbers++));
    }
  }

  /** The least of each role after a stage that is to be filled whatever part is taken at that stage. */
  private List<Branch> rest(Build build, int stage) {
    var rest = new ArrayList<Branch>();
    var counted = EnumSet.of(Role.LEAD);
    for (var role : Goods.ORDER.subList(stage, Goods.ORDER.size())) {
      if (!counted.contains(role) && !build.fills(role)) {
        counted.addAll(Goods.followers(role));
        if (role != Goods.ORDER.get(stage)) {
          goods.trees(role, battery).stream().limit(1).forEach(rest::add);
        }
      }
    }
    return rest;
  }
}
