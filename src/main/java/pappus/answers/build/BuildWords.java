package pappus.answers.build;

import java.util.Locale;
import pappus.assessment.Assessment;
import pappus.document.Spoken;

/** One build in one sentence. */
public final class BuildWords {
  private BuildWords() {}

  /** Its names and what matters most. */
  public static String of(Assessment assessment) {
    return BuildLines.names(assessment) + ": " + numbers(assessment) + ".";
  }

  /** What matters most: flight, mass, thrust, price, and whether to believe it. */
  static String numbers(Assessment assessment) {
    var flight = assessment.flight();
    return String.format(
        Locale.ROOT,
        "%s, %.0f g, T/W %s, %s%s",
        flight
            .map(flown -> new Figures(flown.isForRange()).sentence(assessment))
            .orElse("no flight can be computed"),
        assessment.mass().grams(),
        flight.map(flown -> Spoken.number(flown.thrustToWeight(), 1)).orElse("-"),
        Spoken.price(assessment.cost().cents(), BuildLines.currency(assessment)),
        assessment.isBeyondBelief() ? "; ? too good to be true" : "");
  }
}
