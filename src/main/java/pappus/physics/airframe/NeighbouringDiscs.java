package pappus.physics.airframe;

/**
 * Thrust that discs side by side take from each other: about 2 % where they are .05 of a diameter apart (from memory),
 * fading with the gap. Two rotors work best a little apart (Y. Lei, H. Wang, Applied Sciences 2020, of which the
 * abstract was read); the law is an engineering estimate, and smaller than its doubt.
 */
public final class NeighbouringDiscs {
  private static final double LOST = 0.02;
  private static final double TOUCHING = 0.05;
  private static final double FADES = 0.10;

  private NeighbouringDiscs() {}

  /**
   * Share of the thrust that is left.
   *
   * @param gap between the rims of two discs over their diameter; below 0 where they overlap
   */
  public static double kept(double gap) {
    return 1 - LOST * StrictMath.exp(-Math.max(gap - TOUCHING, 0) / FADES);
  }
}
