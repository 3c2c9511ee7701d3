package pappus.search.exact;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.PriorityQueue;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import pappus.assessment.Assessment;
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
  /** What may reach most first; of equals the cheapest, and of those the one nearest to its end. */
  private static final Comparator<State> MOST_FIRST = Comparator.comparingLong(State::most)
      .reversed()
      .thenComparingLong(State::cents)
      .thenComparing(Comparator.comparingInt(State::stage).reversed())
      .thenComparingLong(State::number);

  private final Goods goods;
  private final Aiming aiming;
  private final Battery battery;
  private final List<List<CompatibilityRule>> rules;
  private final PriorityQueue<State> open = new PriorityQueue<>(MOST_FIRST);
  private long numbers;
  private long steps;

  /** Aims for builds of which more is decided. */
  interface Aiming {
    /**
     * One aim.
     *
     * @param begun whose board and lead are decided
     * @param least draw of any completion, W, and resistance of board and lead, Ω
     * @param loss part-load loss of the controllers; absent: by the law
     */
    Aim aim(Build begun, Adds least, OptionalDouble loss);
  }

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
      long cents,
      long number) {}

  /**
   * @param aim for the build begun
   * @param aiming aims for builds of which more is decided
   * @param begun has a battery
   * @param variance least variance of its mass
   * @param cents least price
   */
  KitSearch(Goods goods, Aim aim, Aiming aiming, Build begun, double variance, long cents) {
    this.goods = goods;
    this.aiming = aiming;
    this.battery = begun.battery().orElseThrow();
    this.rules = goods.rulesByStage(begun.parts().keySet());
    var from = goods.assessor().begun(begun);
    enter(
        begun,
        0,
        new Adds(from.grams(), variance, from.watts(), cents, 0),
        aim,
        OptionalDouble.empty(),
        Long.MAX_VALUE,
        0);
  }

  /** No complete build that was not told yet reaches more; below zero where none is left. */
  long most() {
    var first = open.peek();
    return first == null ? Aim.HOPELESS : first.most;
  }

  /** Whether a complete build that was not told yet may come before one that was. */
  boolean mayBeat(Assessment best) {
    var first = open.peek();
    return first != null
        && (first.most > best.objective()
            || (first.most == best.objective() && first.cents <= best.cost().cents()));
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
        state.most,
        state.cents);
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
      Build build, int from, Adds sure, Aim before, OptionalDouble loss, long atMost, long cents) {
    var stage = from;
    while (stage < Goods.ORDER.size() && goods.isLeftOut(build, Goods.ORDER.get(stage))) {
      if (isBroken(build, stage)) {
        return;
      }
      stage++;
    }
    var counted = goods.assessor().begun(build);
    var drawn = stage >= Goods.CONSUMERS ? counted.watts() : sure.watts();
    var now = sure.weighing(counted.grams()).drawing(drawn);
    if (stage == Goods.ORDER.size()) {
      var aim = isDecided(from, stage) ? aiming.aim(build, now, loss) : before;
      push(new State(build, stage, null, now, Adds.NOTHING, aim, loss, atMost, cents, 0), null);
      return;
    }
    var trees = goods.trees(Goods.ORDER.get(stage), build);
    var rest = trees.isEmpty() ? null : rest(build, stage);
    if (rest != null) {
      var next = trees.stream().map(Branch::adds).reduce(Adds::least).orElseThrow();
      var aim =
          isDecided(from, stage) ? aiming.aim(build, now.plus(next).plus(rest), loss) : before;
      var state = new State(build, stage, null, now, rest, aim, loss, atMost, cents, 0);
      for (var tree : trees) {
        push(state, tree);
      }
    }
  }

  /** Whether the way from the pack to the motors, or all that draws power, is known at a stage and was not before. */
  private static boolean isDecided(int from, int stage) {
    return (from <= Goods.WIRED && stage >= Goods.WIRED)
        || (from <= Goods.CONSUMERS && stage >= Goods.CONSUMERS);
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
    var most = Math.min(state.most, state.aim.atMost(least, loss));
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
          Math.max(state.cents, least.cents()),
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
