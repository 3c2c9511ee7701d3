package pappus.compatibility;

import java.util.Optional;
import java.util.Set;
import pappus.fitting.Fitting;
import pappus.part.Board;
import pappus.part.Part;
import pappus.part.RadioReceiver;
import pappus.part.Receiver;
import pappus.part.Role;

/** The receiver must speak the pilot's radio link. */
public final class RadioLinkRule implements CompatibilityRule {
  @Override
  public String id() {
    return "radio-link";
  }

  @Override
  public Set<Role> reads() {
    return Set.of(Role.BOARD, Role.RECEIVER);
  }

  @Override
  public Object signature(Part part) {
    if (part instanceof Receiver receiver) {
      return receiver.link();
    }
    return part instanceof Board board
        ? Optional.ofNullable(board.receiver()).map(RadioReceiver::link)
        : part.id();
  }

  @Override
  public Verdict check(Fitting fitting) {
    var build = fitting.build();
    var radio = build.radioReceiver();
    var wanted = fitting.scenario().pilotOrAny().radio();
    if (radio.isEmpty() || wanted == null || wanted.admit(radio.get().link())) {
      return Verdict.FITS;
    }
    return Verdict.clashes(
        "The pilot's radio speaks %s, but the receiver %s.",
        wanted.inWords(), radio.get().link());
  }
}
