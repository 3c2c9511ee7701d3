package pappus.physics.battery;

import pappus.quantity.Require;

/**
 * A load on a pack from one state of charge to the end: seconds are the integral of C dz / I(z), with the
 * balance of volts and current solved anew at each z.
 *
 * <p>Two-point Gauss quadrature between the knots of the pack's curves; below 0.02 % from adaptive quadrature.
 *
 * @param seconds how long it lasts, s
 * @param ending what ends it
 * @param endCharge state of charge at the end
 * @param energyJ energy out of the terminals, J
 * @param usedCoulomb charge out of the terminals, A·s
 * @param startVolts terminal volts at the start; 0 if the load cannot be carried
 * @param startA current at the start, A; 0 if the load cannot be carried
 * @param endVolts terminal volts at the end
 * @param endA current at the end, A
 */
public record Discharge(
    double seconds,
    Ending ending,
    double endCharge,
    double energyJ,
    double usedCoulomb,
    double startVolts,
    double startA,
    double endVolts,
    double endA) {

  /** What ends a discharge. */
  public enum Ending {
    /** The charge kept back is reached; without one, the pack is empty. */
    RESERVE,
    /** The terminals are down to the volts allowed. */
    LEAST_VOLTS,
    /** The pack cannot carry the load any more. */
    UNDELIVERABLE,
    /** The time is up. */
    TIME
  }

  /**
   * One moment of a discharge.
   *
   * @param seconds since take-off
   * @param charge state of charge, 0 to 1
   * @param volts at the terminals; of several loads in turn their mean over time
   * @param currentA the same of the current
   * @param usedCoulomb charge out of the terminals until then, A·s
   */
  public record Moment(
      double seconds, double charge, double volts, double currentA, double usedCoulomb) {}

  /** Mean power out of the terminals, W; 0 if it lasts no time. */
  public double meanPowerW() {
    return seconds > 0 ? energyJ / seconds : 0;
  }

  /** From the pack's state of charge at take-off. */
  public static Discharge of(Pack pack, Load load, Until until) {
    return of(pack, load, until, pack.startCharge());
  }

  /** From a given state of charge. */
  public static Discharge of(Pack pack, Load load, Until until, double fromCharge) {
    Require.inRange("fromCharge", fromCharge, 0, 1);
    return new Run(pack, load, until).from(fromCharge);
  }
}
