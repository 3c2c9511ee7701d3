package pappus.compatibility;

import java.util.Set;
import pappus.catalog.Role;

/** The video antenna must match its port in plug and band, and the ground in polarisation. */
public final class VideoAntennaRule implements CompatibilityRule {
  @Override
  public String id() {
    return "video-antenna";
  }

  @Override
  public Set<Role> reads() {
    return Set.of(Role.BOARD, Role.TRANSMITTER, Role.VIDEO_ANTENNA);
  }

  @Override
  public Verdict check(Fitting fitting) {
    var build = fitting.build();
    if (build.videoAntenna().isEmpty() || build.videoSender().isEmpty()) {
      return Verdict.FITS;
    }
    var antenna = build.videoAntenna().get();
    var obstacle = AntennaMatch.obstacle(antenna, build.videoSender().get().antenna());
    if (obstacle.isPresent()) {
      return obstacle.get();
    }
    var ground = fitting.scenario().pilotOrAny().polarisation();
    return ground != null && ground.opposes(antenna.polarisation())
        ? Verdict.fitsBut(
            "Antenna %s is %s and the ground %s: that loses about 20 dB of picture.",
            antenna.id(), antenna.polarisation().label(), ground.label())
        : Verdict.FITS;
  }
}
