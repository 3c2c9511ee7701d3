package pappus.physics.battery;

import pappus.quantity.Require;
import pappus.quantity.Root;

/**
 * How a cell warms itself in steady flight, and how much easier current then flows through it.
 *
 * <p>One thermal resistance and one time constant from cell to moving air: an engineering estimate between 12 K/W and
 * 600 s of an 18650 in still air (2.0, 6.6, 11.6 and 16.2 K where eight cells of isaiasBessa97, 18650 identification data, 2024, rose by
 * 1.4, 6.9, 13 and 19)
 * and what a downwash can take; trust the rise to 40 %.
 *
 * <p>Why: src/site/markdown/decisions.md#cells-warm-themselves-once-by-the-hover-at-half-charge
 *
 * @param chemistry of the cell
 * @param takeOffK its temperature at take-off, K, 263.15 to 333.15
 * @param kelvinPerWatt from cell to air, K/W; of parallel cells that are counted as one, their share
 */
public record Warming(Chemistry chemistry, double takeOffK, double kelvinPerWatt) {
  /** Of one cell of a pack under the rotors, K/W. */
  public static final double IN_DOWNWASH_K_PER_W = 8;

  /** Seconds in which a cell under the rotors warms by 63 % of its rise. */
  public static final double IN_DOWNWASH_SECONDS = 400;

  public Warming {
    Require.present("chemistry", chemistry);
    Temperature.require(takeOffK);
    Require.notNegative("kelvinPerWatt", kelvinPerWatt);
  }

  /** Of a cell under the rotors. */
  public static Warming inDownwash(Chemistry chemistry, double takeOffK) {
    return new Warming(chemistry, takeOffK, IN_DOWNWASH_K_PER_W);
  }

  /**
   * By how much a current warms a cell, K.
   *
   * @param ohm its resistance, Ω
   * @param kelvinPerWatt from cell to air, K/W
   * @param timeConstantSeconds s, above 0
   * @param seconds since the current began
   */
  public static double riseK(
      double currentA,
      double ohm,
      double kelvinPerWatt,
      double timeConstantSeconds,
      double seconds) {
    return currentA
        * currentA
        * ohm
        * kelvinPerWatt
        * -StrictMath.expm1(
            -seconds / Require.positive("timeConstantSeconds", timeConstantSeconds));
  }

  /**
   * Resistance after so long a current over that at take-off. The warmer a cell, the less it warms itself: the rise is
   * where both agree. It is counted no farther than to where more current would sag less, nor warmer than a pack may
   * be.
   *
   * @param currentA through it
   * @param ohm of it at take-off, Ω
   * @param seconds since take-off
   */
  double resistanceFactor(double currentA, double ohm, double seconds) {
    var coldRiseK = riseK(currentA, ohm, kelvinPerWatt, IN_DOWNWASH_SECONDS, seconds);
    // With the rise r = I² k f(r), a hundredth more current lowers f by at most .8 of a hundredth
    // there.
    var mostK = Math.min(Temperature.HOTTEST_K - takeOffK, chemistry.gentleRiseK(takeOffK));
    if (coldRiseK * factorAt(mostK) >= mostK) {
      return factorAt(mostK);
    }
    return factorAt(Root.ofFalling(
        rise -> coldRiseK * factorAt(rise) - rise, 0, mostK, Math.min(mostK, 0.8 * coldRiseK)));
  }

  private double factorAt(double riseK) {
    return chemistry.temperatureResistanceFactor(takeOffK + riseK)
        / chemistry.temperatureResistanceFactor(takeOffK);
  }

  /** So many cells in parallel counted as one. */
  Warming shared(int parallel) {
    return new Warming(chemistry, takeOffK, kelvinPerWatt / parallel);
  }

  /** The warmer of two of one chemistry and place. */
  Warming warmer(Warming other) {
    return kelvinPerWatt >= other.kelvinPerWatt ? this : other;
  }
}
