package pappus.compatibility;

import java.util.Set;
import pappus.catalog.Role;

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
          "%s parts need a serial port each, but board %s has %s free.",
          needed, build.board().get().id(), ports);
    }
    return needed + PortPlanner.half(build).size() > ports
        ? Verdict.fitsBut(
            "No port of board %s is left for the transmitter's control: its power and channel are set by its button.",
            build.board().get().id())
        : Verdict.FITS;
  }
}
