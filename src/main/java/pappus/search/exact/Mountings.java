package pappus.search.exact;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import pappus.assessment.Assessor;
import pappus.part.Board;
import pappus.part.Build;
import pappus.part.CameraUnit;
import pappus.part.Frame;
import pappus.part.Part;
import pappus.part.Role;
import pappus.part.Transmitter;

/**
 * Mass of adapters, spacers and shims that board, transmitter and camera ask for on a frame, beyond their own. What
 * is asked for a board alone, for a transmitter beside it, and for a camera, adds up to no more than what all of them
 * ask for together. Safe for several threads.
 */
final class Mountings {
  private final Assessor assessor;
  private final Map<Object, Double> known = new ConcurrentHashMap<>();

  Mountings(Assessor assessor) {
    this.assessor = assessor;
  }

  /** All of a frame that the mass depends on: frames of equal sorts ask for the same. */
  static Object sort(Frame frame) {
    return List.of(frame.positions(), frame.heights(), frame.cameraWidthsMillimetres());
  }

  /** What a board or camera asks for, g. */
  double grams(Frame frame, Role role, Part part) {
    return role == Role.BOARD || role == Role.CAMERA
        ? known.computeIfAbsent(
            List.of(sort(frame), role, sort(part)),
            fresh -> added(Build.empty().with(Role.FRAME, frame), role, part))
        : 0;
  }

  /** What a transmitter asks for beside a board, g. */
  double grams(Frame frame, Board board, Part transmitter) {
    return known.computeIfAbsent(
        List.of(sort(frame), sort(board), sort(transmitter)),
        fresh -> added(
            Build.empty().with(Role.FRAME, frame).with(Role.BOARD, board),
            Role.TRANSMITTER,
            transmitter));
  }

  private double added(Build before, Role role, Part part) {
    return assessor.prospects().begun(before.with(role, part)).grams()
        - assessor.prospects().begun(before).grams()
        - assessor.prospects().begun(Build.empty().with(role, part)).grams()
        + assessor.prospects().begun(Build.empty()).grams();
  }

  /** All of a board, transmitter or camera that it depends on. */
  static Object sort(Part part) {
    if (part instanceof Board board) {
      return List.of(board.mount(), board.heightMillimetres());
    }
    if (part instanceof Transmitter transmitter) {
      return List.of(
          Optional.ofNullable(transmitter.mount()),
          transmitter.heightMillimetres(),
          widths(transmitter.camera()));
    }
    return part instanceof CameraUnit camera ? widths(camera) : part.id();
  }

  private static Object widths(@Nullable CameraUnit camera) {
    return camera == null
        ? "none"
        : List.of(camera.widthMillimetres(), camera.leastInnerHeightMillimetres());
  }
}
