package pappus.answers.explain;

import java.util.List;
import java.util.Optional;
import pappus.answers.build.BuildLines;
import pappus.answers.build.BuildWords;
import pappus.answers.build.Cautions;
import pappus.answers.build.Figures;
import pappus.answers.build.Heading;
import pappus.assessment.Assessment;
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
    Heading.brief(scenario).forEach(lines::say);
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
      lines.say("%s against 1: %s, %s g and %s %s.%s"
          .formatted(
              i + 1,
              figures.against(first, builds.get(i)),
              signed(builds.get(i).mass().grams() - first.mass().grams(), 1),
              BuildLines.currency(first),
              signed((double) more, 0),
              isWithin ? " That difference in flight is within the doubt." : ""));
    }
  }

  private static String signed(double value, int decimals) {
    var text = Spoken.number(value, decimals);
    return text.startsWith("-") ? text : "+" + text;
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
