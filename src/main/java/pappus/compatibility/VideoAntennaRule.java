package pappus.compatibility;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import pappus.fitting.Fitting;
import pappus.part.Antenna;
import pappus.part.Board;
import pappus.part.Part;
import pappus.part.Role;
import pappus.part.Transmitter;
import pappus.part.VideoSender;

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

  /** A port does not change with what is added. */
  @Override
  public boolean mayStillFit(Fitting begun) {
    return !(check(begun) instanceof Verdict.Clashes);
  }

  @Override
  public boolean foresees(Set<Role> decided) {
    return decided.contains(Role.VIDEO_ANTENNA);
  }

  @Override
  public Object signature(Part part) {
    if (part instanceof Antenna antenna) {
      return List.of(antenna.connector(), antenna.band());
    }
    if (part instanceof Transmitter transmitter) {
      return transmitter.antenna();
    }
    return part instanceof Board board
        ? Optional.ofNullable(board.transmitter()).map(VideoSender::antenna)
        : part.id();
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
            "Antenna %s is %s and the ground %s: the video link loses about 20 dB.",
            antenna.id(), antenna.polarisation().label(), ground.label())
        : Verdict.FITS;
  }
}
