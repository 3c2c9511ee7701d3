package pappus.compatibility;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static pappus.part.Parts.battery;
import static pappus.part.Parts.board;
import static pappus.part.Parts.build;
import static pappus.part.Parts.capacitor;
import static pappus.part.Parts.frame;
import static pappus.part.Parts.propeller;
import static pappus.part.Parts.with;

import java.util.List;
import org.junit.jupiter.api.Test;
import pappus.fitting.PowerPlanner;
import pappus.part.Build;
import pappus.part.Frame;
import pappus.part.Part;
import pappus.part.Role;
import pappus.part.VoltWindow;
import pappus.scenario.Scenarios;

/** What is exactly enough fits, and a hair less does not. */
class JustEnoughTest {
  private static final double HAIR = 1e-6;

  private static String says(CompatibilityRule rule, Part... changed) {
    return Bench.plain().says(rule, build(changed));
  }

  private static boolean clashes(CompatibilityRule rule, Part... changed) {
    return says(rule, changed).startsWith("clashes");
  }

  @Test
  void voltsOfABoard() {
    var rule = new BoardVoltsRule();
    var highest = PowerPlanner.highestVolts(battery());
    var lowest = PowerPlanner.lowestVolts(battery(), Scenarios.plain());

    assertThat(says(rule, with(board(), "input", new VoltWindow(lowest, highest))))
        .isEqualTo(Bench.FITS);
    assertThat(clashes(rule, with(board(), "input", new VoltWindow(lowest + HAIR, highest))))
        .isTrue();
    assertThat(clashes(rule, with(board(), "input", new VoltWindow(lowest, highest - HAIR))))
        .isTrue();
  }

  @Test
  void voltsAndChargeOfACapacitor() {
    var rule = new CapacitorRule();
    var seven = with(battery(), "cellsInSeries", 7);
    var asked = 1.4 * PowerPlanner.highestVolts(seven);

    assertThat(says(rule, seven, with(capacitor(), "ratedVolts", asked))).isEqualTo(Bench.FITS);
    assertThat(clashes(rule, seven, with(capacitor(), "ratedVolts", asked - HAIR)))
        .isTrue();
    assertThat(says(rule, with(with(capacitor(), "ratedVolts", 25.0), "microfarads", 220.0)))
        .isEqualTo(Bench.FITS);
    assertThat(clashes(rule, with(capacitor(), "ratedVolts", 25.0 - HAIR))).isFalse();
    assertThat(clashes(rule, with(capacitor(), "ratedVolts", 16.0))).isTrue();
    assertThat(clashes(rule, with(capacitor(), "microfarads", 220 - HAIR))).isTrue();
    var six = with(battery(), "cellsInSeries", 6);
    assertThat(says(rule, six, with(capacitor(), "microfarads", 470.0))).isEqualTo(Bench.FITS);
    assertThat(clashes(rule, six, with(capacitor(), "ratedVolts", 35 - HAIR))).isTrue();
    assertThat(clashes(rule, six, with(capacitor(), "microfarads", 470 - HAIR))).isTrue();
  }

  private static Frame spaced(double millimetres) {
    return with(
        with(frame(), "frontSpacingMillimetres", millimetres),
        "sideSpacingMillimetres",
        millimetres);
  }

  @Test
  void roomBetweenTips() {
    var rule = new PropellerClearanceRule();
    // Half a millimetre is told exactly.
    var wide = with(propeller(), "diameterInches", 100 / 25.4);

    assertThat(says(rule, wide, spaced(103.5))).isEqualTo(Bench.FITS);
    assertThat(says(rule, wide, spaced(102.5))).startsWith("fits, but: ");
    assertThat(clashes(rule, wide, spaced(101.5))).isTrue();
    assertThat(says(rule, with(propeller(), "diameterInches", 4.1))).isEqualTo(Bench.FITS);
    assertThat(clashes(rule, with(propeller(), "diameterInches", 4.11))).isTrue();
  }

