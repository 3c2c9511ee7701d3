package pappus.calibration;

import pappus.quantity.Units;

/**
 * What a stand shows at a row's thrust and volts, by the propeller's coefficients, M. Drela, "First-Order DC
 * Electric Motor Model", MIT, 2007, and the loss of a controller at part load.
 *
 * <p>That loss departs from {@link pappus.physics.motor.SpeedController}: volts across the controller
 * during the off part of the cycle, i u √(0.2 Ω/R) (1 − d), instead of a factor 1 / (1 − k (1 − d)). With it
 * rows at 7.4 V predict those at 11.1 V ({@code CalibratorValidationTest} holds the number). Its loss volts belong to this
 * model alone: they are not the k of the flight model.
 */
record RowModel(double busPowerW, double speedRadPerS, double motorVolts) {
  /** Loss volts, idle current, exponent; ln Kv, ln R, ln i₀ of the motor. */
  static final int SHARED = 3;

  static final int OF_MOTOR = 3;
  static final int OF_PROPELLER = 6;

  /** Where coefficients are stated, rad/s. */
  static final double REFERENCE_RAD_PER_S = 1000;

  /** Resistance at which the loss volts are stated, Ω. */
  static final double LOSS_OHM = 0.2;

  static RowModel of(double[] motor, double[] propeller, BenchRow row) {
    var diameterM = row.diameterMillimetres() / 1000;
    var turnsPerS = REFERENCE_RAD_PER_S / (2 * Math.PI);
    var pressure = row.airDensityKgPerCubicMetre() * turnsPerS * turnsPerS;
    var area = diameterM * diameterM * diameterM * diameterM;
    // T = ρ n² D⁴ C_T(ω) in logarithms is a quadratic in x.
    var constant =
        propeller[0] + StrictMath.log(pressure * area / Units.gramsToNewtons(row.thrustGrams()));
    var slope = 2 + propeller[1];
    var inside = Math.max(0.01, slope * slope - 4 * propeller[2] * constant);
    var x = -2 * constant / (slope + Math.sqrt(inside));
    var speed = REFERENCE_RAD_PER_S * StrictMath.exp(x);
    var torque = pressure
        * area
        * diameterM
        * StrictMath.exp(2 * x + propeller[3] + x * (propeller[4] + x * propeller[5]))
        / (2 * Math.PI);
    var kv = StrictMath.exp(motor[SHARED]);
    var resistance = StrictMath.exp(motor[SHARED + 1]);
    var current = torque * kv + StrictMath.exp(motor[SHARED + 2] + motor[2] * x);
    var volts = speed / kv + current * resistance;
    // Not clamped at full duty: the fit's slope would jump just where full-throttle rows lie.
    var loss = motor[0] * Math.sqrt(LOSS_OHM / resistance) * (1 - volts / row.volts());
    return new RowModel(current * (volts + loss) + row.volts() * motor[1], speed, volts);
  }

  static double[] numbers(Calibration.ControllerLaw law, Calibration.MotorFit motor) {
    return new double[] {
      law.lossVolts().value(),
      law.idleA().value(),
      law.growth().value(),
      StrictMath.log(Units.rpmToRadPerS(motor.kvRpmPerVolt().value())),
      StrictMath.log(motor.resistanceOhm().value()),
      StrictMath.log(motor.noLoadCurrentA().value())
    };
  }

  static double[] numbers(Calibration.PropellerFit propeller) {
    var numbers = new double[OF_PROPELLER];
    for (var i = 0; i < 3; i++) {
      numbers[i] = propeller.thrust().get(i).value();
      numbers[3 + i] = propeller.power().get(i).value();
    }
    return numbers;
  }
}
