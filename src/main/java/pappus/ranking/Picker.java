package pappus.ranking;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import pappus.assessment.Assessment;
import pappus.assessment.Purpose;
import pappus.assessment.Purpose.Measure;
import pappus.doubt.Doubts;
import pappus.search.Ending;
import pappus.search.Incumbents;
import pappus.search.Question;
import pappus.search.exact.ExactSearch;
import pappus.search.exact.LevelSearch;
import pappus.search.exact.Prepared;

/** Picks builds for a question, each proven. */
final class Picker {
  /** What is kept of the best flight to plan with, rising. */
  private static final List<Double> LEVELS = List.of(0.80, 0.90, 0.95, 0.98);

  private static final int MOST = 4;
  private static final long UNPROVEN = 5;
  private static final double THRIFTY = 0.95;

  /** No more than the scenario demands. */
  private static final double ASKED = 0;

  private static final double STRONG_OR_LIGHT = 0.80;

  private final Question question;
  private final @Nullable Found best;
  private final List<Assessment> met;
  private final @Nullable Prepared prepared;
  private final long effort;
  private final Running running;
  private boolean isProven = true;

  /** Runs what can be stopped. */
  interface Running {
    <T> T run(Runnable stop, Supplier<T> run);
  }

  /**
   * A build that a search found, or one that was met.
   *
   * @param isProven whether none is better
   */
  private record Found(Assessment build, boolean isProven) {}

  /**
   * @param ranking what is known already
   * @param prepared absent: nothing is searched
   * @param effort of each search
   */
  Picker(
      Question question,
      Ranking ranking,
      @Nullable Prepared prepared,
      long effort,
      Running running) {
    this.question = question;
    this.best = ranking.candidates().stream()
        .findFirst()
        .map(row -> new Found(row.assessment(), ranking.coverage().isProof()))
        .orElse(null);
    this.met = ranking.met();
    this.prepared = prepared;
    this.effort = effort;
    this.running = running;
  }

  /** The best of builds that are known already: nothing is proven. */
  static Picks among(Question question, Ranking ranking) {
    return new Picker(question, ranking, null, 0, new Running() {
          @Override
          public <T> T run(Runnable stop, Supplier<T> run) {
            return run.get();
          }
        })
        .pick();
  }

  Picks pick() {
    var believed = longest(true);
    var first = believed == null ? longest(false) : believed;
    if (first == null) {
      return new Picks(List.of(), List.of(), true, isProven);
    }
    var planWith = question.assessor().planned(first.build());
    var cheapest = levels(Measure.PRICE, LEVELS, planWith, first);
    var lightest = levels(Measure.MASS, LEVELS, planWith, first);
    var strongest = levels(Measure.THRUST, List.of(STRONG_OR_LIGHT), planWith, first);
    var longest =
        question.assessor().scenario().isForRange() ? Pick.Kind.FARTHEST : Pick.Kind.LONGEST;
    var picks = new Chosen(first.build());
    asked(planWith, first, picks);
    picks.add(first, longest);
    picks.add(cheapest.get(THRIFTY), Pick.Kind.THRIFTY);
    picks.add(strongest.get(STRONG_OR_LIGHT), Pick.Kind.STRONGEST);
    picks.add(lightest.get(STRONG_OR_LIGHT), Pick.Kind.LIGHTEST);
    var givenUp = new LinkedHashMap<String, Picks.GivenUp>();
    for (var level : LEVELS) {
      giveUp(cheapest.get(level), givenUp);
      giveUp(lightest.get(level), givenUp);
    }
    return new Picks(
        picks.all,
        Picks.worthTelling(first.build(), List.copyOf(givenUp.values())),
        believed != null,
        isProven);
  }

  /** What answers a scenario that asks for no more of a flight than it names. */
  private void asked(long planWith, Found first, Chosen picks) {
    if (question.assessor().scenario().prefer() != null) {
      // The ranking prefers builds that are believed already.
      picks.add(best, Pick.Kind.OWNED);
      return;
    }
    var measure = question.assessor().purpose().measure();
    switch (measure) {
      case FLIGHT, PLAN_WITH, PIECES -> {}
      case PRICE -> picks.add(atAsked(measure, planWith, first), Pick.Kind.CHEAPEST);
      case MASS -> picks.add(atAsked(measure, planWith, first), Pick.Kind.LIGHTEST);
      case THRUST -> picks.add(atAsked(measure, planWith, first), Pick.Kind.STRONGEST);
    }
  }

