package pappus.compatibility;

import java.util.Optional;
import java.util.Set;
import pappus.fitting.Fitting;
import pappus.fitting.HardwarePlanner;
import pappus.part.Camera;
import pappus.part.CameraUnit;
import pappus.part.Frame;
import pappus.part.Part;
import pappus.part.Role;
import pappus.part.Transmitter;
import pappus.quantity.Require;

/** The camera must fit the frame's cage; a narrower one goes in with shims, a wider one never. */
public final class CameraCageRule implements CompatibilityRule {
  /** Slack a cable needs beyond the straight way, mm (engineering estimate). */
  private static final double SLACK_MM = 20;

  /** A digital camera's cable must reach from the camera to its transmitter. */
  private static Verdict cable(Fitting fitting) {
    var build = fitting.build();
    var frame = build.frame().orElseThrow();
    var reach = build.cameraUnit().orElseThrow().cableMillimetres();
    var transmitterX = fitting
        .stackPlan()
        .flatMap(
            plan -> plan.xMillimetres(Role.TRANSMITTER).or(() -> plan.xMillimetres(Role.BOARD)));
    if (reach == 0 || transmitterX.isEmpty()) {
      return Verdict.FITS;
    }
    var needed = Math.abs(frame.cameraXMillimetres() - transmitterX.get()) + SLACK_MM;
    return reach >= needed
        ? Verdict.FITS
        : Verdict.clashes(
            "The camera cable is %s mm long, but needs %s mm on frame %s.",
            reach, needed, frame.id());
  }

  @Override
  public String id() {
    return "camera-cage";
  }

  @Override
  public Set<Role> reads() {
    return Set.of(Role.FRAME, Role.BOARD, Role.CAMERA, Role.TRANSMITTER);
  }

  /** How far a cable has to reach depends on the stack, the width of the cage on nothing. */
  @Override
  public boolean mayStillFit(Fitting begun) {
    var build = begun.build();
    return build.frame().isEmpty()
        || build.cameraUnit().isEmpty()
        || build.frame().get().cameraWidthsMillimetres().isEmpty()
        || takes(build.frame().get(), build.cameraUnit().get())
        || begun.fitter().hardwarePlanner().cameraShims(build).isPresent();
  }

  @Override
  public boolean foresees(Set<Role> decided) {
    return decided.contains(Role.FRAME)
        && (decided.contains(Role.CAMERA) || decided.contains(Role.TRANSMITTER));
  }

  @Override
  public Object signature(Part part) {
    if (part instanceof Frame frame) {
      return frame.cameraWidthsMillimetres();
    }
    if (part instanceof Camera camera) {
      return camera.widthMillimetres();
    }
    return part instanceof Transmitter transmitter
        ? Optional.ofNullable(transmitter.camera()).map(CameraUnit::widthMillimetres)
        : part.id();
  }

  private static boolean takes(Frame frame, CameraUnit camera) {
    return frame.cameraWidthsMillimetres().stream()
        .anyMatch(width ->
            Math.abs(width - camera.widthMillimetres()) <= HardwarePlanner.CAMERA_TOLERANCE_MM);
  }

  @Override
  public Verdict check(Fitting fitting) {
    var build = fitting.build();
    if (build.frame().isEmpty() || build.cameraUnit().isEmpty()) {
      return Verdict.FITS;
    }
    var frame = build.frame().get();
    var camera = build.cameraUnit().get();
    var widths = frame.cameraWidthsMillimetres();
    if (widths.isEmpty()) {
      return Verdict.unknown("camera widths of frame %s", frame.id());
    }
    if (takes(frame, camera)) {
      return cable(fitting);
    }
    var shims = fitting.fitter().hardwarePlanner().cameraShims(build);
    if (shims.isEmpty()) {
      return Verdict.clashes(
          "The camera is %s mm wide, but frame %s takes %s mm and no shims are in stock for it.",
          camera.widthMillimetres(),
          frame.id(),
          String.join(", ", widths.stream().map(Require::plain).toList()));
    }
    var cable = cable(fitting);
    return cable instanceof Verdict.Fits
        ? Verdict.fitsBut(
            "The %s mm camera goes into frame %s with shims %s (%s g).",
            camera.widthMillimetres(),
            frame.id(),
            shims.get().id(),
            shims.get().mass().grams())
        : cable;
  }
}
