package pappus.evidence.prior;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pappus.part.Motor;
import pappus.part.Motor.KvReading;
import pappus.part.Motor.ResistanceReading;
import pappus.part.Wire;

/** Motors: what stator, copper and iron allow. */
public final class MotorPriors {
  /** Torque constant in N·m/A times the speed constant in rpm/V, 30/π. */
  private static final double TORQUE_BY_SPEED = 30 / Math.PI;

  /** Controller and leads in a resistance fitted on a bench, Ω (engineering estimate). */
  private static final double FITTED_OHMS = 0.010;

  /** A label's Kv over the loaded one: 2 to 9 %, its middle (thrust-stand rows of P. Cao, J. Strawson, 2018). */
  public static final double LABEL_OVER_LOADED = 1.055;

  private static final double NOMINAL_CELL_VOLTS = 3.7;

  /** mg over D²H in mm³ (common practice, no published source). */
  private static final Bounds DENSITY = Bounds.about(10.0, 0.13, 7.5, 14);

  private static final double CONSTANT_LAW = 1.30;
  private static final double NO_LOAD_LAW = 0.11;
  private static final double NO_LOAD_GROWTH = 0.4;

  /**
   * Motor constant Kt/√R over D²√H, 10⁻⁵ N·m/√W with lengths in mm: fitted to 51 openly listed
   * motors; the bench of P. Cao and J. Strawson (open data set, 2018, MIT licence) has 1.08 to 1.39.
   */
  private static final Bounds CONSTANT = Bounds.about(CONSTANT_LAW, 0.17, 0.75, 2.0);

  /**
   * Torque without load, mN·m for a gram, at 10 000 rpm; 0.090 in Budinger, Reysset, Ochotorena,
   * Delbecq, Aerosp. Sci. Technol. 98 (2020) 105658.
   */
  private static final Bounds NO_LOAD = Bounds.about(NO_LOAD_LAW, 0.35, 0.04, 0.30);

  /** Burst power, W/g (common practice, no published source). */
  private static final Bounds BURST = Bounds.hard(3, 35);

  private MotorPriors() {}

  /** Resistance of the winding alone, Ω. */
  public static double windingOhms(Motor motor) {
    var fitted = motor.resistanceReading() == ResistanceReading.FITTED ? FITTED_OHMS : 0;
    return Math.max(1e-3, motor.resistanceMilliohms() / 1000 - fitted);
  }

  /** Resistance of the winding that a motor of this stator and Kv usually has, Ω. */
  static double usualWindingOhms(Motor motor) {
    var diameter = motor.statorDiameterMillimetres();
    var usual =
        CONSTANT_LAW * 1e-5 * diameter * diameter * Math.sqrt(motor.statorHeightMillimetres());
    var root = TORQUE_BY_SPEED / labelKv(motor) / usual;
    return root * root;
  }

  /** Current without load that a motor of this mass and Kv usually has at its stated volts, A. */
  static double usualNoLoadAmps(Motor motor) {
    var newtonMetresPerAmp = TORQUE_BY_SPEED / labelKv(motor);
    return NO_LOAD_LAW / 1000 * bareGrams(motor) * noLoadGrowth(motor) / newtonMetresPerAmp;
  }

  /** The laws were drawn from data sheets, which print labels; a loaded Kv is some 5.5 % below its label. */
  private static double labelKv(Motor motor) {
    return motor.speedConstantReading() == KvReading.LOADED
        ? motor.speedConstantRpmPerVolt() * LABEL_OVER_LOADED
        : motor.speedConstantRpmPerVolt();
  }

  private static double noLoadGrowth(Motor motor) {
    var tenThousands = labelKv(motor) * motor.noLoadVolts() / 10_000;
    return StrictMath.pow(tenThousands, NO_LOAD_GROWTH);
  }

  static List<String> remarks(Motor motor) {
    var grams = bareGrams(motor);
    var square = motor.statorDiameterMillimetres() * motor.statorDiameterMillimetres();
    var height = motor.statorHeightMillimetres();
    var newtonMetresPerAmp = TORQUE_BY_SPEED / labelKv(motor);
    var constant = newtonMetresPerAmp / Math.sqrt(windingOhms(motor));
    var noLoad =
        1000 * motor.noLoadCurrentAmps() * newtonMetresPerAmp / grams / noLoadGrowth(motor);
    return Stream.of(
            DENSITY.remark(
                "mass over the stator's volume", 1000 * grams / (square * height), " mg/mm³"),
            CONSTANT.remark(
                "motor constant over the stator's measure",
                1e5 * constant / (square * Math.sqrt(height)),
                "e-5 N·m/√W/mm^2.5"),
            NO_LOAD.remark("torque without load for a gram", noLoad, " mN·m"),
            efficiency(motor),
            burst(motor, grams))
        .flatMap(Optional::stream)
        .toList();
  }

  /** (1 − √(i₀R/V))²: .75 at 11 mm to .84 at 22 mm (common practice, no published source). */
  private static Optional<String> efficiency(Motor motor) {
    var lost = Math.sqrt(motor.noLoadCurrentAmps() * windingOhms(motor) / motor.noLoadVolts());
    var law = 0.75 + 0.0085 * (motor.statorDiameterMillimetres() - 11);
    return new Bounds(law - 0.105, law + 0.105, 0.60, 0.90)
        .remark("best efficiency", lost >= 1 ? 0 : (1 - lost) * (1 - lost), "");
  }

  private static Optional<String> burst(Motor motor, double grams) {
    var amps = motor.burstAmps();
    return amps == null
        ? Optional.empty()
        : BURST.remark(
            "burst power for a gram", amps * motor.cells().to() * NOMINAL_CELL_VOLTS / grams, " W");
  }

  /** Without its three leads, g. */
  private static double bareGrams(Motor motor) {
    var leads = 3
        * motor.leadsIncludedMillimetres()
        / 1000
        * Wire.ofGauge(motor.leadGauge()).gramsPerMetre();
    return Math.max(motor.mass().grams() / 10, motor.mass().grams() - leads);
  }
}
