package pappus.compatibility;

import java.util.Set;
import pappus.fitting.Fitting;
import pappus.part.Part;
import pappus.part.Role;

/**
 * One fit rule.
 *
 * <p>A rule judges what is there: where a role it reads is empty, it fits, so that a build only
 * begun, or two parts alone, can be judged too. That a role must be filled is a rule of its own.
 */
public interface CompatibilityRule {
  /** Its name in reports and waivers: small letters and hyphens. */
  String id();

  /** Roles whose parts its verdict depends on; nothing else may change the verdict. */
  Set<Role> reads();

  /** Whether a scenario may set it aside. Maximum volts never are. */
  default boolean mayBeWaived() {
    return true;
  }

  /**
   * Whether a build only begun may still keep it, whatever is added: false only where it is sure that none can. For
   * rules that read so many roles that a search would learn too late.
   */
  default boolean mayStillFit(Fitting begun) {
    return true;
  }

  /**
   * Whether {@link #mayStillFit} can say no of a build that has parts in these roles only; what is asked of a pair
   * of parts is asked of every pair that cannot be told apart by {@link #signature}.
   */
  default boolean foresees(Set<Role> decided) {
    return false;
  }

  /**
   * All that its verdict on a pair of parts depends on: parts of a role with equal signatures stand for each other, but
   * for the ids in its sentences.
   */
  default Object signature(Part part) {
    return part.id();
  }

  /** What it says of a build. */
  Verdict check(Fitting fitting);
}
