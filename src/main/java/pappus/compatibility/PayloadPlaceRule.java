package pappus.compatibility;

import java.util.Set;
import org.jspecify.annotations.Nullable;
import pappus.fitting.Discs;
import pappus.fitting.Fitting;
import pappus.part.Frame;
import pappus.part.PayloadCamera;
import pappus.part.Propeller;
import pappus.part.Role;

/** A payload of some size, or a payload camera above the pilot's, must stay clear of the propellers. */
public final class PayloadPlaceRule implements CompatibilityRule {
  @Override
  public String id() {
    return "payload-place";
  }

  @Override
  public Set<Role> reads() {
    return Set.of(Role.FRAME, Role.PROPELLER, Role.PAYLOAD_CAMERA);
  }

  @Override
  public Verdict check(Fitting fitting) {
    var build = fitting.build();
    if (build.frame().isEmpty() || build.propeller().isEmpty()) {
      return Verdict.FITS;
    }
    var frame = build.frame().get();
    var propeller = build.propeller().get();
    var payload = fitting.scenario().payload();
    if (payload != null
        && (payload.lengthMillimetres() != null || payload.widthMillimetres() != null)) {
      var clearance = Discs.clearance(
          frame,
          propeller.diameterMillimetres(),
          payload.xMillimetres(),
          orNone(payload.lengthMillimetres()),
          orNone(payload.widthMillimetres()));
      if (clearance < Discs.LEAST_MM) {
        return TooNear.toDiscs("The payload", clearance, frame);
      }
    }
    return build
        .payloadCamera()
        .map(camera -> check(camera, frame, propeller))
        .orElse(Verdict.FITS);
  }

  /** It sits above the pilot's camera, where both see the same (common practice, no published source). */
  private static Verdict check(PayloadCamera camera, Frame frame, Propeller propeller) {
    var clearance = Discs.clearance(
        frame,
        propeller.diameterMillimetres(),
        frame.cameraXMillimetres(),
        camera.lengthMillimetres(),
        camera.widthMillimetres());
    return clearance >= Discs.LEAST_MM
        ? Verdict.FITS
        : TooNear.toDiscs("The payload camera", clearance, frame);
  }

  private static double orNone(@Nullable Double millimetres) {
    return millimetres == null ? 0 : millimetres;
  }
}
