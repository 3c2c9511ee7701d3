package pappus.fitting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static pappus.part.Parts.battery;
import static pappus.part.Parts.board;
import static pappus.part.Parts.build;
import static pappus.part.Parts.camera;
import static pappus.part.Parts.frame;
import static pappus.part.Parts.motor;
import static pappus.part.Parts.propeller;
import static pappus.part.Parts.screw;
import static pappus.part.Parts.strap;
import static pappus.part.Parts.with;

import java.util.List;
import org.junit.jupiter.api.Test;
import pappus.compatibility.Bench;
import pappus.part.Build;
import pappus.part.Part;
import pappus.part.Parts;
import pappus.part.Screw.Material;
import pappus.part.ScrewThread;
import pappus.part.Seat;
import pappus.part.Sundry;

final class HardwarePlannerTest {
  private static Hardware hardware(Build build, Part... stock) {
    return Bench.with(stock).fit(build).hardware();
  }

  private static Hardware.Item item(Hardware hardware, String label) {
    return hardware.items().stream()
        .filter(item -> item.label().equals(label))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no " + label + " in " + hardware.items()));
  }

  private static List<String> labels(Hardware hardware) {
    return hardware.items().stream().map(Hardware.Item::label).toList();
  }

  /** A 2.5 mm arm and 1.5 to 2.5 mm of thread: 4 to 5 mm. */
  @Test
  void takesTheLightestScrewOfALengthThatHolds() {
    var chosen = screw(ScrewThread.M2, 5, Material.TITANIUM, 0.1);
    var hardware = hardware(
        build(),
        screw(ScrewThread.M2, 3, Material.STEEL, 0.05),
        screw(ScrewThread.M2, 4, Material.STEEL, 0.15),
        chosen,
        screw(ScrewThread.M2, 6, Material.TITANIUM, 0.06),
        screw(ScrewThread.M1_6, 5, Material.STEEL, 0.07));

    assertThat(hardware.motorScrew()).contains(chosen);
    assertThat(item(hardware, "motor screws").pieces()).isEqualTo(16);
  }

  @Test
  void holdsNoMotorWithAluminiumOrNylon() {
    var hardware = hardware(
        build(),
        screw(ScrewThread.M2, 5, Material.ALUMINIUM, 0.05),
        screw(ScrewThread.M2, 4, Material.NYLON, 0.03));

    assertThat(hardware.motorScrew()).isEmpty();
    assertThat(labels(hardware)).doesNotContain("motor screws");
  }

  @Test
  void goesNoDeeperThanTheMotorsThread() {
    var shallow = with(motor(), "threadDepthMillimetres", 1.6);
    var four = screw(ScrewThread.M2, 4, Material.STEEL, 0.2);
    var light = screw(ScrewThread.M2, 5, Material.TITANIUM, 0.1);

    assertThat(hardware(build(shallow), four, light).motorScrew()).contains(four);
  }

  @Test
  void takesTheLightestStrapThatGoesRoundAndThroughTheSlots() {
    var chosen = strap("chosen", 15, 180, 4);
    var hardware = hardware(
        build(),
        strap("short", 15, 150, 3),
        strap("wide", 25, 200, 2),
        chosen,
        strap("long", 20, 250, 6));

    assertThat(hardware.strap()).contains(chosen);
    assertThat(item(hardware, "battery strap").grams()).isEqualTo(4);
  }

  /** Half the diagonal of 183.85 mm and 15 mm to the pads ask for 106.92 mm; 12 wires of AWG 26. */
  @Test
  void addsTheWireAnArmNeeds() {
    var added = item(hardware(build()), "motor wire added");

    assertThat(added.grams()).isCloseTo(12 * 0.006924 * 3.1, within(1e-4));
    assertThat(added.part()).isEmpty();
  }

  @Test
  void cutsOffTheWireAnArmDoesNotNeed() {
    var cut =
        item(hardware(build(with(motor(), "leadsIncludedMillimetres", 150))), "motor wire cut off");

    assertThat(cut.cutOff()).isTrue();
    assertThat(cut.grams()).isCloseTo(-12 * 0.043076 * 3.1, within(1e-4));
  }

  @Test
  void addsLeadsAndPlugToAPackWeighedWithoutThem() {
    var bare = build(with(battery(), "massIncludesLeads", false));

    assertThat(labels(hardware(build()))).doesNotContain("pack leads and plug");
    assertThat(item(hardware(bare), "pack leads and plug").grams())
        .isCloseTo(2 * 0.06 * 11 + 1.25, within(1e-9));
  }

  @Test
  void countsUsualMassesWhereTheStockLacksThings() {
    var hardware = hardware(build());

    assertThat(item(hardware, "battery pad").grams()).isEqualTo(1.75);
    assertThat(item(hardware, "solder, heat-shrink, ties").grams()).isEqualTo(2.75);
    assertThat(item(hardware, "stack screws and spacers").grams()).isEqualTo(1.6);
    assertThat(item(hardware, "propeller screws").grams()).isEqualTo(2);
    assertThat(hardware.items()).noneMatch(item -> item.part().isPresent());
  }

  @Test
  void takesFromTheStockWhatItHas() {
    var pad = Parts.sundry(Sundry.Purpose.BATTERY_PAD, 1.2);
    var found = item(hardware(build(), pad), "battery pad");

    assertThat(found.part()).contains(pad);
    assertThat(found.grams()).isEqualTo(1.2);
  }

  @Test
  void takesNutsOnAFiveMillimetreShaftAndNothingOnAPressFit() {
    var nut = with(motor(), "propellerSeat", Seat.NUT_M5);
    var press = with(motor(), "propellerSeat", Seat.PRESS_2);

    assertThat(item(hardware(build(nut)), "propeller nuts").grams()).isCloseTo(3.8, within(1e-9));
    assertThat(labels(hardware(build(press)))).doesNotContain("propeller nuts", "propeller screws");
  }

  @Test
  void takesAlongWhatMakesPartsFit() {
    var nut = with(propeller(), "seats", List.of(Seat.NUT_M5));
    var narrow = with(camera(), "widthMillimetres", 14);
    var hardware = hardware(build(nut, narrow), Parts.reducingRings(), Parts.cameraShims(19, 14));

    assertThat(labels(hardware)).contains("reducing rings", "camera shims");
  }

  @Test
  void takesNoAdapterThatIsNotNeeded() {
    var hardware = hardware(
        build(frame(), board()),
        Parts.reducingRings(),
        Parts.cameraShims(19, 14),
        Parts.steppedGrommets());

    assertThat(labels(hardware)).doesNotContain("reducing rings", "camera shims", "stack adapter");
  }
}
