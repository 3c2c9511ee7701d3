package pappus.ranking;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.BiConsumer;
import java.util.function.BiFunction;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import pappus.assessment.Purpose;
import pappus.assessment.Purpose.Measure;
import pappus.search.Ending;
import pappus.search.Incumbents;
import pappus.search.LocalSearch;
import pappus.search.Proof;
import pappus.search.Question;
import pappus.search.exact.ExactSearch;
import pappus.search.exact.FrontSearch;
import pappus.search.exact.Prepared;
import pappus.search.timefold.TimefoldSearch;

/**
 * Finds the best builds of questions: with proof where it can be had, else by trying changes. It may be asked one
 * question after another.
 *
 * <p>Why: src/site/markdown/decisions.md#timefold-is-not-needed-to-prove-or-to-speed-up-one-build
 */
public final class Finder {
  /** Changes tried in all for a ranking; repeatable on any machine, unlike a time. */
  public static final long MOVES = 64_000;

  /** Changes tried for each of many questions. */
  public static final long FEWER_MOVES = 16_000;

  /** Choices that a proof may cost before changes are tried too. */
  public static final long EFFORT = 5_000_000;

  /** Choices that each search for picks may look into: more is told as not proven. */
  private static final long PICK_EFFORT = 100_000;

  /** Changes that find what comes closest where nothing is feasible: more would find nothing that counts. */
  private static final long CLOSEST_MOVES = 4_000;

  /** Builds that plan with so much of the best are as good where it matters what is there. */
  private static final double PREFERRED_SHARE = 0.95;

  private static final long TOLD_NANOS = 200_000_000;

  private final Way way;
  private final long effort;
  private final long moves;
  private final Consumer<String> progress;
  private String step = "";
  private long lastToldNanos = System.nanoTime() - TOLD_NANOS;
  private volatile boolean stopped;
  private @Nullable Prepared last;
  private volatile @Nullable Runnable running;

  /** How the best builds are looked for. */
  public enum Way {
    /** With proof where it can be had, else by trying changes. */
    AUTO,
    /** With proof, or as far towards it as the effort goes. */
    EXACT,
    /** By trying changes, which proves nothing. */
    HEURISTIC
  }

  /**
   * @param effort choices that a proof looks into at most
   * @param moves changes tried where there is no proof
   * @param progress told what is being done
   */
  public Finder(Way way, long effort, long moves, Consumer<String> progress) {
    this.way = way;
    this.effort = effort;
    this.moves = moves;
    this.progress = progress;
  }

  /** Ends the run soon, keeping what it has; may be called from another thread. */
  public void stop() {
    stopped = true;
    var now = running;
    if (now != null) {
      now.run();
    }
  }

  /** Says what is being done. */
  public void tell(String what) {
    step = what;
    progress.accept(what);
  }

  /** Whether it was stopped. */
  public boolean isStopped() {
    return stopped;
  }

  /**
   * The best builds of a question.
   *
   * @param wanted how many
   */
  public Ranking rank(Question question, int wanted) {
    var preferring = preferring(question);
    return preferring
        .map(one -> rank(one.question(), wanted, one.isProof()).as(question))
        .orElseGet(() -> rank(question, wanted, true));
  }

  /**
   * What a scenario that prefers something of nearly the best asks instead.
   *
   * @param isProof whether the best is proven
   */
  private record Preferring(Question question, boolean isProof) {}

  /** Absent where nothing is preferred, or nothing flies. */
  private Optional<Preferring> preferring(Question question) {
    var purpose = question.assessor().purpose();
    if (question.assessor().scenario().prefer() == null || purpose.measure() != Measure.FLIGHT) {
      return Optional.empty();
    }
    var longest = longest(question);
    return longest
        .build()
        .map(best -> new Preferring(
            question.with(new Purpose(
                Measure.PIECES,
                Math.max(purpose.leastFlight(), (long) Math.ceil(PREFERRED_SHARE * best.planned())),
                !best.isBeyondBelief())),
            longest.isProof()));
  }

  /** The longest or farthest flight to plan with, of builds that are believed unless there is none. */
  private Best longest(Question question) {
    var least = question.assessor().purpose().leastFlight();
    var believed = best(question.with(new Purpose(Measure.PLAN_WITH, least, true)));
    return believed.build().isPresent()
        ? believed
        : best(question.with(new Purpose(Measure.PLAN_WITH, least, false)));
  }

