package pappus.compatibility;

import java.util.Set;
import pappus.catalog.Role;

/** A payload of some size must stay clear of the propellers. */
public final class PayloadPlaceRule implements CompatibilityRule {
  @Override
  public String id() {
    return "payload-place";
  }

  @Override
  public Set<Role> reads() {
    return Set.of(Role.FRAME, Role.PROPELLER);
  }

  @Override
  public Verdict check(Fitting fitting) {
    var build = fitting.build();
    var payload = fitting.scenario().payload();
    if (payload == null || build.frame().isEmpty() || build.propeller().isEmpty()) {
      return Verdict.FITS;
    }
    var length = payload.lengthMillimetres();
    var width = payload.widthMillimetres();
    if (length == null && width == null) {
      return Verdict.FITS;
    }
    var clearance = Discs.clearance(
        build.frame().get(),
        build.propeller().get(),
        payload.xMillimetres(),
        length == null ? 0 : length,
        width == null ? 0 : width);
    return clearance >= Discs.LEAST_MM
        ? Verdict.FITS
        : Discs.tooNear("The payload", clearance, build.frame().get());
  }
}
