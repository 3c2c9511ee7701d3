package pappus.reliance;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import pappus.assessment.flight.Flights;
import pappus.evidence.BoardFigures;
import pappus.evidence.BuildFigures;
import pappus.evidence.Figure;
import pappus.evidence.Weighing;
import pappus.part.Battery;
import pappus.part.Board;
import pappus.part.Build;
import pappus.part.Part;
import pappus.part.Propeller;
import pappus.part.Role;
import pappus.scenario.Scenario;

/** The reliances of a scenario's builds, each worked out when it is first asked for. Safe for several threads. */
public final class Reliances {
  private final Scenario scenario;
  private final Flights flights;
  private final Map<Main, Reliance> known = new ConcurrentHashMap<>();
  private final Map<List<String>, Surest> surest = new ConcurrentHashMap<>();

  /**
   * What one reliance holds for.
   *
   * @param ids of frame, motor, propeller and battery
   * @param loss ripple of the controllers over that of the law; absent: as the law says
   * @param doubt about that; absent: about the law
   */
  private record Main(List<String> ids, OptionalDouble loss, Optional<Double> doubt) {}

  /**
   * @param flights by the likeliest figures
   */
  public Reliances(Scenario scenario, Flights flights) {
    this.scenario = scenario;
    this.flights = flights;
  }

  /**
   * Share of the estimate of a build to plan with, 0 to 1.
   *
   * @param build has main parts and a board
   * @param figures what counts of its parts
   * @param doubtGrams one standard deviation of its mass, g
   * @param watts draw of everything but the motors, W
   */
  public double planWith(Build build, BuildFigures figures, double doubtGrams, double watts) {
    return Math.min(
        of(ids(build), build, figures).planWith(doubtGrams, watts),
        surest(build)
            .with(figures.board().rippleShare(Weighing.EXPECTED), doubt(figures.board()))
            .planWith(doubtGrams, watts));
  }

  /**
   * Share of the estimate to plan with of main parts, whatever kit they get: as if their controllers lost what the law
   * says, and without the doubts of the kit's mass and draw.
   *
   * @param build has frame, motor, propeller and battery
   */
  public double byTheLaw(Build build) {
    var mains = Build.empty();
    for (var role : Role.MAIN) {
      mains = mains.with(role, build.part(role).orElseThrow());
    }
    return planWith(mains, flights.models().figures(mains), 0, 0);
  }

  /** One standard deviation of ln of the loss of a board's controllers. */
  public double doubt(Board board) {
    return doubt(flights.models().figures(board));
  }

  private static double doubt(BoardFigures figures) {
    return figures.controllerLoss().map(Figure::deviation).orElse(Sources.LAW);
  }

  private static List<String> ids(Build build) {
    return List.of(
        build.frame().orElseThrow().id(),
        build.motor().orElseThrow().id(),
        build.propeller().orElseThrow().id(),
        build.battery().orElseThrow().id());
  }

  private Reliance of(List<String> ids, Build build, BuildFigures figures) {
    var main = new Main(
        ids,
        figures.board().rippleShare(Weighing.EXPECTED),
        figures.board().controllerLoss().map(Figure::deviation));
    return known.computeIfAbsent(main, fresh -> Reliance.of(scenario, flights, build, figures));
  }

  /**
   * How far builds are relied on at most that have the same main parts and board.
   *
   * @param begun has main parts and a board
   */
  public Reliance of(Build begun) {
    return of(ids(begun), begun, flights.models().figures(begun));
  }

  /**
   * How far builds are relied on at most that have the same three of the main parts.
   *
   * @param begun has motor, propeller and battery
   */
  public Surest surest(Build begun) {
    var three = Build.empty()
        .with(Role.MOTOR, begun.motor().orElseThrow())
        .with(Role.PROPELLER, begun.propeller().orElseThrow())
        .with(Role.BATTERY, begun.battery().orElseThrow());
    return surest.computeIfAbsent(
        three.parts().values().stream().map(Part::id).toList(),
        fresh -> Surest.of(scenario, flights, three, flights.models().figures(three)));
  }

  /** No build with any of some propellers and any of some batteries has a larger share, whatever else it has. */
  public double most(List<Propeller> propellers, List<Battery> batteries) {
    var models = flights.models();
    return Reliance.most(
        propellers.stream()
            .mapToDouble(one -> models.figures(one).merit().deviation())
            .min()
            .orElse(0),
        batteries.stream()
            .mapToDouble(one -> models.figures(one).delivered().deviation())
            .min()
            .orElse(0));
  }
}
