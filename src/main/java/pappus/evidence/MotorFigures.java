package pappus.evidence;

import pappus.evidence.prior.ClassPriors;
import pappus.evidence.prior.MotorPriors;
import pappus.part.Motor;

/**
 * What counts of a motor.
 *
 * @param loadedKv rpm/V; a label's is above it and is brought down, not weighed
 * @param winding resistance of the winding alone, mΩ
 * @param pathMilliohms of controller and leads in a resistance fitted on a bench, mΩ; 0 for a winding's
 * @param noLoad current without load at the record's volts, A
 */
public record MotorFigures(double loadedKv, Figure winding, double pathMilliohms, Figure noLoad) {
  /**
   * Standard deviations of ln within a class: engineering estimates, low rather than high. The scatter of records about the priors
   * is twice as wide, but it holds the errors of the records and the difference between families too.
   */
  private static final double WINDING_PRIOR_DEVIATION = 0.15;

  private static final double NO_LOAD_PRIOR_DEVIATION = 0.20;

  public static MotorFigures of(Motor motor) {
    var own = motor.figuresDoubt();
    var doubt = own == null ? motor.figures().figureDoubt() : own;
    var winding = 1000 * MotorPriors.windingOhms(motor);
    return new MotorFigures(
        motor.speedConstantReading() == Motor.KvReading.LABEL
            ? motor.speedConstantRpmPerVolt() / MotorPriors.LABEL_OVER_LOADED
            : motor.speedConstantRpmPerVolt(),
        Figure.weighed(
            "winding resistance",
            "mΩ",
            winding,
            1000 * ClassPriors.usualWindingOhms(motor),
            WINDING_PRIOR_DEVIATION,
            doubt,
            motor.figures()),
        motor.resistanceReading() == Motor.ResistanceReading.FITTED
            ? motor.resistanceMilliohms() - winding
            : 0,
        // A current this small is read twice as badly (engineering estimate).
        Figure.weighed(
            "no-load current",
            "A",
            motor.noLoadCurrentAmps(),
            ClassPriors.usualNoLoadAmps(motor),
            NO_LOAD_PRIOR_DEVIATION,
            2 * doubt,
            motor.figures()));
  }
}
