package pappus.compatibility;

import java.util.Set;
import pappus.catalog.Frame;
import pappus.catalog.Motor;
import pappus.catalog.Part;
import pappus.catalog.Role;

/** The motor's bolt circles must be ones the arms are drilled for. */
public final class MotorMountRule implements CompatibilityRule {
  /** Drilling tolerance; closer circles take the same screws (engineering estimate). */
  private static final double TOLERANCE_MM = 0.2;

  @Override
  public String id() {
    return "motor-mount";
  }

  @Override
  public Set<Role> reads() {
    return Set.of(Role.FRAME, Role.MOTOR);
  }

  @Override
  public Object trait(Part part) {
    if (part instanceof Frame frame) {
      return frame.motorBoltCirclesMillimetres();
    }
    return part instanceof Motor motor ? motor.boltCirclesMillimetres() : part.id();
  }

  @Override
  public Verdict check(Fitting fitting) {
    var build = fitting.build();
    if (build.frame().isEmpty() || build.motor().isEmpty()) {
      return Verdict.FITS;
    }
    var frame = build.frame().get();
    var motor = build.motor().get();
    var offered = frame.motorBoltCirclesMillimetres();
    if (offered.isEmpty()) {
      return Verdict.unknown("bolt circles of frame %s", frame.id());
    }
    if (motor.boltCirclesMillimetres().isEmpty()) {
      return Verdict.unknown("bolt circle of motor %s", motor.id());
    }
    for (var circle : motor.boltCirclesMillimetres()) {
      if (offered.stream().noneMatch(span -> span.holds(circle, TOLERANCE_MM))) {
        return Verdict.clashes(
            "Motor %s needs a bolt circle of %s mm, but frame %s offers %s mm.",
            motor.id(),
            circle,
            frame.id(),
            String.join(", ", offered.stream().map(Object::toString).toList()));
      }
    }
    return Verdict.FITS;
  }
}
