package pappus.compatibility;

import java.util.EnumSet;
import java.util.Set;
import pappus.fitting.Fitting;
import pappus.part.Role;

/**
 * The pack must be able to bring the centre of mass between the motors.
 *
 * <p>Why: src/site/markdown/decisions.md#centre-of-mass
 */
public final class BalanceRule implements CompatibilityRule {
  /** Noted from here on (common practice, no published source). */
  private static final double NOTED_MM = 5;

  /** A tenth of the spacing shifts a fifth of the thrust to one pair of motors (engineering estimate). */
  static final double MOST_OF_SPACING = 0.1;

  @Override
  public String id() {
    return "balance";
  }

  @Override
  public Set<Role> reads() {
    return EnumSet.allOf(Role.class);
  }

  @Override
  public Verdict check(Fitting fitting) {
    var build = fitting.build();
    var placing = fitting.placing();
    if (placing.isEmpty()) {
      return Verdict.FITS;
    }
    var frame = build.frame().orElseThrow();
    var off = placing.get().centreOfMassXMillimetres();
    var most = MOST_OF_SPACING * frame.sideSpacingMillimetres();
    if (Math.abs(off) > most) {
      return Verdict.clashes(
          "The centre of mass stays %s mm %s the middle of the motors, but %s mm at most can be flown.",
          Math.abs(off), off > 0 ? "before" : "behind", most);
    }
    return Math.abs(off) > NOTED_MM
        ? Verdict.fitsBut(
            "The centre of mass stays %s mm %s the middle of the motors.",
            Math.abs(off), off > 0 ? "before" : "behind")
        : Verdict.FITS;
  }
}
