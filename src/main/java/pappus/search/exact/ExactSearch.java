package pappus.search.exact;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.PriorityQueue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.LongConsumer;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import pappus.assessment.Assessment;
import pappus.catalog.Battery;
import pappus.catalog.Build;
import pappus.catalog.Role;
import pappus.scenario.Flight.Style;
import pappus.search.Ending;
import pappus.search.Pool;
import pappus.search.Question;
import pappus.search.Row;

/**
 * Finds the best builds and proves that no other does better: always goes on where most can still be reached, and
 * tells a build only once nothing that is left can reach as much.
 *
 * <p>Choices are made in the order motor, propeller and battery together, then the frame, then the accessories. What
 * a choice can still reach is worked out by the assessment's own physics with the least mass and draw that any
 * completion has; a complete build is assessed like any other.
 */
public final class ExactSearch {
  /** So many choices are looked into at once, however many threads there are, so that the answer is one. */
  private static final int BATCH = 64;

  private static final List<Role> MAIN =
      List.of(Role.FRAME, Role.MOTOR, Role.PROPELLER, Role.BATTERY);

  private final Question question;
  private final int threads;
  private final Goods goods;
  private final Mains mains;
  private final KitFronts fronts;
  private final Aim flight;
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

  /** A choice not yet looked into, or a build that is done. */
  private sealed interface Open permits Triple, Four, Done {
    long most();

    long number();
  }

  private record Triple(int motor, int propeller, int battery, int next, long most, long number)
      implements Open {}

  private record Four(
      Build build, @Nullable KitSearch kits, @Nullable Assessment best, long most, long number)
      implements Open {}

  private record Done(Assessment assessment, long most, long number) implements Open {}

  /** What may reach most first; of equals, builds that are done after all others and in their own order. */
  private static final Comparator<Open> MOST_FIRST = Comparator.comparingLong(Open::most)
      .reversed()
      .thenComparing(open -> open instanceof Done)
      .thenComparing((one, other) -> one instanceof Done mine && other instanceof Done theirs
          ? Pool.BEST_FIRST.compare(mine.assessment, theirs.assessment)
          : 0)
      .thenComparingLong(Open::number);

