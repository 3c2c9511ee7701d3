package pappus.compatibility;

import java.util.Set;
import pappus.fitting.Fitting;
import pappus.fitting.PowerPlanner;
import pappus.part.Role;

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

  /** What is added draws power too. */
  @Override
  public boolean mayStillFit(Fitting begun) {
    return !(check(begun) instanceof Verdict.Clashes);
  }

  @Override
  public boolean foresees(Set<Role> decided) {
    return decided.contains(Role.BOARD)
        && decided.contains(Role.BATTERY)
        && decided.size() > 2
        && decided.stream().filter(PowerPlanner.READS::contains).count() > 2;
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
