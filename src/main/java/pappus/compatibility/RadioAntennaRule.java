package pappus.compatibility;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import pappus.fitting.Fitting;
import pappus.part.Antenna;
import pappus.part.Board;
import pappus.part.Part;
import pappus.part.RadioReceiver;
import pappus.part.Receiver;
import pappus.part.Role;

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

  /** A port does not change with what is added. */
  @Override
  public boolean mayStillFit(Fitting begun) {
    return !(check(begun) instanceof Verdict.Clashes);
  }

  @Override
  public boolean foresees(Set<Role> decided) {
    return decided.contains(Role.RADIO_ANTENNA);
  }

  @Override
  public Object signature(Part part) {
    if (part instanceof Antenna antenna) {
      return List.of(antenna.connector(), antenna.band());
    }
    if (part instanceof Receiver receiver) {
      return receiver.antenna();
    }
    return part instanceof Board board
        ? Optional.ofNullable(board.receiver()).map(RadioReceiver::antenna)
        : part.id();
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
