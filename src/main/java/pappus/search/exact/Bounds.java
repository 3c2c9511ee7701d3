package pappus.search.exact;

import java.util.Optional;
import java.util.OptionalDouble;
import pappus.assessment.Assessor;
import pappus.catalog.Build;
import pappus.scenario.Flight.Style;

/** What holds for every build of a question: the cap, the budget, and how far rounding may lead astray. */
final class Bounds {
  /** Far above rounding of the physics, far below what any pilot could tell. */
  private static final double ROUNDING = 1e-6;

  /** Best speeds are found to a few parts in a million, and the way there may wobble. */
  private static final double ROUNDING_OF_COURSES = 2e-3;

  private final Assessor assessor;
  private final double deviations;
  private final double capGrams;
  private final double budgetCents;
  private final double leastThrustToWeight;
  private final double rounding;

  Bounds(Assessor assessor) {
    var scenario = assessor.scenario();
    var budget = scenario.budget();
    this.assessor = assessor;
    this.deviations = assessor.deviations();
    this.capGrams = scenario.massCap().largestMilligrams() / 1000.0;
    this.budgetCents = budget == null ? Double.POSITIVE_INFINITY : budget.cents();
    this.leastThrustToWeight = scenario.leastThrustToWeight();
    this.rounding = scenario.flight().style() == Style.HOVER ? ROUNDING : ROUNDING_OF_COURSES;
  }

  double capGrams() {
    return capGrams;
  }

  double leastThrustToWeight() {
    return leastThrustToWeight * (1 - rounding);
  }

  /** Whether mass and price alone keep any build with at least these numbers from being feasible. */
  boolean isTooMuch(double grams, double variance, long cents) {
    return cents > budgetCents || grams + deviations * Math.sqrt(variance) > capGrams + ROUNDING;
  }

  /** The objective that no figure up to this one is worth more than. */
  long objective(double figure) {
    return figure <= 0
        ? Aim.HOPELESS
        : (long) Math.floor(Math.min(figure, 1e12) * 1000 * (1 + rounding)) + 1;
  }

  /**
   * The aim of every ranking for parts that are decided.
   *
   * @param begun has motor, propeller and battery
   * @param dragArea least drag area, m²
   * @param watts least draw beside the motors, W
   * @param leastOwnLoss least part-load loss of any board that has its own
   */
  Optional<Aim> aim(Build begun, double dragArea, double watts, OptionalDouble leastOwnLoss) {
    return assessor.prospect(begun).map(prospect -> {
      var byLaw = prospect.mostGrams(leastThrustToWeight, watts, OptionalDouble.empty());
      var byOwn = leastOwnLoss.isPresent()
          ? prospect.mostGrams(leastThrustToWeight, watts, leastOwnLoss)
          : 0;
      var mostGrams = Math.max(byLaw, byOwn) * (1 + rounding);
      return (grams, variance, drawn, cents, loss) ->
          grams > mostGrams || isTooMuch(grams, variance, cents)
              ? Aim.HOPELESS
              : objective(prospect.figure(grams, drawn, loss, dragArea));
    });
  }
}
