package pappus.compatibility;

import java.util.Optional;
import java.util.Set;
import pappus.fitting.Fitting;
import pappus.part.Frame;
import pappus.part.Motor;
import pappus.part.Part;
import pappus.part.Role;

/** The bell must turn freely inside the frame's motor guards. */
public final class MotorGuardRule implements CompatibilityRule {
  /** Around the bell (common practice, no published source). */
  static final double CLEARANCE_MM = 0.5;

  @Override
  public String id() {
    return "motor-guard";
  }

  @Override
  public Set<Role> reads() {
    return Set.of(Role.FRAME, Role.MOTOR);
  }

  @Override
  public Object signature(Part part) {
    if (part instanceof Frame frame) {
      return Optional.ofNullable(frame.guardInnerMillimetres());
    }
    return part instanceof Motor motor ? motor.bellDiameterMillimetres() : part.id();
  }

  @Override
  public Verdict check(Fitting fitting) {
    var build = fitting.build();
    if (build.frame().isEmpty() || build.motor().isEmpty()) {
      return Verdict.FITS;
    }
    var guard = build.frame().get().guardInnerMillimetres();
    if (guard == null) {
      return Verdict.FITS;
    }
    var bell = build.motor().get().bellDiameterMillimetres();
    var needed = bell + 2 * CLEARANCE_MM;
    return needed <= guard
        ? Verdict.FITS
        : Verdict.clashes(
            "Motor %s needs guards of %s mm inside, but those of frame %s are %s mm.",
            build.motor().get().id(), needed, build.frame().get().id(), guard);
  }
}
