package pappus.ranking;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;
import pappus.assessment.Assessment;
import pappus.assessment.Merit;
import pappus.search.Question;

/**
 * How far a proof has come, for those who wait.
 *
 * @param best the best build so far
 * @param unseen objective that no build surpasses that was not seen yet; empty if it is not known or nothing is left
 */
record Headway(Question question, Optional<Assessment> best, OptionalLong unseen) {
  /** In part of a line, such as {@code best 43.0 min, unseen at most 44.1 min}. */
  String text() {
    if (best.isEmpty()) {
      return "nothing yet";
    }
    var found = "best " + figure(best.get().objective());
    var bound = switch (question.assessor().purpose().measure()) {
      case FLIGHT, PLAN_WITH, THRUST -> "most";
      case PRICE, MASS, PIECES -> "least";
    };
    return unseen.isPresent()
        ? "%s, unseen at %s %s".formatted(found, bound, figure(unseen.getAsLong()))
        : found;
  }

  private String figure(long objective) {
    return switch (question.assessor().purpose().measure()) {
      case FLIGHT -> flight(Assessment.figure(objective));
      case PLAN_WITH -> flight((double) objective / 1000);
      case PRICE ->
        "price " + String.format(Locale.ROOT, "%.2f", (double) Merit.below(objective) / 100);
      case PIECES -> Merit.pieces(objective) + " to buy";
      case MASS -> String.format(Locale.ROOT, "%.1f g", (double) Merit.below(objective) / 1000);
      case THRUST -> String.format(Locale.ROOT, "T/W %.2f", Assessment.figure(objective));
    };
  }

  private String flight(double figure) {
    var isForRange = question.assessor().scenario().isForRange();
    return String.format(
        Locale.ROOT, isForRange ? "%.2f km" : "%.1f min", figure / (isForRange ? 1000 : 60));
  }
}