  /** @param maySettle whether its proof proves anything */
  private Ranking rank(Question question, int wanted, boolean maySettle) {
    var incumbents = new Incumbents();
    var ranker = new Ranker(question, incumbents);
    if (way == Way.HEURISTIC) {
      return ranker.rank(wanted, Proof.of(tryChanges(question, incumbents, wanted)));
    }
    var found = prove(question, incumbents, wanted);
    var proof = maySettle ? proof(question, found) : Proof.of(Ending.EFFORT);
    if (found.ending() == Ending.PROVEN) {
      if (found.rows().isEmpty()) {
        // A proof assesses nothing that cannot be feasible: changes find what comes closest.
        tryChanges(
            question, incumbents, Math.min(moves, CLOSEST_MOVES), LocalSearch::improveClosest);
      }
      return ranker.rank(found.rows(), proof);
    }
    if (found.ending() == Ending.EFFORT
        && (way == Way.AUTO || incumbents.bestFirst().isEmpty())) {
      // What is not proven is not to be worse than what changes find, and never nothing.
      tryChanges(question, incumbents, wanted);
    }
    return ranker.rank(wanted, proof);
  }

  /** The best build of a question, if any is feasible. */
  public Best best(Question question) {
    return best(question, effort);
  }

  /**
   * The best build of a question that so many looks find, if any is feasible.
   *
   * @param looks choices to look into at most
   */
  public Best best(Question question, long looks) {
    var preferring = preferring(question);
    if (preferring.isEmpty()) {
      return bestAsAsked(question, looks);
    }
    var found = bestAsAsked(preferring.get().question(), looks).as(question);
    return preferring.get().isProof() ? found : found.unproven();
  }

  private Best bestAsAsked(Question question, long looks) {
    return one(
        question,
        (search, incumbents) -> search.best(
            Math.min(effort, looks), incumbents, done -> tell(question, search, incumbents)));
  }

  /**
   * Whether any build is feasible: the best of those met until one was found, or a proof that there is none.
   *
   * @param looks choices to look into at most
   */
  public Best any(Question question, long looks) {
    return one(question, (search, incumbents) -> search.any(Math.min(effort, looks), incumbents));
  }

  /** Whether any build is feasible, looked for as long as for any proof. */
  public Best any(Question question) {
    return any(question, effort);
  }

  /** What a proof has come to. */
  private void tell(Question question, ExactSearch search, Incumbents incumbents) {
    // Nobody reads as fast as batches end, and the best of many is looked up.
    var now = System.nanoTime();
    if (now - lastToldNanos < TOLD_NANOS) {
      return;
    }
    lastToldNanos = now;
    var headway =
        new Headway(question, incumbents.bestFirst().stream().findFirst(), search.atMost());
    progress.accept((step.isEmpty() ? "proving" : step) + ": " + headway.text());
  }

  private Best one(Question question, BiFunction<ExactSearch, Incumbents, ExactSearch.Found> look) {
    var incumbents = new Incumbents();
    if (way == Way.HEURISTIC) {
      return Best.of(question, incumbents, Proof.of(tryChanges(question, incumbents, 1)));
    }
    var search =
        new ExactSearch(question, prepared(question), Runtime.getRuntime().availableProcessors());
    var found = running(search::stop, () -> look.apply(search, incumbents));
    var proof = proof(question, found);
    return Best.of(question, incumbents, proof);
  }

  /**
   * Every build that no other surpasses in flight, mass and price at once, of those that are believed; of all where none is.
   *
   * @param share of the best flight that one must have to be looked for, 0 to 1
   */
  public ParetoFront front(Question question, double share) {
    return front(question, Measure.FLIGHT, share, effort);
  }

  /**
   * The front as far as so many looks go, in the order of all rankings by that measure.
   *
   * @param measure of the flight: what is expected, or what to plan with
   * @param looks choices to look into at most
   */
  public ParetoFront front(Question question, Measure measure, double share, long looks) {
    if (way == Way.HEURISTIC) {
      return met(question, measure, share);
    }
    var believed = trade(by(measure, question, true), share, looks);
    // Whom nobody believes hides nobody who is; where there is surely nobody else, all are told.
    var found = believed.builds().isEmpty() && believed.ending() == Ending.PROVEN
        ? trade(by(measure, question, false), share, looks)
        : believed;
    if (found.builds().isEmpty() && found.ending() == Ending.EFFORT) {
      // What is not proven is never nothing.
      return met(question, measure, share);
    }
    var builds = found.builds().stream()
        .sorted(Incumbents.BEST_FIRST)
        .map(build -> question.held(question.assessor().assess(build.build())))
        .toList();
    return new ParetoFront(
        builds, measure, share, new Proof(found.ending(), found.atMost(), found.nodes()));
  }

