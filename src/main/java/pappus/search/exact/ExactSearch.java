package pappus.search.exact;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.function.BooleanSupplier;
import java.util.function.LongConsumer;
import pappus.assessment.Assessment;
import pappus.part.Build;
import pappus.search.Ending;
import pappus.search.Incumbents;
import pappus.search.Question;
import pappus.search.Row;

/**
 * Finds the best builds and proves that no other does better: always goes on where most can still be reached, and
 * tells a build only once nothing that is left can reach as much.
 *
 * <p>Boxes of motors, propellers and batteries come first and are halved until each has one part; then the frame,
 * then the accessories. What a node can still reach is worked out by the assessment's own physics with the least
 * mass and draw that any completion has; a complete build is assessed like any other.
 *
 * <p>Why: src/site/markdown/decisions.md#the-proof-looks-where-most-can-still-be-reached
 */
public final class ExactSearch {
  /**
   * Branching to look into for the variants of one row: near a limit thousands of accessories may have to be tried for
   * the last of them, and rows are what was asked for. What is told until then is still the best in its order.
   */
  private static final long VARIANT_EFFORT = 10_000;

  private final Question question;
  private final BuildStream stream;
  private final int apart;
  private Map<Closings.Reason, Long> closed = Map.of();

  /**
   * What was found.
   *
   * @param rows best first
   * @param ending {@link Ending#PROVEN} if nothing else can be among them
   * @param atMost what nothing that was not seen surpasses; empty if nothing was left
   * @param nodes that were branched
   */
  public record Found(List<Row> rows, Ending ending, OptionalLong atMost, long nodes) {
    public Found {
      rows = List.copyOf(rows);
    }
  }

  /** With everything to prepare. */
  public ExactSearch(Question question, int threads) {
    this(question, Prepared.of(question), threads);
  }

  /**
   * @param prepared for the question
   * @param threads that share the work; the answer does not depend on it
   */
  public ExactSearch(Question question, Prepared prepared, int threads) {
    this.question = question;
    this.stream = new BuildStream(question, prepared, threads);
    this.apart = question.assessor().scenario().differences();
  }

  /** Ends the run soon, keeping what it has; may be called from another thread. */
  public void stop() {
    stream.stop();
  }

  /** What no build that was not seen yet surpasses; to be asked by who is told of progress alone. */
  public OptionalLong atMost() {
    return stream.atMost();
  }

  /** How many nodes the last run closed for each reason. */
  Map<Closings.Reason, Long> closed() {
    return closed;
  }

  /**
   * Runs to its end.
   *
   * @param count rows wanted; each differs from every earlier one in as many main parts as the scenario asks for
   * @param effort nodes to branch at most
   * @param incumbents told every build that is assessed
   * @param progress told the nodes that were branched
   */
  public Found run(int count, long effort, Incumbents incumbents, LongConsumer progress) {
    return run(count, true, effort, incumbents, () -> false, progress);
  }

  /** Looks for the best build alone, without its variants; counts effort as {@link #run} does. */
  public Found best(long effort, Incumbents incumbents, LongConsumer progress) {
    return run(1, false, effort, incumbents, () -> false, progress);
  }

  /** Looks for any feasible build, or proves that there is none; whatever feasible ones it meets are in the incumbents. */
  public Found any(long effort, Incumbents incumbents) {
    return run(1, false, effort, incumbents, () -> incumbents.feasible() > 0, done -> {});
  }

  private Found run(
      int count,
      boolean withVariants,
      long effort,
      Incumbents incumbents,
      BooleanSupplier until,
      LongConsumer progress) {
    var rows = new Rows(count, apart, incumbents, progress);
    return stream
        .run(
            new Bounds(question),
            Branching.Wanted.BEST,
            rows,
            effort,
            until,
            ran -> found(ran, rows, withVariants))
        .orElseGet(() -> new Found(List.of(), Ending.PROVEN, OptionalLong.empty(), 0));
  }

  private Found found(BuildStream.Ran ran, Rows rows, boolean withVariants) {
    var isProven = ran.ending() == Ending.PROVEN;
    var variants = isProven && withVariants
        ? variants(ran.branching(), rows.taken, ran.workers())
        : rows.taken.stream().map(row -> new Variants(row, List.of(), apart)).toList();
    var nodes = ran.nodes();
    for (var each : variants) {
      each.assessed.forEach(rows.incumbents::offer);
      nodes += each.nodes;
    }
    rows.progress.accept(nodes);
    closed = ran.branching().closings().counts();
    return new Found(
        variants.stream()
            .map(each -> new Row(each.row, each.taken, each.isCutShort))
            .toList(),
        stream.isStopped() ? Ending.INTERRUPTED : ran.ending(),
        isProven ? OptionalLong.empty() : ran.left(),
        nodes);
  }

  /** The best builds that differ from each row in less than rows do, and belong to no earlier row. */
  private List<Variants> variants(Branching branching, List<Assessment> rows, Workers workers) {
    var variants = new ArrayList<Variants>();
    for (var row = 0; row < rows.size(); row++) {
      variants.add(new Variants(rows.get(row), rows.subList(0, row), apart));
    }
    // Each on one thread, which branches one node at a time, branches the fewest.
    workers.each(variants, each -> {
      var ending = new BestFirst(
              branching, branching.near(each.row.build(), apart - 1), Workers.NONE, 1)
          .run(each, VARIANT_EFFORT, stream::isStopped);
      each.isCutShort = ending != Ending.PROVEN;
      return ending;
    });
    return variants;
  }

  /** Builds that each differ enough from all before. */
  private static final class Rows implements BestFirst.Sink {
    private final List<Assessment> taken = new ArrayList<>();
    private final int count;
    private final int apart;
    private final Incumbents incumbents;
    private final LongConsumer progress;

    Rows(int count, int apart, Incumbents incumbents, LongConsumer progress) {
      this.count = count;
      this.apart = apart;
      this.incumbents = incumbents;
      this.progress = progress;
    }

    @Override
    public boolean needs(Build build, int open) {
      return taken.stream().allMatch(row -> row.build().differences(build) + open >= apart);
    }

    @Override
    public boolean take(Assessment assessment) {
      taken.add(assessment);
      return taken.size() < count;
    }

    @Override
    public void watch(List<Assessment> assessed, long nodes) {
      assessed.forEach(incumbents::offer);
      progress.accept(nodes);
    }
  }

  /** Builds that differ from a row in less than rows do, and belong to no earlier row. */
  private static final class Variants implements BestFirst.Sink {
    private final List<Assessment> taken = new ArrayList<>();
    private final List<Assessment> assessed = new ArrayList<>();
    private final Assessment row;
    private final List<Assessment> earlier;
    private final int apart;
    private boolean isCutShort;
    private long nodes;

    Variants(Assessment row, List<Assessment> earlier, int apart) {
      this.row = row;
      this.earlier = earlier;
      this.apart = apart;
    }

    @Override
    public boolean needs(Build build, int open) {
      return open > 0
          || (build.differences(row.build()) < apart
              && !build.hasMainsOf(row.build())
              && earlier.stream().allMatch(other -> other.build().differences(build) >= apart));
    }

    @Override
    public boolean take(Assessment assessment) {
      if (taken.stream().noneMatch(other -> other.build().equals(assessment.build()))) {
        taken.add(assessment);
      }
      return taken.size() < Row.MOST_VARIANTS;
    }

    @Override
    public void watch(List<Assessment> seen, long looks) {
      assessed.addAll(seen);
      nodes = looks;
    }
  }
}
