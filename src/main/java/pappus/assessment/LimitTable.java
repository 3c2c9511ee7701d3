package pappus.assessment;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import pappus.assessment.flight.Course;
import pappus.assessment.flight.FlightEstimate;
import pappus.assessment.flight.Ratings;
import pappus.assessment.flight.Stretch;
import pappus.links.Reach;
import pappus.physics.flight.EfficiencyBand;
import pappus.physics.flight.Limits;
import pappus.quantity.Money;
import pappus.scenario.Flight;
import pappus.scenario.Scenario;

/** Every limit of a scenario and of the parts in hover, against what a build has. */
final class LimitTable {
  /** Slower over ground than this, m/s, is no progress: an engineering estimate. */
  private static final double LEAST_GROUND_SPEED = 0.5;

  private LimitTable() {}

  static List<Limit> of(
      Scenario scenario,
      Purpose purpose,
      double deviations,
      MassTable mass,
      CostTable cost,
      Purse purse,
      FlightEstimate flight,
      Reach reach,
      double clearView,
      long planWith,
      int disbeliefs) {
    var limits = new ArrayList<Limit>();
    var cap = scenario.massCap();
    limits.add(LimitKind.MASS_CAP.limit(
        mass.neededMilligrams(deviations) / 1000.0, cap.largestMilligrams() / 1000.0));
    limits.add(
        LimitKind.THRUST_TO_WEIGHT.limit(flight.thrustToWeight(), scenario.leastThrustToWeight()));
    addLeastFlight(scenario, purpose, planWith, limits);
    var asked = scenario.reachMetres();
    if (asked != null) {
      reach
          .shorter()
          .ifPresent(
              link -> limits.add(LimitKind.REACH.limit(link.way().label(), link.metres(), asked)));
    }
    if (purpose.onlyBelieved()) {
      limits.add(LimitKind.BELIEF.limit(disbeliefs, 0));
    }
    if (scenario.clearViewDegrees() != null) {
      limits.add(LimitKind.CLEAR_VIEW.limit(clearView, scenario.clearViewDegrees()));
    }
    addBudget(scenario.budget(), cost, limits);
    addStock(purse, cost, limits);
    // A speed that cannot be flown is the cause of the currents told after it.
    flight.course().ifPresent(course -> addSpeeds(course, limits));
    addCurrents(flight, mass.grams() / 1000, limits);
    if (scenario.flight().asksForFullThrottle()) {
      limits.add(LimitKind.PACK_THROTTLE.limit(flight.packThrottle(), 1));
    }
    return limits;
  }

  private static void addLeastFlight(
      Scenario scenario, Purpose purpose, long planWith, List<Limit> limits) {
    if (purpose.leastFlight() > 0) {
      var kind = scenario.isForRange() ? LimitKind.LEAST_KILOMETRES : LimitKind.LEAST_MINUTES;
      var unit = scenario.isForRange() ? 1_000_000.0 : 60_000.0;
      limits.add(kind.limit(planWith / unit, purpose.leastFlight() / unit));
    }
  }

  private static void addBudget(@Nullable Money budget, CostTable cost, List<Limit> limits) {
    if (budget != null) {
      limits.add(
          LimitKind.BUDGET.limit(budget.currency(), cost.cents() / 100.0, budget.cents() / 100.0));
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
            .map(there -> LimitKind.IN_STOCK.limit(entry.getKey().id(), entry.getValue(), there)))
        .min(Comparator.comparingDouble(Limit::relativeMargin))
        .ifPresent(limits::add);
  }

  /** Hover above a continuous rating is a broken limit; full throttle above a burst one is not. */
  private static void addCurrents(FlightEstimate flight, double kilograms, List<Limit> limits) {
    var course = flight.course();
    var motorA = course
        .map(Course::mostMotorA)
        .orElseGet(() -> flight.hover().steady().point().currentA());
    var busA = course
        .map(Course::mostBusA)
        .orElseGet(() -> Math.max(flight.endurance().discharge().startA(), flight.amps()));
    var where = course.isPresent() ? "in flight" : "in hover";
    Limits continuous = flight.continuous();
    addCurrent(LimitKind.MOTOR_CURRENT, where, motorA, continuous.motorA(), limits);
    addCurrent(LimitKind.CONTROLLER_CURRENT, where, motorA, continuous.controllerA(), limits);
    addCurrent(LimitKind.PACK_CURRENT, where, busA, continuous.packA(), limits);
    addCurrent(LimitKind.PLUG_CURRENT, where, busA, continuous.connectorA(), limits);
    addCurrent(LimitKind.LEAD_CURRENT, where, busA, continuous.leadA(), limits);
    limits.add(LimitKind.HOVER_THROTTLE.limit(flight.duty(), Ratings.MOST_DUTY));
    if (flight.volts() > 0) {
      limits.add(
          LimitKind.HOVER_EFFICIENCY.limit(flight.efficiency(), EfficiencyBand.hard(kilograms)));
    }
    course.ifPresent(flown -> addRounds(flown, flight.endurance().seconds(), limits));
    limits.add(LimitKind.FLIGHT_TIME.limit(flight.endurance().seconds(), 1));
  }

  /** Legs over and over lead home only once a round is over; a leg that stays has to have time for it. */
  private static void addRounds(Course course, double seconds, List<Limit> limits) {
    course
        .stayed()
        .ifPresentOrElse(
            stayed -> limits.add(LimitKind.STAY_TIME.limit(stayed.where(), stayed.seconds(), 1)),
            () -> {
              if (course.style() == Flight.Style.PROFILE) {
                limits.add(LimitKind.ROUNDS.limit(course.rounds(seconds), 1));
              }
            });
  }

  /** An airspeed beyond full throttle, or a wind that is not overcome, is a broken limit. */
  private static void addSpeeds(Course course, List<Limit> limits) {
    course.stretches().stream()
        .max(Comparator.comparingDouble(stretch -> stretch.cruise().airspeedMPerS()))
        .ifPresent(stretch -> limits.add(LimitKind.TOP_SPEED.limit(
            stretch.where(), stretch.cruise().airspeedMPerS(), course.topSpeedMPerS())));
    course.stretches().stream()
        .filter(Stretch::coversGround)
        .min(Comparator.comparingDouble(Stretch::groundSpeedMPerS))
        .ifPresent(stretch -> limits.add(LimitKind.GROUND_SPEED.limit(
            stretch.where(), stretch.groundSpeedMPerS(), LEAST_GROUND_SPEED)));
  }

  private static void addCurrent(
      LimitKind kind, String where, double amps, double bound, List<Limit> limits) {
    if (bound < Double.POSITIVE_INFINITY) {
      limits.add(kind.limit(where, amps, bound));
    }
  }
}
