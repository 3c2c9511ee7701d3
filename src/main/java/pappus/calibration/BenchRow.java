package pappus.calibration;

import pappus.quantity.Require;

/**
 * One steady reading of a thrust stand.
 *
 * @param file as the user typed it
 * @param line of the file, from 1
 * @param labelKvRpmPerVolt Kv printed on the motor, rpm/V
 * @param supplyLabelVolts nominal volts of the supply
 * @param pulseMicroseconds throttle as the controller is told it, µs
 * @param thrustGrams thrust, gf; zero or less if the stand drifted
 * @param volts at the controller's input, V
 * @param currentA at the controller's input, A
 * @param speedRpm mechanical, 0 if it was not read
 * @param diameterMillimetres of the propeller
 * @param airDensityKgPerCubicMetre of the air on that day
 */
public record BenchRow(
    String file,
    int line,
    String motorKey,
    double labelKvRpmPerVolt,
    String propellerKey,
    double supplyLabelVolts,
    double pulseMicroseconds,
    double thrustGrams,
    double volts,
    double currentA,
    double speedRpm,
    double diameterMillimetres,
    double airDensityKgPerCubicMetre) {

  public BenchRow {
    Require.text("motorKey", motorKey);
    Require.text("propellerKey", propellerKey);
    Require.positive("labelKvRpmPerVolt", labelKvRpmPerVolt);
    Require.positive("volts", volts);
    Require.notNegative("currentA", currentA);
    Require.notNegative("speedRpm", speedRpm);
    Require.positive("diameterMillimetres", diameterMillimetres);
    Require.positive("airDensityKgPerCubicMetre", airDensityKgPerCubicMetre);
  }

  /** Power the controller takes, W. */
  double busPowerW() {
    return volts * currentA;
  }

  /** True if power at equal thrust means something here. */
  boolean isUsable() {
    return thrustGrams > 0 && currentA > 0;
  }
}
