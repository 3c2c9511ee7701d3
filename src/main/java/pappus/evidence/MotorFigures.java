package pappus.evidence;

import java.util.List;
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
  static MotorFigures of(Motor motor, Evidence evidence) {
    var winding = 1000 * MotorPriors.windingOhms(motor);
    var readings = readings(motor);
    return new MotorFigures(
        loadedKv(motor),
        evidence.weigh(motor, readings.get(0)),
        motor.resistanceReading() == Motor.ResistanceReading.FITTED
            ? motor.resistanceMilliohms() - winding
            : 0,
        evidence.weigh(motor, readings.get(1)));
  }

  /** Speed constant under load, rpm/V. */
  public static double loadedKv(Motor motor) {
    return motor.speedConstantReading() == Motor.KvReading.LABEL
        ? motor.speedConstantRpmPerVolt() / MotorPriors.LABEL_OVER_LOADED
        : motor.speedConstantRpmPerVolt();
  }

  /** Winding, then current without load. */
  static List<Reading> readings(Motor motor) {
    var own = motor.figuresDoubt();
    var doubt = own == null ? motor.figures().figureDoubt() : own;
    return List.of(
        new Reading(
            Trait.WINDING,
            motor.maker(),
            motor.figures(),
            1000 * MotorPriors.windingOhms(motor),
            1000 * ClassPriors.usualWindingOhms(motor),
            doubt,
            own != null),
        // A current this small is read twice as badly (engineering estimate).
        new Reading(
            Trait.NO_LOAD,
            motor.maker(),
            motor.figures(),
            motor.noLoadCurrentAmps(),
            ClassPriors.usualNoLoadAmps(motor),
            2 * doubt,
            own != null));
  }
}
