package pappus.answers.whatif;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import pappus.answers.build.ArmWords;
import pappus.answers.build.BuildLines;
import pappus.answers.build.Cautions;
import pappus.assessment.Assessment;
import pappus.document.Chart;
import pappus.document.Chart.Mark;
import pappus.document.Chart.Point;
import pappus.document.Chart.Series;
import pappus.document.Chart.Style;
import pappus.document.FiguresPage;
import pappus.document.Spoken;
import pappus.document.Table;
import pappus.ranking.ParetoFront;
import pappus.scenario.Scenario;
import pappus.whatif.sweep.Axis;
import pappus.whatif.sweep.Step;
import pappus.whatif.sweep.Sweep;

/** What varies, in pictures. */
public final class SweepPage {
  private final Scenario scenario;
  private final String currency;
  private final boolean isForRange;

  /**
   * @param currency of prices
   */
  public SweepPage(Scenario scenario, String currency) {
    this.scenario = scenario;
    this.currency = currency;
    this.isForRange = scenario.isForRange();
  }

  /**
   * The page.
   *
   * @param sweep absent where nothing was swept
   * @param front absent where it was not asked for
   * @param report the same in words and tables
   * @param tool its version, told at the foot
   */
  public String of(
      @Nullable Sweep sweep, @Nullable ParetoFront front, SweepReport report, String tool) {
    var charts = new ArrayList<Chart>();
    if (sweep != null) {
      charts.add(flights(sweep));
      if (new ArmsVaried(sweep).areTold()) {
        charts.add(stiffness(sweep));
      }
      charts.add(prices(sweep));
    }
    if (front != null) {
      charts.addAll(new FrontCharts(scenario, front, List.of()).all());
    }
    var tables = new LinkedHashMap<String, Table>(report.tables());
    return FiguresPage.of(report.said(), charts, tables, List.of(Cautions.brief()), tool);
  }

  private Chart flights(Sweep sweep) {
    return chart(
        sweep,
        "flights",
        isForRange ? "Range" : "Endurance",
        isForRange ? Chart.Axis.of("over ground", "km", 2) : Chart.Axis.of("in the air", "min", 1),
        build -> Assessment.figure(build.flown()) / (isForRange ? 1000 : 60));
  }

  /** Steps whose best build has no arms drawn do not come up: the frame is the same at all. */
  private Chart stiffness(Sweep sweep) {
    return chart(
        sweep,
        "stiffness",
        "First bending frequency of the arms",
        Chart.Axis.of("arms of the best build", "Hz", 0),
        build -> ArmWords.hertz(build).orElse(0.0));
  }

  private Chart prices(Sweep sweep) {
    return chart(
        sweep,
        "prices",
        "Price of the best build",
        Chart.Axis.of("price to buy", currency, 0),
        FrontCharts::price);
  }

  private Chart chart(
      Sweep sweep, String id, String what, Chart.Axis y, ToDoubleFunction<Assessment> value) {
    var axes = sweep.axes();
    // What has more values is drawn along the page.
    var index =
        axes.size() == 2 && axes.get(0).values().size() > axes.get(1).values().size()
            ? 0
            : axes.size() - 1;
    var along = axes.get(index);
    var numbers = isNumbers(along);
    var x = new Chart.Axis(
        along.id(), along.unit(), numbers ? 2 : 0, false, numbers ? List.of() : along.values());
    var series = new ArrayList<Series>();
    if (axes.size() == 1) {
      series.add(series("the best build", sweep.steps(), along, 0, value));
    } else {
      var other = axes.get(1 - index);
      for (var one : other.values()) {
        var steps = sweep.steps().stream()
            .filter(step -> step.values().get(1 - index).equals(one))
            .toList();
        var name = "%s %s %s".formatted(other.id(), one, other.unit()).strip();
        series.add(series(name, steps, along, index, value));
      }
    }
    var none =
        sweep.steps().stream().filter(step -> step.best().build().isEmpty()).count();
    return Chart.xy(
        id,
        "%s against %s".formatted(what, along.id()),
        SweepWords.standing(sweep)
            + (none == 0
                ? ""
                : " Nothing was found at %s of %s steps: they have no point."
                    .formatted(none, sweep.steps().size())),
        x,
        y,
        series,
        numbers ? along.asked().map(at -> asked(at, along.unit())).stream().toList() : List.of(),
        table(sweep, y, value));
  }

  /** Two values make no curve. */
  private static boolean isNumbers(Axis along) {
    return along.values().size() > 2
        && along.values().stream().allMatch(text -> text.matches("-?[0-9]+(\\.[0-9]+)?"));
  }

  private static Series series(
      String name, List<Step> steps, Axis along, int index, ToDoubleFunction<Assessment> value) {
    var numbers = isNumbers(along);
    var points = new ArrayList<Point>();
    for (var step : steps) {
      var text = step.values().get(index);
      step.best()
          .build()
          .ifPresent(build -> points.add(new Point(
              numbers ? Double.parseDouble(text) : along.values().indexOf(text),
              value.applyAsDouble(build),
              BuildLines.names(build),
              "")));
    }
    points.sort(Comparator.comparingDouble(Point::x));
    return new Series(name, numbers ? style(along) : Style.POINTS, points);
  }

  /** Between two values of a limit the best build is that of the tighter one until a better is let in. */
  private static Style style(Axis along) {
    return switch (along.tightens()) {
      case DOWNWARD -> Style.STEPS;
      case UPWARD -> Style.STEPS_BACK;
      case NEITHER -> Style.LINE_AND_POINTS;
    };
  }

  /** Where the scenario itself stands. */
  private static Mark asked(double value, String unit) {
    return Mark.upright(
        value, "as asked, %s %s".formatted(Spoken.number(value, 1), unit).strip());
  }

  private static Table table(Sweep sweep, Chart.Axis y, ToDoubleFunction<Assessment> value) {
    var columns = new ArrayList<Table.Column>();
    sweep
        .axes()
        .forEach(axis ->
            columns.add(Table.Column.text((axis.id() + " " + axis.unit()).strip(), axis.id())));
    columns.add(Table.Column.number(y.unit(), "value", y.decimals()));
    var rows = new ArrayList<List<Object>>();
    for (var step : sweep.steps()) {
      var cells = new ArrayList<Object>(step.values());
      cells.add(step.best().build().<Object>map(value::applyAsDouble).orElse(""));
      rows.add(cells);
    }
    return new Table(columns, rows);
  }
}
