package pappus.evidence;

import java.util.List;
import java.util.stream.IntStream;
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
  private static final String WINDING_FIELD = "resistanceMilliohms";
  private static final String NO_LOAD_FIELD = "noLoadCurrentAmps";

  static MotorFigures of(Motor motor, Evidence evidence) {
    var winding = 1000 * MotorPriors.windingOhms(motor);
    var readings = readings(motor);
    return new MotorFigures(
        loadedKv(motor),
        figure(motor, WINDING_FIELD, readings.get(0), evidence),
        motor.resistanceReading() == Motor.ResistanceReading.FITTED
            ? motor.resistanceMilliohms() - winding
            : 0,
        figure(motor, NO_LOAD_FIELD, readings.get(1), evidence));
  }

  /** What counts of a reading; of one that its class filled, nothing else. */
  private static Figure figure(Motor motor, String field, Reading reading, Evidence evidence) {
    return motor
        .assumed(field)
        .map(one -> Figure.filled(
            reading.name(),
            reading.trait().unit(),
            reading.stated(),
            reading.prior(),
            one.spread()))
        .orElseGet(() -> evidence.weigh(motor, reading));
  }

  /** The readings that the record has of its own. */
  static List<Reading> stated(Motor motor) {
    var fields = List.of(WINDING_FIELD, NO_LOAD_FIELD);
    var readings = readings(motor);
    return IntStream.range(0, readings.size())
        .filter(place -> motor.assumed(fields.get(place)).isEmpty())
        .mapToObj(readings::get)
        .toList();
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
