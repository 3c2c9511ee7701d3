package pappus.assessment;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import pappus.assessment.flight.Course;
import pappus.assessment.flight.FlightEstimate;
import pappus.assessment.flight.Ratings;
import pappus.assessment.flight.Stretch;
import pappus.physics.flight.Limits;
import pappus.quantity.Money;
import pappus.scenario.Scenario;

/** Every limit of a scenario and of the parts in hover, against what a build has. */
final class LimitTable {
  /** Slower over ground than this, m/s, is no progress: an engineering estimate. */
  private static final double LEAST_GROUND_SPEED = 0.5;

  /** That there is a flight. */
  static final String FLIGHT_TIME = "flight-time";

  private LimitTable() {}

  static List<Limit> of(
      Scenario scenario,
      double deviations,
      MassTable mass,
      CostTable cost,
      Purse purse,
      FlightEstimate flight) {
    var limits = new ArrayList<Limit>();
    var cap = scenario.massCap();
    limits.add(Limit.atMost(
        "mass-cap",
        "all-up mass at the confidence asked for",
        "g",
        mass.neededMilligrams(deviations) / 1000.0,
        cap.largestMilligrams() / 1000.0));
    limits.add(Limit.atLeast(
        "thrust-to-weight",
        "thrust over weight",
        "",
        flight.thrustToWeight(),
        scenario.leastThrustToWeight()));
    addBudget(scenario.budget(), cost, limits);
    addStock(purse, cost, limits);
    // A speed that cannot be flown is the cause of the currents told after it.
    flight.course().ifPresent(course -> addSpeeds(course, limits));
    addCurrents(flight, limits);
    return limits;
  }

  private static void addBudget(@Nullable Money budget, CostTable cost, List<Limit> limits) {
    if (budget != null) {
      limits.add(Limit.atMost(
          "budget",
          "price of what has to be bought",
          budget.currency(),
          cost.cents() / 100.0,
          budget.cents() / 100.0));
    }
  }

  /** Of parts that were counted, the one that is shortest. */
  private static void addStock(Purse purse, CostTable cost, List<Limit> limits) {
    if (purse.shelf().entries().isEmpty()) {
      return;
    }
    cost.pieces().entrySet().stream()
        .filter(entry -> !purse.hasAny(entry.getKey()))
        .flatMap(entry -> purse.shelf().pieces(entry.getKey()).stream()
            .map(there -> Limit.atMost(
                "in-stock",
                "%s in the build".formatted(entry.getKey().id()),
                Limit.PIECES,
                entry.getValue(),
                there)))
        .min(Comparator.comparingDouble(Limit::relativeMargin))
        .ifPresent(limits::add);
  }

  /** Hover above a continuous rating is a broken limit; full throttle above a burst one is not. */
  private static void addCurrents(FlightEstimate flight, List<Limit> limits) {
    var course = flight.course();
    var motorA = course
        .map(Course::mostMotorA)
        .orElseGet(() -> flight.hover().steady().point().currentA());
    var busA = course
        .map(Course::mostBusA)
        .orElseGet(() -> Math.max(flight.endurance().discharge().startA(), flight.amps()));
    var where = course.isPresent() ? "current in flight" : "current in hover";
    Limits continuous = flight.continuous();
    addCurrent("motor-current", "motor " + where, motorA, continuous.motorA(), limits);
    addCurrent(
        "controller-current", "controller " + where, motorA, continuous.controllerA(), limits);
    addCurrent("pack-current", "pack " + where, busA, continuous.packA(), limits);
    addCurrent("plug-current", "plug " + where, busA, continuous.connectorA(), limits);
    addCurrent("lead-current", "lead " + where, busA, continuous.leadA(), limits);
    limits.add(Limit.atMost(
        "hover-throttle",
        "throttle in hover at half charge",
        "",
        flight.duty(),
        Ratings.MOST_DUTY));
    limits.add(
        Limit.atLeast(FLIGHT_TIME, "time in the air", "s", flight.endurance().seconds(), 1));
  }

  /** An airspeed beyond full throttle, or a wind that is not overcome, is a broken limit. */
  private static void addSpeeds(Course course, List<Limit> limits) {
    course.stretches().stream()
        .max(Comparator.comparingDouble(stretch -> stretch.cruise().airspeedMPerS()))
        .ifPresent(stretch -> limits.add(Limit.atMost(
            "top-speed",
            "airspeed " + stretch.where(),
            "m/s",
            stretch.cruise().airspeedMPerS(),
            course.topSpeedMPerS())));
    course.stretches().stream()
        .filter(Stretch::coversGround)
        .min(Comparator.comparingDouble(Stretch::groundSpeedMPerS))
        .ifPresent(stretch -> limits.add(Limit.atLeast(
            "ground-speed",
            "speed over ground " + stretch.where(),
            "m/s",
            stretch.groundSpeedMPerS(),
            LEAST_GROUND_SPEED)));
  }

  private static void addCurrent(
      String id, String label, double amps, double bound, List<Limit> limits) {
    if (bound < Double.POSITIVE_INFINITY) {
      limits.add(Limit.atMost(id, label, "A", amps, bound));
    }
  }
}
