package pappus.sight;

import java.util.Optional;
import java.util.OptionalDouble;
import pappus.part.Build;
import pappus.part.CameraUnit;
import pappus.part.CameraView;
import pappus.part.Frame;
import pappus.part.Motor;
import pappus.part.Propeller;
import pappus.physics.view.DiscsAhead;
import pappus.quantity.Units;

/**
 * What the pilot's camera of a build sees ahead.
 *
 * <p>Why: src/site/markdown/decisions.md#a-clear-view-is-counted-in-plan
 *
 * @param freeHalfAngle from straight ahead to the front disc at either side, seen from above, degrees
 * @param covered share of its picture in which a front disc is seen, 0 to 1; empty where the camera's view or tilt is
 *     not known
 * @param view of the camera; empty where it is not known
 */
public record Sight(double freeHalfAngle, OptionalDouble covered, Optional<CameraView> view) {

  /** Of a build with frame, propeller and camera; empty for any other. */
  public static Optional<Sight> of(Build build) {
    var frame = build.frame();
    var propeller = build.propeller();
    var camera = build.cameraUnit();
    if (frame.isEmpty() || propeller.isEmpty() || camera.isEmpty()) {
      return Optional.empty();
    }
    var view = Optional.ofNullable(camera.get().view());
    return Optional.of(new Sight(
        discs(frame.get(), propeller.get(), 0).freeHalfAngle(frame.get().cameraXMillimetres()),
        view.flatMap(seen -> covered(build, frame.get(), propeller.get(), camera.get(), seen))
            .map(OptionalDouble::of)
            .orElse(OptionalDouble.empty()),
        view));
  }

  /**
   * Angle ahead of the camera's place, both sides together and seen from above, in which no front disc stands, degrees,
   * 0 to 360: whatever the camera.
   */
  public static double clearDegrees(Frame frame, Propeller propeller) {
    return 2 * discs(frame, propeller, 0).freeHalfAngle(frame.cameraXMillimetres());
  }

  /** Largest propeller that leaves so much clear ahead, mm; 0 where none does. */
  public static double largestDisc(Frame frame, double clearDegrees) {
    return 2
        * DiscsAhead.largestRadius(
            frame.sideSpacingMillimetres() / 2 - frame.cameraXMillimetres(),
            frame.frontSpacingMillimetres() / 2,
            clearDegrees / 2);
  }

  private static DiscsAhead discs(Frame frame, Propeller propeller, double height) {
    return new DiscsAhead(
        frame.sideSpacingMillimetres() / 2,
        frame.frontSpacingMillimetres() / 2,
        Units.inchesToMillimetres(propeller.diameterInches()) / 2,
        height);
  }

  private static Optional<Double> covered(
      Build build, Frame frame, Propeller propeller, CameraUnit camera, CameraView view) {
    var tilt = view.tiltDegrees();
    if (tilt == null || build.motor().isEmpty()) {
      return Optional.empty();
    }
    var above = view.heightMillimetres();
    var lens = cameraHeight(frame, camera) + (above == null ? 0 : above);
    return Optional.of(discs(frame, propeller, discHeight(frame, build.motor().get(), propeller))
        .covered(
            frame.cameraXMillimetres(),
            lens,
            tilt,
            view.horizontalDegrees(),
            view.verticalDegrees()));
  }

  private static double cameraHeight(Frame frame, CameraUnit camera) {
    var stated = frame.cameraHeightMillimetres();
    return stated == null ? camera.leastInnerHeightMillimetres() / 2 : stated;
  }

  private static double discHeight(Frame frame, Motor motor, Propeller propeller) {
    var stated = frame.discHeightMillimetres();
    return stated == null
        ? motor.heightMillimetres() + propeller.hubThicknessMillimetres() / 2
        : stated;
  }

  /**
   * Where the horizon stands in the picture of an aircraft that leans forward: 0 in its middle, 1 at its upper edge, −1
   * at its lower, beyond these out of it; empty where the camera's view or tilt is not known.
   *
   * @param leaning degrees forward
   */
  public OptionalDouble horizon(double leaning) {
    return view.map(CameraView::tiltDegrees)
        .map(tilt -> OptionalDouble.of(
            DiscsAhead.horizon(leaning, tilt, view.orElseThrow().verticalDegrees())))
        .orElse(OptionalDouble.empty());
  }
}
