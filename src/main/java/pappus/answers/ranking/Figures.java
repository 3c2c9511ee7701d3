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
        expected(Assessment.figure(build.flown())),
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

  private String expected(double figure) {
    return isForRange ? Journey.kilometres(figure) : Spoken.minutes(figure);
  }

  /** By how much one flight is planned shorter than another, in words: the difference of what is told. */
  String lost(double from, double to) {
    if (isForRange) {
      return Spoken.number(told(planned(from)) - told(planned(to)), 1) + " km";
    }
    var halves = Math.round((told(planned(from)) - told(planned(to))) * 2);
    return switch ((int) halves) {
      case 0 -> "less than half a minute";
      case 1 -> "half a minute";
      default -> Spoken.number(halves / 2.0, halves % 2 == 0 ? 0 : 1) + " min";
    };
  }

  /** The difference of what is told of two flights, with its sign. */
  String change(double from, double to) {
    return Spoken.change(told(planned(to)) - told(planned(from)), 1);
  }

  private static double told(String figure) {
    return Double.parseDouble(figure);
  }
}
