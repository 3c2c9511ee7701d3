package pappus.compatibility;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import pappus.fitting.Fitting;
import pappus.part.Board;
import pappus.part.Camera;
import pappus.part.CameraUnit;
import pappus.part.Part;
import pappus.part.Role;
import pappus.part.Transmitter;
import pappus.part.VideoSender;

/** Camera, transmitter and goggles must be of one video family. */
public final class VideoFamilyRule implements CompatibilityRule {
  @Override
  public String id() {
    return "video-family";
  }

  @Override
  public Set<Role> reads() {
    return Set.of(Role.BOARD, Role.TRANSMITTER, Role.CAMERA);
  }

  /** Families that differ stay different, whatever is added. */
  @Override
  public boolean mayStillFit(Fitting begun) {
    return !(check(begun) instanceof Verdict.Clashes);
  }

  @Override
  public boolean foresees(Set<Role> decided) {
    return decided.contains(Role.CAMERA) || decided.contains(Role.TRANSMITTER);
  }

  @Override
  public Object signature(Part part) {
    if (part instanceof Transmitter transmitter) {
      return List.of(
          transmitter.family(), Optional.ofNullable(transmitter.camera()).map(CameraUnit::family));
    }
    if (part instanceof Camera camera) {
      return camera.family();
    }
    return part instanceof Board board
        ? Optional.ofNullable(board.transmitter()).map(VideoSender::family)
        : part.id();
  }

  @Override
  public Verdict check(Fitting fitting) {
    var build = fitting.build();
    var sender = build.videoSender();
    var camera = build.cameraUnit();
    if (sender.isPresent()
        && camera.isPresent()
        && !sender.get().family().equals(camera.get().family())) {
      return Verdict.clashes(
          "The camera is %s, but the transmitter is %s.",
          camera.get().family(), sender.get().family());
    }
    var goggles = fitting.scenario().pilotOrAny().video();
    if (goggles != null) {
      if (sender.isPresent() && !goggles.admit(sender.get().family())) {
        return Verdict.clashes(
            "The goggles are %s, but the transmitter is %s.",
            goggles.inWords(), sender.get().family());
      }
      if (camera.isPresent() && !goggles.admit(camera.get().family())) {
        return Verdict.clashes(
            "The goggles are %s, but the camera is %s.",
            goggles.inWords(), camera.get().family());
      }
    }
    if (build.board().isPresent()
        && sender.isPresent()
        && sender.get().family().equals(VideoSender.ANALOGUE)
        && !build.board().get().overlay()) {
      return Verdict.fitsBut(
          "Board %s has no OSD for analogue video: no voltage in the goggles.",
          build.board().get().id());
    }
    return Verdict.FITS;
  }
}
