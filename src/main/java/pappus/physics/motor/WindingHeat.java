package pappus.physics.motor;

import pappus.quantity.Require;

/**
 * How warm the winding gets in steady flight.
 *
 * <p>One thermal resistance from winding to air, engineering estimate, no published source: a 34 g motor
 * that takes 4 W a gram for as long as it likes and loses a fifth of it warms by 80 K, which is 2.9 K/W;
 * others scale with their surface, mass to the power of 2/3. Trust it to a factor of two.
 *
 * <p>For some seconds of more current, the copper and the iron it is wound on warm as one lump, half the mass of the
 * motor at 420 J/(kg·K), between copper's 385 and iron's 450: an engineering estimate, no published source.
 */
public final class WindingHeat {
  /** Above this the winding or its magnets are in danger, K (150 °C): common practice, no published source. */
  public static final double LIMIT_K = 423.15;

  /** Above this a motor is worth a word, K (100 °C): common practice, no published source. */
  public static final double CAUTION_K = 373.15;

  private static final double WARMING_SHARE = 0.5; // of the motor's mass
  private static final double WARMING_J_PER_KG_K = 420;
  private static final double ANCHOR_K_PER_W = 2.9;
  private static final double ANCHOR_KG = 0.034;

  private WindingHeat() {}

  /** Thermal resistance from winding to air, K/W, of a motor of a mass. */
  public static double thermalResistanceKPerW(double motorMassKg) {
    Require.positive("motorMassKg", motorMassKg);
    return ANCHOR_K_PER_W * StrictMath.pow(ANCHOR_KG / motorMassKg, 2.0 / 3);
  }

  /**
   * Temperature at which copper loss and cooling balance, K. The resistance grows with the temperature it
   * causes; where that has no balance, or one above {@link #LIMIT_K}, the answer is {@link #LIMIT_K}.
   */
  public static double windingK(
      MotorModel motor, double currentA, double thermalResistanceKPerW, double airK) {
    var coldOhm = motor.windingOhm() / MotorModel.copperFactor(motor.windingK());
    var coldRiseK = thermalResistanceKPerW * currentA * currentA * coldOhm;
    // x above 20 °C: x = air + rise (1 + 0.00393 x)
    var feedback = 1 - MotorModel.COPPER_PER_K * coldRiseK;
    if (feedback <= 0) {
      return LIMIT_K;
    }
    var aboveReferenceK = (airK - MotorModel.REFERENCE_K + coldRiseK) / feedback;
    return Math.min(MotorModel.REFERENCE_K + aboveReferenceK, LIMIT_K);
  }

  /**
   * Temperature after some seconds of a current, K, at most {@link #LIMIT_K}.
   *
   * @param startK of the winding before
   */
  public static double afterBurstK(
      MotorModel motor,
      double currentA,
      double motorMassKg,
      double startK,
      double airK,
      double seconds) {
    Require.notNegative("seconds", seconds);
    var capacityJPerK = WARMING_SHARE * motorMassKg * WARMING_J_PER_KG_K;
    var coldOhm = motor.windingOhm() / MotorModel.copperFactor(motor.windingK());
    var coldW = currentA * currentA * coldOhm;
    var coolingWPerK = 1 / thermalResistanceKPerW(motorMassKg);
    // x above 20 °C: capacity · dx/dt = coldW (1 + 0.00393 x) − cooling (x − air)
    var growth = (coldW * MotorModel.COPPER_PER_K - coolingWPerK) / capacityJPerK;
    var push = (coldW + coolingWPerK * (airK - MotorModel.REFERENCE_K)) / capacityJPerK;
    var startAbove = startK - MotorModel.REFERENCE_K;
    var grown = StrictMath.expm1(growth * seconds);
    var rise = growth == 0 ? push * seconds : push * grown / growth;
    return Math.min(MotorModel.REFERENCE_K + startAbove * (1 + grown) + rise, LIMIT_K);
  }
}
