package pappus.compatibility;

import java.util.EnumSet;
import java.util.Set;
import pappus.catalog.Role;

/** The pack must go into its bay and stay clear of the propellers. */
public final class BatteryBayRule implements CompatibilityRule {
  private static final double NOTED_OVERHANG_MM = 1;

  @Override
  public String id() {
    return "battery-bay";
  }

  @Override
  public Set<Role> reads() {
    // Where the pack sits depends on what everything else weighs.
    return EnumSet.allOf(Role.class);
  }

  @Override
  public Verdict check(Fitting fitting) {
    var build = fitting.build();
    if (build.frame().isEmpty() || build.battery().isEmpty()) {
      return Verdict.FITS;
    }
    var frame = build.frame().get();
    var battery = build.battery().get();
    var bay = frame.bay();
    if (battery.widthMillimetres() > bay.widthMillimetres()) {
      return Verdict.clashes(
          "Pack %s is %s mm wide, but the bay of frame %s is %s mm.",
          battery.id(), battery.widthMillimetres(), frame.id(), bay.widthMillimetres());
    }
    if (bay.tallestMillimetres() != null
        && battery.heightMillimetres() > bay.tallestMillimetres()) {
      return Verdict.clashes(
          "Pack %s is %s mm high, but frame %s has room for %s mm.",
          battery.id(), battery.heightMillimetres(), frame.id(), bay.tallestMillimetres());
    }
    var placing = fitting.placing();
    if (placing.isEmpty()) {
      return Verdict.clashes(
          "Pack %s is %s mm long, but the bay of frame %s holds %s mm with its overhang.",
          battery.id(),
          battery.lengthMillimetres(),
          frame.id(),
          bay.frontXMillimetres() - bay.rearXMillimetres() + 2 * BalancePlanner.OVERHANG_MM);
    }
    var clearance = placing.get().discClearanceMillimetres();
    if (clearance.isPresent() && clearance.get() < Discs.LEAST_MM) {
      return Discs.tooNear("Pack " + battery.id(), clearance.get(), frame);
    }
    return placing.get().overhangMillimetres() > NOTED_OVERHANG_MM
        ? Verdict.fitsBut(
            "Pack %s reaches %s mm beyond its bay.",
            battery.id(), placing.get().overhangMillimetres())
        : Verdict.FITS;
  }
}
