package pappus.compatibility;

import java.util.Set;
import pappus.catalog.Role;

/** The receiver's antenna must match its port in plug and band. */
public final class RadioAntennaRule implements CompatibilityRule {
  @Override
  public String id() {
    return "radio-antenna";
  }

  @Override
  public Set<Role> reads() {
    return Set.of(Role.BOARD, Role.RECEIVER, Role.RADIO_ANTENNA);
  }

  @Override
  public Verdict check(Fitting fitting) {
    var build = fitting.build();
    if (build.radioAntenna().isEmpty() || build.radioReceiver().isEmpty()) {
      return Verdict.FITS;
    }
    return AntennaMatch.obstacle(
            build.radioAntenna().get(), build.radioReceiver().get().antenna())
        .orElse(Verdict.FITS);
  }
}
