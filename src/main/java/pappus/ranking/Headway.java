package pappus.ranking;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;
import pappus.assessment.Assessment;
import pappus.scenario.Goal;
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
    return unseen.isPresent() ? found + ", unseen at most " + figure(unseen.getAsLong()) : found;
  }

  private String figure(long objective) {
    var isForRange = question.assessor().scenario().goalOrEndurance() == Goal.RANGE;
    return String.format(
        Locale.ROOT,
        isForRange ? "%.2f km" : "%.1f min",
        Assessment.figure(objective) / (isForRange ? 1000 : 60));
  }
}
