package pappus.compatibility;

import java.util.Set;
import pappus.catalog.Role;
import pappus.quantity.Require;

/** The camera must fit the frame's cage; a narrower one goes in with shims, a wider one never. */
public final class CameraCageRule implements CompatibilityRule {
  /** Widths are rounded on data sheets: 21 and 22 mm are one class. */
  static final double TOLERANCE_MM = 1.0;

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
    if (widths.stream()
        .anyMatch(width -> Math.abs(width - camera.widthMillimetres()) <= TOLERANCE_MM)) {
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
