package pappus.evidence.prior;

import pappus.part.Motor;
import pappus.part.Propeller;
import pappus.part.Propeller.StaticTest;

/** What the figures of a part usually are for its size; the numbers behind stand in the laws of this package. */
public final class ClassPriors {
  private ClassPriors() {}

  /** Resistance of the winding alone, Ω. */
  public static double usualWindingOhms(Motor motor) {
    return MotorPriors.usualWindingOhms(motor);
  }

  /** Current without load at the volts the record names, A. */
  public static double usualNoLoadAmps(Motor motor) {
    return MotorPriors.usualNoLoadAmps(motor);
  }

  /** Input of a video transmitter, its camera included where it is digital, W. */
  public static double usualSenderWatts(boolean isAnalogue, double milliwatts) {
    return VideoPriors.usualWatts(isAnalogue, milliwatts / 1000);
  }

  /** T/(ρ n² D⁴) at rest, at the speed of the middle row of a test. */
  public static double thrustCoefficient(Propeller propeller) {
    return PropellerPriors.thrustLaw(propeller);
  }

  /** C_T^1.5 / (C_P √(π/2)) at rest, at the speed of the middle row of a test. */
  public static double figureOfMerit(Propeller propeller) {
    return PropellerPriors.meritLaw(propeller);
  }

  /** The row of a test that the laws are held against. */
  public static Propeller.Row middleRow(StaticTest test) {
    return test.rows().get(PropellerPriors.middle(test.rows()));
  }

  /** Figure of merit of a row. */
  public static double figureOfMerit(Propeller.Row row) {
    return PropellerPriors.merit(row);
  }
}
