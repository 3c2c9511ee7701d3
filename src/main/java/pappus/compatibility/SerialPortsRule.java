package pappus.compatibility;

import java.util.Set;
import pappus.fitting.Fitting;
import pappus.fitting.PortPlanner;
import pappus.part.Board;
import pappus.part.Gps;
import pappus.part.Part;
import pappus.part.Receiver;
import pappus.part.Role;
import pappus.part.Transmitter;

/** The board must have a serial port for each part that needs one. */
public final class SerialPortsRule implements CompatibilityRule {
  @Override
  public String id() {
    return "serial-ports";
  }

  @Override
  public Set<Role> reads() {
    return Set.of(Role.BOARD, Role.TRANSMITTER, Role.RECEIVER, Role.GPS);
  }

  /** What is added needs ports of its own. */
  @Override
  public boolean mayStillFit(Fitting begun) {
    return !(check(begun) instanceof Verdict.Clashes);
  }

  @Override
  public boolean foresees(Set<Role> decided) {
    return decided.contains(Role.BOARD)
        && (decided.contains(Role.TRANSMITTER)
            || decided.contains(Role.RECEIVER)
            || decided.contains(Role.GPS));
  }

  @Override
  public Object signature(Part part) {
    if (part instanceof Transmitter transmitter) {
      return transmitter.serial();
    }
    if (part instanceof Receiver receiver) {
      return receiver.serial();
    }
    if (part instanceof Gps) {
      return Role.GPS;
    }
    return part instanceof Board board ? board.serialPorts() : part.id();
  }

  @Override
  public Verdict check(Fitting fitting) {
    var build = fitting.build();
    if (build.board().isEmpty()) {
      return Verdict.FITS;
    }
    var needed = PortPlanner.full(build).size();
    var ports = build.board().get().serialPorts();
    if (needed > ports) {
      return Verdict.clashes(
          "%s parts need a serial port (UART) each, but board %s has %s free.",
          needed, build.board().get().id(), ports);
    }
    return needed + PortPlanner.half(build).size() > ports
        ? Verdict.fitsBut(
            "Board %s has no serial port (UART) left to control the transmitter: set power and channel by its button.",
            build.board().get().id())
        : Verdict.FITS;
  }
}
