package pappus.physics.atmosphere;

import pappus.quantity.Require;

/**
 * Dry air at one place.
 *
 * @param temperatureK static temperature, K
 * @param pressurePa static pressure, Pa
 * @param densityKgPerM3 density, kg/m³
 */
public record Air(double temperatureK, double pressurePa, double densityKgPerM3) {
  private static final double SUTHERLAND_FACTOR = 1.458e-6; // kg/(m·s·√K), ISO 2533, from memory
  private static final double SUTHERLAND_TEMPERATURE_K = 110.4; // same

  public Air {
    Require.positive("temperatureK", temperatureK);
    Require.positive("pressurePa", pressurePa);
    Require.positive("densityKgPerM3", densityKgPerM3);
  }

  /**
   * Dynamic viscosity in Pa·s by Sutherland's law with the two constants of ISO 2533 (from memory, not
   * re-read in print). Meant for 200 to 400 K.
   */
  public double viscosityPaS() {
    return SUTHERLAND_FACTOR
        * temperatureK
        * Math.sqrt(temperatureK)
        / (temperatureK + SUTHERLAND_TEMPERATURE_K);
  }
}
