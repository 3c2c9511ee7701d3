package pappus.calibration;

import pappus.physics.motor.PartLoadLaw;

/** What a controller takes beside its motor's power and its own idle current. */
@FunctionalInterface
interface PartLoadForm {
  /**
   * The ripple of {@link pappus.physics.motor.SpeedController}, by its motor's stator as in {@link PartLoadLaw}. It goes
   * on below zero beyond full duty, since the fit's slope would jump just where full-throttle rows lie.
   */
  PartLoadForm RIPPLE = (loss, motorVolts, currentA, resistanceOhm, row) -> {
    var closed = 1 - motorVolts / row.volts();
    return loss
        * statorFactor(row.statorMillimetres())
        * motorVolts
        * motorVolts
        * closed
        * Math.sqrt(Math.abs(closed))
        / resistanceOhm;
  };

  /**
   * W.
   *
   * @param loss coefficient that all controllers share
   */
  double lossW(double loss, double motorVolts, double currentA, double resistanceOhm, BenchRow row);

  /** c of a motor over that of one whose stator is not small, by the diameter in mm; 1 if that is not known, 0. */
  static double statorFactor(double statorMillimetres) {
    var law = PartLoadLaw.BENCH;
    return statorMillimetres == 0 ? 1 : law.rippleOf(statorMillimetres) / law.ripple();
  }
}
