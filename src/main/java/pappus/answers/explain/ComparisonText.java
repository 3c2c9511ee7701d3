package pappus.answers.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pappus.answers.build.BuildLines;
import pappus.answers.build.BuildWords;
import pappus.answers.build.Cautions;
import pappus.answers.build.Figures;
import pappus.answers.build.Heading;
import pappus.assessment.Assessment;
import pappus.assessment.Purpose.Measure;
import pappus.assessment.flight.FlightEstimate;
import pappus.document.Lines;
import pappus.document.Spoken;
import pappus.doubt.Band;
import pappus.scenario.Scenario;

/** Builds beside each other, for a terminal or to paste elsewhere. */
public final class ComparisonText {
  private final Scenario scenario;
  private final List<Assessment> builds;
  private final List<Optional<Band>> bands;

  /**
   * @param bands of those that fly
   */
  public ComparisonText(Scenario scenario, List<Assessment> builds, List<Optional<Band>> bands) {
    this.scenario = scenario;
    this.builds = List.copyOf(builds);
    this.bands = List.copyOf(bands);
  }

  /**
   * The whole answer.
   *
   * @param standing where they stand against the best
   * @param width columns of the terminal
   */
  public String text(String standing, int width) {
    var lines = new Lines(width);
    lines.say(Heading.line(scenario));
    lines.blank();
    for (var i = 0; i < builds.size(); i++) {
      lines.row("%s. %s".formatted(i + 1, BuildWords.of(builds.get(i))), 3);
    }
    lines.blank();
    new SideBySide(scenario, builds).say(lines, width);
    lines.blank();
    differences(lines);
    return lines.say(standing).blank().caution(Cautions.brief()).text();
  }

  /** Each against the first, and whether that is more than doubt. */
  private void differences(Lines lines) {
    var first = builds.get(0);
    var figures = new Figures(scenario.isForRange());
    for (var i = 1; i < builds.size(); i++) {
      var isWithin = bands.get(0).isPresent()
          && bands.get(i).isPresent()
          && Math.abs(bands.get(i).get().estimate() - bands.get(0).get().estimate())
              < bands.get(0).get().deviationOfDifference(bands.get(i).get());
      // As a person subtracts what is told above.
      var more = Math.round(builds.get(i).cost().cents() / 100.0)
          - Math.round(first.cost().cents() / 100.0);
      lines.say("%s against 1: %s.%s"
          .formatted(
              i + 1,
              String.join(", ", inOrder(figures, first, builds.get(i), more)),
              isWithin ? " The flights are too close to call." : ""));
    }
  }

  /** Flight, mass and price against another's, what builds are ranked by first. */
  private List<String> inOrder(Figures figures, Assessment first, Assessment other, long more) {
    var words = new ArrayList<String>();
    words.add(figures.against(first, other));
    words.add(against(
        other.mass().grams() - first.mass().grams(), 1, "%s g", "heavier", "lighter", "as heavy"));
    words.add(against(
        (double) more,
        0,
        BuildLines.currency(first) + " %s",
        "dearer",
        "cheaper",
        "at the same price"));
    var thrust = thrust(other) - thrust(first);
    switch (Measure.ordering(scenario)) {
      case FLIGHT, PLAN_WITH -> {}
      case PRICE -> words.add(0, words.remove(2));
      case MASS -> words.add(0, words.remove(1));
      case THRUST -> words.add(0, "thrust-to-weight " + Spoken.change(thrust, 2));
      case PIECES ->
        words.add(
            0,
            against(
                other.cost().piecesToBuy() - first.cost().piecesToBuy(),
                0,
                "%s to buy",
                "more",
                "fewer",
                "as many to buy"));
    }
    return words;
  }

  private static double thrust(Assessment build) {
    return build.flight().map(FlightEstimate::thrustToWeight).orElse(0.0);
  }

  private static String against(
      double difference, int decimals, String pattern, String more, String less, String same) {
    var size = Spoken.number(Math.abs(difference), decimals);
    return size.equals(Spoken.number(0, decimals))
        ? same
        : pattern.formatted(size) + " " + (difference > 0 ? more : less);
  }

  /** For a spreadsheet. */
  public String csv() {
    return new SideBySide(scenario, builds).table().csv();
  }

  /** For a page. */
  public String markdown() {
    return new SideBySide(scenario, builds).table().markdown();
  }
}
