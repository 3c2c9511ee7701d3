package pappus.physics.airframe;

import pappus.quantity.Require;
import pappus.quantity.Units;

/**
 * What the rotors have to carry and to push through the air.
 *
 * @param massKg all-up mass, kg
 * @param thrustLost share of the rotors' thrust lost to arms and body under the discs, 0 to 0.5
 * @param dragAreaM2 drag coefficient times reference area in level flight, m²
 */
public record Airframe(double massKg, double thrustLost, double dragAreaM2) {
  public Airframe {
    Require.positive("massKg", massKg);
    Require.inRange("thrustLost", thrustLost, 0, 0.5);
    Require.notNegative("dragAreaM2", dragAreaM2);
  }

  public double weightN() {
    return massKg * Units.GRAVITY_M_PER_S2;
  }

  /** Drag in N at an airspeed: half density times speed squared times drag area. */
  public double dragN(double airspeedMPerS, double densityKgPerM3) {
    return 0.5 * densityKgPerM3 * airspeedMPerS * airspeedMPerS * dragAreaM2;
  }
}
