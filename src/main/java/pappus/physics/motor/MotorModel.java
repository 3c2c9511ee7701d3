package pappus.physics.motor;

import pappus.quantity.Require;

/**
 * The first-order DC model of a brushless motor: M. Drela, "First-Order DC Electric Motor Model", MIT,
 * 2007. ω = Kv (v − i R) and Q = (i − i₀)/Kv; departing from it, i₀ grows with a power of the speed.
 *
 * <p>The Kv of a label is 2 to 9 % above the loaded Kv meant here (from the thrust-stand rows of P. Cao and
 * J. Strawson, "motor_propeller_testing", 2018). Reluctance, saturation and commutation are left out.
 *
 * @param kvRadPerSPerV loaded speed constant, rad/s per volt
 * @param windingOhm resistance of the winding at {@code windingK}, Ω
 * @param seriesOhm resistance of controller and leads in series with it, Ω; 0 if a bench fitted it into
 *     the winding
 * @param windingK temperature of the winding, K
 * @param noLoadCurrentA current without load at {@code noLoadSpeedRadPerS}, A
 * @param noLoadSpeedRadPerS speed at which that current was measured, rad/s
 * @param noLoadExponent β in i₀ ∝ ω^β, 0 to 2
 */
public record MotorModel(
    double kvRadPerSPerV,
    double windingOhm,
    double seriesOhm,
    double windingK,
    double noLoadCurrentA,
    double noLoadSpeedRadPerS,
    double noLoadExponent) {

  /** Controller and leads in series with the winding, Ω: an engineering estimate. */
  public static final double DEFAULT_SERIES_OHM = 0.010;

  /** Temperature at which winding resistances are stated, K (20 °C). */
  public static final double REFERENCE_K = 293.15;

  /** Copper's resistance gains 0.393 % of its 20 °C value a kelvin: IEC 60028. */
  static final double COPPER_PER_K = 0.00393;

  public MotorModel {
    Require.positive("kvRadPerSPerV", kvRadPerSPerV);
    Require.positive("windingOhm", windingOhm);
    Require.notNegative("seriesOhm", seriesOhm);
    Require.inRange("windingK", windingK, 200, 500);
    Require.notNegative("noLoadCurrentA", noLoadCurrentA);
    Require.positive("noLoadSpeedRadPerS", noLoadSpeedRadPerS);
    Require.inRange("noLoadExponent", noLoadExponent, 0, 2);
  }

  /**
   * A motor at 20 °C as a data sheet states it: the no-load current at a voltage, not at a speed.
   *
   * @param noLoadVolts voltage at which the no-load current was measured, V
   * @throws IllegalArgumentException if those volts cannot drive the no-load current
   */
  public static MotorModel of(
      double kvRadPerSPerV,
      double windingOhm,
      double seriesOhm,
      double noLoadCurrentA,
      double noLoadVolts,
      double noLoadExponent) {
    Require.positive("noLoadVolts", noLoadVolts);
    var speedVolts = noLoadVolts - noLoadCurrentA * (windingOhm + seriesOhm);
    Require.positive("noLoadVolts less no-load current times resistance", speedVolts);
    return new MotorModel(
        kvRadPerSPerV,
        windingOhm,
        seriesOhm,
        REFERENCE_K,
        noLoadCurrentA,
        kvRadPerSPerV * speedVolts,
        noLoadExponent);
  }

  /** This motor with its winding at another temperature, K. */
  public MotorModel withWindingAt(double temperatureK) {
    return new MotorModel(
        kvRadPerSPerV,
        windingOhm * copperFactor(temperatureK) / copperFactor(windingK),
        seriesOhm,
        temperatureK,
        noLoadCurrentA,
        noLoadSpeedRadPerS,
        noLoadExponent);
  }

  /** Everything in the motor's path, Ω, at the winding's temperature. */
  public double resistanceOhm() {
    return windingOhm + seriesOhm;
  }

  /** Everything in the motor's path with the winding at 20 °C, Ω: what the part-load law is stated in. */
  public double referenceResistanceOhm() {
    return windingOhm / copperFactor(windingK) + seriesOhm;
  }

  /** Current that only overcomes iron, bearings and windage at a speed, A. */
  public double noLoadCurrentA(double speedRadPerS) {
    if (noLoadExponent == 0) {
      return noLoadCurrentA;
    }
    return noLoadCurrentA * StrictMath.pow(speedRadPerS / noLoadSpeedRadPerS, noLoadExponent);
  }

  /** MotorModel current at a torque and speed, A. */
  public double currentA(double torqueNm, double speedRadPerS) {
    return torqueNm * kvRadPerSPerV + noLoadCurrentA(speedRadPerS);
  }

  /** Volts the motor needs to carry a current at a speed. */
  public double volts(double currentA, double speedRadPerS) {
    return speedRadPerS / kvRadPerSPerV + currentA * resistanceOhm();
  }

  /** The motor at a torque and speed. */
  public OperatingPoint at(double torqueNm, double speedRadPerS) {
    var currentA = currentA(torqueNm, speedRadPerS);
    return new OperatingPoint(speedRadPerS, torqueNm, currentA, volts(currentA, speedRadPerS));
  }

  /**
   * The motor at given volts and current.
   *
   * @throws IllegalArgumentException if the volts do not exceed what the resistance takes
   */
  public OperatingPoint atVolts(double volts, double currentA) {
    var speedVolts =
        Require.positive("volts less current times resistance", volts - currentA * resistanceOhm());
    var speedRadPerS = kvRadPerSPerV * speedVolts;
    var torqueNm = (currentA - noLoadCurrentA(speedRadPerS)) / kvRadPerSPerV;
    return new OperatingPoint(speedRadPerS, torqueNm, currentA, volts);
  }

  static double copperFactor(double temperatureK) {
    return 1 + COPPER_PER_K * (temperatureK - REFERENCE_K);
  }
}
