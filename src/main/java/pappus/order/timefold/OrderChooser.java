package pappus.order.timefold;

import ai.timefold.solver.core.api.solver.SolverFactory;
import ai.timefold.solver.core.api.solver.SolverJob;
import ai.timefold.solver.core.api.solver.SolverManager;
import ai.timefold.solver.core.config.heuristic.selector.move.factory.MoveIteratorFactoryConfig;
import ai.timefold.solver.core.config.localsearch.LocalSearchPhaseConfig;
import ai.timefold.solver.core.config.localsearch.LocalSearchType;
import ai.timefold.solver.core.config.score.director.ScoreDirectorFactoryConfig;
import ai.timefold.solver.core.config.solver.EnvironmentMode;
import ai.timefold.solver.core.config.solver.SolverConfig;
import ai.timefold.solver.core.config.solver.termination.TerminationConfig;
import java.time.Duration;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ExecutionException;
import org.jspecify.annotations.Nullable;
import pappus.order.choice.Choice;
import pappus.order.choice.Goal;
import pappus.order.column.Column;

/**
 * Chooses a build for each learner by trying changes. Seed and number of changes are fixed, so that the same order has the
 * same answer on any machine.
 */
public final class OrderChooser {
  public static final long SEED = 20_260_101L;

  /** So many builds of a group are near to one of it. */
  private static final int NEAR = 16;

  private static final Duration SAFETY_NET = Duration.ofMinutes(4);

  private final Choice choice;
  private final Goal goal;
  private final long moves;
  private final long seed;
  private volatile @Nullable SolverJob<Draft, Long> running;
  private volatile boolean stopped;

  /**
   * @param moves changes to try
   * @param seed of the changes
   */
  public OrderChooser(Choice choice, Goal goal, long moves, long seed) {
    this.choice = choice;
    this.goal = goal;
    this.moves = moves;
    this.seed = seed;
  }

  /** Ends the run soon, keeping what it has; may be called from another thread. */
  public void stop() {
    stopped = true;
    var now = running;
    if (now != null) {
      now.terminateEarly();
    }
  }

  /**
   * Everybody's builds.
   *
   * @param start where to begin
   */
  public List<Column> choose(List<Column> start) {
    var factory = SolverFactory.<Draft>create(config());
    // A manager keeps apart what runs at the same time.
    try (SolverManager<Draft, Long> manager = SolverManager.create(factory)) {
      var job = manager.solve(seed, draft(choice, goal, start));
      running = job;
      if (stopped) {
        job.terminateEarly();
      }
      return job.getFinalBestSolution().learners().stream()
          .map(learner -> learner.option().column())
          .toList();
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(interrupted);
    } catch (ExecutionException failed) {
      throw new IllegalStateException(failed.getCause());
    }
  }

  private SolverConfig config() {
    return new SolverConfig()
        .withSolutionClass(Draft.class)
        .withEntityClasses(Learner.class)
        .withEnvironmentMode(EnvironmentMode.NO_ASSERT)
        .withRandomSeed(seed)
        .withScoreDirectorFactory(
            new ScoreDirectorFactoryConfig().withIncrementalScoreCalculatorClass(OrderScore.class))
        .withTerminationConfig(
            new TerminationConfig().withMoveCountLimit(moves).withSpentLimit(SAFETY_NET))
        .withPhases(new LocalSearchPhaseConfig()
            .withLocalSearchType(LocalSearchType.LATE_ACCEPTANCE)
            .withMoveSelectorConfig(
                new MoveIteratorFactoryConfig().withMoveIteratorFactoryClass(OrderMoves.class)));
  }

  /** A choice as a model. */
  static Draft draft(Choice choice, Goal goal, List<Column> start) {
    var slots = new HashMap<String, Slot>();
    var options = new HashMap<Column, Option>();
    var byGroup = new ArrayList<List<Option>>();
    for (var columns : choice.columns()) {
      var group = columns.stream()
          .map(column -> options.computeIfAbsent(
              column, fresh -> new Option(choice, column, uses(choice, column, slots))))
          .toList();
      var wares = new HashMap<Option, BitSet>();
      group.forEach(option -> wares.put(option, wares(option)));
      group.forEach(option -> option.isNear(near(option, group, wares)));
      byGroup.add(group);
    }
    var learners = new ArrayList<Learner>();
    for (var i = 0; i < start.size(); i++) {
      learners.add(new Learner(
          i,
          byGroup.get(choice.learners().get(i)),
          Objects.requireNonNull(options.get(start.get(i)))));
    }
    var rules = new ArrayList<Asked.Rule>();
    for (var i = 0; i < choice.same().size(); i++) {
      var rule = choice.same().get(i);
      rules.add(new Asked.Rule(i, rule.most(), rule.isWithinGroups()));
    }
    return new Draft(new Asked(choice, goal), rules, learners);
  }

  private static List<Slot.Use> uses(Choice choice, Column column, Map<String, Slot> slots) {
    return column.needs().stream()
        .map(need -> new Slot.Use(
            slots.computeIfAbsent(
                need.ware().index() + " " + need.label(),
                fresh -> new Slot(choice, need.ware(), need.label())),
            need.pieces()))
        .toList();
  }

  private static List<Option> near(Option one, List<Option> group, Map<Option, BitSet> wares) {
    var mine = Objects.requireNonNull(wares.get(one));
    var apart = new HashMap<Option, Integer>();
    for (var other : group) {
      var differ = (BitSet) mine.clone();
      differ.xor(Objects.requireNonNull(wares.get(other)));
      apart.put(other, differ.cardinality());
    }
    return group.stream()
        .filter(other -> other != one)
        .sorted(Comparator.<Option>comparingInt(apart::get)
            .thenComparingInt(option -> option.column().number()))
        .limit(NEAR)
        .toList();
  }

  private static BitSet wares(Option option) {
    var wares = new BitSet();
    option.uses().forEach(use -> wares.set(use.slot().ware().index()));
    return wares;
  }
}
