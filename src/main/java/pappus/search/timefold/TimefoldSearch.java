package pappus.search.timefold;

import ai.timefold.solver.core.api.solver.Solver;
import ai.timefold.solver.core.api.solver.SolverFactory;
import ai.timefold.solver.core.config.heuristic.selector.move.factory.MoveIteratorFactoryConfig;
import ai.timefold.solver.core.config.localsearch.LocalSearchPhaseConfig;
import ai.timefold.solver.core.config.localsearch.LocalSearchType;
import ai.timefold.solver.core.config.score.director.ScoreDirectorFactoryConfig;
import ai.timefold.solver.core.config.solver.EnvironmentMode;
import ai.timefold.solver.core.config.solver.SolverConfig;
import ai.timefold.solver.core.config.solver.termination.TerminationConfig;
import java.time.Duration;
import java.util.EnumMap;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.LongConsumer;
import org.jspecify.annotations.Nullable;
import pappus.part.Part;
import pappus.part.Role;
import pappus.search.Ending;
import pappus.search.Incumbents;
import pappus.search.Pairs;
import pappus.search.Question;

/**
 * Tries changes from several starts and keeps every feasible build it meets. Seed and number of
 * changes are fixed, so that the same question has the same answer on any machine.
 *
 * <p>Why: src/site/markdown/decisions.md#timefold-1x-in-one-package
 */
public final class TimefoldSearch {
  /** Starts: a single one stays near the first good frame it finds. */
  public static final int STARTS = 8;

  public static final long SEED = 20_260_101L;

  /** So many parts are drawn until one goes with what is chosen so far. */
  private static final int TRIES = 500;

  private static final Duration SAFETY_NET = Duration.ofMinutes(4);

  private final Question question;
  private final long movesPerStart;
  private final AtomicBoolean stopped = new AtomicBoolean();
  private @Nullable Solver<BuildChoice> running;

  /**
   * @param moves changes to try in all
   */
  public TimefoldSearch(Question question, long moves) {
    this.question = question;
    this.movesPerStart = Math.max(1, moves / STARTS);
  }

  /**
   * Runs to its end and puts every build it meets into the incumbents.
   *
   * @param progress told the number of starts done
   */
  public Ending run(Incumbents incumbents, LongConsumer progress) {
    var pairs = new Pairs(question);
    var deadline = System.nanoTime() + SAFETY_NET.toNanos();
    for (var start = 0; start < STARTS; start++) {
      var left = Duration.ofMillis((deadline - System.nanoTime()) / 1_000_000);
      if (stopped.get()) {
        return Ending.INTERRUPTED;
      }
      if (left.isNegative() || left.isZero()) {
        return Ending.CLOCK;
      }
      Solver<BuildChoice> solver = SolverFactory.<BuildChoice>create(
              config(SEED + start, movesPerStart, left))
          .buildSolver();
      synchronized (this) {
        running = solver;
      }
      solver.solve(new BuildChoice(
          startingParts(new Random(SEED + start), pairs), question, incumbents, pairs));
      progress.accept(start + 1L);
      if (System.nanoTime() > deadline) {
        return Ending.CLOCK;
      }
    }
    return stopped.get() ? Ending.INTERRUPTED : Ending.MOVES;
  }

  /** Ends the run soon, keeping what it has; may be called from another thread. */
  public void stop() {
    stopped.set(true);
    synchronized (this) {
      if (running != null) {
        running.terminateEarly();
      }
    }
  }

  static SolverConfig config(long seed, long moves, Duration safetyNet) {
    return new SolverConfig()
        .withSolutionClass(BuildChoice.class)
        .withEntityClasses(RoleChoice.class)
        .withEnvironmentMode(EnvironmentMode.NO_ASSERT)
        .withRandomSeed(seed)
        .withScoreDirectorFactory(
            new ScoreDirectorFactoryConfig().withEasyScoreCalculatorClass(BuildScore.class))
        .withTerminationConfig(
            new TerminationConfig().withMoveCountLimit(moves).withSpentLimit(safetyNet))
        .withPhases(new LocalSearchPhaseConfig()
            .withLocalSearchType(LocalSearchType.LATE_ACCEPTANCE)
            .withMoveSelectorConfig(
                new MoveIteratorFactoryConfig().withMoveIteratorFactoryClass(CoherentMoves.class)));
  }

  /** A random frame, and for each other role a random part that goes with what is chosen so far. */
  private Map<Role, Part> startingParts(Random random, Pairs pairs) {
    var chosen = new EnumMap<Role, Part>(Role.class);
    for (var role : Role.values()) {
      var parts = pairs.areFew() ? pairs.going(chosen, role) : pairs.byMass(role);
      if (!parts.isEmpty()) {
        var part = parts.get(random.nextInt(parts.size()));
        for (var tried = 1;
            !pairs.areFew() && tried < TRIES && !pairs.fitsAll(role, part, chosen);
            tried++) {
          part = parts.get(random.nextInt(parts.size()));
        }
        chosen.put(role, part);
      }
    }
    return chosen;
  }
}
