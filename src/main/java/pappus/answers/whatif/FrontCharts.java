package pappus.answers.whatif;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import pappus.answers.build.BuildLines;
import pappus.assessment.Assessment;
import pappus.document.Chart;
import pappus.document.Chart.Axis;
import pappus.document.Chart.Mark;
import pappus.document.Chart.Point;
import pappus.document.Chart.Series;
import pappus.document.Chart.Style;
import pappus.document.Spoken;
import pappus.document.Table;
import pappus.ranking.Candidate;
import pappus.ranking.ParetoFront;
import pappus.scenario.Scenario;

/** Flight against mass and against price: what is traded for what, and where candidates stand in it. */
public final class FrontCharts {
  /** Names of the two charts, for the page's script. */
  static final String BY_MASS = "by-mass";

  static final String BY_PRICE = "by-price";

  private final Scenario scenario;
  private final ParetoFront front;
  private final List<Candidate> candidates;
  private final boolean isForRange;

  /**
   * @param candidates of a ranking, if there is one; else empty
   */
  public FrontCharts(Scenario scenario, ParetoFront front, List<Candidate> candidates) {
    this.scenario = scenario;
    this.front = front;
    this.candidates = candidates;
    this.isForRange = scenario.isForRange();
  }

  /** Both; none where nothing is known to fly. */
  public List<Chart> all() {
    var any = Stream.concat(candidates.stream().map(Candidate::assessment), front.builds().stream())
        .findFirst();
    return any.isEmpty() ? List.of() : List.of(byMass(), byPrice(BuildLines.currency(any.get())));
  }

  private Chart byMass() {
    var cap = scenario.massCap();
    return chart(
        BY_MASS,
        "all-up mass",
        "Doubts of the masses count: with %s %% confidence a build has to stay a little below the cap."
            .formatted(Spoken.number(100 * cap.confidenceOrUsual(), 0)),
        Axis.of("all-up mass", "g", 0),
        List.of(Mark.upright(cap.grams(), "cap " + Spoken.number(cap.grams(), 1) + " g")),
        build -> build.mass().grams());
  }

  private Chart byPrice(String currency) {
    var budget = scenario.budget();
    return chart(
        BY_PRICE,
        "price",
        budget == null ? "No budget was asked for." : "What has to be bought, in whole units.",
        Axis.of("price to buy", currency, 0),
        budget == null
            ? List.of()
            : List.of(Mark.upright(budget.cents() / 100.0, "budget " + Spoken.price(budget))),
        FrontCharts::price);
  }

  public static double price(Assessment build) {
    return build.cost().cents() / 100.0;
  }

  private double figure(Assessment build) {
    return Assessment.figure(build.flown()) / (isForRange ? 1000 : 60);
  }

  /** Builds of the front than which none of it flies longer with less. */
  private List<Assessment> edge(ToDoubleFunction<Assessment> across) {
    var edge = new ArrayList<Assessment>();
    for (var build : front.builds()) {
      if (edge.isEmpty()
          || across.applyAsDouble(build) < across.applyAsDouble(edge.get(edge.size() - 1))) {
        edge.add(build);
      }
    }
    return edge;
  }

  private Chart chart(
      String id,
      String against,
      String reading,
      Axis x,
      List<Mark> marks,
      ToDoubleFunction<Assessment> across) {
    var edge = edge(across);
    var series = new ArrayList<Series>();
    var lightestFirst = new ArrayList<>(edge);
    Collections.reverse(lightestFirst);
    series.add(new Series("the front", Style.STEPS, points(lightestFirst, across)));
    series.add(new Series(
        "unsurpassed in flight, mass and price at once",
        Style.FAINT_POINTS,
        points(front.builds(), across)));
    var cells = new ArrayList<List<Object>>();
    if (!candidates.isEmpty()) {
      series.add(new Series("candidates", Style.POINTS, ranked(across)));
      for (var i = 0; i < candidates.size(); i++) {
        cells.add(cells("candidate " + (i + 1), candidates.get(i).assessment(), across));
      }
    }
    edge.forEach(build -> cells.add(cells("the front", build, across)));
    return Chart.xy(
        id,
        (isForRange ? "Range against " : "Endurance against ") + against,
        "The line: the longest flight of the front that weighs or costs no more. " + reading,
        x,
        isForRange ? Axis.of("over ground", "km", 2) : Axis.of("in the air", "min", 1),
        series,
        marks,
        new Table(
            List.of(
                Table.Column.text("", "which"),
                Table.Column.number(x.unit(), "across", 0),
                Table.Column.number(isForRange ? "km" : "min", "flight", 1),
                Table.Column.text("build", "build")),
            cells));
  }

  private List<Point> points(List<Assessment> builds, ToDoubleFunction<Assessment> across) {
    return builds.stream()
        .map(build -> Point.of(across.applyAsDouble(build), figure(build)))
        .toList();
  }

  private List<Point> ranked(ToDoubleFunction<Assessment> across) {
    var ranked = new ArrayList<Point>();
    for (var i = 0; i < candidates.size(); i++) {
      var build = candidates.get(i).assessment();
      ranked.add(new Point(
          across.applyAsDouble(build),
          figure(build),
          "%s. %s".formatted(i + 1, BuildLines.names(build)),
          String.valueOf(i + 1)));
    }
    return ranked;
  }

  private List<Object> cells(String which, Assessment build, ToDoubleFunction<Assessment> across) {
    return List.of(which, across.applyAsDouble(build), figure(build), BuildLines.names(build));
  }
}
