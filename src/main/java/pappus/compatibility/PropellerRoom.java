package pappus.compatibility;

import pappus.part.Frame;
import pappus.quantity.Units;

/**
 * The room that propellers of a size need between neighbouring motors.
 *
 * @param inches diameter
 * @param leastMillimetres spacing of the motors below which they clash
 * @param usualMillimetres spacing from which nothing is noted
 */
public record PropellerRoom(double inches, double leastMillimetres, double usualMillimetres) {

  /** Of a diameter, inch. */
  public static PropellerRoom of(double inches) {
    var diameter = Units.inchesToMillimetres(inches);
    return new PropellerRoom(
        inches,
        diameter + PropellerClearanceRule.LEAST_MM,
        diameter + PropellerClearanceRule.USUAL_MM);
  }

  /** Between neighbouring tips on a frame, mm; below zero where they meet. */
  public double clearanceMillimetres(Frame frame) {
    return Math.min(frame.frontSpacingMillimetres(), frame.sideSpacingMillimetres())
        - Units.inchesToMillimetres(inches);
  }

  /** Whether it is larger than a frame says it takes. */
  public boolean isLargerThanStated(Frame frame) {
    return inches > frame.largestPropellerInches() + PropellerClearanceRule.INCH_TOLERANCE;
  }
}
