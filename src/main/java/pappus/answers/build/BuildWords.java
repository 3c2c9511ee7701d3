package pappus.answers.build;

import java.util.Locale;
import pappus.assessment.Assessment;
import pappus.assessment.flight.FlightEstimate;
import pappus.document.Spoken;

/** One build in one sentence. */
public final class BuildWords {
  private BuildWords() {}

  /** Its names and what matters most. */
  public static String of(Assessment assessment) {
    return BuildLines.names(assessment) + ": " + numbers(assessment) + ".";
  }

  /** What matters most: flight, mass, thrust, price. */
  static String numbers(Assessment assessment) {
    return String.format(
        Locale.ROOT,
        "%s, %.0f g, thrust over weight %s, %s",
        assessment
            .flight()
            .map(flight -> flown(flight, assessment))
            .orElse("no flight can be computed"),
        assessment.mass().grams(),
        assessment
            .flight()
            .map(flight -> Spoken.number(flight.thrustToWeight(), 1))
            .orElse("-"),
        Spoken.price(assessment.cost().cents(), BuildLines.currency(assessment)));
  }

  private static String flown(FlightEstimate flight, Assessment assessment) {
    return Journey.figure(flight.isForRange(), Assessment.figure(assessment.flown()));
  }
}
