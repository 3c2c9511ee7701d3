package pappus.fitting;

import pappus.part.Frame;
import pappus.part.Propeller;
import pappus.quantity.Units;

/** Propeller discs in plan. */
public final class Discs {
  /** Least clearance of anything to a disc, mm (common practice, no published source). */
  public static final double LEAST_MM = 3;

  private Discs() {}

  /** Between the tips of neighbours, mm; below zero where they meet. */
  public static double betweenTips(Frame frame, Propeller propeller) {
    return betweenMotors(frame)
        - Units.inchesToMillimetres(propeller.diameterInches());
  }

  /** Between the shafts of nearest neighbours, mm. */
  public static double betweenMotors(Frame frame) {
    return Math.min(frame.frontSpacingMillimetres(), frame.sideSpacingMillimetres());
  }

  /**
   * From the nearest disc to a rectangle on the middle line, mm; below zero where they overlap.
   *
   * @param discMillimetres diameter of a disc
   * @param xMillimetres middle of the rectangle, forward of the motor centre
   */
  public static double clearance(
      Frame frame,
      double discMillimetres,
      double xMillimetres,
      double lengthMillimetres,
      double widthMillimetres) {
    var least = Double.POSITIVE_INFINITY;
    for (var motorX :
        new double[] {frame.sideSpacingMillimetres() / 2, -frame.sideSpacingMillimetres() / 2}) {
      var dx = Math.max(0, Math.abs(motorX - xMillimetres) - lengthMillimetres / 2);
      var dy = Math.max(0, frame.frontSpacingMillimetres() / 2 - widthMillimetres / 2);
      least = Math.min(
          least,
          StrictMath.hypot(dx, dy) - discMillimetres / 2);
    }
    return least;
  }
}
