package pappus.compatibility;

import java.util.Set;
import pappus.catalog.Role;

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
  public Verdict check(Fitting fitting) {
    var sender = fitting.build().videoSender();
    var asked = fitting.scenario().milliwattsOrLowest();
    if (sender.isEmpty()) {
      return Verdict.FITS;
    }
    var highest = sender.get().settingFor(Double.POSITIVE_INFINITY).milliwatts();
    return highest >= asked
        ? Verdict.FITS
        : Verdict.clashes(
            "The transmitter radiates %s mW at most, but %s mW are asked for.", highest, asked);
  }
}
