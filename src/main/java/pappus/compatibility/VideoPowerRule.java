package pappus.compatibility;

import java.util.Optional;
import java.util.Set;
import pappus.fitting.Fitting;
import pappus.part.Board;
import pappus.part.Part;
import pappus.part.Role;
import pappus.part.VideoSender;

/** The transmitter must reach the power that the scenario asks for. */
public final class VideoPowerRule implements CompatibilityRule {
  @Override
  public String id() {
    return "video-power";
  }

  @Override
  public Set<Role> reads() {
    return Set.of(Role.BOARD, Role.TRANSMITTER);
  }

  @Override
  public Object signature(Part part) {
    if (part instanceof VideoSender sender) {
      return highest(sender);
    }
    return part instanceof Board board
        ? Optional.ofNullable(board.transmitter()).map(VideoPowerRule::highest)
        : part.id();
  }

  private static double highest(VideoSender sender) {
    return sender.settingFor(Double.POSITIVE_INFINITY).milliwatts();
  }

  @Override
  public Verdict check(Fitting fitting) {
    var sender = fitting.build().videoSender();
    var asked = fitting.scenario().milliwattsOrLowest();
    if (sender.isEmpty()) {
      return Verdict.FITS;
    }
    var highest = highest(sender.get());
    return highest >= asked
        ? Verdict.FITS
        : Verdict.clashes(
            "The transmitter puts out %s mW at most, but %s mW are asked for.", highest, asked);
  }
}
