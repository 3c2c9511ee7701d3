package pappus.answers.ranking;

import java.util.Locale;
import java.util.OptionalDouble;
import pappus.assessment.Assessment;
import pappus.document.Spoken;
import pappus.ranking.Ranking;
import pappus.scenario.Goal;
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
  public static String text(Ranking ranking, Goal goal) {
    var coverage = ranking.coverage();
    var proof = coverage.proof();
    var counts = String.format(
        Locale.ROOT,
        "%,d %s assessed, %,d of them feasible, out of %s ways to fill the roles",
        coverage.assessed(),
        coverage.assessed() == 1 ? "build" : "builds",
        coverage.feasible(),
        Spoken.large(coverage.combinations()));
    if (coverage.isProof()) {
      return ranking.candidates().isEmpty()
          ? "Proven: no combination in this catalogue keeps every rule and limit; " + counts + "."
          : "Proven: no other combination in this catalogue does better. "
              + counts
              + String.format(
                  Locale.ROOT,
                  "; the rest was ruled out in %,d looks at what it can reach.",
                  proof.looks());
    }
    var text = first(goal) + " found, not proven: " + counts + ".";
    if (proof.atMost().isPresent()) {
      text += String.format(
          Locale.ROOT,
          goal == Goal.RANGE
              ? " What was not seen gets %.2f km far at most"
              : " What was not seen flies %.1f min at most",
          Assessment.figure(proof.atMost().getAsLong()) / (goal == Goal.RANGE ? 1000 : 60));
      var gap = gap(ranking);
      text += gap.isEmpty()
          ? "."
          : String.format(
              Locale.ROOT,
              ": at most %.1f %% better than the first is possible.",
              100 * gap.getAsDouble());
    }
    return text + ending(proof.ending());
  }

  private static String first(Goal goal) {
    return switch (goal) {
      case ENDURANCE -> "Longest";
      case RANGE -> "Farthest";
      case PRICE -> "Cheapest";
      case MASS -> "Lightest";
      case THRUST -> "Strongest";
    };
  }

  private static String ending(Ending ending) {
    return switch (ending) {
      case EFFORT -> " It ended at the effort it was given.";
      case CLOCK -> " The clock ended the search: it may differ on another run.";
      case INTERRUPTED -> " You stopped the search: this is the best so far.";
      case MOVES, PROVEN -> " It ended after its full number of changes.";
    };
  }
}
