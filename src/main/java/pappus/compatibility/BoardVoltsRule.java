package pappus.compatibility;

import java.util.List;
import java.util.Set;
import pappus.fitting.Fitting;
import pappus.fitting.PowerPlanner;
import pappus.part.Battery;
import pappus.part.Board;
import pappus.part.Part;
import pappus.part.Role;

/** The board must stand the pack from full charge down to its floor. */
public final class BoardVoltsRule implements CompatibilityRule {
  @Override
  public String id() {
    return "board-volts";
  }

  @Override
  public Set<Role> reads() {
    return Set.of(Role.BOARD, Role.BATTERY);
  }

  @Override
  public boolean mayBeWaived() {
    return false;
  }

  @Override
  public Object signature(Part part) {
    if (part instanceof Board board) {
      return board.input();
    }
    return part instanceof Battery battery
        ? List.of(battery.cellsInSeries(), battery.chemistry())
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
    var highest = PowerPlanner.highestVolts(battery);
    var lowest = PowerPlanner.lowestVolts(battery, fitting.scenario());
    if (highest > board.input().highVolts()) {
      return Verdict.clashes(
          "Board %s takes %s V at most, but pack %s has %s V when full.",
          board.id(), board.input().highVolts(), battery.id(), highest);
    }
    return lowest >= board.input().lowVolts()
        ? Verdict.FITS
        : Verdict.clashes(
            "Board %s needs %s V, but pack %s goes down to %s V at full throttle.",
            board.id(), board.input().lowVolts(), battery.id(), lowest);
  }
}
