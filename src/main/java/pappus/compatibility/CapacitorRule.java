package pappus.compatibility;

import java.util.List;
import java.util.Set;
import pappus.fitting.Fitting;
import pappus.fitting.PowerPlanner;
import pappus.part.Battery;
import pappus.part.Capacitor;
import pappus.part.Part;
import pappus.part.Role;

/** The capacitor must stand the pack and be large enough for it. */
public final class CapacitorRule implements CompatibilityRule {
  /** All numbers here are common practice without a published source. */
  private static final double VOLTS_OVER_FULL = 1.4;

  private static final int FEW_CELLS = 4;
  private static final double FEW_CELLS_MICROFARADS = 220;
  private static final double MANY_CELLS_MICROFARADS = 470;

  /** What everybody uses: 25 V up to 4 cells (high-voltage ones too), 35 V for 4 to 6. */
  private static boolean usualRating(int cells, double ratedVolts) {
    return (cells <= FEW_CELLS && ratedVolts >= 25) || (cells <= 6 && ratedVolts >= 35);
  }

  @Override
  public String id() {
    return "capacitor";
  }

  @Override
  public Set<Role> reads() {
    return Set.of(Role.BATTERY, Role.CAPACITOR);
  }

  @Override
  public Object signature(Part part) {
    if (part instanceof Capacitor capacitor) {
      return List.of(capacitor.ratedVolts(), capacitor.microfarads());
    }
    return part instanceof Battery battery
        ? List.of(battery.cellsInSeries(), battery.chemistry())
        : part.id();
  }

  @Override
  public Verdict check(Fitting fitting) {
    var build = fitting.build();
    if (build.battery().isEmpty() || build.capacitor().isEmpty()) {
      return Verdict.FITS;
    }
    var battery = build.battery().get();
    var capacitor = build.capacitor().get();
    var volts = VOLTS_OVER_FULL * PowerPlanner.highestVolts(battery);
    var rated = capacitor.ratedVolts();
    if (rated < volts && !usualRating(battery.cellsInSeries(), rated)) {
      return Verdict.clashes(
          "Capacitor %s is rated %s V, but pack %s asks for %s V.",
          capacitor.id(), rated, battery.id(), volts);
    }
    var least =
        battery.cellsInSeries() <= FEW_CELLS ? FEW_CELLS_MICROFARADS : MANY_CELLS_MICROFARADS;
    if (capacitor.microfarads() < least) {
      return Verdict.clashes(
          "Capacitor %s has %s µF, but %s cells ask for %s µF.",
          capacitor.id(), capacitor.microfarads(), battery.cellsInSeries(), least);
    }
    return Verdict.FITS;
  }
}
