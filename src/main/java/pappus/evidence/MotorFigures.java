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
        winding(motor, winding, doubt),
        motor.resistanceReading() == Motor.ResistanceReading.FITTED
            ? motor.resistanceMilliohms() - winding
            : 0,
        noLoad(motor, doubt));
  }

  private static Figure winding(Motor motor, double milliohms, double doubt) {
    var usual = 1000 * ClassPriors.usualWindingOhms(motor);
    return motor
        .assumed("resistanceMilliohms")
        .map(one -> Figure.filled("winding resistance", "mΩ", milliohms, usual, one.spread()))
        .orElseGet(() -> Figure.weighed(
            "winding resistance",
            "mΩ",
            milliohms,
            usual,
            WINDING_PRIOR_DEVIATION,
            doubt,
            motor.figures()));
  }

  private static Figure noLoad(Motor motor, double doubt) {
    var usual = ClassPriors.usualNoLoadAmps(motor);
    var amps = motor.noLoadCurrentAmps();
    return motor
        .assumed("noLoadCurrentAmps")
        .map(one -> Figure.filled("no-load current", "A", amps, usual, one.spread()))
        // A current this small is read twice as badly (engineering estimate).
        .orElseGet(() -> Figure.weighed(
            "no-load current",
            "A",
            amps,
            usual,
            NO_LOAD_PRIOR_DEVIATION,
            2 * doubt,
            motor.figures()));
  }
}
