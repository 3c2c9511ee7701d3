package pappus.search.exact;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.function.LongConsumer;
import pappus.assessment.Assessment;
import pappus.part.Build;
import pappus.search.Ending;
import pappus.search.Question;

/**
 * Finds every build that no other equals or surpasses in flight, mass and price at once, mass as it is needed at the
 * scenario's confidence. They come in the order of their flights, so that what is told is whole down to where it ends.
 */
public final class FrontSearch {
  private final Question question;
  private final BuildStream stream;
  private final boolean weighs;

  /**
   * What was found.
   *
   * @param builds longest flight first
   * @param taken in their order, each lighter or cheaper than all before: also what another makes of no use that is as
   *     good and comes after it
   * @param ending {@link Ending#PROVEN} if none is missing of those that reach what was asked for
   * @param atMost what no build that is missing surpasses; empty if none is missing at all
   * @param nodes that were branched
   */
  public record Found(
      List<Assessment> builds,
      List<Assessment> taken,
      Ending ending,
      OptionalLong atMost,
      long nodes) {
    public Found {
      builds = List.copyOf(builds);
      taken = List.copyOf(taken);
    }
  }

  /** With everything to prepare. */
  public FrontSearch(Question question, int threads) {
    this(question, Prepared.of(question), threads);
  }

  /**
   * @param prepared for the question
   * @param threads that share the work; the answer does not depend on it
   */
  public FrontSearch(Question question, Prepared prepared, int threads) {
    this(question, prepared, threads, true);
  }

  private FrontSearch(Question question, Prepared prepared, int threads, boolean weighs) {
    this.question = question;
    this.stream = new BuildStream(question, prepared, threads);
    this.weighs = weighs;
  }

  /** Of flight and price alone, whatever builds weigh: far fewer of them. */
  public static FrontSearch ofPrices(Question question, Prepared prepared, int threads) {
    return new FrontSearch(question, prepared, threads, false);
  }

  /** Ends the run soon, keeping what it has; may be called from another thread. */
  public void stop() {
    stream.stop();
  }

  /**
   * Runs to its end.
   *
   * @param share of the best that a flight must have to be looked for, 0 to 1
   * @param effort nodes to branch at most
   * @param progress told the nodes that were branched
   */
  public Found run(double share, long effort, LongConsumer progress) {
    return run(share, 0, effort, progress);
  }

  /**
   * Runs to its end.
   *
   * @param least objective that one must reach to be looked for
   * @param effort nodes to branch at most
   */
  public Found runFrom(long least, long effort) {
    return run(0, least, effort, done -> {});
  }

  private Found run(double share, long from, long effort, LongConsumer progress) {
    var front = new Front(weighs);
    var points = new Points(front, share, from, progress);
    return stream
        .run(
            new Bounds(question, front),
            Branching.Wanted.EVERY,
            points,
            effort,
            ran -> new Found(points.whole(), points.taken, ran.ending(), ran.left(), ran.nodes()))
        .orElseGet(() -> new Found(List.of(), List.of(), Ending.PROVEN, OptionalLong.empty(), 0));
  }

  /** Takes builds in the order of their flights. */
  private final class Points implements BestFirst.Sink {
    private final List<Assessment> taken = new ArrayList<>();
    private final Front front;
    private final double share;
    private final LongConsumer progress;
    private long least;

    Points(Front front, double share, long least, LongConsumer progress) {
      this.front = front;
      this.share = share;
      this.least = least;
      this.progress = progress;
    }

    private double grams(Assessment assessment) {
      var deviations = question.assessor().deviations();
      return weighs ? assessment.mass().neededMilligrams(deviations) / 1000.0 : 0;
    }

    @Override
    public long least() {
      return least;
    }

    @Override
    public boolean needs(Build build, int open) {
      return true;
    }

    @Override
    public boolean take(Assessment assessment) {
      if (!front.surpasses(grams(assessment), assessment.cost().cents())) {
        if (taken.isEmpty()) {
          least = Math.max(least, (long) Math.ceil(share * assessment.objective()));
        }
        front.add(grams(assessment), assessment.cost().cents());
        taken.add(assessment);
      }
      return true;
    }

    @Override
    public void watch(List<Assessment> assessed, long nodes) {
      progress.accept(nodes);
    }

    /** Of builds that fly equally long, a later one may weigh and cost no more than an earlier one. */
    List<Assessment> whole() {
      var whole = new ArrayList<Assessment>();
      for (var i = 0; i < taken.size(); i++) {
        var one = taken.get(i);
        if (taken.subList(i + 1, taken.size()).stream()
            .takeWhile(later -> later.objective() == one.objective())
            .noneMatch(later ->
                grams(later) <= grams(one) && later.cost().cents() <= one.cost().cents())) {
          whole.add(one);
        }
      }
      return whole;
    }
  }
}
