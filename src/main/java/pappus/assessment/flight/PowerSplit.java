package pappus.assessment.flight;

/**
 * Where the power goes in hover at half charge, W at the battery.
 *
 * @param inducedW into the downwash
 * @param profileW dragging the blades through the air
 * @param motorW lost in the motors
 * @param controllerW lost in the speed controllers
 * @param avionicsW everything else on board
 */
public record PowerSplit(
    double inducedW, double profileW, double motorW, double controllerW, double avionicsW) {
  /** All of it, W. */
  public double totalW() {
    return inducedW + profileW + motorW + controllerW + avionicsW;
  }
}
