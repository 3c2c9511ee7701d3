package pappus.search.exact;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pappus.assessment.Assessment;
import pappus.assessment.Assessor;
import pappus.assessment.Prospect;
import pappus.catalog.Build;

/** What holds for every build of a question: the cap, the budget, and how far rounding may lead astray. */
final class Bounds {
  /** By so much a limit may be missed that the assessment still finds kept. */
  private static final double EDGE = 1e-6;

  /** Far above the rounding of sums; without a choice of speeds the physics falls strictly, as a test asks. */
  private static final double ROUNDING = 1e-12;

  /** Best speeds are found to some parts in a million million. */
  private static final double ROUNDING_OF_SPEEDS = 1e-11;

  /** So much longer may a flight at a best speed last with more drag, since it is slower: measured below 5e-4. */
  private static final double SLOWED_BY_DRAG = 1e-2;

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
    this.rounding = assessor.choosesSpeeds() ? ROUNDING_OF_SPEEDS : ROUNDING;
  }

  double capGrams() {
    return capGrams;
  }

  double leastThrustToWeight() {
    return leastThrustToWeight * (1 - EDGE);
  }

  /** Whether mass and price alone keep any build with at least these numbers from being feasible. */
  boolean isTooMuch(double grams, double variance, long cents) {
    return cents > budgetCents || grams + deviations * Math.sqrt(variance) > capGrams + EDGE;
  }

  /** The objective that no figure up to this one is worth more than. */
  long objective(double figure) {
    return figure <= 0
        ? Aim.HOPELESS
        : (long) Math.floor(Math.min(figure * (1 + rounding), 1e12) * Assessment.OBJECTIVE);
  }

  /**
   * The aim of every ranking for parts that are decided.
   *
   * @param begun has motor, propeller and battery
   * @param dragArea least and most drag area, m²
   * @param least draw beside the motors, W, and resistance of board and lead, Ω
   * @param losses least part-load loss of boards of each sort that may be taken
   */
  Optional<Aim> aim(Build begun, Span dragArea, Adds least, List<OptionalDouble> losses) {
    return assessor.prospect(begun).map(prospect -> {
      var mostGrams = losses.stream()
          .mapToDouble(loss -> mostGrams(prospect, least, loss))
          .max()
          .orElse(0);
      var heaviest = Math.min(mostGrams, capGrams);
      var maySlow = prospect.maySlow(new Prospect.Least(
          heaviest, least.watts(), least.ohm(), OptionalDouble.empty(), dragArea.most()));
      var longer = dragArea.isKnown() || !assessor.choosesSpeeds() ? 1 : 1 + SLOWED_BY_DRAG;
      return (adds, loss) ->
          adds.grams() > heaviest + EDGE || isTooMuch(adds.grams(), adds.variance(), adds.cents())
              ? Aim.HOPELESS
              : objective(longer
                  * prospect.figure(
                      new Prospect.Least(
                          adds.grams(), adds.watts(), adds.ohm(), loss, dragArea.least()),
                      maySlow));
    });
  }

  private double mostGrams(Prospect prospect, Adds least, OptionalDouble loss) {
    return prospect.mostGrams(
        leastThrustToWeight(), new Prospect.Least(0, least.watts(), least.ohm(), loss, 0));
  }

  /** From the least to the most of what is not decided. */
  record Span(double least, double most) {
    boolean isKnown() {
      return least == most;
    }
  }
}
