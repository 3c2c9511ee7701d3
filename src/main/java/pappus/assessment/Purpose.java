package pappus.assessment;

import pappus.scenario.Goal;
import pappus.scenario.Scenario;

/**
 * What builds are ranked by, and how much of a flight each must have.
 *
 * @param measure what is to be as good as can be
 * @param leastFlight least figure to plan with, in thousandths of a second or of a metre; 0 where there is none
 * @param onlyBelieved whether numbers beyond what such aircraft are known to reach are no answer
 */
public record Purpose(Measure measure, long leastFlight, boolean onlyBelieved) {
  /** What may be as good as can be. */
  public enum Measure {
    /** The flight by the likeliest figures. */
    FLIGHT,
    /** The figure to plan with. */
    PLAN_WITH,
    PRICE,
    MASS,
    THRUST,
    /** Pieces to buy, then price. */
    PIECES;

    /** Whether it is more of a flight. */
    public boolean isOfFlight() {
      return this == FLIGHT || this == PLAN_WITH;
    }

    /** What a scenario's answer is ordered by, where it prefers something of nearly the best too. */
    public static Measure ordering(Scenario scenario) {
      return scenario.prefer() == null ? of(scenario.goalOrEndurance()) : PIECES;
    }

    private static Measure of(Goal goal) {
      return switch (goal) {
        case ENDURANCE, RANGE -> FLIGHT;
        case PRICE -> PRICE;
        case MASS -> MASS;
        case THRUST -> THRUST;
      };
    }
  }

  /** What a scenario asks for. */
  static Purpose of(Scenario scenario) {
    return new Purpose(Measure.of(scenario.goalOrEndurance()), leastFlight(scenario), false);
  }

  /** A hundred thousandths of a minute are less than rounding is. */
  private static long leastFlight(Scenario scenario) {
    if (scenario.leastMinutes() != null) {
      return (long) Math.ceil(scenario.leastMinutes() * 60_000 - 1e-3);
    }
    return scenario.leastKilometres() == null
        ? 0
        : (long) Math.ceil(scenario.leastKilometres() * 1_000_000 - 1e-3);
  }

  /** Whether the figure to plan with matters. */
  public boolean asksForPlan() {
    return leastFlight > 0 || measure == Measure.PLAN_WITH;
  }
}
