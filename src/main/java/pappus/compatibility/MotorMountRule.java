package pappus.compatibility;

import java.util.ArrayList;
import java.util.Set;
import pappus.fitting.Fitting;
import pappus.part.Frame;
import pappus.part.Motor;
import pappus.part.Part;
import pappus.part.Role;
import pappus.quantity.Require;

/** The arms must be drilled for the motor's bolt circles: for both of a pair, or for one that it has by itself. */
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
  public Object signature(Part part) {
    if (part instanceof Frame frame) {
      return frame.motorBoltCirclesMillimetres();
    }
    return part instanceof Motor motor ? motor.boltPatterns() : part.id();
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
    var patterns = motor.boltPatterns();
    if (patterns.isEmpty()) {
      return Verdict.unknown("bolt circle of motor %s", motor.id());
    }
    var missing = new ArrayList<String>();
    for (var pattern : patterns) {
      var circle = pattern.stream().filter(each -> !isDrilled(frame, each)).findFirst();
      if (circle.isEmpty()) {
        return Verdict.FITS;
      }
      missing.add(Require.plain(circle.get()));
    }
    return Verdict.clashes(
        "Motor %s needs a bolt circle of %s mm, but frame %s offers %s mm.",
        motor.id(),
        String.join(" or ", missing),
        frame.id(),
        String.join(", ", offered.stream().map(Object::toString).toList()));
  }

  /** Whether the arms take a bolt circle, mm; not known counts as no. */
  public static boolean isDrilled(Frame frame, double circleMillimetres) {
    return frame.motorBoltCirclesMillimetres().stream()
        .anyMatch(span -> span.holds(circleMillimetres, TOLERANCE_MM));
  }
}
