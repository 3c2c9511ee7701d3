package pappus.answers.whatif;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import pappus.answers.build.BuildLines;
import pappus.answers.build.Figures;
import pappus.assessment.Assessment;
import pappus.document.Chart;
import pappus.document.Chart.Axis;
import pappus.document.Chart.Mark;
import pappus.document.Chart.Point;
import pappus.document.Chart.Series;
import pappus.document.Chart.Style;
import pappus.document.Spoken;
import pappus.document.Table;
import pappus.ranking.ParetoFront;
import pappus.scenario.Scenario;

/** Flight against mass and against price: what is traded for what, from what to plan with up to what is expected. */
final class FrontCharts {
  private final Scenario scenario;
  private final ParetoFront front;
  private final double deviations;
  private final Figures figures;

  /**
   * @param deviations of mass kept below the cap
   */
  FrontCharts(Scenario scenario, ParetoFront front, double deviations) {
    this.scenario = scenario;
    this.front = front;
    this.deviations = deviations;
    this.figures = new Figures(scenario.isForRange());
  }

  /** Both; none where nothing is known to fly. */
  List<Chart> all() {
    return front.builds().isEmpty()
        ? List.of()
        : List.of(byPrice(BuildLines.currency(front.builds().get(0))), byMass());
  }

  private Chart byMass() {
    var cap = scenario.massCap();
    return chart(
        "by-mass",
        "mass",
        "The mass is what it needs below the cap at %s %% confidence."
            .formatted(Spoken.number(100 * cap.confidenceOrUsual(), 0)),
        Axis.of("needed", "g", 0),
        List.of(Mark.upright(cap.grams(), "cap " + Spoken.number(cap.grams(), 1) + " g")),
        front.againstMass(deviations),
        build -> build.mass().neededMilligrams(deviations) / 1000.0);
  }

  private Chart byPrice(String currency) {
    var budget = scenario.budget();
    return chart(
        "by-price",
        "price",
        budget == null ? "No budget was asked for." : "",
        Axis.of("to buy", currency, 0),
        budget == null
            ? List.of()
            : List.of(Mark.upright(budget.cents() / 100.0, "budget " + Spoken.price(budget))),
        front.againstPrice(),
        FrontCharts::price);
  }

  static double price(Assessment build) {
    return build.cost().cents() / 100.0;
  }

  /**
   * @param edge what no other surpasses, the dearest or heaviest first
   */
  private Chart chart(
      String id,
      String against,
      String reading,
      Axis x,
      List<Mark> marks,
      List<Assessment> edge,
      ToDoubleFunction<Assessment> across) {
    var columns = new ArrayList<>(List.of(Table.Column.number(x.unit(), "across", 0)));
    columns.addAll(figures.columns("").subList(0, 2));
    columns.add(Table.Column.text("build", "build"));
    var points = new ArrayList<Point>();
    var cells = new ArrayList<List<Object>>();
    for (var build : edge) {
      points.add(0, FlightPoints.of(build, across.applyAsDouble(build), scenario.isForRange()));
      var row = new ArrayList<Object>(List.of(across.applyAsDouble(build)));
      row.addAll(figures.cells(Optional.of(build)).subList(0, 2));
      row.add(BuildLines.names(build) + FlightPoints.mark(build));
      cells.add(row);
    }
    return Chart.xy(
        id,
        "Flight against " + against,
        ("The line: the longest flight expected for no more. " + FlightPoints.READING + " "
                + reading)
            .strip(),
        x,
        FlightPoints.axis(scenario.isForRange()),
        List.of(new Series("expected", Style.STEPS, points)),
        marks,
        new Table(columns, cells));
  }
}
