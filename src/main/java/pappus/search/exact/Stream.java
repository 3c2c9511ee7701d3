package pappus.search.exact;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.OptionalLong;
import java.util.PriorityQueue;
import java.util.function.BooleanSupplier;
import pappus.assessment.Assessment;
import pappus.part.Build;
import pappus.search.Ending;

/** Builds of some choices, the best first. */
final class Stream {
  private final Choices choices;
  private final Workers workers;
  private final int batchSize;
  private final PriorityQueue<Open> open = new PriorityQueue<>(Open.MOST_FIRST);
  private final HashSet<Open.Triple.Start> started = new HashSet<>();
  private long numbers;
  private long nodes;

  /** Who takes builds in their order. */
  interface Sink {
    /**
     * Whether a build with these main parts may be taken.
     *
     * @param open main parts that are not chosen yet
     */
    boolean needs(Build build, int open);

    /** Takes one; false once it has enough. */
    boolean take(Assessment assessment);

    /** What reaches less is not looked for. */
    default long least() {
      return 0;
    }

    /** Told what was assessed and how many choices were looked into so far, now and then. */
    void watch(List<Assessment> assessed, long nodes);
  }

  /**
   * @param batchSize so many choices are looked into at once, however many workers there are, so that the answer is one
   */
  Stream(Choices choices, List<Open> from, Workers workers, int batchSize) {
    this.choices = choices;
    this.workers = workers;
    this.batchSize = batchSize;
    from.forEach(this::add);
  }

  private void add(Open one) {
    open.add(one.numbered(++numbers));
  }

  /** What nothing surpasses that was not told yet; empty if there is nothing more. */
  OptionalLong left() {
    var first = open.peek();
    return first == null ? OptionalLong.empty() : OptionalLong.of(first.most());
  }

  /** Choices looked into. */
  long nodes() {
    return nodes;
  }

  /**
   * Goes on until the sink has enough, or nothing is left.
   *
   * @param effort choices to look into at most
   * @param stopped asked whether to give up
   */
  Ending run(Sink sink, long effort, BooleanSupplier stopped) {
    while (!open.isEmpty() && open.peek().most() >= sink.least()) {
      if (stopped.getAsBoolean()) {
        return Ending.INTERRUPTED;
      }
      if (nodes >= effort) {
        return Ending.EFFORT;
      }
      var batch = batch(sink);
      if (!batch.isEmpty()) {
        lookInto(batch, sink);
      } else if (open.poll() instanceof Open.Done done
          && sink.needs(done.assessment().build(), 0)
          && !sink.take(done.assessment())) {
        return Ending.PROVEN;
      }
    }
    return Ending.PROVEN;
  }

  private void lookInto(List<Open> batch, Sink sink) {
    var following = open.peek();
    var until = following == null ? 0 : following.most();
    var assessed = new ArrayList<Assessment>();
    var found = workers.each(batch, one -> choices.lookInto(one, until, started));
    for (var i = 0; i < found.size(); i++) {
      assessed.addAll(found.get(i).assessed());
      nodes += found.get(i).looks();
      for (var next : found.get(i).open()) {
        var isStart = batch.get(i) instanceof Open.Wide && next instanceof Open.Triple;
        if (!isStart || started.add(((Open.Triple) next).start())) {
          add(next);
        }
      }
    }
    sink.watch(assessed, nodes);
  }

  private List<Open> batch(Sink sink) {
    var batch = new ArrayList<Open>();
    while (batch.size() < batchSize && !open.isEmpty() && !(open.peek() instanceof Open.Done)) {
      var next = Objects.requireNonNull(open.poll());
      if (isNeeded(next, sink)) {
        batch.add(next);
      }
    }
    return batch;
  }

  private static boolean isNeeded(Open next, Sink sink) {
    if (next instanceof Open.Triple triple) {
      return sink.needs(triple.build(), 1);
    }
    return !(next instanceof Open.Four four) || sink.needs(four.build(), 0);
  }
}
