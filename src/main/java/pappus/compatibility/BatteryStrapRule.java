package pappus.compatibility;

import java.util.Set;
import pappus.fitting.Fitting;
import pappus.fitting.HardwarePlanner;
import pappus.part.Battery;
import pappus.part.Frame;
import pappus.part.Part;
import pappus.part.Role;

/** Some strap in stock must go through the slots and round the pack. */
public final class BatteryStrapRule implements CompatibilityRule {
  @Override
  public String id() {
    return "battery-strap";
  }

  @Override
  public Set<Role> reads() {
    return Set.of(Role.FRAME, Role.BATTERY);
  }

  @Override
  public Object signature(Part part) {
    if (part instanceof Frame frame) {
      return frame.bay().strapWidthMillimetres();
    }
    return part instanceof Battery battery ? HardwarePlanner.girth(battery) : part.id();
  }

  @Override
  public Verdict check(Fitting fitting) {
    var build = fitting.build();
    if (build.frame().isEmpty() || build.battery().isEmpty()) {
      return Verdict.FITS;
    }
    return fitting.hardware().strap().isPresent()
        ? Verdict.FITS
        : Verdict.clashes(
            "Pack %s on frame %s needs a strap of %s mm length and at most %s mm width, but none is in stock.",
            build.battery().get().id(),
            build.frame().get().id(),
            HardwarePlanner.girth(build.battery().get()),
            build.frame().get().bay().strapWidthMillimetres());
  }
}
