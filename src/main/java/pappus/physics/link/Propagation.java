package pappus.physics.link;

import pappus.quantity.Require;

/**
 * What is lost on the way between two antennas that see each other: free space up to the break distance, and beyond it
 * the wave off the ground as well.
 *
 * <p>Free space is 20 lg(4π d f/c) dB (ITU-R P.525). Beyond 4π h₁ h₂/λ the wave that the ground throws back takes most
 * of it, and loss grows as the fourth power of the distance (the textbooks' two-ray model over flat ground). Houses,
 * trees and hills are not in it: what stands between the antennas shortens a link, and nothing here lengthens one.
 */
public final class Propagation {
  private static final double LIGHT_M_PER_S = 299_792_458;
  private static final double LEAST_HERTZ = 1e8;
  private static final double MOST_HERTZ = 1e10;

  private Propagation() {}

  /**
   * Loss of free space, dB.
   *
   * @param metres above 0
   * @param hertz from 100 MHz to 10 GHz
   */
  public static double freeSpaceDb(double metres, double hertz) {
    Require.positive("metres", metres);
    Require.inRange("hertz", hertz, LEAST_HERTZ, MOST_HERTZ);
    return 20 * StrictMath.log10(4 * Math.PI * metres * hertz / LIGHT_M_PER_S);
  }

  /**
   * Distance beyond which the ground counts, m.
   *
   * @param onePerM height of one antenna over ground, m, above 0
   * @param otherPerM of the other
   * @param hertz from 100 MHz to 10 GHz
   */
  public static double breakMetres(double onePerM, double otherPerM, double hertz) {
    Require.positive("onePerM", onePerM);
    Require.positive("otherPerM", otherPerM);
    Require.inRange("hertz", hertz, LEAST_HERTZ, MOST_HERTZ);
    return 4 * Math.PI * onePerM * otherPerM * hertz / LIGHT_M_PER_S;
  }

  /**
   * Loss on the way, dB.
   *
   * @param breakMetres distance beyond which the ground counts
   */
  public static double lossDb(double metres, double hertz, double breakMetres) {
    return metres <= breakMetres
        ? freeSpaceDb(metres, hertz)
        : freeSpaceDb(breakMetres, hertz) + 40 * StrictMath.log10(metres / breakMetres);
  }

  /** How far apart so much is lost, m: the inverse of {@link #lossDb}. */
  public static double metres(double lossDb, double hertz, double breakMetres) {
    var free = StrictMath.pow(10, (lossDb - freeSpaceDb(1, hertz)) / 20);
    return free <= breakMetres ? free : Math.sqrt(free * breakMetres);
  }

  /**
   * Power in dBm.
   *
   * @param milliwatts above 0
   */
  public static double dbm(double milliwatts) {
    return 10 * StrictMath.log10(Require.positive("milliwatts", milliwatts));
  }
}