  @Test
  void roomThatPropellersOfASizeNeed() {
    var room = PropellerRoom.of(4);

    assertThat(room.leastMillimetres()).isEqualTo(103.6, within(1e-9));
    assertThat(room.usualMillimetres()).isEqualTo(104.6, within(1e-9));
    assertThat(room.clearanceMillimetres(spaced(110))).isEqualTo(8.4, within(1e-9));
    assertThat(room.clearanceMillimetres(with(spaced(110), "frontSpacingMillimetres", 104.0)))
        .isEqualTo(2.4, within(1e-9));
    assertThat(room.isLargerThanStated(frame())).isFalse();
    assertThat(PropellerRoom.of(4.05).isLargerThanStated(frame())).isFalse();
    assertThat(PropellerRoom.of(4.2).isLargerThanStated(frame())).isTrue();
  }

  @Test
  void portsOfABoard() {
    var rule = new SerialPortsRule();
    var needed = 1;
    while (clashes(rule, with(board(), "serialPorts", needed))) {
      needed++;
    }

    assertThat(clashes(rule, with(board(), "serialPorts", needed - 1))).isTrue();
    assertThat(says(rule, with(board(), "serialPorts", needed))).startsWith("fits, but: ");
    assertThat(says(rule, with(board(), "serialPorts", needed + 1))).isEqualTo(Bench.FITS);
  }

  @Test
  void widthAndHeightOfABay() {
    var rule = new BatteryBayRule();
    var bay = frame().bay();
    var low = with(frame(), "bay", with(bay, "tallestMillimetres", battery().heightMillimetres()));

    assertThat(says(rule, with(battery(), "widthMillimetres", bay.widthMillimetres())))
        .isEqualTo(Bench.FITS);
    assertThat(clashes(rule, with(battery(), "widthMillimetres", bay.widthMillimetres() + HAIR)))
        .isTrue();
    assertThat(says(rule, low)).isEqualTo(Bench.FITS);
    assertThat(clashes(
            rule, low, with(battery(), "heightMillimetres", battery().heightMillimetres() + HAIR)))
        .isTrue();
  }

  /** A pack too long, too wide or too near a disc never fits, whatever is added. */
  @Test
  void baysForeseeTheirSize() {
    var rule = new BatteryBayRule();
    var pair = Build.empty().with(Role.FRAME, frame()).with(Role.BATTERY, battery());
    var bench = Bench.plain();

    assertThat(rule.mayStillFit(bench.fit(pair))).isTrue();
    assertThat(rule.mayStillFit(bench.fit(pair.without(Role.FRAME)))).isTrue();
    assertThat(rule.mayStillFit(bench.fit(pair.without(Role.BATTERY)))).isTrue();
    for (var large : List.of(
        with(battery(), "lengthMillimetres", 180.0), with(battery(), "widthMillimetres", 90.0))) {
      assertThat(rule.mayStillFit(bench.fit(pair.with(Role.BATTERY, large)))).isFalse();
    }
    var discs = pair.with(Role.FRAME, spaced(100)).with(Role.PROPELLER, propeller());
    var wide = discs.with(Role.BATTERY, with(battery(), "widthMillimetres", 40.0));
    assertThat(rule.mayStillFit(bench.fit(wide.without(Role.PROPELLER)))).isTrue();
    assertThat(rule.mayStillFit(
            bench.fit(wide.with(Role.PROPELLER, with(propeller(), "diameterInches", 7.0)))))
        .isFalse();
    assertThat(rule.foresees(pair.parts().keySet())).isTrue();
    assertThat(rule.foresees(pair.without(Role.FRAME).parts().keySet())).isFalse();
    assertThat(rule.foresees(pair.without(Role.BATTERY).parts().keySet())).isFalse();
  }

  @Test
  void baysAreAlikeBySizes() {
    var rule = new BatteryBayRule();

    assertThat(rule.signature(with(battery(), "id", "other"))).isEqualTo(rule.signature(battery()));
    assertThat(rule.signature(with(battery(), "heightMillimetres", 9.0)))
        .isNotEqualTo(rule.signature(battery()));
    assertThat(rule.signature(with(frame(), "id", "other"))).isEqualTo(rule.signature(frame()));
    assertThat(rule.signature(spaced(111))).isNotEqualTo(rule.signature(frame()));
    assertThat(rule.signature(propeller())).isEqualTo(4.0);
    assertThat(rule.signature(board())).isEqualTo("board");
  }
}
