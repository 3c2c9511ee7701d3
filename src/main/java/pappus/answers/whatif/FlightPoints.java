package pappus.answers.whatif;

import pappus.answers.build.BuildLines;
import pappus.answers.build.Figures;
import pappus.assessment.Assessment;
import pappus.document.Chart;

/** Flights in charts: what is expected, with the figure to plan with below it. */
final class FlightPoints {
  /** What there is to see in each of them. */
  static final String READING =
      "Below what is expected, down to what to plan with, it is shaded or a whisker; hollow marks are too good to be true.";

  private FlightPoints() {}

  static Chart.Axis axis(boolean isForRange) {
    return isForRange
        ? Chart.Axis.of("over ground", "km", 2)
        : Chart.Axis.of("in the air", "min", 1);
  }

  /** A build that flies, so far across. */
  static Chart.Point of(Assessment build, double across, boolean isForRange) {
    var unit = isForRange ? 1000.0 : 60.0;
    return new Chart.Point(
        across,
        Assessment.figure(build.flown()) / unit,
        build.planned() / 1000.0 / unit,
        BuildLines.names(build) + mark(build),
        build.isBeyondBelief());
  }

  /** Behind a name; empty for what can be believed. */
  static String mark(Assessment build) {
    return build.isBeyondBelief() ? " " + Figures.DOUBTED : "";
  }
}
