package pappus.answers.build;

import java.util.Locale;
import pappus.assessment.Assessment;
import pappus.ranking.Best;
import pappus.scenario.Scenario;
import pappus.search.Ending;
import pappus.search.Proof;

/** What a search for the best build of a scenario says, in sentences. */
public final class Against {
  private final GoalWords goal;
  private final Changes changes;

  public Against(Scenario scenario) {
    this.goal = new GoalWords(scenario);
    this.changes = new Changes(scenario.isForRange(), "");
  }

  /** Where a build stands against the best that was found. */
  public String of(Assessment assessment, Best best) {
    if (best.build().isEmpty()) {
      return nothing(best);
    }
    var first = best.build().get();
    var flies =
        (best.isProof() ? "The best build here, proven, " : "The best build found, not proven, ")
            + goal.has(first)
            + (first.isBeyondBelief() && !assessment.isBeyondBelief()
                ? " (? too good to be true)"
                : "");
    if (!assessment.isFeasible()) {
      return flies + "; this one is no candidate." + more(best.proof());
    }
    if (!goal.isAhead(first, assessment)) {
      if (best.isProof() && goal.isAhead(assessment, first)) {
        return flies + "; this one plans with less than 95 % of the best.";
      }
      return best.isProof()
          ? "Proven: no other build from this catalogue does better."
          : "Nothing better was found, without proof." + more(best.proof());
    }
    return flies + ", " + goal.better(first, assessment) + "." + more(best.proof());
  }

  /** That nothing keeps every rule and limit, or that nothing was found. */
  public String nothing(Best best) {
    return best.isProof()
        ? "Proven: no build from this catalogue keeps every rule and limit."
        : "Nothing was found that keeps every rule and limit, without proof." + more(best.proof());
  }

  /** What is left open where a proof was not reached. */
  public String more(Proof proof) {
    if (proof.ending() == Ending.PROVEN) {
      return "";
    }
    var text = new StringBuilder();
    proof
        .atMost()
        .ifPresent(most -> text.append(String.format(
            Locale.ROOT,
            " No unseen build reaches more than %s.",
            changes.amount(Assessment.figure(most)))));
    if (proof.ending() == Ending.INTERRUPTED) {
      text.append(" You stopped the search.");
    }
    return text.toString();
  }
}
