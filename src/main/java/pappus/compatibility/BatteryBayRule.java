package pappus.compatibility;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import pappus.fitting.BalancePlanner;
import pappus.fitting.Discs;
import pappus.fitting.Fitting;
import pappus.part.Battery;
import pappus.part.Frame;
import pappus.part.Part;
import pappus.part.Propeller;
import pappus.part.Role;

/** The pack must go into its bay and stay clear of the propellers. */
public final class BatteryBayRule implements SizeRule {
  private static final double NOTED_OVERHANG_MM = 1;

  /** A hair more than there is: what is asked of both ends of a bay is rounded otherwise than their sum. */
  private static final double HAIR_MM = 1e-6;

  @Override
  public String id() {
    return "battery-bay";
  }

  @Override
  public Set<Role> reads() {
    // Where the pack sits depends on what everything else weighs.
    return EnumSet.allOf(Role.class);
  }

  /** Size does not depend on what else is chosen; near the middle of the motors the discs are farthest. */
  @Override
  public boolean mayStillFit(Fitting begun) {
    var build = begun.build();
    if (build.frame().isEmpty() || build.battery().isEmpty()) {
      return true;
    }
    var frame = build.frame().get();
    return tooLarge(frame, build.battery().get()) == null && mayTake(frame, Sizes.of(build));
  }

  @Override
  public Sizes room(Frame frame) {
    var bay = frame.bay();
    return new Sizes(
        Double.POSITIVE_INFINITY,
        bay.frontXMillimetres() - bay.rearXMillimetres() + 2 * BalancePlanner.OVERHANG_MM + HAIR_MM,
        bay.widthMillimetres(),
        bay.tallestMillimetres() == null ? Double.POSITIVE_INFINITY : bay.tallestMillimetres());
  }

  /** A shorter pack comes nearer to the middle, and no end of it nearer to a disc. */
  @Override
  public boolean mayTake(Frame frame, Sizes sizes) {
    var nearest = BalancePlanner.nearestToMiddle(frame, sizes.packLength());
    return nearest.isPresent()
        && (sizes.propeller() == 0
            || sizes.packLength() == 0
            || Discs.clearance(
                    frame,
                    sizes.propeller(),
                    nearest.getAsDouble(),
                    sizes.packLength(),
                    sizes.packWidth())
                >= Discs.LEAST_MM);
  }

  private static @Nullable Verdict tooLarge(Frame frame, Battery battery) {
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
    return null;
  }

  @Override
  public boolean foresees(Set<Role> decided) {
    return decided.contains(Role.FRAME) && decided.contains(Role.BATTERY);
  }

  @Override
  public Object signature(Part part) {
    if (part instanceof Battery battery) {
      return List.of(
          battery.lengthMillimetres(), battery.widthMillimetres(), battery.heightMillimetres());
    }
    if (part instanceof Frame frame) {
      return List.of(frame.bay(), frame.frontSpacingMillimetres(), frame.sideSpacingMillimetres());
    }
    return part instanceof Propeller propeller ? propeller.diameterInches() : part.id();
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
    var tooLarge = tooLarge(frame, battery);
    if (tooLarge != null) {
      return tooLarge;
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
      return TooNear.toDiscs("Pack " + battery.id(), clearance.get(), frame);
    }
    return placing.get().overhangMillimetres() > NOTED_OVERHANG_MM
        ? Verdict.fitsBut(
            "Pack %s overhangs its bay by %s mm.",
            battery.id(), placing.get().overhangMillimetres())
        : Verdict.FITS;
  }
}
