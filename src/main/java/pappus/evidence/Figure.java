package pappus.evidence;

import java.util.Optional;
import pappus.part.Known;
import pappus.quantity.Require;

/**
 * One uncertain figure of a record.
 *
 * <p>Why: src/site/markdown/decisions.md#a-figure-counts-by-what-two-normal-sources-say-together
 *
 * @param name in words, as "resistance"
 * @param unit as in the catalogue; empty for a pure number
 * @param stated the record's own, without the known bias of labels; empty if the prior stands in
 * @param prior median of what parts of its class have
 * @param priorDeviation one standard deviation of ln of the prior
 * @param doubt one standard deviation of ln of the record's own figure
 * @param posterior median of what prior and record say together, which counts
 * @param deviation one standard deviation of ln of the posterior
 */
public record Figure(
    String name,
    String unit,
    Optional<Double> stated,
    double prior,
    double priorDeviation,
    double doubt,
    double posterior,
    double deviation) {

  /** An estimate as near to its prior says nothing about the part: it was worked out from the prior. */
  private static final double SAME_AS_PRIOR = 0.002;

  public Figure {
    Require.text("name", name);
    Require.positive("prior", prior);
    Require.positive("posterior", posterior);
  }

  /**
   * Shrinkage of a record's figure x toward the prior median L, by their variances: ln x̂ = ln L + τ²/(τ²+σ²) (ln x −
   * ln L), with the deviation τσ/√(τ²+σ²): the posterior of a normal prior and a normal reading.
   *
   * @param priorDeviation τ, above 0
   * @param doubt σ, at least 0
   * @param known how the figure is known
   */
  static Figure weighed(
      String name,
      String unit,
      double stated,
      double prior,
      double priorDeviation,
      double doubt,
      Known known) {
    Require.positive("stated", stated);
    Require.positive("priorDeviation", priorDeviation);
    Require.notNegative("doubt", doubt);
    var away = StrictMath.log(stated / prior);
    if (known == Known.ESTIMATED && Math.abs(away) < SAME_AS_PRIOR) {
      return new Figure(
          name, unit, Optional.of(stated), prior, priorDeviation, doubt, stated, priorDeviation);
    }
    var both = priorDeviation * priorDeviation + doubt * doubt;
    return new Figure(
        name,
        unit,
        Optional.of(stated),
        prior,
        priorDeviation,
        doubt,
        prior * StrictMath.exp(priorDeviation * priorDeviation / both * away),
        priorDeviation * doubt / Math.sqrt(both));
  }

  /** A figure that the record does not have. */
  static Figure ofPrior(String name, String unit, double prior, double priorDeviation) {
    return new Figure(
        name, unit, Optional.empty(), prior, priorDeviation, priorDeviation, prior, priorDeviation);
  }

  /**
   * A figure that the record does not have and that its class filled: half a spread the harmful way.
   *
   * @param filled as it counts
   * @param spread one standard deviation of ln within the class
   */
  static Figure filled(String name, String unit, double filled, double prior, double spread) {
    return new Figure(name, unit, Optional.empty(), prior, spread, spread, filled, spread);
  }

  /**
   * The figure to compute with.
   *
   * @param harm 1 if a larger figure shortens flights, -1 if a smaller one does, 0 if it depends
   */
  public double by(Weighing weighing, int harm) {
    return switch (weighing) {
      case STATED -> stated.orElse(prior);
      case EXPECTED -> posterior;
      case CAUTIOUS -> posterior * StrictMath.exp(0.5 * harm * deviation);
    };
  }

  /** Posterior over stated; 1 without a figure of the record's own. */
  public double change() {
    return posterior / stated.orElse(posterior);
  }
}
