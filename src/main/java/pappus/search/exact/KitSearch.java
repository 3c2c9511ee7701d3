package pappus.search.exact;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.PriorityQueue;
import java.util.function.Consumer;
import java.util.function.Function;
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
  private final Function<Build, Aim> wired;
  private final Battery battery;
  private final List<List<CompatibilityRule>> rules;
  private final PriorityQueue<State> open = new PriorityQueue<>(MOST_FIRST);
  private long numbers;
  private long steps;

  /**
   * Parts decided up to a stage, and a branch of those that may fill the role of that stage.
   *
   * @param sure what the parts decided add; grams and draw are of the whole build
   * @param rest the least of what is to be filled after this stage
   * @param aim for the parts decided
   */
  private record State(
      Build build,
      int stage,
      @Nullable Branch branch,
      Adds sure,
      Adds rest,
      Aim aim,
      OptionalDouble loss,
      long most,
      long number) {}

  /**
   * @param aim for the build begun
   * @param wired the aim for a build whose board and lead are decided
   * @param begun has a battery
   * @param variance least variance of its mass
   * @param cents least price
   */
  KitSearch(
      Goods goods, Aim aim, Function<Build, Aim> wired, Build begun, double variance, long cents) {
    this.goods = goods;
    this.wired = wired;
    this.battery = begun.battery().orElseThrow();
    this.rules = goods.rulesByStage(begun.parts().keySet());
    var from = goods.assessor().begun(begun);
    enter(
        begun,
        0,
        new Adds(from.grams(), variance, from.watts(), cents),
        aim,
        OptionalDouble.empty(),
        Long.MAX_VALUE);
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
    var branch = state.branch;
    if (branch == null) {
      complete.accept(state.build);
    } else if (branch.low() != null && branch.high() != null) {
      push(state, branch.low());
      push(state, branch.high());
    } else {
      decide(state, branch);
    }
  }

  /** Takes the one part of a branch, unless a rule that can be asked now says no. */
  private void decide(State state, Branch branch) {
    var role = Goods.ORDER.get(state.stage);
    var part = Objects.requireNonNull(branch.part());
    var build = state.build.with(role, part);
    if (isBroken(build, state.stage) || !goods.assessor().mayStillFit(build)) {
      return;
    }
    enter(
        build,
        state.stage + 1,
        state.sure.plus(goods.own(role, part, battery).times(build.count(role))),
        state.aim,
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
      Build build, int from, Adds sure, Aim before, OptionalDouble loss, long atMost) {
    var stage = from;
    while (stage < Goods.ORDER.size() && goods.isLeftOut(build, Goods.ORDER.get(stage))) {
      if (isBroken(build, stage)) {
        return;
      }
      stage++;
    }
    var aim = from < Goods.WIRED && stage >= Goods.WIRED ? wired.apply(build) : before;
    var counted = goods.assessor().begun(build);
    var drawn = stage >= Goods.CONSUMERS ? counted.watts() : sure.watts();
    var now = new Adds(counted.grams(), sure.variance(), drawn, sure.cents());
    if (stage == Goods.ORDER.size()) {
      push(new State(build, stage, null, now, Adds.NOTHING, aim, loss, atMost, 0), null);
      return;
    }
    var rest = rest(build, stage);
    if (rest != null) {
      var state = new State(build, stage, null, now, rest, aim, loss, atMost, 0);
      for (var tree : goods.trees(Goods.ORDER.get(stage), build)) {
        push(state, tree);
      }
    }
  }

  private void push(State state, @Nullable Branch branch) {
    var least = state.sure;
    var loss = state.loss;
    if (branch != null) {
      least = least.plus(state.rest).plus(branch.adds());
      if (Goods.ORDER.get(state.stage) == Role.BOARD) {
        loss = goods.leastLoss(branch);
      }
    }
    var most = Math.min(
        state.most,
        state.aim.atMost(least.grams(), least.variance(), least.watts(), least.cents(), loss));
    if (most >= 0) {
      open.add(new State(
          state.build,
          state.stage,
          branch,
          state.sure,
          state.rest,
          state.aim,
          state.loss,
          most,
          numbers++));
    }
  }

  /**
   * The least of each role after a stage that is to be filled whatever part is taken at that stage; null if nothing
   * can fill one of them.
   */
  private @Nullable Adds rest(Build build, int stage) {
    var rest = Adds.NOTHING;
    var counted = EnumSet.noneOf(Role.class);
    if (build.board().isEmpty()) {
      // The board's own least knows whether a lead follows.
      counted.add(Role.LEAD);
    }
    for (var role : Goods.ORDER.subList(stage, Goods.ORDER.size())) {
      if (!counted.contains(role) && !goods.isLeftOut(build, role)) {
        counted.addAll(Goods.followers(role));
        if (role != Goods.ORDER.get(stage)) {
          var trees = goods.trees(role, build);
          if (trees.isEmpty()) {
            return null;
          }
          rest = rest.plus(trees.stream().map(Branch::adds).reduce(Adds::least).orElseThrow());
        }
      }
    }
    return rest;
  }
}