  /**
   * Where the best by what a question ranks by is looked up under lower caps and budgets, of builds that are believed; of
   * all where none is.
   *
   * @param looks choices to look into at most
   */
  public Lookup lookup(Question question, long looks) {
    if (way == Way.HEURISTIC) {
      return Lookup.NOTHING;
    }
    var measure = question.assessor().purpose().measure();
    var believed = trade(by(measure, question, true), 0, looks);
    var found = believed.taken().isEmpty() && believed.ending() == Ending.PROVEN
        ? trade(by(measure, question, false), 0, looks)
        : believed;
    return new Lookup(
        found.taken().stream()
            .map(build -> question.held(question.assessor().assess(build.build())))
            .toList(),
        found.ending() == Ending.PROVEN);
  }

  /** Of what changes meet, without proof. */
  private ParetoFront met(Question question, Measure measure, double share) {
    var incumbents = new Incumbents();
    var proof = Proof.of(tryChanges(question, incumbents, 1));
    return ParetoFront.of(incumbents.bestFirst(), question, measure, share, proof);
  }

  private FrontSearch.Found trade(Question question, double share, long looks) {
    var search =
        new FrontSearch(question, prepared(question), Runtime.getRuntime().availableProcessors());
    return running(
        search::stop,
        () -> search.run(
            share,
            Math.min(effort, looks),
            done -> progress.accept(
                String.format(Locale.ROOT, "trading off, %,d choices looked into", done))));
  }

  /** What is still possible is told of flights alone. */
  private static Proof proof(Question question, ExactSearch.Found found) {
    var atMost = question.assessor().purpose().measure().isOfFlight()
        ? found.atMost()
        : OptionalLong.empty();
    return new Proof(found.ending(), atMost, found.nodes());
  }

  /** A front trades flights for mass and price, whatever else a ranking goes by. */
  private static Question by(Measure measure, Question question, boolean onlyBelieved) {
    var purpose = question.assessor().purpose();
    return question.with(
        new Purpose(measure, purpose.leastFlight(), purpose.onlyBelieved() || onlyBelieved));
  }

  private ExactSearch.Found prove(Question question, Incumbents incumbents, int wanted) {
    var search =
        new ExactSearch(question, prepared(question), Runtime.getRuntime().availableProcessors());
    return running(
        search::stop,
        () -> search.run(wanted, effort, incumbents, done -> tell(question, search, incumbents)));
  }

  /** What searches of a question share; that of the last one is kept. */
  private synchronized Prepared prepared(Question question) {
    var there = last;
    if (there == null || !there.isFor(question)) {
      there = Prepared.of(question);
      last = there;
    }
    return there;
  }

  /**
   * Builds to choose among, as far as their searches go: else the best of those that a ranking has met.
   *
   * @param ranking of the question
   */
  public Picks picks(Question question, Ranking ranking) {
    if (ranking.candidates().isEmpty()) {
      return Picks.NONE;
    }
    tell("picking");
    return way == Way.HEURISTIC
        ? Picker.among(question, ranking)
        : new Picker(
                question, ranking, prepared(question), Math.min(effort, PICK_EFFORT), this::running)
            .pick();
  }

  /** Fills the incumbents by trying changes. */
  private Ending tryChanges(Question question, Incumbents incumbents, int wanted) {
    return tryChanges(
        question, incumbents, moves, (search, isStopped) -> search.improve(wanted, isStopped));
  }

  private Ending tryChanges(
      Question question,
      Incumbents incumbents,
      long most,
      BiConsumer<LocalSearch, BooleanSupplier> improve) {
    var search = new TimefoldSearch(question, most);
    var ending = running(
        search::stop,
        () -> search.run(
            incumbents,
            done -> progress.accept("searching, start " + done + " of " + TimefoldSearch.STARTS)));
    progress.accept("improving part by part");
    improve.accept(new LocalSearch(question, incumbents), () -> stopped);
    return stopped ? Ending.INTERRUPTED : ending;
  }

  /** Runs what can be stopped; a stop that came before it began is not lost. */
  private <T> T running(Runnable stop, Supplier<T> run) {
    running = stop;
    if (stopped) {
      stop.run();
    }
    try {
      return run.get();
    } finally {
      running = null;
    }
  }
}
