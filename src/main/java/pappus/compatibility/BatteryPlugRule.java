package pappus.compatibility;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import pappus.fitting.Fitting;
import pappus.part.Battery;
import pappus.part.Board;
import pappus.part.Lead;
import pappus.part.Part;
import pappus.part.Role;

/** Board and battery must plug together, directly, by a pigtail on bare pads, or by an adapter. */
public final class BatteryPlugRule implements CompatibilityRule {
  @Override
  public String id() {
    return "battery-plug";
  }

  @Override
  public Set<Role> reads() {
    return Set.of(Role.BOARD, Role.BATTERY, Role.LEAD);
  }

  /** A lead may still come; one that is chosen has to match what it joins. */
  @Override
  public boolean mayStillFit(Fitting begun) {
    var build = begun.build();
    if (build.lead().isEmpty()) {
      return true;
    }
    var lead = build.lead().get();
    return build.battery().stream().allMatch(battery -> lead.batterySide() == battery.connector())
        && build.board().stream()
            .map(Board::plug)
            .allMatch(plug ->
                plug == null ? lead.boardSide() == null : plug.connector() == lead.boardSide());
  }

  @Override
  public boolean foresees(Set<Role> decided) {
    return decided.contains(Role.LEAD);
  }

  @Override
  public Object signature(Part part) {
    if (part instanceof Battery battery) {
      return battery.connector();
    }
    if (part instanceof Lead lead) {
      return List.of(lead.batterySide(), Optional.ofNullable(lead.boardSide()));
    }
    return part instanceof Board board
        ? Optional.ofNullable(board.plug()).map(Board.PowerPlug::connector)
        : part.id();
  }

  @Override
  public Verdict check(Fitting fitting) {
    var build = fitting.build();
    if (build.board().isEmpty() || build.battery().isEmpty()) {
      return Verdict.FITS;
    }
    var board = build.board().get();
    var battery = build.battery().get();
    if (build.lead().isEmpty()) {
      if (board.plug() == null) {
        return Verdict.clashes(
            "Board %s has bare pads and pack %s a %s plug: a pigtail is needed.",
            board.id(), battery.id(), battery.connector().label());
      }
      return board.plug().connector() == battery.connector()
          ? Verdict.FITS
          : Verdict.clashes(
              "Board %s has a %s plug, but pack %s has %s: an adapter is needed.",
              board.id(),
              board.plug().connector().label(),
              battery.id(),
              battery.connector().label());
    }
    var lead = build.lead().get();
    if (lead.batterySide() != battery.connector()) {
      return Verdict.clashes(
          "Lead %s has a %s plug for the pack, but pack %s has %s.",
          lead.id(),
          lead.batterySide().label(),
          battery.id(),
          battery.connector().label());
    }
    if (lead.boardSide() == null) {
      return board.plug() == null
          ? Verdict.FITS
          : Verdict.clashes(
              "Lead %s is soldered to bare pads, but board %s comes with a %s plug.",
              lead.id(), board.id(), board.plug().connector().label());
    }
    if (board.plug() == null) {
      return Verdict.clashes(
          "Lead %s plugs into %s, but board %s has bare pads.",
          lead.id(), lead.boardSide().label(), board.id());
    }
    return lead.boardSide() == board.plug().connector()
        ? Verdict.FITS
        : Verdict.clashes(
            "Lead %s plugs into %s, but board %s has %s.",
            lead.id(),
            lead.boardSide().label(),
            board.id(),
            board.plug().connector().label());
  }
}
