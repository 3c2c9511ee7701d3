package pappus.physics.motor;

import pappus.quantity.Require;

/**
 * Controller and no-load numbers that were fitted together and are only used together.
 *
 * @param loss k of a motor whose path has {@code lossOhm} at full throttle
 * @param lossOhm resistance at which {@code loss} holds, Ω; k goes with √({@code lossOhm}/R)
 * @param lossLimit k is never above this
 * @param idleA idle current of a controller, A
 * @param noLoadExponent β of the motor's no-load current
 */
public record PartLoadLaw(
    double loss, double lossOhm, double lossLimit, double idleA, double noLoadExponent) {

  /**
   * Fitted to 826 thrust-stand rows of seven motors at 7.4 to 11.1 V, R 0.11 to 0.34 Ω, older trapezoidal
   * controllers; 704 rows are those of P. Cao and J. Strawson, "motor_propeller_testing", 2018 (MIT).
   * Motors left out of the fit are met within 5.5 % rms without bias.
   */
  public static final PartLoadLaw BENCH = new PartLoadLaw(0.39, 0.2, 0.8, 0.10, 0.33);

  /** One standard deviation of ln k; twice that for stators below 14 mm. */
  public static final double DOUBT_LN_LOSS = 0.25;

  public PartLoadLaw {
    Require.inRange("loss", loss, 0, 0.95);
    Require.positive("lossOhm", lossOhm);
    Require.inRange("lossLimit", lossLimit, 0, 0.95);
    Require.notNegative("idleA", idleA);
    Require.inRange("noLoadExponent", noLoadExponent, 0, 2);
  }

  /**
   * The controller of a motor.
   *
   * <p>k falls as the resistance rises, so a motor with more resistance may draw less at part load; a bound
   * must take k and the resistance apart.
   *
   * @param resistanceOhm everything in the motor's path with the winding at 20 °C, Ω
   */
  public SpeedController controllerFor(double resistanceOhm) {
    Require.positive("resistanceOhm", resistanceOhm);
    return new SpeedController(
        Math.min(lossLimit, loss * Math.sqrt(lossOhm / resistanceOhm)), idleA);
  }

  /** True if volts and resistance are inside the evidence of {@link #BENCH}; outside it, warn. */
  public static boolean isInsideEvidence(double busVolts, double resistanceOhm) {
    return busVolts >= 7.4 && busVolts <= 11.1 && resistanceOhm >= 0.11 && resistanceOhm <= 0.34;
  }
}
