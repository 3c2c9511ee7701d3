package pappus.compatibility;

import java.util.Set;
import pappus.fitting.Fitting;
import pappus.fitting.PowerPlanner;
import pappus.part.Role;

/** No rail may carry more than it delivers, with a fifth to spare. */
public final class RegulatorLoadRule implements CompatibilityRule {
  @Override
  public String id() {
    return "regulator-load";
  }

  @Override
  public Set<Role> reads() {
    return PowerPlanner.READS;
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
    var overload = fitting.power().overload();
    return overload == null ? Verdict.FITS : new Verdict.Clashes(overload);
  }
}
