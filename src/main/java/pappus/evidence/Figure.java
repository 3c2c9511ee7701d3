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
 * @param stated the record's own, without the known bias of labels; empty if the class law stands in
 * @param law what parts of its class have
 * @param spread one standard deviation of ln of what parts of its class have
 * @param doubt one standard deviation of ln of the record's own figure
 * @param counted the likeliest
 * @param deviation one standard deviation of ln of the counted figure
 */
public record Figure(
    String name,
    String unit,
    Optional<Double> stated,
    double law,
    double spread,
    double doubt,
    double counted,
    double deviation) {

  /** An estimate as near to its law says nothing about the part: it was worked out from the law. */
  private static final double SAME_AS_LAW = 0.002;

  public Figure {
    Require.text("name", name);
    Require.positive("law", law);
    Require.positive("counted", counted);
  }

  /**
   * A record's figure x and its class law L, weighed by their variances: ln x̂ = ln L + τ²/(τ²+σ²) (ln x − ln L),
   * with the deviation τσ/√(τ²+σ²), the mean and deviation of two normal sources together.
   *
   * @param spread τ, above 0
   * @param doubt σ, at least 0
   * @param known how the figure is known
   */
  static Figure weighed(
      String name,
      String unit,
      double stated,
      double law,
      double spread,
      double doubt,
      Known known) {
    Require.positive("stated", stated);
    Require.positive("spread", spread);
    Require.notNegative("doubt", doubt);
    var away = StrictMath.log(stated / law);
    if (known == Known.ESTIMATED && Math.abs(away) < SAME_AS_LAW) {
      return new Figure(name, unit, Optional.of(stated), law, spread, doubt, stated, spread);
    }
    var both = spread * spread + doubt * doubt;
    return new Figure(
        name,
        unit,
        Optional.of(stated),
        law,
        spread,
        doubt,
        law * StrictMath.exp(spread * spread / both * away),
        spread * doubt / Math.sqrt(both));
  }

  /** A figure that the record does not have. */
  static Figure ofLaw(String name, String unit, double law, double spread) {
    return new Figure(name, unit, Optional.empty(), law, spread, spread, law, spread);
  }

  /**
   * The figure to compute with.
   *
   * @param harm 1 if a larger figure shortens flights, -1 if a smaller one does, 0 if it depends
   */
  public double by(Weighing weighing, int harm) {
    return switch (weighing) {
      case STATED -> stated.orElse(law);
      case EXPECTED -> counted;
      case CAUTIOUS -> counted * StrictMath.exp(0.5 * harm * deviation);
    };
  }

  /** Counted over stated; 1 without a figure of the record's own. */
  public double change() {
    return counted / stated.orElse(counted);
  }
}
