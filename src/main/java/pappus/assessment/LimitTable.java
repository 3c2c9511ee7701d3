package pappus.assessment;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import pappus.physics.flight.Limits;
import pappus.quantity.Money;
import pappus.scenario.Scenario;

/** Every limit of a scenario and of the parts in hover, against what a build has. */
final class LimitTable {
  private LimitTable() {}

  static List<Limit> of(
      Scenario scenario, double deviations, MassTable mass, CostTable cost, FlightEstimate flight) {
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

  /** Hover above a continuous rating is a broken limit; full throttle above a burst one is not. */
  private static void addCurrents(FlightEstimate flight, List<Limit> limits) {
    var motorA = flight.hover().steady().point().currentA();
    var discharge = flight.endurance().discharge();
    var busA = Math.max(discharge.startA(), flight.amps());
    Limits continuous = flight.continuous();
    addCurrent("motor-current", "motor current in hover", motorA, continuous.motorA(), limits);
    addCurrent(
        "controller-current",
        "controller current in hover",
        motorA,
        continuous.controllerA(),
        limits);
    addCurrent("pack-current", "pack current in hover", busA, continuous.packA(), limits);
    addCurrent("plug-current", "plug current in hover", busA, continuous.connectorA(), limits);
    addCurrent("lead-current", "lead current in hover", busA, continuous.leadA(), limits);
    limits.add(Limit.atMost(
        "hover-throttle", "throttle in hover at half charge", "", flight.duty(), 0.999));
    limits.add(
        Limit.atLeast("flight-time", "time in the air", "s", flight.endurance().seconds(), 1));
  }

  private static void addCurrent(
      String id, String label, double amps, double bound, List<Limit> limits) {
    if (bound < Double.POSITIVE_INFINITY) {
      limits.add(Limit.atMost(id, label, "A", amps, bound));
    }
  }
}
