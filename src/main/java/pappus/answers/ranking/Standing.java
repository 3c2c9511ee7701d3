package pappus.answers.ranking;

import java.util.Locale;
import java.util.OptionalDouble;
import pappus.assessment.Assessment;
import pappus.assessment.Purpose.Measure;
import pappus.document.Spoken;
import pappus.ranking.Ranking;
import pappus.scenario.Scenario;
import pappus.search.Ending;

/** What stands behind a ranking: how far it can be trusted. */
public final class Standing {
  private Standing() {}

  /** By how much a build that was not seen may be better than the first, as a share; empty where that is not known. */
  static OptionalDouble gap(Ranking ranking) {
    var atMost = ranking.coverage().proof().atMost();
    if (atMost.isEmpty() || ranking.candidates().isEmpty()) {
      return OptionalDouble.empty();
    }
    var best = ranking.candidates().get(0).assessment().objective();
    return OptionalDouble.of(Math.max(0, (double) atMost.getAsLong() / best - 1));
  }

  /** In sentences. */
  public static String text(Ranking ranking, Scenario scenario) {
    var coverage = ranking.coverage();
    var proof = coverage.proof();
    var counts = String.format(
        Locale.ROOT,
        "%,d %s assessed, %,d of them feasible, of %s combinations",
        coverage.assessed(),
        coverage.assessed() == 1 ? "build" : "builds",
        coverage.feasible(),
        Spoken.large(coverage.combinations()));
    if (coverage.isProof()) {
      return ranking.candidates().isEmpty()
          ? "Proven: no build from this catalogue keeps every rule and limit; " + counts + "."
          : "Proven: no other build from this catalogue does better. "
              + counts
              + String.format(Locale.ROOT, "; %,d bounds ruled out the rest.", proof.looks());
    }
    var text = first(scenario) + " found, not proven best: " + counts + ".";
    if (proof.atMost().isPresent()) {
      text += String.format(
          Locale.ROOT,
          scenario.isForRange()
              ? " No unseen build goes farther than %.2f km"
              : " No unseen build flies longer than %.1f min",
          Assessment.figure(proof.atMost().getAsLong()) / (scenario.isForRange() ? 1000 : 60));
      var gap = gap(ranking);
      text += gap.isEmpty()
          ? "."
          : String.format(
              Locale.ROOT, ": %.1f %% better than the first at most.", 100 * gap.getAsDouble());
    }
    return text + ending(proof.ending());
  }

  private static String first(Scenario scenario) {
    return switch (Measure.ordering(scenario)) {
      case FLIGHT, PLAN_WITH -> scenario.isForRange() ? "Farthest" : "Longest";
      case PRICE -> "Cheapest";
      case MASS -> "Lightest";
      case THRUST -> "Strongest";
      case PIECES -> "Fewest to buy";
    };
  }

  private static String ending(Ending ending) {
    return switch (ending) {
      case EFFORT -> " The search ended at the effort given.";
      case CLOCK -> " The clock ended the search: another run may differ.";
      case INTERRUPTED -> " You stopped the search: this is the best so far.";
      case MOVES, PROVEN -> " The search ended after its full number of changes.";
    };
  }
}
