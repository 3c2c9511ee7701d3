package pappus.physics.atmosphere;

import pappus.quantity.Require;
import pappus.quantity.Units;

/**
 * The troposphere of the standard atmosphere, ISO 2533 and ICAO Doc 7488.
 *
 * <p>Altitudes are geopotential metres from −430 to 11 000, where they differ from geometric ones by less
 * than 20 m. Outside that layer the answer is refused.
 */
public final class StandardAtmosphere {
  /** The lowest land; the standard goes on below sea level by the same formulas. */
  private static final double FLOOR_M = -430;

  private static final double CEILING_M = 11_000;
  private static final double SEA_LEVEL_TEMPERATURE_K = 288.15;
  private static final double SEA_LEVEL_PRESSURE_PA = 101_325;
  private static final double LAPSE_RATE_K_PER_M = 0.0065;
  private static final double GAS_CONSTANT_J_PER_KG_K = 287.05287;
  private static final double EXPONENT =
      Units.GRAVITY_M_PER_S2 / (GAS_CONSTANT_J_PER_KG_K * LAPSE_RATE_K_PER_M); // 5.25588
  private static final double COLDEST_K = 213.15;
  private static final double HOTTEST_K = 333.15;

  private StandardAtmosphere() {}

  /**
   * Air on a standard day.
   *
   * @param altitudeM geopotential altitude, m, from −430 to 11 000
   * @throws IllegalArgumentException if the altitude is outside that layer
   */
  public static Air at(double altitudeM) {
    Require.inRange("altitudeM", altitudeM, FLOOR_M, CEILING_M);
    return air(standardTemperatureK(altitudeM), standardPressurePa(altitudeM));
  }

  /**
   * Air at standard pressure but at the temperature the pilot feels.
   *
   * @param altitudeM geopotential altitude, m, from −430 to 11 000
   * @param temperatureK actual temperature, K, from 213.15 to 333.15 (−60 to 60 °C)
   * @throws IllegalArgumentException if either is out of its range
   */
  public static Air at(double altitudeM, double temperatureK) {
    Require.inRange("altitudeM", altitudeM, FLOOR_M, CEILING_M);
    Require.inRange("temperatureK", temperatureK, COLDEST_K, HOTTEST_K, "Maybe it is in °C.");
    return air(temperatureK, standardPressurePa(altitudeM));
  }

  private static Air air(double temperatureK, double pressurePa) {
    return new Air(temperatureK, pressurePa, pressurePa / (GAS_CONSTANT_J_PER_KG_K * temperatureK));
  }

  private static double standardTemperatureK(double altitudeM) {
    return SEA_LEVEL_TEMPERATURE_K - LAPSE_RATE_K_PER_M * altitudeM;
  }

  private static double standardPressurePa(double altitudeM) {
    return SEA_LEVEL_PRESSURE_PA
        * StrictMath.pow(standardTemperatureK(altitudeM) / SEA_LEVEL_TEMPERATURE_K, EXPONENT);
  }
}
