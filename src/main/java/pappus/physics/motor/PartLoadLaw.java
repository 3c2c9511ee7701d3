package pappus.physics.motor;

import pappus.quantity.Require;

/**
 * Controller and no-load numbers that were fitted together and are only used together.
 *
 * @param ripple c of a motor whose stator is not small: g of its {@link SpeedController} is c/R
 * @param fullSizeMm diameter of the stator from which on c does not fall, mm; below, it grows with the square of how
 *     much smaller the stator is, since the inductance of few turns on short teeth is less against their resistance
 * @param idleA idle current of a controller, A
 * @param noLoadExponent β of the motor's no-load current
 */
public record PartLoadLaw(double ripple, double fullSizeMm, double idleA, double noLoadExponent) {

  /**
   * Held to thrust-stand rows of seven motors of 22 mm at 7.4 to 11.1 V, R 0.09 to 0.26 Ω (704 of them P. Cao,
   * J. Strawson, "motor_propeller_testing", 2018, MIT) and to twelve of an 11 mm motor with a 2-inch propeller
   * (diegosdantonio, "thruststand_test", 2020). Between and beyond those stators it is an engineering estimate.
   *
   * <p>Why: src/site/markdown/decisions.md#one-law-of-part-load-for-all-sizes
   */
  public static final PartLoadLaw BENCH = new PartLoadLaw(0.10, 18, 0.04, 0.5);

  /**
   * Loss k of the form P_bus = v i / (1 − k (1 − v/V)) that records of boards state, of the controllers behind
   * {@link #BENCH}: a board of another k has so many times their ripple.
   */
  public static final double USUAL_STATED_LOSS = 0.39;

  /** One standard deviation of ln c. */
  public static final double DOUBT_LN_RIPPLE = 0.35;

  /** The same toward more loss where volts or stators are beyond the evidence: an engineering estimate. */
  public static final double DOUBT_LN_RIPPLE_BEYOND = 0.55;

  private static final double SMALLEST_MM = 11;
  private static final double LEAST_VOLTS = 7.2;
  private static final double MOST_VOLTS = 11.9;

  public PartLoadLaw {
    Require.notNegative("ripple", ripple);
    Require.positive("fullSizeMm", fullSizeMm);
    Require.notNegative("idleA", idleA);
    Require.inRange("noLoadExponent", noLoadExponent, 0, 2);
  }

  /** c of a motor. */
  public double rippleOf(double statorMm) {
    var smaller = Math.max(1, fullSizeMm / Require.positive("statorMm", statorMm));
    return ripple * smaller * smaller;
  }

  /**
   * The controller of a motor.
   *
   * <p>The ripple falls as the resistance rises, so a motor with more resistance may draw less at part load; a bound
   * must take the two apart.
   *
   * @param statorMm diameter of the motor's stator, mm
   * @param resistanceOhm everything in the motor's path with the winding at 20 °C, Ω
   * @param share ripple of the board over that of the law
   */
  public SpeedController controllerFor(double statorMm, double resistanceOhm, double share) {
    Require.positive("resistanceOhm", resistanceOhm);
    Require.notNegative("share", share);
    return new SpeedController(share * rippleOf(statorMm) / resistanceOhm, idleA);
  }

  /** True if volts and stator are inside the evidence of {@link #BENCH}; outside it, warn. */
  public static boolean isInsideEvidence(double busVolts, double statorMm) {
    return busVolts >= LEAST_VOLTS && busVolts <= MOST_VOLTS && statorMm >= SMALLEST_MM;
  }
}
