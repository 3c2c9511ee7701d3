package pappus.search.exact;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.PriorityQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.LongConsumer;
import pappus.assessment.Assessment;
import pappus.catalog.Build;
import pappus.scenario.Flight.Style;
import pappus.search.Ending;
import pappus.search.MainParts;
import pappus.search.Pool;
import pappus.search.Question;
import pappus.search.Row;

/**
 * Finds the best builds and proves that no other does better: always goes on where most can still be reached, and
 * tells a build only once nothing that is left can reach as much.
 *
 * <p>Boxes of motors, propellers and batteries come first and are halved until each has one part; then the frame,
 * then the accessories. What a choice can still reach is worked out by the assessment's own physics with the least
 * mass and draw that any completion has; a complete build is assessed like any other.
 */
public final class ExactSearch {
  /** So many choices are looked into at once, however many threads there are, so that the answer is one. */
  private static final int BATCH = 64;

  private final Question question;
  private final int threads;
  private final int apart;
  private volatile boolean stopped;
  private long nodes;
  private long numbers;

  /**
   * What was found.
   *
   * @param rows best first
   * @param ending {@link Ending#PROVEN} if nothing else can be among them
   * @param atMost what nothing that was not seen surpasses; empty if nothing was left
   * @param nodes choices looked into
   */
  public record Found(List<Row> rows, Ending ending, OptionalLong atMost, long nodes) {
    public Found {
      rows = List.copyOf(rows);
    }
  }

  /**
   * @param threads that share the work; the answer does not depend on it
   */
  public ExactSearch(Question question, int threads) {
    this.question = question;
    this.threads = threads;
    this.apart = question.assessor().scenario().differences();
  }

  /** Why a question cannot be answered with proof; empty where it can. */
  public static Optional<String> obstacle(Question question) {
    return question.assessor().scenario().flight().style() == Style.PROFILE
        ? Optional.of("a profile of several legs cannot be bounded yet")
        : Optional.empty();
  }

  /** Ends the run soon, keeping what it has; may be called from another thread. */
  public void stop() {
    stopped = true;
  }

  /**
   * Runs to its end.
   *
   * @param count rows wanted; each differs from every earlier one in as many main parts as the scenario asks for
   * @param effort choices to look into at most
   * @param pool told every build that is assessed
   * @param progress told the choices looked into
   */
  public Found run(int count, long effort, Pool pool, LongConsumer progress) {
    var goods = new Goods(question);
    if (!goods.areComplete()) {
      return new Found(List.of(), Ending.PROVEN, OptionalLong.empty(), 0);
    }
    var choices = new Choices(goods);
    var workers = Executors.newFixedThreadPool(threads);
    try {
      var stream = new Stream(choices, choices.all(), new Workers(workers), pool, effort, progress);
      var rows = new ArrayList<Assessment>();
      var ending = stream.run(new Sink() {
        @Override
        public boolean needs(Build build, int open) {
          return rows.stream()
              .allMatch(row -> MainParts.differences(row.build(), build) + open >= apart);
        }

        @Override
        public boolean take(Assessment assessment) {
          rows.add(assessment);
          return rows.size() < count;
        }
      });
      var told = new ArrayList<Row>();
      for (var row = 0; row < rows.size(); row++) {
        told.add(new Row(
            rows.get(row),
            ending == Ending.PROVEN && apart > 1
                ? variants(choices, rows.get(row), rows.subList(0, row), workers, pool, progress)
                : List.of()));
      }
      return new Found(
          told,
          stopped ? Ending.INTERRUPTED : ending,
          ending == Ending.PROVEN ? OptionalLong.empty() : stream.left(),
          nodes);
    } finally {
      workers.shutdownNow();
    }
  }

  /** Who takes builds in their order. */
  private interface Sink {
    /**
     * Whether a build with these main parts may be taken.
     *
     * @param open main parts that are not chosen yet
     */
    boolean needs(Build build, int open);

    /** Takes one; false once it has enough. */
    boolean take(Assessment assessment);
  }

  /** Builds of some choices, the best first. */
  private final class Stream {
    private final Choices choices;
    private final PriorityQueue<Open> open = new PriorityQueue<>(Open.MOST_FIRST);
    private final HashSet<Open.Triple.Start> started = new HashSet<>();
    private final Workers workers;
    private final Pool pool;
    private final long effort;
    private final LongConsumer progress;

    Stream(
        Choices choices,
        List<Open> from,
        Workers workers,
        Pool pool,
        long effort,
        LongConsumer progress) {
      this.choices = choices;
      this.workers = workers;
      this.pool = pool;
      this.effort = effort;
      this.progress = progress;
      from.forEach(this::add);
    }

    private void add(Open one) {
      open.add(one.numbered(++numbers));
    }

    OptionalLong left() {
      var first = open.peek();
      return first == null ? OptionalLong.empty() : OptionalLong.of(first.most());
    }

    Ending run(Sink sink) {
      while (!open.isEmpty()) {
        if (stopped) {
          return Ending.INTERRUPTED;
        }
        if (nodes >= effort) {
          return Ending.EFFORT;
        }
        var batch = batch(sink);
        if (batch.isEmpty()) {
          if (open.poll() instanceof Open.Done done
              && sink.needs(done.assessment().build(), 0)
              && !sink.take(done.assessment())) {
            return Ending.PROVEN;
          }
          continue;
        }
        var following = open.peek();
        var until = following == null ? 0 : following.most();
        var found = workers.each(batch, one -> choices.lookInto(one, until, started));
        for (var i = 0; i < found.size(); i++) {
          found.get(i).assessed().forEach(pool::offer);
          nodes += found.get(i).looks();
          for (var next : found.get(i).open()) {
            var isStart = batch.get(i) instanceof Open.Wide && next instanceof Open.Triple;
            if (!isStart || started.add(((Open.Triple) next).start())) {
              add(next);
            }
          }
        }
        progress.accept(nodes);
      }
      return Ending.PROVEN;
    }

    private List<Open> batch(Sink sink) {
      var batch = new ArrayList<Open>();
      while (batch.size() < BATCH && !open.isEmpty() && !(open.peek() instanceof Open.Done)) {
        var next = Objects.requireNonNull(open.poll());
        if (isNeeded(next, sink)) {
          batch.add(next);
        }
      }
      return batch;
    }

    private boolean isNeeded(Open next, Sink sink) {
      if (next instanceof Open.Triple triple) {
        return sink.needs(triple.build(), 1);
      }
      return !(next instanceof Open.Four four) || sink.needs(four.build(), 0);
    }
  }

  /** The best builds that differ from a row in one main part and belong to no earlier row. */
  private List<Assessment> variants(
      Choices choices,
      Assessment row,
      List<Assessment> earlier,
      ExecutorService workers,
      Pool pool,
      LongConsumer progress) {
    var found = new ArrayList<Assessment>();
    new Stream(
            choices,
            choices.near(row.build()),
            new Workers(workers),
            pool,
            Long.MAX_VALUE,
            progress)
        .run(new Sink() {
          @Override
          public boolean needs(Build build, int open) {
            return open > 0
                || (MainParts.differences(build, row.build()) == 1
                    && earlier.stream()
                        .allMatch(other -> MainParts.differences(other.build(), build) > 1));
          }

          @Override
          public boolean take(Assessment assessment) {
            if (found.stream().noneMatch(other -> other.build().equals(assessment.build()))) {
              found.add(assessment);
            }
            return found.size() < Row.MOST_VARIANTS;
          }
        });
    return found;
  }
}
