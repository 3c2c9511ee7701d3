package pappus.compatibility;

import java.util.Set;
import pappus.fitting.Fitting;
import pappus.part.Motor;
import pappus.part.Part;
import pappus.part.Propeller;
import pappus.part.Role;

/**
 * The propeller must not be larger than motors of the stator's size are flown with.
 *
 * <p>Why: src/site/markdown/decisions.md#a-propeller-may-be-half-an-inch-above-what-a-stator-carries
 */
public final class PropellerLoadRule implements CompatibilityRule {
  /** Half a size above the usual is noted, more than that is not built. */
  private static final double NOTED_INCHES = 0.5;

  @Override
  public String id() {
    return "propeller-load";
  }

  @Override
  public Set<Role> reads() {
    return Set.of(Role.MOTOR, Role.PROPELLER);
  }

  @Override
  public Object signature(Part part) {
    if (part instanceof Motor motor) {
      return largestUsualInches(motor);
    }
    return part instanceof Propeller propeller ? propeller.diameterInches() : part.id();
  }

  @Override
  public Verdict check(Fitting fitting) {
    var build = fitting.build();
    if (build.motor().isEmpty() || build.propeller().isEmpty()) {
      return Verdict.FITS;
    }
    var motor = build.motor().get();
    var propeller = build.propeller().get();
    var usual = largestUsualInches(motor);
    var inches = propeller.diameterInches();
    if (inches > usual + NOTED_INCHES + 1e-9) {
      return Verdict.clashes(
          "Propeller %s is %s inch, but a %s mm stator swings %s inch at most.",
          propeller.id(), inches, motor.statorDiameterMillimetres(), usual);
    }
    return inches > usual + 1e-9
        ? Verdict.fitsBut(
            "Propeller %s is %s inch; a %s mm stator usually swings %s inch at most: feel the motors after the first minute.",
            propeller.id(), inches, motor.statorDiameterMillimetres(), usual)
        : Verdict.FITS;
  }

  /** Largest propeller of the size class, inch (common practice, no published source). */
  private static double largestUsualInches(Motor motor) {
    var diameter = motor.statorDiameterMillimetres();
    if (diameter < 12) {
      return motor.statorHeightMillimetres() < 5 ? 2.5 : 3;
    }
    if (diameter < 13) {
      return 3;
    }
    if (diameter < 16) {
      return 4;
    }
    return diameter < 23 ? 5 : 6;
  }
}
