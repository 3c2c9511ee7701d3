package pappus.evidence;

import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * What class and record together say of a figure: ln of it over what is usual. Parts of a class differ normally; an
 * error is mostly normal and rarely a blunder; above a soft ceiling hardly any part is.
 *
 * @param mean expectation
 * @param deviation one standard deviation
 * @param blunder probability that the record is a blunder
 */
record Posterior(double mean, double deviation, double blunder) {
  /** One record in a hundred is mistyped, of another part or boasted (engineering estimate). */
  private static final double BLUNDERS = 0.01;

  /** One standard deviation of such an error (engineering estimate). */
  private static final double BLUNDER = 0.25;

  /** One standard deviation of ln of a ceiling (engineering estimate). */
  private static final double SOFTNESS = 0.05;

  /** From so many deviations above a ceiling on, the limit of the formula counts, which is near. */
  private static final double FAR_ABOVE = -30;

  private static final NormalDistribution STANDARD = new NormalDistribution();

  /** One of the ways in which a record may have come about. */
  private record Way(double weight, double mean, double variance) {
    /**
     * From normal differences and a normal error: ln x̂ = τ²/(τ²+σ²) ln x with the variance τ²σ²/(τ²+σ²), bent below
     * the ceiling as the first two moments of that normal density times Φ((ceiling − t)/softness) are.
     */
    static Way of(double share, double away, double spread, double error, double ceiling) {
      var tau = spread * spread;
      var both = tau + error * error;
      var mean = tau / both * away;
      var variance = tau * error * error / both;
      var density = StrictMath.exp(-away * away / both / 2) / Math.sqrt(both);
      if (Double.isInfinite(ceiling)) {
        return new Way(share * density, mean, variance);
      }
      var soft = Math.sqrt(variance + SOFTNESS * SOFTNESS);
      var z = (ceiling - mean) / soft;
      var below = STANDARD.cumulativeProbability(z);
      var slope = z < FAR_ABOVE ? -z : STANDARD.density(z) / below;
      return new Way(
          share * density * below,
          mean - variance / soft * slope,
          variance * (1 - variance / (soft * soft) * slope * (z + slope)));
    }
  }

  /**
   * The posterior.
   *
   * @param away ln of the stated over the usual
   * @param spread one standard deviation of the class, above 0
   * @param error one standard deviation of the record, at least 0; a record without doubt is taken at its word
   * @param ceiling ln of it over the usual; infinite without one
   */
  static Posterior of(double away, double spread, double error, double ceiling) {
    if (error == 0) {
      return new Posterior(away, 0, 0);
    }
    var sound = Way.of(1 - BLUNDERS, away, spread, error, ceiling);
    var wrong = Way.of(BLUNDERS, away, spread, StrictMath.hypot(error, BLUNDER), ceiling);
    var sum = sound.weight + wrong.weight;
    var blunder = sum > 0 ? wrong.weight / sum : 1;
    var mean = (1 - blunder) * sound.mean + blunder * wrong.mean;
    var apart = sound.mean - wrong.mean;
    return new Posterior(
        mean,
        Math.sqrt((1 - blunder) * sound.variance
            + blunder * wrong.variance
            + blunder * (1 - blunder) * apart * apart),
        blunder);
  }

  /** Of a figure of which only the class is known. */
  static Posterior ofClass(double away, double spread, double ceiling) {
    // An error without end leaves the class as it is.
    var way = Way.of(1, 0, spread, 1e9, ceiling - away);
    return new Posterior(away + way.mean, Math.sqrt(way.variance), 0);
  }
}
