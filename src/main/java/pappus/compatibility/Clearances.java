package pappus.compatibility;

import java.util.ArrayList;
import java.util.List;
import pappus.fitting.BalancePlanner;
import pappus.fitting.Discs;
import pappus.fitting.Fitting;
import pappus.fitting.HardwarePlanner;
import pappus.fitting.PortPlanner;
import pappus.fitting.PowerPlanner;
import pappus.part.Battery;
import pappus.part.Frame;
import pappus.part.Role;
import pappus.quantity.Sentence;

/** How much room the parts of a build leave each other: millimetres, volts, amps and ports, as the fit rules judge. */
public final class Clearances {
  private static final String MM = "mm";

  private Clearances() {}

  /** Everything that has a number; what is unbounded or not chosen is left out. */
  public static List<Clearance> of(Fitting fitting) {
    var found = new ArrayList<Clearance>();
    fitting.build().frame().ifPresent(frame -> {
      addPropellers(fitting, frame, found);
      addMotors(fitting, frame, found);
      addStack(fitting, found);
      addPack(fitting, frame, found);
    });
    addVolts(fitting, found);
    addRails(fitting, found);
    addPorts(fitting, found);
    return found;
  }

  private static void addPropellers(Fitting fitting, Frame frame, List<Clearance> found) {
    fitting
        .build()
        .propeller()
        .ifPresent(propeller -> found.add(Clearance.atLeast(
            "tip-to-tip",
            "clearance between propeller tips",
            MM,
            Discs.betweenTips(frame, propeller),
            PropellerClearanceRule.LEAST_MM)));
  }

  private static void addMotors(Fitting fitting, Frame frame, List<Clearance> found) {
    var motor = fitting.build().motor();
    if (motor.isEmpty()) {
      return;
    }
    var guard = frame.guardInnerMillimetres();
    if (guard != null) {
      found.add(Clearance.atMost(
          "motor-guard",
          "bell with its clearance in the motor guard",
          MM,
          motor.get().bellDiameterMillimetres() + 2 * MotorGuardRule.CLEARANCE_MM,
          guard));
    }
    fitting
        .hardware()
        .motorScrew()
        .ifPresent(screw -> found.add(Clearance.atMost(
            "screw-depth",
            "depth of the motor screws",
            MM,
            screw.lengthMillimetres() - frame.armThicknessMillimetres(),
            HardwarePlanner.deepest(motor.get()))));
  }

  private static void addStack(Fitting fitting, List<Clearance> found) {
    fitting
        .stackPlan()
        .ifPresent(plan -> plan.height()
            .ifPresent(height -> plan.heightLeftMillimetres()
                .ifPresent(left -> found.add(Clearance.atMost(
                    "plate-height",
                    "stack height between the plates",
                    MM,
                    height.millimetres() - left,
                    height.millimetres())))));
  }

  private static void addPack(Fitting fitting, Frame frame, List<Clearance> found) {
    var battery = fitting.build().battery();
    if (battery.isEmpty()) {
      return;
    }
    var pack = battery.get();
    var bay = frame.bay();
    found.add(Clearance.atMost(
        "pack-width", "width of the pack", MM, pack.widthMillimetres(), bay.widthMillimetres()));
    if (bay.tallestMillimetres() != null) {
      found.add(Clearance.atMost(
          "pack-height",
          "height of the pack",
          MM,
          pack.heightMillimetres(),
          bay.tallestMillimetres()));
    }
    fitting.placing().ifPresent(placing -> {
      found.add(Clearance.atMost(
          "pack-overhang",
          "pack overhang beyond its bay",
          MM,
          placing.overhangMillimetres(),
          BalancePlanner.OVERHANG_MM));
      placing
          .discClearanceMillimetres()
          .ifPresent(clearance -> found.add(Clearance.atLeast(
              "pack-to-discs",
              "clearance from pack to propellers",
              MM,
              clearance,
              Discs.LEAST_MM)));
      found.add(Clearance.atMost(
          "centre-of-mass",
          "offset of the centre of mass",
          MM,
          Math.abs(placing.centreOfMassXMillimetres()),
          BalanceRule.MOST_OF_SPACING * frame.sideSpacingMillimetres()));
    });
    fitting
        .hardware()
        .strap()
        .ifPresent(strap -> found.add(Clearance.atMost(
            "strap-length",
            "strap length needed",
            MM,
            HardwarePlanner.girth(pack),
            strap.lengthMillimetres())));
  }

  private static void addVolts(Fitting fitting, List<Clearance> found) {
    var build = fitting.build();
    if (build.board().isEmpty() || build.battery().isEmpty()) {
      return;
    }
    var input = build.board().get().input();
    Battery battery = build.battery().get();
    found.add(Clearance.atMost(
        "board-full-volts",
        "board voltage, pack full",
        "V",
        PowerPlanner.highestVolts(battery),
        input.highVolts()));
    found.add(Clearance.atLeast(
        "board-low-volts",
        "board voltage, pack at its lowest",
        "V",
        PowerPlanner.lowestVolts(battery, fitting.scenario()),
        input.lowVolts()));
  }

  /** By volts: two rails of the same volts share their load. */
  private static void addRails(Fitting fitting, List<Clearance> found) {
    var board = fitting.build().board();
    var plan = fitting.powerPlan();
    if (board.isEmpty() || plan.isEmpty()) {
      return;
    }
    for (var rail : plan.get().rails(board.get())) {
      found.add(Clearance.atMost(
          "rail-load",
          Sentence.of("%s V rail load plus a fifth", rail.volts()).text(),
          "A",
          rail.ampsWithMargin(),
          rail.deliversAmps()));
    }
  }

  private static void addPorts(Fitting fitting, List<Clearance> found) {
    var build = fitting.build();
    build
        .board()
        .filter(board -> build.parts().keySet().stream().anyMatch(role -> role != Role.BOARD))
        .ifPresent(board -> found.add(Clearance.atMost(
            "serial-ports",
            "serial ports needed",
            "pieces",
            PortPlanner.full(build).size(),
            board.serialPorts())));
  }
}
