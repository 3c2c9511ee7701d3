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

/**
 * Best-first branch and bound: always branches the node with the greatest bound, and tells a build once no node that is
 * open has a greater one.
 */
final class BestFirst {
  private final Branching branching;
  private final Workers workers;
  private final int batchSize;
  private final PriorityQueue<Node> open = new PriorityQueue<>(Node.MOST_FIRST);
  private final HashSet<Node.Triple.Start> started = new HashSet<>();
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

    /** Told what was assessed and how many nodes were branched so far, now and then. */
    void watch(List<Assessment> assessed, long nodes);
  }

  /**
   * @param batchSize so many nodes are branched at once, however many workers there are, so that the answer is one
   */
  BestFirst(Branching branching, List<Node> from, Workers workers, int batchSize) {
    this.branching = branching;
    this.workers = workers;
    this.batchSize = batchSize;
    from.forEach(this::add);
  }

  private void add(Node one) {
    open.add(one.numbered(++numbers));
  }

  /** What nothing surpasses that was not told yet; empty if there is nothing more. */
  OptionalLong left() {
    var first = open.peek();
    return first == null ? OptionalLong.empty() : OptionalLong.of(first.bound());
  }

  /** Nodes that were branched. */
  long nodes() {
    return nodes;
  }

  /**
   * Goes on until the sink has enough, or nothing is left.
   *
   * @param effort nodes to branch at most
   * @param stopped asked whether to give up
   */
  Ending run(Sink sink, long effort, BooleanSupplier stopped) {
    var ending = search(sink, effort, stopped);
    if (ending == Ending.PROVEN) {
      branching.closings().close(Closings.Reason.BOUND, open.size());
    }
    return ending;
  }

  private Ending search(Sink sink, long effort, BooleanSupplier stopped) {
    while (!open.isEmpty() && open.peek().bound() >= sink.least()) {
      if (stopped.getAsBoolean()) {
        return Ending.INTERRUPTED;
      }
      if (nodes >= effort) {
        return Ending.EFFORT;
      }
      var batch = batch(sink);
      if (!batch.isEmpty()) {
        branch(batch, sink);
      } else if (open.poll() instanceof Node.Done done && !isMoreWanted(done, sink)) {
        return Ending.PROVEN;
      }
    }
    return Ending.PROVEN;
  }

  private boolean isMoreWanted(Node.Done done, Sink sink) {
    if (!sink.needs(done.assessment().build(), 0)) {
      branching.closings().close(Closings.Reason.NEAR, 1);
      return true;
    }
    branching.closings().close(Closings.Reason.TOLD, 1);
    return sink.take(done.assessment());
  }

  private void branch(List<Node> batch, Sink sink) {
    var following = open.peek();
    var until = following == null ? 0 : following.bound();
    var assessed = new ArrayList<Assessment>();
    var found = workers.each(batch, one -> branching.branch(one, until, started));
    for (var i = 0; i < found.size(); i++) {
      assessed.addAll(found.get(i).assessed());
      nodes += found.get(i).looks();
      for (var next : found.get(i).open()) {
        var isStart = batch.get(i) instanceof Node.Wide && next instanceof Node.Triple;
        if (!isStart || started.add(((Node.Triple) next).start())) {
          add(next);
        } else {
          branching.closings().close(Closings.Reason.MET, 1);
        }
      }
    }
    sink.watch(assessed, nodes);
  }

  private List<Node> batch(Sink sink) {
    var batch = new ArrayList<Node>();
    while (batch.size() < batchSize && !open.isEmpty() && !(open.peek() instanceof Node.Done)) {
      var next = Objects.requireNonNull(open.poll());
      if (isNeeded(next, sink)) {
        batch.add(next);
      } else {
        branching.closings().close(Closings.Reason.NEAR, 1);
      }
    }
    return batch;
  }

  private static boolean isNeeded(Node next, Sink sink) {
    if (next instanceof Node.Triple triple) {
      return sink.needs(triple.build(), 1);
    }
    return !(next instanceof Node.Four four) || sink.needs(four.build(), 0);
  }
}