  /**
   * @param threads that share the work; the answer does not depend on it
   */
  public ExactSearch(Question question, int threads) {
    this.question = question;
    this.threads = threads;
    this.goods = new Goods(question);
    this.mains = new Mains(goods);
    this.fronts = new KitFronts(goods);
    this.flight = new Flight(question.assessor(), mains.leastDragArea());
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
   * @param count rows wanted; each differs from every earlier one in at least two main parts
   * @param effort choices to look into at most
   * @param pool told every build that is assessed
   * @param progress told the choices looked into
   */
  public Found run(int count, long effort, Pool pool, LongConsumer progress) {
    var workers = Executors.newFixedThreadPool(threads);
    try {
      var open = new PriorityQueue<>(MOST_FIRST);
      open.addAll(triples(workers));
      var rows = new ArrayList<Assessment>();
      var ending = stream(open, workers, pool, effort, progress, new Sink() {
        @Override
        public boolean needs(Build build, int open) {
          return rows.stream().allMatch(row -> differences(row.build(), build) + open >= 2);
        }

        @Override
        public boolean take(Assessment assessment) {
          rows.add(assessment);
          return rows.size() < count;
        }
      });
      var left = open.peek();
      var atMost = ending == Ending.PROVEN || left == null
          ? OptionalLong.empty()
          : OptionalLong.of(left.most());
      var told = new ArrayList<Row>();
      for (var row = 0; row < rows.size(); row++) {
        told.add(new Row(
            rows.get(row),
            ending == Ending.PROVEN
                ? variants(rows.get(row), rows.subList(0, row), workers, pool, progress)
                : List.of()));
      }
      return new Found(told, stopped ? Ending.INTERRUPTED : ending, atMost, nodes);
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

  private Ending stream(
      PriorityQueue<Open> open,
      ExecutorService workers,
      Pool pool,
      long effort,
      LongConsumer progress,
      Sink sink) {
    while (!open.isEmpty()) {
      if (stopped) {
        return Ending.INTERRUPTED;
      }
      if (nodes >= effort) {
        return Ending.EFFORT;
      }
      var batch = new ArrayList<Open>();
      while (batch.size() < BATCH && !open.isEmpty() && !(open.peek() instanceof Done)) {
        var next = Objects.requireNonNull(open.poll());
        if (isNeeded(next, sink)) {
          batch.add(next);
        }
      }
      if (batch.isEmpty()) {
        if (open.poll() instanceof Done done
            && sink.needs(done.assessment.build(), 0)
            && !sink.take(done.assessment)) {
          return Ending.PROVEN;
        }
        continue;
      }
      var following = open.peek();
      var until = following == null ? 0 : following.most();
      each(batch, workers, one -> lookInto(one, until)).forEach(looked -> {
        looked.assessed.forEach(pool::offer);
        nodes += looked.nodes;
        looked.left.forEach(left -> open.add(numbered(left)));
      });
      progress.accept(nodes);
    }
    return Ending.PROVEN;
  }

  private boolean isNeeded(Open open, Sink sink) {
    if (open instanceof Triple triple) {
      return sink.needs(three(triple.motor, triple.propeller, triple.battery), 1);
    }
    return !(open instanceof Four four) || sink.needs(four.build, 0);
  }

  private Build three(int motor, int propeller, int battery) {
    return Build.empty()
        .with(Role.MOTOR, mains.of(Role.MOTOR, motor))
        .with(Role.PROPELLER, mains.of(Role.PROPELLER, propeller))
        .with(Role.BATTERY, mains.of(Role.BATTERY, battery));
  }

  private record Looked(List<Open> left, List<Assessment> assessed, long nodes) {}

  private Looked lookInto(Open open, long until) {
    if (open instanceof Triple triple) {
      return new Looked(frames(triple), List.of(), 1);
    }
    return kits((Four) open, until);
  }

  /** The next frame of three parts, and the rest of the frames. */
  private List<Open> frames(Triple triple) {
    var left = new ArrayList<Open>();
    var seated = mains.frames(triple.motor).get(triple.next);
    var frame = mains.of(Role.FRAME, seated.frame());
    var four = three(triple.motor, triple.propeller, triple.battery).with(Role.FRAME, frame);
    if (mains.fit(four)) {
      var most = Math.min(triple.most, most(four));
      if (most >= 0) {
        left.add(new Four(four, null, null, most, 0));
      }
    }
    var rest = triple(triple.motor, triple.propeller, triple.battery, triple.next + 1, triple.most);
    if (rest != null) {
      left.add(rest);
    }
    return left;
  }

  /** Three parts with their lightest frame from a place on; null if there is none or nothing can come of it. */
  private @Nullable Triple triple(int motor, int propeller, int battery, int from, long atMost) {
    var frames = mains.frames(motor);
    var next = from;
    while (next < frames.size() && !mains.takes(frames.get(next).frame(), propeller, battery)) {
      next++;
    }
    if (next == frames.size()) {
      return null;
    }
    var pack = (Battery) mains.of(Role.BATTERY, battery);
    var build = three(motor, propeller, battery);
    var grams = goods.nothing().grams()
        + goods.grams(Role.MOTOR, mains.of(Role.MOTOR, motor))
        + goods.grams(Role.PROPELLER, mains.of(Role.PROPELLER, propeller))
        + goods.grams(Role.BATTERY, pack)
        + frames.get(next).grams();
    var most = Aim.HOPELESS;
    for (var front : fronts.of(pack)) {
      var least = front.least();
      most = Math.max(
          most, flight.atMost(build, grams + least.grams(), 0, least.watts(), 0, front.loss()));
    }
    return most < 0 ? null : new Triple(motor, propeller, battery, next, Math.min(atMost, most), 0);
  }

  /** The most that four main parts reach with any accessories that go with the battery. */
  private long most(Build four) {
    var begun = question.assessor().begun(four);
    var most = Aim.HOPELESS;
    for (var front : fronts.of(four.battery().orElseThrow())) {
      for (var point : front.points()) {
        most = Math.max(
            most,
            flight.atMost(
                four,
                begun.grams() + point.grams(),
                begun.variance(),
                point.watts(),
                begun.cents(),
                front.loss()));
      }
    }
    return most;
  }

  /** Accessories of four main parts, as long as they may reach more than what waits. */
  private Looked kits(Four four, long until) {
    var assessed = new ArrayList<Assessment>();
    var attempt = new Attempt(four.best, assessed);
    var kits = four.kits;
    if (kits == null) {
      var begun = question.assessor().begun(four.build);
      kits = new KitSearch(goods, flight, four.build, begun.variance(), begun.cents());
    }
    var before = kits.steps();
    while (kits.most() >= Math.max(Math.max(until, attempt.objective()), 0)) {
      kits.step(attempt::complete);
    }
    var best = attempt.best;
    var most = Math.min(four.most, Math.max(kits.most(), attempt.objective()));
    var left = new ArrayList<Open>();
    if (best != null && kits.most() < best.objective()) {
      left.add(new Done(best, best.objective(), 0));
    } else if (most >= 0) {
      left.add(new Four(four.build, kits, best, most, 0));
    }
    return new Looked(left, assessed, kits.steps() - before);
  }

  /** Complete builds of four main parts. */
  private final class Attempt {
    private final List<Assessment> assessed;
    private @Nullable Assessment best;

    Attempt(@Nullable Assessment best, List<Assessment> assessed) {
      this.best = best;
      this.assessed = assessed;
    }

    long objective() {
      return best == null ? Aim.HOPELESS : best.objective();
    }

    void complete(Build build) {
      var assessment = question.assessor().assess(build);
      assessed.add(assessment);
      if (assessment.isFeasible()
          && (best == null || Pool.BEST_FIRST.compare(assessment, best) < 0)) {
        best = assessment;
      }
    }
  }

  private List<Open> triples(ExecutorService workers) {
    var motors = IntStream.range(0, mains.of(Role.MOTOR).size()).boxed().toList();
    return each(motors, workers, this::triplesOf).stream()
        .flatMap(List::stream)
        .map(this::numbered)
        .toList();
  }

  private List<Open> triplesOf(int motor) {
    var all = new ArrayList<Open>();
    mains.propellers(motor).stream()
        .forEach(propeller -> mains.batteries(motor).stream().forEach(battery -> {
          var triple = triple(motor, propeller, battery, 0, Long.MAX_VALUE);
          if (triple != null) {
            all.add(triple);
          }
        }));
    return all;
  }

  /** The best builds that differ from a row in one main part and belong to no earlier row. */
  private List<Assessment> variants(
      Assessment row,
      List<Assessment> earlier,
      ExecutorService workers,
      Pool pool,
      LongConsumer progress) {
    var seeds = new ArrayList<Build>();
    for (var role : MAIN) {
      for (var part : mains.of(role)) {
        seeds.add(four(row.build()).with(role, part));
      }
    }
    var open = new PriorityQueue<>(MOST_FIRST);
    var needed = new LinkedHashSet<>(seeds)
        .stream()
            .filter(build -> differences(build, row.build()) == 1
                && earlier.stream().allMatch(other -> differences(other.build(), build) > 1))
            .toList();
    each(needed, workers, this::start).forEach(four -> four.ifPresent(open::add));
    var found = new ArrayList<Assessment>();
    stream(open, workers, pool, Long.MAX_VALUE, progress, new Sink() {
      @Override
      public boolean needs(Build build, int open) {
        return true;
      }

      @Override
      public boolean take(Assessment assessment) {
        found.add(assessment);
        return found.size() < Row.MOST_VARIANTS;
      }
    });
    return found;
  }

  private Optional<Open> start(Build four) {
    for (var one : MAIN) {
      for (var other : MAIN) {
        if (one.compareTo(other) < 0 && !mains.pair(four, one, other)) {
          return Optional.empty();
        }
      }
    }
    var most = mains.fit(four) ? most(four) : Aim.HOPELESS;
    return most < 0 ? Optional.empty() : Optional.of(new Four(four, null, null, most, 0));
  }

  private static Build four(Build build) {
    var four = Build.empty();
    for (var role : MAIN) {
      four = four.with(role, build.part(role).orElseThrow());
    }
    return four;
  }

  /** In how many main parts two builds differ; one that lacks a part differs in none by it. */
  private static int differences(Build one, Build other) {
    var count = 0;
    for (var role : MAIN) {
      var mine = one.part(role);
      var theirs = other.part(role);
      if (theirs.isPresent()
          && mine.isPresent()
          && !mine.get().id().equals(theirs.get().id())) {
        count++;
      }
    }
    return count;
  }

  private Open numbered(Open open) {
    numbers++;
    if (open instanceof Triple one) {
      return new Triple(one.motor, one.propeller, one.battery, one.next, one.most, numbers);
    }
    return open instanceof Four four
        ? new Four(four.build, four.kits, four.best, four.most, numbers)
        : open;
  }

  /** Does the same to each, on all threads; the answers are in the order of what was asked. */
  private static <A, B> List<B> each(
      List<A> asked, ExecutorService workers, java.util.function.Function<A, B> what) {
    var futures = new ArrayList<Future<B>>();
    for (var one : asked) {
      futures.add(workers.submit(() -> what.apply(one)));
    }
    var answers = new ArrayList<B>();
    for (var future : futures) {
      try {
        answers.add(future.get());
      } catch (InterruptedException interrupted) {
        Thread.currentThread().interrupt();
        throw new IllegalStateException(interrupted);
      } catch (ExecutionException failed) {
        throw new IllegalStateException(failed.getCause());
      }
    }
    return answers;
  }
}
