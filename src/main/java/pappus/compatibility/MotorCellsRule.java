package pappus.compatibility;

import java.util.Set;
import pappus.fitting.Fitting;
import pappus.part.Battery;
import pappus.part.Motor;
import pappus.part.Part;
import pappus.part.Role;

/** The pack must have as many cells as the motor's maker allows. */
public final class MotorCellsRule implements CompatibilityRule {
  @Override
  public String id() {
    return "motor-cells";
  }

  @Override
  public Set<Role> reads() {
    return Set.of(Role.MOTOR, Role.BATTERY);
  }

  @Override
  public boolean mayBeWaived() {
    return false;
  }

  @Override
  public Object signature(Part part) {
    if (part instanceof Motor motor) {
      return motor.cells();
    }
    return part instanceof Battery battery ? battery.cellsInSeries() : part.id();
  }

  @Override
  public Verdict check(Fitting fitting) {
    var build = fitting.build();
    if (build.motor().isEmpty() || build.battery().isEmpty()) {
      return Verdict.FITS;
    }
    var cells = build.battery().get().cellsInSeries();
    var motor = build.motor().get();
    return motor.cells().holds(cells)
        ? Verdict.FITS
        : Verdict.clashes(
            "Motor %s takes %s cells, but pack %s has %s.",
            motor.id(), motor.cells().toString(), build.battery().get().id(), cells);
  }
}
