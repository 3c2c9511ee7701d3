package pappus.compatibility;

import java.util.Set;
import org.jspecify.annotations.Nullable;
import pappus.fitting.Fitting;
import pappus.fitting.PowerPlanner;
import pappus.part.Role;
import pappus.quantity.Sentence;

/** What stands in the way of powering every consumer from the rails of the board. */
abstract class PowerRule implements CompatibilityRule {
  /** What of it the rule tells; null where nothing is in the way. */
  abstract @Nullable Sentence obstacle(PowerPlanner.Outcome power);

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
        && decided.stream().filter(PowerPlanner.READS::contains).count() > 2;
  }

  @Override
  public Verdict check(Fitting fitting) {
    var build = fitting.build();
    if (build.board().isEmpty() || build.battery().isEmpty()) {
      return Verdict.FITS;
    }
    var obstacle = obstacle(fitting.power());
    return obstacle == null ? Verdict.FITS : new Verdict.Clashes(obstacle);
  }
}
