package pappus.physics.flight;

import pappus.physics.airframe.Airframe;
import pappus.physics.motor.WindingHeat;
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

  /**
   * The same with each winding as warm as a hover in calm air makes it.
   *
   * @param thermalResistanceKPerW from winding to air, see {@link WindingHeat}
   */
  public Aircraft warmedInHover(double thermalResistanceKPerW, double airK) {
    // Torque fixes the current, so the winding's own temperature does not move it.
    var currentA = Hover.of(this).steady().point().currentA();
    var windingK = WindingHeat.windingK(rotor.motor(), currentA, thermalResistanceKPerW, airK);
    return new Aircraft(
        airframe,
        rotorCount,
        new Rotor(rotor.propeller(), rotor.motor().withWindingAt(windingK), rotor.controller()),
        avionicsW);
  }

  double discAreaM2() {
    return rotorCount * rotor.propeller().discAreaM2();
  }
}
