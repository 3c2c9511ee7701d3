package pappus.physics.link;

import pappus.quantity.Require;

/**
 * What one link may lose on its way, and so how far it reaches.
 *
 * <p>Room is kept for fading, and 2 dB are lost in plugs, leads and frames. Where a link then ends varies by 6 dB one
 * standard deviation, a factor of two in free space: no single number tells how far a link reaches (engineering
 * estimates).
 *
 * @param powerDbm at the plug of the sending antenna
 * @param gainsDbi of both antennas together, towards each other
 * @param sensitivityDbm weakest signal that is still followed
 * @param mismatchDb lost between their polarisations
 * @param fadeDb kept for fading
 * @param hertz of the wave
 * @param breakMetres beyond which the ground counts
 */
public record LinkBudget(
    double powerDbm,
    double gainsDbi,
    double sensitivityDbm,
    double mismatchDb,
    double fadeDb,
    double hertz,
    double breakMetres) {
  /** Kept for fading of a picture, which gets worse before it is gone, dB (common practice, no published source). */
  public static final double VIDEO_FADE_DB = 8;

  /** Kept for fading of control, which must not be gone, dB; 10 to 20 are customary (common practice). */
  public static final double CONTROL_FADE_DB = 15;

  /** Lost in plugs, leads and frames, dB (engineering estimate). */
  public static final double OTHER_DB = 2;

  /** One standard deviation of where a link ends, dB (engineering estimate). */
  public static final double DOUBT_DB = 6;

  /** Lost behind the pilot's body, or where an antenna hears nothing, dB (engineering estimate). */
  public static final double SHADOW_DB = 10;

  /** So much less than a hundredth is rounding. */
  private static final double ROUNDING = 1e-6;

  public LinkBudget {
    Require.inRange("powerDbm", powerDbm, -20, 40);
    Require.inRange("gainsDbi", gainsDbi, -40, 60);
    Require.inRange("sensitivityDbm", sensitivityDbm, -140, -40);
    Require.inRange("mismatchDb", mismatchDb, 0, 40);
    Require.inRange("fadeDb", fadeDb, 0, 40);
    Require.positive("hertz", hertz);
    Require.positive("breakMetres", breakMetres);
  }

  /** What may be lost on the way by the likeliest figures, whole hundredths of a dB, rounded down. */
  public long hundredths() {
    var left = powerDbm + gainsDbi - sensitivityDbm - mismatchDb - fadeDb - OTHER_DB;
    return (long) Math.floor(100 * left + ROUNDING);
  }

  /** How far it reaches by the likeliest figures, m. */
  public double metres() {
    return metres(0);
  }

  /** How far it reaches with so much less to lose, m. */
  public double metres(double lessDb) {
    return Propagation.metres(hundredths() / 100.0 - lessDb, hertz, breakMetres);
  }

  /** What is left to lose at a distance beyond all that is kept, dB; below 0 where it does not reach. */
  public double marginDb(double metres) {
    return hundredths() / 100.0 - Propagation.lossDb(metres, hertz, breakMetres);
  }
}
