package pappus.compatibility;

import java.util.Set;
import pappus.catalog.Role;

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
