package pappus.calibration;

import java.util.List;
import pappus.quantity.Units;

/** How far a row is from the model, in deviations. */
final class RowResiduals {
  /** Of each row; zero where it has nothing to say. */
  static final int COUNT = 5;

  /** Deviations of rows from the model, relative and in grams; engineering estimates. */
  private static final double POWER_DOUBT = 0.05;

  private static final double THRUST_DOUBT_GRAMS = 0.5;

  /** Power grows with thrust to the power of 1.3 on a small quad's motors. */
  private static final double POWER_PER_THRUST = 1.3;

  private static final double SPEED_DOUBT = 0.02;
  private static final double TORQUE_DOUBT = 0.03;

  /** Speed, volts and current are read far better than thrust. */
  private static final double FULL_THROTTLE_DOUBT = 0.007;

  private static final double FULL_THROTTLE_DOUBT_WITHOUT_SPEED = 0.02;

  /** Throttle ends at 2000 µs; some controllers are set to end below: common practice, no published source. */
  static final double LOWEST_FULL_MICROSECONDS = 1900;

  private static final double USUAL_FULL_MICROSECONDS = 2000;

  /** Up to so many deviations a reading counts by its square, beyond by its distance (P. J. Huber, 1964). */
  private static final double SQUARE_UP_TO = 2;

  private final PartLoadForm form;
  private final double fullMicroseconds;

  /** Full throttle is the highest pulse of the rows, within what is usual. */
  RowResiduals(PartLoadForm form, List<BenchRow> rows) {
    this.form = form;
    var highest = rows.stream().mapToDouble(BenchRow::pulseMicroseconds).max().orElse(0);
    fullMicroseconds =
        Math.min(USUAL_FULL_MICROSECONDS, Math.max(LOWEST_FULL_MICROSECONDS, highest));
  }

  /** Power, speed, volts and current at full throttle, torque: their squares add up to Huber's loss, twice. */
  double[] of(BenchRow row, double[] motor, double[] propeller) {
    var residuals = plain(row, motor, propeller);
    for (var i = 0; i < COUNT; i++) {
      residuals[i] = robust(residuals[i]);
    }
    return residuals;
  }

  private static double robust(double deviations) {
    var size = Math.abs(deviations);
    return size <= SQUARE_UP_TO
        ? deviations
        : Math.copySign(Math.sqrt(SQUARE_UP_TO * (2 * size - SQUARE_UP_TO)), deviations);
  }

  /** Deviations as they are. */
  double[] plain(BenchRow row, double[] motor, double[] propeller) {
    var residuals = new double[COUNT];
    var model = RowModel.of(form, motor, propeller, row);
    var ofThrust = POWER_PER_THRUST * THRUST_DOUBT_GRAMS / row.thrustGrams();
    residuals[0] = StrictMath.log(Math.max(1e-9, model.busPowerW()) / row.busPowerW())
        / Math.sqrt(POWER_DOUBT * POWER_DOUBT + ofThrust * ofThrust);
    var isSpeedRead = row.speedRpm() > 0;
    var speed = isSpeedRead ? Units.rpmToRadPerS(row.speedRpm()) : model.speedRadPerS();
    if (isSpeedRead) {
      residuals[1] = StrictMath.log(model.speedRadPerS() / speed) / SPEED_DOUBT;
    }
    var torque = RowModel.torqueNm(motor, propeller, row, speed);
    if (isFull(row)) {
      // At full throttle the motor's current is the supply's, but for what the controller itself
      // takes.
      var current = Math.max(0.3 * row.currentA(), row.currentA() - motor[1]);
      var volts = speed / StrictMath.exp(motor[RowModel.SHARED])
          + current * StrictMath.exp(motor[RowModel.SHARED + 1]);
      var doubt = isSpeedRead ? FULL_THROTTLE_DOUBT : FULL_THROTTLE_DOUBT_WITHOUT_SPEED;
      residuals[2] = StrictMath.log(volts / row.volts()) / doubt;
      residuals[3] = isSpeedRead
          ? StrictMath.log(RowModel.currentA(motor, torque, speed) / current) / doubt
          : 0;
    }
    if (row.torqueMillinewtonMetres() > 0) {
      residuals[4] = StrictMath.log(1000 * torque / row.torqueMillinewtonMetres()) / TORQUE_DOUBT;
    }
    return residuals;
  }

  /** How many numbers the rows give: power, speed, two more at full throttle, torque. */
  int readings(List<BenchRow> rows) {
    var readings = 0;
    for (var row : rows) {
      var isSpeedRead = row.speedRpm() > 0;
      readings += 1
          + (isSpeedRead ? 1 : 0)
          + (isFull(row) ? isSpeedRead ? 2 : 1 : 0)
          + (row.torqueMillinewtonMetres() > 0 ? 1 : 0);
    }
    return readings;
  }

  private boolean isFull(BenchRow row) {
    return row.pulseMicroseconds() >= fullMicroseconds;
  }
}
