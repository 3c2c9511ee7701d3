package pappus.answers.whatif;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToLongFunction;
import pappus.answers.build.Against;
import pappus.answers.build.BuildLines;
import pappus.answers.build.Figures;
import pappus.assessment.Assessment;
import pappus.document.Excerpt;
import pappus.document.Spoken;
import pappus.ranking.ParetoFront;
import pappus.scenario.Scenario;

/** What is traded for what, for a terminal: what each step down in price or mass costs, each told by what is new in it. */
final class FrontText {
  /** A step is told from so large a share less of price or mass on, */
  private static final double LEAST_SAVING = 0.02;

  /** or from more on, so that there are no more than so many. */
  private static final int MOST_STEPS = 16;

  /** Where names begin, and what they have at least. */
  private static final int NAMES = 36;

  private static final int LEAST_ROOM = 20;

  private final Scenario scenario;
  private final ParetoFront front;
  private final double deviations;
  private final Figures figures;

  /**
   * @param deviations of mass kept below the cap
   */
  FrontText(Scenario scenario, ParetoFront front, double deviations) {
    this.scenario = scenario;
    this.front = front;
    this.deviations = deviations;
    this.figures = new Figures(scenario.isForRange());
  }

  /** How many there are, and how far that can be trusted. */
  List<String> said() {
    return List.of(
        "%s builds that none beats in flight, mass and price at once, mass at %s %% confidence."
            .formatted(
                front.builds().size(),
                Spoken.number(100 * scenario.massCap().confidenceOrUsual(), 0)),
        SweepWords.standing(front, new Against(scenario)));
  }

  /**
   * Both ways down as sections.
   *
   * @param all whether every step is told, however little it saves
   * @param width columns of the terminal
   */
  void add(Excerpt excerpt, boolean all, int width) {
    add(
        excerpt,
        "Cheaper step by step, whatever the mass, " + figures.unit(),
        steps(front.againstPrice(), all, build -> build.cost().cents()),
        width);
    add(
        excerpt,
        "Lighter step by step, whatever the price, " + figures.unit(),
        steps(
            front.againstMass(deviations), all, build -> build.mass().neededMilligrams(deviations)),
        width);
  }

  private void add(Excerpt excerpt, String title, List<Assessment> builds, int width) {
    var rows = new ArrayList<String>();
    rows.add(figures.heading());
    for (var i = 0; i < builds.size(); i++) {
      var build = builds.get(i);
      var names = i == 0 ? List.of("") : BuildLines.otherwise(build, builds.get(i - 1));
      rows.add((figures.of(build)
              + " %1s ".formatted(Figures.mark(build))
              + BuildLines.within(names, Math.max(LEAST_ROOM, width - NAMES)))
          .stripTrailing());
      if (i == 0) {
        rows.add("    " + BuildLines.names(build));
      }
    }
    excerpt.add(title, rows, 4, false);
  }

  /** The first, and of the others those that save enough less than the one before that is told. */
  private static List<Assessment> steps(
      List<Assessment> builds, boolean all, ToLongFunction<Assessment> measure) {
    if (all) {
      return builds;
    }
    var saving = LEAST_SAVING;
    var steps = steps(builds, saving, measure);
    while (steps.size() > MOST_STEPS) {
      saving += LEAST_SAVING / 4;
      steps = steps(builds, saving, measure);
    }
    return steps;
  }

  private static List<Assessment> steps(
      List<Assessment> builds, double saving, ToLongFunction<Assessment> measure) {
    var steps = new ArrayList<Assessment>();
    var last = 0.0;
    for (var build : builds) {
      var value = (double) measure.applyAsLong(build);
      if (steps.isEmpty() || value <= (1 - saving) * last) {
        steps.add(build);
        last = value;
      }
    }
    return steps;
  }
}
