package pappus.physics.airframe;

/**
 * What of a frame is seen from the front and from above, all in mm and mm²: with the pack on it, its drag area is
 * 1.1 (A_front cos α + A_top sin α). Bluff plates, bars and boxes have a drag coefficient near 1.1 (engineering
 * estimate); motors, propellers, wires and antennas are not seen.
 *
 * <p>Why: src/site/markdown/decisions.md#a-drag-area-is-stated-seen-or-goes-with-the-mass
 *
 * @param front plates with what stands between them, and arms, seen from the front, mm²
 * @param arms what of the arms no plate covers, seen from above, mm²
 * @param length of the plate that carries the pack, mm
 * @param width of that plate, mm
 */
public record Silhouette(double front, double arms, double length, double width) {
  private static final double DRAG_COEFFICIENT = 1.1;

  /** A five-inch quad of 235 g tilts by 9 to 16° where it flies farthest, with drag areas of .004 to .013 m². */
  private static final double TILT = StrictMath.toRadians(12);

  private static final double FROM_FRONT = StrictMath.cos(TILT);
  private static final double FROM_ABOVE = StrictMath.sin(TILT);

  private static final double SQUARE_MILLIMETRES = 1e6;

  /**
   * A body of plates amid four straight arms.
   *
   * @param height from its lowest plate to its highest
   * @param across between motors side by side
   * @param along between motors one behind the other
   * @param armWidth mean width of an arm
   * @param armThickness of an arm
   */
  public static Silhouette of(
      double length,
      double width,
      double height,
      double across,
      double along,
      double armWidth,
      double armThickness) {
    // Arms run from motor to motor across the middle, and leave the plate by its sides or its ends.
    var bare = Math.max(0, 1 - Math.min(width / across, length / along));
    return new Silhouette(
        width * height + 2 * across * bare * armThickness,
        2 * StrictMath.hypot(across, along) * bare * armWidth,
        length,
        width);
  }

  /** With nothing that any of two has more of: the drag area of neither is less. */
  public Silhouette least(Silhouette other) {
    return new Silhouette(
        Math.min(front, other.front),
        Math.min(arms, other.arms),
        Math.min(length, other.length),
        Math.min(width, other.width));
  }

  /** With nothing that any of two has less of: the drag area of neither is more. */
  public Silhouette most(Silhouette other) {
    return new Silhouette(
        Math.max(front, other.front),
        Math.max(arms, other.arms),
        Math.max(length, other.length),
        Math.max(width, other.width));
  }

  /**
   * Drag area with a pack that lies lengthwise on the middle of its plate, m²; grows with each of its sides.
   *
   * @param packLength mm; all three are 0 without a pack
   */
  public double dragAreaM2(double packLength, double packWidth, double packHeight) {
    var fromFront = front + packWidth * packHeight;
    var covered = Math.min(length, packLength) * Math.min(width, packWidth);
    var fromAbove = arms + length * width + packLength * packWidth - covered;
    return DRAG_COEFFICIENT
        * (fromFront * FROM_FRONT + fromAbove * FROM_ABOVE)
        / SQUARE_MILLIMETRES;
  }
}
