package pappus.physics.battery;

import pappus.quantity.Require;

/** Range of pack temperatures that can be predicted, and what temperature does to the charge. */
final class Temperature {
  /** Below it the cell of Kollmeyer and Skells 2020 could not even be tested. */
  private static final double COLDEST_K = 263.15;

  /** 60 °C: common practice, no published source. */
  static final double HOTTEST_K = 333.15;

  private static final double FREEZING_K = 273.15;
  private static final double REFERENCE_K = 298.15;

  private Temperature() {}

  static double require(double temperatureK) {
    return Require.inRange(
        "pack temperatureK",
        temperatureK,
        COLDEST_K,
        HOTTEST_K,
        "Maybe keep the pack warm until take-off: below −10 °C nothing is known.");
  }

  /**
   * Usable charge over that at 25 °C, after Kollmeyer and Skells 2020 (0.984 at 0 °C, 0.935 at −10 °C).
   * Nearly all else that cold costs is resistance meeting the landing volts.
   */
  static double capacityFactor(double temperatureK) {
    require(temperatureK);
    if (temperatureK >= REFERENCE_K) {
      return 1;
    }
    return temperatureK >= FREEZING_K
        ? 1 + 0.0008 * (temperatureK - REFERENCE_K)
        : 0.98 + 0.005 * (temperatureK - FREEZING_K);
  }
}
