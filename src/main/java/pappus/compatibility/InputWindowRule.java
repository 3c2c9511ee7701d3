package pappus.compatibility;

import java.util.Set;
import pappus.catalog.Role;

/** Every consumer must have a source inside its volts, from the full pack down to its floor. */
public final class InputWindowRule implements CompatibilityRule {
  @Override
  public String id() {
    return "input-window";
  }

  @Override
  public Set<Role> reads() {
    return PowerPlanner.READS;
  }

  @Override
  public boolean mayBeWaived() {
    return false;
  }

  @Override
  public Verdict check(Fitting fitting) {
    var build = fitting.build();
    if (build.board().isEmpty() || build.battery().isEmpty()) {
      return Verdict.FITS;
    }
    var window = fitting.power().window();
    return window == null ? Verdict.FITS : new Verdict.Clashes(window);
  }
}
