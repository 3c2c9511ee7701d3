package pappus.doubt;

import pappus.part.Known;
import pappus.reliance.Doubt;

/** What a builder can measure to be surer of an estimate, and how sure the numbers then are. */
public enum Measurement {
  PROPELLER_ROWS("thrust-stand rows of this propeller"),
  MOTOR_ROWS("thrust-stand rows of this motor with this board"),
  WINDING_VOLTS("the volts between two leads of this motor at an ampere"),
  DISCHARGE("a full discharge of this pack with a ten-second step"),
  AMPS("the current that the aircraft draws with its motors still"),
  WEIGHING("weighing the aircraft ready to fly");

  /** Rows at part throttle hold a controller's loss with their motor to a tenth of it (engineering estimate). */
  private static final double LOSS_FROM_ROWS = 0.10;

  /** A multimeter at its lowest range, and an ampere by the supply's display (engineering estimate). */
  private static final double OHMS_FROM_VOLTS = 0.05;

  private static final double SCALE_GRAMS = 0.1;

  private final String label;

  Measurement(String label) {
    this.label = label;
  }

  /** In words. */
  public String label() {
    return label;
  }

  /** What is left of a contribution after it, share. */
  double shareLeft(Contribution contribution) {
    return Math.min(1, deviationAfter(contribution.doubt()) / contribution.deviation());
  }

  /** One standard deviation of ln of the number (of the mass, g) after it; infinite if it says nothing of it. */
  private double deviationAfter(Doubt doubt) {
    var measured = Known.MEASURED.figureDoubt();
    return switch (doubt) {
      case THRUST, MERIT -> this == PROPELLER_ROWS ? measured : Double.POSITIVE_INFINITY;
      case RESISTANCE ->
        this == MOTOR_ROWS
            ? measured
            : this == WINDING_VOLTS ? OHMS_FROM_VOLTS : Double.POSITIVE_INFINITY;
      case NO_LOAD -> this == MOTOR_ROWS ? 2 * measured : Double.POSITIVE_INFINITY;
      case LOSS -> this == MOTOR_ROWS ? LOSS_FROM_ROWS : Double.POSITIVE_INFINITY;
      case CELL_RESISTANCE, CAPACITY -> this == DISCHARGE ? measured : Double.POSITIVE_INFINITY;
      case MASS -> this == WEIGHING ? SCALE_GRAMS : Double.POSITIVE_INFINITY;
      case MERIT_WITH_SPEED -> this == PROPELLER_ROWS ? measured : Double.POSITIVE_INFINITY;
      case NO_LOAD_GROWTH -> this == MOTOR_ROWS ? LOSS_FROM_ROWS : Double.POSITIVE_INFINITY;
      case SLOW_RESISTANCE -> this == DISCHARGE ? LOSS_FROM_ROWS : Double.POSITIVE_INFINITY;
      case AVIONICS -> this == AMPS ? measured : Double.POSITIVE_INFINITY;
      case THRUST_LOST, DRAG, DIAMETER, WIND -> Double.POSITIVE_INFINITY;
    };
  }
}