  /** The best by a measure of builds that fly as much as is asked for. */
  private @Nullable Found atAsked(Measure measure, long planWith, Found first) {
    if (best != null && best.build().isBeyondBelief() == first.build().isBeyondBelief()) {
      return best;
    }
    return levels(measure, List.of(ASKED), planWith, first).get(ASKED);
  }

  private void giveUp(@Nullable Found found, Map<String, Picks.GivenUp> givenUp) {
    if (found != null) {
      var build = found.build();
      givenUp.put(
          build.build().toString(), new Picks.GivenUp(build, question.assessor().planned(build)));
    }
  }

  /** Picks so far, no build twice. */
  private final class Chosen {
    private final List<Pick> all = new ArrayList<>();
    private final Assessment mostFlight;

    Chosen(Assessment mostFlight) {
      this.mostFlight = mostFlight;
    }

    void add(@Nullable Found found, Pick.Kind kind) {
      if (found == null || all.size() == MOST) {
        return;
      }
      var build = found.build();
      var isAnother = all.stream()
          .noneMatch(
              earlier -> earlier.kind() == kind || earlier.build().build().equals(build.build()));
      if (isAnother && (all.isEmpty() || Picks.isOfItsOwn(kind, mostFlight, build))) {
        all.add(
            new Pick(kind, build, new Doubts(question.assessor()).band(build), found.isProven()));
      }
    }
  }

  private @Nullable Found longest(boolean onlyBelieved) {
    var asked = question.with(
        new Purpose(Measure.PLAN_WITH, question.assessor().purpose().leastFlight(), onlyBelieved));
    var incumbents = new Incumbents();
    var ending = Ending.EFFORT;
    var there = prepared;
    if (there != null) {
      var search = new ExactSearch(asked, there, threads());
      ending = running
          .run(search::stop, () -> search.best(effort, incumbents, done -> {}))
          .ending();
    }
    if (ending != Ending.PROVEN) {
      isProven = false;
      met.forEach(build -> incumbents.offer(asked.assessor().assess(build.build())));
    }
    var isSure = ending == Ending.PROVEN;
    return incumbents.bestFirst().stream()
        .findFirst()
        .map(found -> new Found(asAsked(found), isSure))
        .orElse(null);
  }

  /** The best by a measure at each of some shares of a flight to plan with. */
  private Map<Double, Found> levels(
      Measure measure, List<Double> shares, long planWith, Found first) {
    var asked = question.assessor().purpose().leastFlight();
    var levels = shares.stream()
        .map(share -> Math.max(asked, (long) Math.ceil(share * planWith)))
        .toList();
    var purpose = new Purpose(measure, levels.get(0), !first.build().isBeyondBelief());
    var ranked = question.with(purpose);
    var there = prepared;
    var found = Collections.<@Nullable Assessment>nCopies(levels.size(), null);
    var ending = Ending.EFFORT;
    if (there != null) {
      var search = new LevelSearch(ranked, there, threads());
      // What is measured against a first pick that is not proven is not proven either.
      var looks = first.isProven() ? effort : effort / UNPROVEN;
      var came = running.run(search::stop, () -> search.run(levels, looks, done -> {}));
      found = came.builds();
      ending = came.ending();
    }
    isProven &= ending == Ending.PROVEN;
    var best = new LinkedHashMap<Double, Found>();
    for (var i = 0; i < levels.size(); i++) {
      var build = found.get(i);
      if (build != null) {
        // Builds come in their order: whatever ended the search came after it.
        best.put(shares.get(i), new Found(asAsked(build), first.isProven()));
      } else if (ending != Ending.PROVEN) {
        var known = ranked.with(new Purpose(measure, levels.get(i), purpose.onlyBelieved()));
        var share = shares.get(i);
        Stream.concat(Stream.of(first.build()), met.stream())
            .map(one -> known.assessor().assess(one.build()))
            .filter(Assessment::isFeasible)
            .min(Incumbents.BEST_FIRST)
            .ifPresent(one -> best.put(share, new Found(asAsked(one), false)));
      }
    }
    return best;
  }

  /** As the scenario ranks and limits it. */
  private Assessment asAsked(Assessment found) {
    return question.held(question.assessor().assess(found.build()));
  }

  private static int threads() {
    return Runtime.getRuntime().availableProcessors();
  }
}
