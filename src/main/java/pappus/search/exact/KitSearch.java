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
import pappus.compatibility.CompatibilityRule;
import pappus.part.Battery;
import pappus.part.Board;
import pappus.part.Build;
import pappus.part.Lead;
import pappus.part.Role;

/**
 * Completes a build only begun with accessories, the most promising first. It can be stopped between two steps and
 * go on later.
 *
 * <p>Why: src/site/markdown/decisions.md#variants-of-a-row-are-looked-for-side-by-side
 */
final class KitSearch {
  /** What may reach most first; of equals the cheapest, and of those the one nearest to its end. */
  private static final Comparator<State> MOST_FIRST = Comparator.comparingLong(State::most)
      .reversed()
      .thenComparingLong(State::cents)
      .thenComparing(Comparator.comparingInt(State::stage).reversed())
      .thenComparingLong(State::number);

  private final Goods goods;
  private final Trees trees;
  private final Target target;
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
     * @param loss ripple of the controllers over that of the law; absent: as the law says
     */
    Aim aim(Build begun, Adds least, OptionalDouble loss);
  }

  /**
   * Parts decided up to a stage, and a branch of those that may fill the role of that stage.
   *
   * @param sure what the parts decided add; grams and draw are of the whole build
   * @param rest the least of what is to be filled after this stage
   * @param mostWatts that the whole build draws beside the motors, with any part of this stage left out
   * @param worth for the parts decided
   * @param loss ripple of the board over that of the law, once it is decided; absent: as the law says
   * @param flown that nothing of it surpasses, microseconds or micrometres
   * @param most objective that nothing of it surpasses
   */
  private record State(
      Build build,
      int stage,
      @Nullable Branch branch,
      Adds sure,
      Adds rest,
      double mostWatts,
      Worth worth,
      OptionalDouble loss,
      long flown,
      long most,
      long cents,
      long number) {
    State reaching(long other) {
      return new State(
          build, stage, branch, sure, rest, mostWatts, worth, loss, flown, other, cents, number);
    }
  }

  /**
   * @param target for the build begun
   * @param aiming aims for builds of which more is decided
   * @param begun has a battery
   * @param variance least variance of its mass
   * @param cents least price
   */
  KitSearch(
      Goods goods,
      Trees trees,
      Target target,
      Aiming aiming,
      Build begun,
      double variance,
      long cents) {
    this.goods = goods;
    this.trees = trees;
    this.aiming = aiming;
    this.battery = begun.battery().orElseThrow();
    this.rules = goods.rulesByStage(begun.parts().keySet());
    this.target = target;
    var from = goods.assessor().prospects().begun(begun);
    enter(
        begun,
        0,
        new Adds(from.grams(), variance, from.watts(), cents, from.pieces(), 0),
        OptionalDouble.empty(),
        null);
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
            || (first.most == best.objective()
                && (!first.worth.aim().isOfFlight()
                    || first.cents <= best.cost().cents())));
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
    var most = state.worth.aim().again(state.most, state.flown, state.sure);
    if (most < state.most) {
      if (most >= 0) {
        open.add(state.reaching(most));
      }
      return;
    }
    var branch = state.branch;
    if (branch == null) {
      complete.accept(state.build);
    } else if (branch.low() != null && branch.high() != null) {
      push(state, branch(state, branch.low()));
      push(state, branch(state, branch.high()));
    } else {
      decide(state, branch);
    }
  }

  /** Takes the one part of a branch, unless a rule that can be asked now says no. */
  private void decide(State state, Branch branch) {
    var role = Goods.ORDER.get(state.stage);
    var part = Objects.requireNonNull(branch.part());
    var build = state.build.with(role, part);
    if (isBroken(build, state.stage) || !goods.assessor().ruleBook().mayStillFit(build)) {
      return;
    }
    enter(
        build,
        state.stage + 1,
        state.sure.plus(goods.own(role, part, battery).times(build.count(role))),
        part instanceof Board board ? goods.assessor().prospects().rippleShare(board) : state.loss,
        state);
  }

  private boolean isBroken(Build build, int stage) {
    for (var rule : rules.get(stage)) {
      if (goods.assessor().ruleBook().isBroken(rule, build)) {
        return true;
      }
    }
    return false;
  }

  /**
   * Goes to the next stage whose role needs a part.
   *
   * @param before absent at the start
   */
  private void enter(
      Build build, int from, Adds sure, OptionalDouble loss, @Nullable State before) {
    var stage = from;
    while (stage < Goods.ORDER.size() && goods.isLeftOut(build, Goods.ORDER.get(stage))) {
      if (isBroken(build, stage)) {
        return;
      }
      stage++;
    }
    var counted = goods.assessor().prospects().begun(build);
    var drawn = stage >= Goods.CONSUMERS ? counted.watts() : sure.watts();
    var now = sure.weighing(counted.grams()).drawing(drawn);
    if (stage == Goods.ORDER.size()) {
      var worth = worth(build, from, stage, now, loss, before);
      if (!worth.aim().mayCount(now, loss)) {
        return;
      }
      var flown = worth.exactly(now, loss);
      push(
          before,
          new State(
              build,
              stage,
              null,
              now,
              Adds.NOTHING,
              now.watts(),
              worth,
              loss,
              flown,
              worth.aim().objective(flown, now, loss),
              now.cents(),
              0));
      return;
    }
    var next = trees.of(Goods.ORDER.get(stage), build);
    var rest = next.isEmpty() ? null : rest(build, stage);
    if (rest == null) {
      return;
    }
    var most = goods.mostWatts(build, stage);
    var least = now.plus(rest).plus(least(next));
    var worth = worth(build, from, stage, least, loss, before);
    for (var tree : next) {
      var its = tree.sample() instanceof Lead ? wired(build, stage, tree, least, loss) : worth;
      push(
          before,
          branch(new State(build, stage, null, now, rest, most, its, loss, 0, 0, 0, 0), tree));
    }
  }

  /** With leads of one gauge: whichever it is, the way from the pack to the motors carries as much. */
  private Worth wired(Build build, int stage, Branch leads, Adds least, OptionalDouble loss) {
    var wired = build.with(Goods.ORDER.get(stage), leads.sample());
    return new Worth(target.of(aiming.aim(wired, least, loss), least));
  }

  private static Adds least(List<Branch> trees) {
    return trees.stream().map(Branch::adds).reduce(Adds::least).orElseThrow();
  }

  /** What parts decided so far are worth: looked at anew where more of what matters is decided. */
  private Worth worth(
      Build build, int from, int stage, Adds least, OptionalDouble loss, @Nullable State before) {
    if (before == null) {
      return new Worth(target);
    }
    if (!isDecided(from, stage)) {
      return before.worth;
    }
    if (before.branch != null
        && before.branch.sample() instanceof Lead
        && stage < Goods.CONSUMERS) {
      return new Worth(target.of(before.worth.aim(), least));
    }
    return new Worth(target.of(aiming.aim(build, least, loss), least));
  }

  /** Whether the way from the pack to the motors, or all that draws power, is known at a stage and was not before. */
  private static boolean isDecided(int from, int stage) {
    return (from <= Goods.WIRED && stage >= Goods.WIRED)
        || (from <= Goods.CONSUMERS && stage >= Goods.CONSUMERS);
  }

  /** A state whose next part is of one branch: no part more is decided. */
  private static State branch(State state, Branch branch) {
    var least = state.sure.plus(state.rest).plus(branch.adds());
    var loss = Goods.ORDER.get(state.stage) == Role.BOARD ? branch.loss() : state.loss;
    var aim = state.worth.aim();
    var mostWatts = state.mostWatts + Goods.atMost(branch.mostWatts());
    var flown = mostWatts < aim.leastWatts(least.grams())
        ? Aim.HOPELESS
        : state.stage < Goods.CONSUMERS
            ? state.worth.atMost(least, loss)
            : state.worth.atMostByMass(least, loss);
    return new State(
        state.build,
        state.stage,
        branch,
        state.sure,
        state.rest,
        state.mostWatts,
        state.worth,
        state.loss,
        flown,
        aim.objective(flown, least, loss),
        least.cents(),
        0);
  }

  /** Adds a state that follows from another, which it surpasses in nothing. */
  private void push(@Nullable State before, State state) {
    var most = before == null ? state.most : Math.min(before.most, state.most);
    if (most >= 0) {
      open.add(new State(
          state.build,
          state.stage,
          state.branch,
          state.sure,
          state.rest,
          state.mostWatts,
          state.worth,
          state.loss,
          before == null ? state.flown : Math.min(before.flown, state.flown),
          most,
          before == null ? state.cents : Math.max(before.cents, state.cents),
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
    for (var role : Goods.ORDER.subList(stage, Goods.ORDER.size())) {
      if (!counted.contains(role) && !goods.isLeftOut(build, role)) {
        counted.addAll(role.followers());
        if (role != Goods.ORDER.get(stage)) {
          var next = trees.of(role, build);
          if (next.isEmpty()) {
            return null;
          }
          rest = rest.plus(least(next));
        }
      }
    }
    return rest;
  }
}
