package pappus.physics.view;

/**
 * Two propeller discs, alike on both sides of the middle line, as a lens on that line sees them. Lengths in mm; x counts
 * forward from any one place, heights upward likewise.
 *
 * @param x of the motor axes
 * @param y of the motor axes beside the middle line, above 0
 * @param radius of the discs, above 0
 * @param height of the discs
 */
public record DiscsAhead(double x, double y, double radius, double height) {
  /** Rays across a picture and down it, by which covered shares are counted: within half a per cent of the picture. */
  private static final int ACROSS = 160;

  private static final int DOWN = 120;

  /**
   * Free half-angle from straight ahead to a disc, seen from above, degrees: atan2(y, x − x_c) − asin(R/distance); 0
   * where it would be less, or the lens is within a disc; up to 180.
   *
   * @param lensX of the lens
   */
  public double freeHalfAngle(double lensX) {
    var distance = StrictMath.hypot(x - lensX, y);
    if (distance <= radius) {
      return 0;
    }
    return Math.max(
        0,
        StrictMath.toDegrees(StrictMath.atan2(y, x - lensX) - StrictMath.asin(radius / distance)));
  }

  /**
   * Largest radius of a disc that leaves a half-angle free, mm; 0 where none does.
   *
   * @param x of the motor axes, mm forward of the lens
   * @param y beside the middle line, mm, above 0
   * @param degrees of the half-angle, above 0 to 90
   */
  public static double largestRadius(double x, double y, double degrees) {
    var left = StrictMath.atan2(y, x) - StrictMath.toRadians(degrees);
    // From a right angle on, the disc may reach to the lens.
    return left <= 0 ? 0 : StrictMath.hypot(x, y) * StrictMath.sin(Math.min(left, Math.PI / 2));
  }

  /**
   * Share of a picture in which a disc is seen, 0 to 1. The lens is taken to spread angles evenly over the picture, as
   * wide ones nearly do (engineering estimate); discs are taken as full and thin, so that one at the lens's own height
   * is a line and covers nothing.
   *
   * @param lensX of the lens
   * @param lensHeight of the lens
   * @param tilt how far the lens looks up, degrees
   * @param across view from side to side, degrees, above 0 to 180
   * @param down view from top to bottom, degrees, above 0 to 180
   */
  public double covered(double lensX, double lensHeight, double tilt, double across, double down) {
    var rise = height - lensHeight;
    if (rise == 0) {
      return 0;
    }
    var up = StrictMath.toRadians(tilt);
    var seen = 0;
    for (var i = 0; i < ACROSS; i++) {
      var right = StrictMath.toRadians(across * ((i + 0.5) / ACROSS - 0.5));
      for (var j = 0; j < DOWN; j++) {
        var above = StrictMath.toRadians(down * ((j + 0.5) / DOWN - 0.5));
        // So far from the middle of the picture is so far from where the lens points.
        var off = StrictMath.hypot(right, above);
        var sine = StrictMath.sin(off);
        var ahead = StrictMath.cos(off);
        var sideways = off == 0 ? 0 : sine * right / off;
        var upward = off == 0 ? 0 : sine * above / off;
        var climb = ahead * StrictMath.sin(up) + upward * StrictMath.cos(up);
        var forward = ahead * StrictMath.cos(up) - upward * StrictMath.sin(up);
        var reach = rise / climb;
        if (reach > 0
            && reach < Double.POSITIVE_INFINITY
            && isDisc(lensX + reach * forward, reach * sideways)) {
          seen++;
        }
      }
    }
    return (double) seen / (ACROSS * DOWN);
  }

  private boolean isDisc(double atX, double atY) {
    return StrictMath.hypot(atX - x, Math.abs(atY) - y) <= radius;
  }

  /**
   * Where the horizon stands in the picture of an aircraft that leans forward: 0 in its middle, 1 at its upper edge, −1
   * at its lower, beyond these out of it.
   *
   * @param leaning of the aircraft, degrees forward
   * @param tilt how far the lens looks up when it hovers, degrees
   * @param down view from top to bottom, degrees, above 0
   */
  public static double horizon(double leaning, double tilt, double down) {
    return (leaning - tilt) / (down / 2);
  }
}
