package pappus.calibration;

import pappus.quantity.Units;

/**
 * What a stand shows at a row's thrust and volts, by the propeller's coefficients, M. Drela, "First-Order DC
 * Electric Motor Model", MIT, 2007, and the loss of a controller at part load.
 *
 * <p>The forms are those of {@link pappus.physics.motor.MotorModel} and {@link
 * pappus.physics.motor.SpeedController}, so that what is fitted can be flown; only duty is not held at 1.
 *
 * <p>Why: src/site/markdown/decisions.md#measured-records-come-from-a-second-fit
 */
record RowModel(double busPowerW, double speedRadPerS, double motorVolts, double torqueNm) {
  /** c of the ripple, idle current, exponent; ln Kv, ln R, ln i₀ and ln of the air of the motor. */
  static final int SHARED = 3;

  static final int OF_MOTOR = 4;
  static final int OF_PROPELLER = 6;

  /** Where coefficients are stated, rad/s. */
  static final double REFERENCE_RAD_PER_S = 1000;

  static RowModel of(PartLoadForm form, double[] motor, double[] propeller, BenchRow row) {
    var area = pressureArea(motor, row);
    // T = ρ n² D⁴ C_T(ω) in logarithms is a quadratic in x.
    var constant = propeller[0] + StrictMath.log(area / Units.gramsToNewtons(row.thrustGrams()));
    var slope = 2 + propeller[1];
    var inside = Math.max(0.01, slope * slope - 4 * propeller[2] * constant);
    var x = -2 * constant / (slope + Math.sqrt(inside));
    var speed = REFERENCE_RAD_PER_S * StrictMath.exp(x);
    var torque = torqueNm(motor, propeller, row, speed);
    var resistance = StrictMath.exp(motor[SHARED + 1]);
    var current = currentA(motor, torque, speed);
    var volts = speed / StrictMath.exp(motor[SHARED]) + current * resistance;
    var loss = form.lossW(motor[0], volts, current, resistance, row);
    var power = Math.max(0.05 * current * volts, current * volts + loss) + row.volts() * motor[1];
    return new RowModel(power, speed, volts, torque);
  }

  /** The propeller's torque at a speed, N·m. */
  static double torqueNm(double[] motor, double[] propeller, BenchRow row, double speedRadPerS) {
    var x = StrictMath.log(speedRadPerS / REFERENCE_RAD_PER_S);
    return pressureArea(motor, row)
        * (row.diameterMillimetres() / 1000)
        * StrictMath.exp(2 * x + propeller[3] + x * (propeller[4] + x * propeller[5]))
        / (2 * Math.PI);
  }

  /** What the motor draws at a torque and speed, A. */
  static double currentA(double[] motor, double torqueNm, double speedRadPerS) {
    var x = StrictMath.log(speedRadPerS / REFERENCE_RAD_PER_S);
    return torqueNm * StrictMath.exp(motor[SHARED])
        + StrictMath.exp(motor[SHARED + 2] + motor[2] * x);
  }

  /** ρ n² D⁴ at the reference speed, N. */
  private static double pressureArea(double[] motor, BenchRow row) {
    var diameterM = row.diameterMillimetres() / 1000;
    var turnsPerS = REFERENCE_RAD_PER_S / (2 * Math.PI);
    return row.airDensityKgPerCubicMetre()
        * StrictMath.exp(motor[SHARED + 3])
        * turnsPerS
        * turnsPerS
        * diameterM
        * diameterM
        * diameterM
        * diameterM;
  }

  static double[] numbers(Calibration.ControllerLaw law, Calibration.MotorFit motor) {
    return new double[] {
      law.loss().value(),
      law.idleA().value(),
      law.growth().value(),
      StrictMath.log(Units.rpmToRadPerS(motor.kvRpmPerVolt().value())),
      StrictMath.log(motor.resistanceOhm().value()),
      StrictMath.log(motor.noLoadCurrentA().value()),
      StrictMath.log(motor.airRatio().value())
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
