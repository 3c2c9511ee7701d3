package pappus.compatibility;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import pappus.fitting.Fitting;
import pappus.links.Links;
import pappus.part.Antenna;
import pappus.part.Board;
import pappus.part.Part;
import pappus.part.Polarisation;
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
      return build
          .transmitter()
          .filter(Transmitter::antennaIncluded)
          .map(part -> inPolarisation(
              "of " + part.id(),
              part.antenna().polarisation(),
              fitting.scenario().pilotOrAny().polarisation()))
          .orElse(Verdict.FITS);
    }
    var antenna = build.videoAntenna().get();
    var obstacle = AntennaMatch.obstacle(antenna, build.videoSender().get().antenna());
    if (obstacle.isPresent()) {
      return obstacle.get();
    }
    return inPolarisation(
        antenna.id(), antenna.polarisation(), fitting.scenario().pilotOrAny().polarisation());
  }

  /** A remark, since it flies all the same; how far, the links tell. */
  private static Verdict inPolarisation(
      String id, @Nullable Polarisation aboard, @Nullable Polarisation ground) {
    if (aboard == null || ground == null) {
      return Verdict.FITS;
    }
    return switch (Links.mismatch(aboard, ground)) {
      case NONE -> Verdict.FITS;
      case LINEAR_TO_CIRCULAR ->
        Verdict.fitsBut(
            "Antenna %s is %s and the ground %s: the video link loses 3 dB, three tenths of its reach in free space.",
            id, aboard.label(), ground.label());
      case OPPOSITE_HANDS ->
        Verdict.fitsBut(
            "Antenna %s is %s and the ground %s: the video link loses about 20 dB.",
            id, aboard.label(), ground.label());
    };
  }
}
