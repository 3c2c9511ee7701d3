package pappus.physics.flight;

import pappus.physics.airframe.Airframe;
import pappus.quantity.Require;

/**
 * What flies, without its battery.
 *
 * @param rotorCount number of rotors; they do not overlap
 * @param avionicsW power of everything but the motors at the battery's terminals, losses of regulators
 *     included, W
 */
public record Aircraft(Airframe airframe, int rotorCount, Rotor rotor, double avionicsW) {
  /** Efficiency of a regulator that states none: an engineering estimate. */
  public static final double DEFAULT_REGULATOR_EFFICIENCY = 0.85;

  public Aircraft {
    Require.inRange("rotorCount", rotorCount, 1, 16);
    Require.notNegative("avionicsW", avionicsW);
  }

  double discAreaM2() {
    return rotorCount * rotor.propeller().discAreaM2();
  }
}
