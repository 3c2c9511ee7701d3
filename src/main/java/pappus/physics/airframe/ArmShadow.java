package pappus.physics.airframe;

/**
 * Thrust that arms under the discs take away: (K/4) A_b/A of it, by momentum theory, A_b being what the arm covers of
 * its disc A.
 *
 * <p>K = k² C_D with a wake 1.2 times as fast as through the disc and a flat bar's C_D of 2 makes 2.9; shapes of 6, 15
 * and 22 mm slid over one arm of a thrust stand (averages at full throttle of three runs, 1408, 1384 and 1337 gf)
 * make 3.3. The arm is taken as flat, and covered from .2 to .95 of the radius; a body over the disc is left out.
 *
 * <p>Why: src/site/markdown/decisions.md#arms-block-the-slipstream-by-their-width
 *
 * @param meanWidthMm mean width of an arm, mm
 */
public record ArmShadow(double meanWidthMm) {
  /** Share lost where widths are not known, and its standard deviation: engineering estimates. */
  public static final double UNKNOWN = 0.035;

  public static final double UNKNOWN_DOUBT = 0.015;

  /** One standard deviation of K over K. */
  public static final double DOUBT = 0.3;

  /** No airframe takes less. */
  private static final double LEAST = 0.01;

  private static final double DOWNLOAD = 3.3;
  private static final double COVERED = 0.75; // of the radius

  /** Share of the thrust of a propeller that is lost. */
  public double lost(double diameterMm) {
    return Math.max(LEAST, DOWNLOAD / 4 * meanWidthMm * COVERED * 2 / (Math.PI * diameterMm));
  }
}
