package pappus.compatibility;

import java.util.Set;
import pappus.catalog.Role;
import pappus.catalog.VideoSender;

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
      if (sender.isPresent() && !sender.get().family().equals(goggles)) {
        return Verdict.clashes(
            "The goggles are %s, but the transmitter is %s.",
            goggles, sender.get().family());
      }
      if (camera.isPresent() && !camera.get().family().equals(goggles)) {
        return Verdict.clashes(
            "The goggles are %s, but the camera is %s.", goggles, camera.get().family());
      }
    }
    if (build.board().isPresent()
        && sender.isPresent()
        && sender.get().family().equals(VideoSender.ANALOGUE)
        && !build.board().get().overlay()) {
      return Verdict.fitsBut(
          "Board %s writes nothing over analogue video: volts are not seen in the goggles.",
          build.board().get().id());
    }
    return Verdict.FITS;
  }
}
