package pappus.answers.whatif;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import pappus.answers.build.ArmWords;
import pappus.answers.build.BuildLines;
import pappus.answers.build.Cautions;
import pappus.answers.build.Figures;
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
  private final double deviations;
  private final boolean isForRange;

  /**
   * @param currency of prices
   * @param deviations of mass kept below the cap
   */
  public SweepPage(Scenario scenario, String currency, double deviations) {
    this.scenario = scenario;
    this.currency = currency;
    this.deviations = deviations;
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
      charts.addAll(new FrontCharts(scenario, front, deviations).all());
    }
    var tables = new LinkedHashMap<String, Table>(report.tables());
    return FiguresPage.of(
        scenario.name() + ": what varies",
        report.said(),
        charts,
        tables,
        List.of(Cautions.brief()),
        tool);
  }

  private Chart flights(Sweep sweep) {
    var figures = new Figures(isForRange);
    return chart(
        sweep,
        "flights",
        "Flight of the best build",
        FlightPoints.READING,
        FlightPoints.axis(isForRange),
        List.of(new Drawn(
            "the best build",
            (build, across) -> Optional.of(FlightPoints.of(build, across, isForRange)))),
        List.of(),
        figures.columns(currency).subList(0, 2),
        build -> figures.cells(build).subList(0, 2));
  }

  /** The arms of each step's best build beside what may shake them. */
  private Chart stiffness(Sweep sweep) {
    return chart(
        sweep,
        "stiffness",
        "First bending frequency of the arms",
        "Shaded is what it may be less, %s %%; it may as well be more: an engineering estimate. Where it meets the rotors' turns in hover, they may shake."
            .formatted(Spoken.number(100 * ArmWords.DOUBT, 0)),
        Chart.Axis.of("times a second", "Hz", 0),
        List.of(
            new Drawn(
                "softest arms of the best build",
                (build, across) -> ArmWords.hertz(build)
                    .map(hertz -> point(build, across, hertz, (1 - ArmWords.DOUBT) * hertz))),
            new Drawn(
                "its rotors in hover",
                (build, across) -> build.flight().map(flight -> {
                  var turns = flight.hoverRpm() / 60;
                  return point(build, across, turns, turns);
                }))),
        List.of(Mark.across(
            ArmWords.SOFT_HERTZ,
            "soft below %s Hz".formatted(Spoken.number(ArmWords.SOFT_HERTZ, 0)))),
        List.of(
            Table.Column.number("arms Hz", "hertz", 0),
            Table.Column.number("rotors Hz", "hoverHertz", 0)),
        build -> List.of(
            build.flatMap(ArmWords::hertz).<Object>map(hertz -> hertz).orElse(""),
            build
                .flatMap(Assessment::flight)
                .<Object>map(flight -> flight.hoverRpm() / 60)
                .orElse("")));
  }

  private static Point point(Assessment build, double across, double up, double low) {
    return new Point(
        across,
        up,
        low,
        BuildLines.names(build) + FlightPoints.mark(build),
        build.isBeyondBelief());
  }

  private Chart prices(Sweep sweep) {
    return chart(
        sweep,
        "prices",
        "Price of the best build",
        "",
        Chart.Axis.of("price to buy", currency, 0),
        List.of(new Drawn(
            "the best build",
            (build, across) -> Optional.of(
                point(build, across, FrontCharts.price(build), FrontCharts.price(build))))),
        List.of(),
        List.of(Table.Column.number(currency, "price", 0)),
        build -> List.of(build.<Object>map(FrontCharts::price).orElse("")));
  }

  /** A build so far across; empty where it has nothing there. */
  private interface Placed {
    Optional<Point> of(Assessment build, double across);
  }

  /** What is drawn of each step. */
  private record Drawn(String name, Placed point) {}

  private Chart chart(
      Sweep sweep,
      String id,
      String what,
      String reading,
      Chart.Axis y,
      List<Drawn> drawn,
      List<Mark> marks,
      List<Table.Column> columns,
      Function<Optional<Assessment>, List<Object>> cells) {
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
      drawn.forEach(one -> series.add(series(one.name(), sweep.steps(), along, 0, one.point())));
    } else {
      var other = axes.get(1 - index);
      for (var one : other.values()) {
        var steps = sweep.steps().stream()
            .filter(step -> step.values().get(1 - index).equals(one))
            .toList();
        var name = "%s %s %s".formatted(other.id(), one, other.unit()).strip();
        // One line a value: what else there is of a step is in the table.
        series.add(series(name, steps, along, index, drawn.get(0).point()));
      }
    }
    series.removeIf(one -> one.points().isEmpty());
    var none =
        sweep.steps().stream().filter(step -> step.best().build().isEmpty()).count();
    return Chart.xy(
        id,
        "%s against %s".formatted(what, along.id()),
        (reading + " " + SweepWords.standing(sweep)).strip()
            + (none == 0
                ? ""
                : " Nothing was found at %s of %s steps: they have no point."
                    .formatted(none, sweep.steps().size())),
        x,
        y,
        series,
        Stream.concat(
                marks.stream(),
                along.asked().filter(at -> numbers).map(at -> asked(at, along.unit())).stream())
            .toList(),
        table(sweep, columns, cells));
  }

  /** Two values make no curve. */
  private static boolean isNumbers(Axis along) {
    return along.values().size() > 2
        && along.values().stream().allMatch(text -> text.matches("-?[0-9]+(\\.[0-9]+)?"));
  }

  private static Series series(String name, List<Step> steps, Axis along, int index, Placed point) {
    var numbers = isNumbers(along);
    var points = new ArrayList<Point>();
    for (var step : steps) {
      var text = step.values().get(index);
      step.best()
          .build()
          .flatMap(build -> point.of(
              build, numbers ? Double.parseDouble(text) : along.values().indexOf(text)))
          .ifPresent(points::add);
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

  private static Table table(
      Sweep sweep, List<Table.Column> numbers, Function<Optional<Assessment>, List<Object>> told) {
    var columns = new ArrayList<Table.Column>();
    sweep
        .axes()
        .forEach(axis ->
            columns.add(Table.Column.text((axis.id() + " " + axis.unit()).strip(), axis.id())));
    columns.addAll(numbers);
    columns.add(Table.Column.text("build", "build"));
    var rows = new ArrayList<List<Object>>();
    for (var step : sweep.steps()) {
      var build = step.best().build();
      var cells = new ArrayList<Object>(step.values());
      cells.addAll(told.apply(build));
      cells.add(
          build.map(found -> BuildLines.names(found) + FlightPoints.mark(found)).orElse("none"));
      rows.add(cells);
    }
    return new Table(columns, rows);
  }
}
