package pappus.plausibility;

import pappus.catalog.Motor;
import pappus.catalog.Propeller;
import pappus.catalog.Propeller.StaticTest;

/** What the figures of a part usually are for its size; the numbers behind stand in the laws of this package. */
public final class ClassLaws {
  private ClassLaws() {}

  /** Resistance of the winding alone, Ω. */
  public static double usualWindingOhms(Motor motor) {
    return MotorLaws.usualWindingOhms(motor);
  }

  /** Current without load at the volts the record names, A. */
  public static double usualNoLoadAmps(Motor motor) {
    return MotorLaws.usualNoLoadAmps(motor);
  }

  /** T/(ρ n² D⁴) at rest, at the speed of the middle row of a test. */
  public static double thrustCoefficient(Propeller propeller) {
    return PropellerLaws.thrustLaw(propeller);
  }

  /** C_T^1.5 / (C_P √(π/2)) at rest, at the speed of the middle row of a test. */
  public static double figureOfMerit(Propeller propeller) {
    return PropellerLaws.meritLaw(propeller);
  }

  /** The row of a test that the laws are held against. */
  public static Propeller.Row middleRow(StaticTest test) {
    return test.rows().get(PropellerLaws.middle(test.rows()));
  }

  /** Figure of merit of a row. */
  public static double figureOfMerit(Propeller.Row row) {
    return PropellerLaws.merit(row);
  }
}
