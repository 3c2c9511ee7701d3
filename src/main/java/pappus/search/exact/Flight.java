package pappus.search.exact;

import java.util.OptionalDouble;
import pappus.assessment.Assessor;
import pappus.catalog.Build;

/** The aim of every ranking, under the limits that grow with mass and price. */
final class Flight implements Aim {
  /** Far above rounding of the physics, far below what any pilot could tell. */
  private static final double ROUNDING = 1e-6;

  /** Best speeds are found to a few parts in a million, and the way there may wobble. */
  private static final double ROUNDING_OF_COURSES = 2e-3;

  private final Assessor assessor;
  private final double capGrams;
  private final double budgetCents;
  private final double leastThrustToWeight;
  private final double leastDragArea;
  private final double rounding;

  Flight(Assessor assessor, double leastDragArea) {
    var scenario = assessor.scenario();
    var budget = scenario.budget();
    this.assessor = assessor;
    this.capGrams = scenario.massCap().largestMilligrams() / 1000.0;
    this.budgetCents = budget == null ? Double.POSITIVE_INFINITY : budget.cents();
    this.leastThrustToWeight = scenario.leastThrustToWeight();
    this.leastDragArea = leastDragArea;
    this.rounding = scenario.flight().style() == pappus.scenario.Flight.Style.HOVER
        ? ROUNDING
        : ROUNDING_OF_COURSES;
  }

  @Override
  public long atMost(
      Build begun, double grams, double variance, double watts, long cents, OptionalDouble loss) {
    var needed = grams + assessor.deviations() * Math.sqrt(variance);
    if (cents > budgetCents || needed > capGrams + ROUNDING) {
      return HOPELESS;
    }
    var area = begun.frame().map(assessor::dragArea).orElse(leastDragArea);
    var most = assessor.ceiling(begun, grams, watts, loss, area);
    if (most.thrustToWeight() < leastThrustToWeight * (1 - rounding) || most.figure() <= 0) {
      return HOPELESS;
    }
    return (long) Math.floor(most.figure() * 1000 * (1 + rounding)) + 1;
  }
}
