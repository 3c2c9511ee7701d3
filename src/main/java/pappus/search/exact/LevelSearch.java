package pappus.search.exact;

import java.util.ArrayList;
import java.util.List;
import java.util.function.LongConsumer;
import org.jspecify.annotations.Nullable;
import pappus.assessment.Assessment;
import pappus.part.Build;
import pappus.search.Ending;
import pappus.search.Question;

/**
 * Finds the best build for each of several least flights to plan with, in one run: builds come in the order of what they
 * are ranked by, and the first one that has a flight is the best of all that have it. A flight that was found is not looked
 * for again, so that what has no more is closed.
 */
public final class LevelSearch {
  private final Question question;
  private final BuildStream stream;

  /**
   * What was found.
   *
   * @param builds one a level, null where there is none or it was not found
   * @param ending {@link Ending#PROVEN} if none of them can be better
   * @param nodes that were branched
   */
  public record Found(List<@Nullable Assessment> builds, Ending ending, long nodes) {}

  /**
   * @param question ranked by something else than a flight; its least flight is the least of the levels
   * @param prepared for the question
   * @param threads that share the work; the answer does not depend on it
   */
  public LevelSearch(Question question, Prepared prepared, int threads) {
    this.question = question;
    this.stream = new BuildStream(question, prepared, threads);
  }

  /** Ends the run soon, keeping what it has; may be called from another thread. */
  public void stop() {
    stream.stop();
  }

  /**
   * Runs to its end.
   *
   * @param levels least flights, in thousandths, rising
   * @param effort nodes to branch at most
   * @param progress told the nodes that were branched
   */
  public Found run(List<Long> levels, long effort, LongConsumer progress) {
    var bounds = new Bounds(question);
    var steps = new Steps(levels, bounds, progress);
    return stream
        .run(
            bounds,
            Branching.Wanted.NEXT,
            steps,
            effort,
            ran -> new Found(steps.whole(), ran.ending(), ran.nodes()))
        .orElseGet(() -> new Found(steps.whole(), Ending.PROVEN, 0));
  }

  /** Takes builds in their order. */
  private static final class Steps implements BestFirst.Sink {
    private final List<Assessment> taken = new ArrayList<>();
    private final List<Long> levels;
    private final Bounds bounds;
    private final LongConsumer progress;

    Steps(List<Long> levels, Bounds bounds, LongConsumer progress) {
      this.levels = levels;
      this.bounds = bounds;
      this.progress = progress;
    }

    @Override
    public boolean needs(Build build, int open) {
      return true;
    }

    /** The second thing that they are ranked by is the flight to plan with. */
    @Override
    public boolean take(Assessment assessment) {
      while (taken.size() < levels.size()
          && assessment.merit().second() >= levels.get(taken.size())) {
        taken.add(assessment);
      }
      if (taken.size() == levels.size()) {
        return false;
      }
      bounds.raiseLeastFlight(levels.get(taken.size()));
      return true;
    }

    @Override
    public void watch(List<Assessment> assessed, long nodes) {
      progress.accept(nodes);
    }

    List<@Nullable Assessment> whole() {
      var whole = new ArrayList<@Nullable Assessment>(taken);
      while (whole.size() < levels.size()) {
        whole.add(null);
      }
      return whole;
    }
  }
}
