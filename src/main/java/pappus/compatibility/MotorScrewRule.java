package pappus.compatibility;

import java.util.List;
import java.util.Set;
import pappus.fitting.Fitting;
import pappus.fitting.HardwarePlanner;
import pappus.part.Frame;
import pappus.part.Motor;
import pappus.part.Part;
import pappus.part.Role;

/** Some screw in stock must hold the motor through the arm without touching its winding. */
public final class MotorScrewRule implements CompatibilityRule {
  @Override
  public String id() {
    return "motor-screws";
  }

  @Override
  public Set<Role> reads() {
    return Set.of(Role.FRAME, Role.MOTOR);
  }

  @Override
  public Object signature(Part part) {
    if (part instanceof Frame frame) {
      return frame.armThicknessMillimetres();
    }
    return part instanceof Motor motor
        ? List.of(
            motor.screw(), HardwarePlanner.deepest(motor), motor.threadDepthMillimetres() == null)
        : part.id();
  }

  @Override
  public Verdict check(Fitting fitting) {
    var build = fitting.build();
    if (build.frame().isEmpty() || build.motor().isEmpty()) {
      return Verdict.FITS;
    }
    var arm = build.frame().get().armThicknessMillimetres();
    var motor = build.motor().get();
    var deepest = HardwarePlanner.deepest(motor);
    if (fitting.hardware().motorScrew().isEmpty()) {
      return Verdict.clashes(
          "Motor %s on a %s mm arm needs %s screws of %s to %s mm, but none is in stock.",
          motor.id(),
          arm,
          motor.screw().label(),
          arm + motor.screw().leastMillimetres(),
          arm + deepest);
    }
    return motor.threadDepthMillimetres() == null
        ? Verdict.fitsBut(
            "Motor %s: thread depth not known; turn the screws in by hand, none deeper than %s mm.",
            motor.id(), deepest)
        : Verdict.FITS;
  }
}
