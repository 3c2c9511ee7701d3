package pappus.answers.build;

import java.util.Optional;
import pappus.assessment.flight.FlightEstimate;
import pappus.document.Spoken;
import pappus.scenario.Flight.Style;

/**
 * Legs that are flown over and over, in whole rounds: only where one ends is the aircraft where it took off.
 *
 * @param whole as often as all legs are flown, by estimate
 * @param planned the same to plan with
 * @param leftSeconds in the air after those by estimate, s
 * @param roundSeconds of one round, s
 */
public record Rounds(long whole, long planned, double leftSeconds, double roundSeconds) {
  /** Rounding never takes a round away. */
  private static final double EDGE = 1e-9;

  /**
   * The rounds of a flight; empty where no legs are flown over and over, or none at all.
   *
   * @param planWith share of the estimate to plan with, 0 to 1
   */
  public static Optional<Rounds> of(FlightEstimate flight, double planWith) {
    var seconds = flight.endurance().seconds();
    return flight
        .course()
        .filter(course -> course.style() == Style.PROFILE && course.stay().isEmpty() && seconds > 0)
        .map(course -> {
          var rounds = course.rounds(seconds);
          var whole = whole(rounds);
          return new Rounds(
              whole,
              whole(planWith * rounds),
              Math.max(0, seconds - whole * course.roundSeconds()),
              course.roundSeconds());
        });
  }

  private static long whole(double rounds) {
    return (long) Math.floor(rounds + EDGE);
  }

  /** In a sentence. */
  String text() {
    var round = Spoken.number(roundSeconds, 0) + " s";
    return whole == 0
        ? "Not one round of %s is completed.".formatted(round)
        : "%s of %s; the %s s that are left are too short for another. Plan with %s."
            .formatted(
                whole == 1 ? "1 whole round" : whole + " whole rounds",
                round,
                Spoken.number(leftSeconds, 0),
                planned == 0 ? "none" : planned == 1 ? "1 round" : planned + " rounds");
  }
}
