package pappus.search.exact;

import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import pappus.search.Ending;
import pappus.search.Question;

/** The builds of a question in their order, as every search here runs through them: by several threads, until stopped. */
final class BuildStream {
  /** So many nodes are branched at once, however many threads there are, so that the answer is one. */
  private static final int BATCH = 64;

  /** Enough work that handing it over costs little beside it. */
  private static final int AT_ONCE = 8;

  private final Question question;
  private final Prepared prepared;
  private final int threads;
  private @Nullable BestFirst running;
  private volatile boolean stopped;

  /**
   * What a run came to, its threads still there.
   *
   * @param left what no build surpasses that was not told; empty if there is nothing more
   * @param nodes that were branched
   */
  record Ran(Ending ending, OptionalLong left, long nodes, Branching branching, Workers workers) {}

  /**
   * @param prepared for the question
   * @param threads that share the work; the answer does not depend on it
   */
  BuildStream(Question question, Prepared prepared, int threads) {
    this.question = question;
    this.prepared = prepared;
    this.threads = threads;
  }

  /** Ends the run soon; may be called from another thread. */
  void stop() {
    stopped = true;
  }

  boolean isStopped() {
    return stopped;
  }

  /** What no build that was not told yet surpasses; to be asked by who is told of progress alone. */
  OptionalLong atMost() {
    var now = running;
    return now == null ? OptionalLong.empty() : now.left();
  }

  /**
   * Runs until the sink has enough, nothing is left or something ends it.
   *
   * @param wanted which complete builds of four main parts are told
   * @param effort nodes to branch at most
   * @param until also ends it
   * @param told makes the answer of what was run
   * @return empty if there is no build at all
   */
  <T> Optional<T> run(
      Bounds bounds,
      Branching.Wanted wanted,
      BestFirst.Sink sink,
      long effort,
      BooleanSupplier until,
      Function<Ran, T> told) {
    if (!prepared.isComplete()) {
      return Optional.empty();
    }
    var branching = new Branching(question, prepared, bounds, wanted);
    try (var workers = Workers.of(threads)) {
      var stream = new BestFirst(branching, branching.all(), workers.atOnce(AT_ONCE), BATCH);
      running = stream;
      var ending = stream.run(sink, effort, () -> stopped || until.getAsBoolean());
      return Optional.of(
          told.apply(new Ran(ending, stream.left(), stream.nodes(), branching, workers)));
    }
  }

  /** As {@link #run}, which nothing else ends. */
  <T> Optional<T> run(
      Bounds bounds,
      Branching.Wanted wanted,
      BestFirst.Sink sink,
      long effort,
      Function<Ran, T> told) {
    return run(bounds, wanted, sink, effort, () -> false, told);
  }
}
