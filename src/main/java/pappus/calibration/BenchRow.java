package pappus.calibration;

import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import pappus.quantity.Require;
import pappus.quantity.Units;

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
 * @param torqueMillinewtonMetres of the shaft, mN·m; 0 if it was not read
 * @param statorMillimetres diameter of the motor's stator; 0 if it is not known: then it counts as not small
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
    double airDensityKgPerCubicMetre,
    double torqueMillinewtonMetres,
    double statorMillimetres) {
  static final String NOT_READ = "speed was not read";

  private static final double LEAST_THRUST_COEFFICIENT = 0.03;
  private static final double MOST_THRUST_COEFFICIENT = 0.5;

  public BenchRow {
    Require.text("motorKey", motorKey);
    Require.text("propellerKey", propellerKey);
    Require.positive("labelKvRpmPerVolt", labelKvRpmPerVolt);
    Require.positive("volts", volts);
    Require.notNegative("currentA", currentA);
    Require.notNegative("speedRpm", speedRpm);
    Require.positive("diameterMillimetres", diameterMillimetres);
    Require.positive("airDensityKgPerCubicMetre", airDensityKgPerCubicMetre);
    Require.notNegative("torqueMillinewtonMetres", torqueMillinewtonMetres);
    Require.notNegative("statorMillimetres", statorMillimetres);
  }

  /** Keys of the motors and propellers of rows. */
  public static SortedSet<String> keys(List<BenchRow> rows) {
    var keys = new TreeSet<String>();
    rows.forEach(row -> keys.addAll(List.of(row.motorKey, row.propellerKey)));
    return keys;
  }

  /** Power the controller takes, W. */
  public double busPowerW() {
    return volts * currentA;
  }

  /** Why power at equal thrust means nothing here; empty if it does. */
  public Optional<String> defect() {
    if (!(thrustGrams > 0 && currentA > 0)) {
      return Optional.of("thrust or current is not above zero: row left out");
    }
    return busPowerW() < idealPowerW()
        ? Optional.of("power is below what any propeller of this size needs: row left out")
        : Optional.empty();
  }

  /** Why its speed means nothing; empty if it does. */
  public Optional<String> speedDefect() {
    if (speedRpm == 0) {
      return Optional.of(NOT_READ + ": speed left out, power used");
    }
    var coefficient = thrustCoefficient();
    return coefficient >= LEAST_THRUST_COEFFICIENT && coefficient <= MOST_THRUST_COEFFICIENT
        ? Optional.empty()
        : Optional.of(
            "speed gives a thrust coefficient outside 0.03 to 0.5: speed left out, power used");
  }

  /** C_T = T/(ρ n² D⁴) of a speed that was read; static ones of propellers lie between 0.05 and 0.35. */
  private double thrustCoefficient() {
    var turnsPerS = speedRpm / 60;
    var diameterM = diameterMillimetres / 1000;
    return Units.gramsToNewtons(thrustGrams)
        / (airDensityKgPerCubicMetre
            * turnsPerS
            * turnsPerS
            * diameterM
            * diameterM
            * diameterM
            * diameterM);
  }

  /** The same as if its speed had not been read. */
  BenchRow withoutSpeed() {
    return with(0, statorMillimetres);
  }

  /** The same of a motor whose stator has a diameter, mm. */
  public BenchRow ofStator(double millimetres) {
    return with(speedRpm, millimetres);
  }

  private BenchRow with(double rpm, double stator) {
    return new BenchRow(
        file,
        line,
        motorKey,
        labelKvRpmPerVolt,
        propellerKey,
        supplyLabelVolts,
        pulseMicroseconds,
        thrustGrams,
        volts,
        currentA,
        rpm,
        diameterMillimetres,
        airDensityKgPerCubicMetre,
        torqueMillinewtonMetres,
        stator);
  }

  /** Of the momentum theory of the hovering disc: T √(T/(2 ρ A)). */
  private double idealPowerW() {
    var thrust = Units.gramsToNewtons(thrustGrams);
    var radiusM = diameterMillimetres / 2000;
    return thrust
        * Math.sqrt(thrust / (2 * airDensityKgPerCubicMetre * Math.PI * radiusM * radiusM));
  }
}
