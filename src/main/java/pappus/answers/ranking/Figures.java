package pappus.answers.ranking;

import java.util.Locale;
import pappus.answers.build.BuildLines;
import pappus.answers.build.Journey;
import pappus.assessment.Assessment;
import pappus.document.Spoken;

/**
 * The numbers of a build in a line of a terminal, the same in every table of the answer.
 *
 * @param isForRange whether flights are told in kilometres; else in minutes
 */
record Figures(boolean isForRange) {
  private static final double SECONDS_IN_HALF = 30;

  /** Unit of the flights. */
  String unit() {
    return isForRange ? "km" : "min";
  }

  /** What stands above the numbers. */
  String heading() {
    return line("plan on", "expect", "g", "T/W", "price");
  }

  /**
   * Numbers of a build.
   *
   * @param planWith seconds or metres
   */
  String of(Assessment build, double planWith) {
    return line(
        planned(planWith),
        told(Assessment.figure(build.flown())),
        Spoken.number(build.mass().grams(), 0),
        Spoken.number(build.flight().orElseThrow().thrustToWeight(), 1),
        Spoken.price(build.cost().cents(), BuildLines.currency(build)));
  }

  private static String line(
      String plan, String expect, String grams, String thrust, String price) {
    return String.format(Locale.ROOT, "%7s %6s %4s %4s %8s", plan, expect, grams, thrust, price);
  }

  /** A flight that somebody relies on, rounded down. */
  String planned(double figure) {
    return isForRange ? Journey.atMost(figure) : Spoken.atMostMinutes(figure);
  }

  private String told(double figure) {
    return isForRange ? Journey.kilometres(figure) : Spoken.minutes(figure);
  }

  /** By how much one flight is shorter than another, in words. */
  String lost(double figure) {
    if (isForRange) {
      return Spoken.number(figure / 1000, 1) + " km";
    }
    var halves = Math.round(figure / SECONDS_IN_HALF);
    return switch ((int) halves) {
      case 0 -> "less than half a minute";
      case 1 -> "half a minute";
      default -> Spoken.number(halves / 2.0, halves % 2 == 0 ? 0 : 1) + " min";
    };
  }

  /** The same with its sign, as a number. */
  String change(double figure) {
    return isForRange
        ? Spoken.change(figure / 1000, 1)
        : Spoken.change(Math.rint(figure / SECONDS_IN_HALF) / 2, 1);
  }
}
