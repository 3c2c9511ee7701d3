package pappus.answers.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static pappus.part.Parts.with;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import pappus.answers.build.LinkWords;
import pappus.assessment.Assessment;
import pappus.assessment.Assessor;
import pappus.assessment.flight.Draw;
import pappus.compatibility.Rules;
import pappus.fitting.Hardware;
import pappus.fitting.Stock;
import pappus.part.Build;
import pappus.part.Parts;
import pappus.part.Role;
import pappus.scenario.Flight;
import pappus.scenario.Leg;
import pappus.scenario.Pilot;
import pappus.scenario.Scenarios;

/** Tables of the sheet of the four-inch quad that tests are built from, counted by hand. */
final class BenchSheetTest {
  private static BenchSheet sheet(Build build) {
    var assessor = new Assessor(Scenarios.plain(), Stock.of(Parts.hardware()), Rules.ALL);
    return BenchSheet.of(assessor.assess(build), assessor, "Candidate 1", List.of());
  }

  private static List<List<Object>> rows(BenchSheet sheet, String key) {
    return Stream.concat(sheet.bench().stream(), sheet.card().stream())
        .filter(section -> section.key().equals(key))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no " + key))
        .table()
        .rows();
  }

  private static List<String> says(BenchSheet sheet, String key) {
    return sheet.card().stream()
        .filter(section -> section.key().equals(key))
        .flatMap(section -> section.says().stream())
        .toList();
  }

  private static List<Object> row(BenchSheet sheet, String key, Object first) {
    return rows(sheet, key).stream()
        .filter(row -> row.get(0).equals(first))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no " + first + " in " + rows(sheet, key)));
  }

  private static double number(Object cell) {
    return ((Number) cell).doubleValue();
  }

  /** 2 to the carbon, a board of 8, 1.5 between, a transmitter of 5, plugs 2, and 1 kept free: 19.5 of 20 mm. */
  @Test
  void stacksFromBottomToTop() {
    var sheet = sheet(Parts.build());

    assertThat(rows(sheet, "stack"))
        .extracting(row -> row.get(3))
        .containsExactly(2.0, 8.0, 1.5, 5.0, 2.0, 1.0);
    assertThat(rows(sheet, "stack").get(3).get(4))
        .isEqualTo("video transmitter, Transmitter [transmitter]");
    assertThat(sheet.bench())
        .filteredOn(section -> section.key().equals("stack"))
        .flatExtracting(SheetSection::says)
        .contains(
            "The middle column needs 19.5 mm; order the frame with 20 mm standoffs, which leaves 0.5 mm.");
  }

  /** M2×4 through 2.5 mm of arm goes 1.5 mm in of 2.5; round the pack 2 × (30 + 28 + 3) + 30 mm. */
  @Test
  void namesScrewsByPlaceAndLength() {
    var sheet = sheet(Parts.build());
    var screws = row(sheet, "screws", "motor screws");
    var strap = row(sheet, "screws", "battery strap");

    assertThat(screws.subList(1, 6)).containsExactly("M2", 4.0, 16, 1.5, 1.0);
    assertThat(strap.get(5)).isEqualTo(48.0);
    assertThat(strap.get(6).toString()).endsWith(", of which the pack needs 152 mm");
  }

  /** Wire is sold by the metre and is no part, so who buys by the list has to be told of it. */
  @Test
  void tellsOfWireThatTheMotorsLack() {
    assertThat(BenchWords.wireToBuy(new Hardware.MotorWire(28, 12, 124.2, 90)))
        .hasValueSatisfying(text -> assertThat(text).contains("12 pieces of 35 mm, AWG 28"));
    assertThat(BenchWords.wireToBuy(new Hardware.MotorWire(28, 12, 90, 90))).isEmpty();
  }

  @Test
  void cutsMotorWiresToTheArm() {
    var wire = row(sheet(Parts.build()), "wires", "motor to board");

    assertThat(wire.subList(1, 3)).containsExactly(26, 12);
    assertThat(number(wire.get(3))).isCloseTo(106.924, within(1e-3));
    assertThat(wire.get(5)).isEqualTo("add 7 mm each");
  }

  /** Receiver 0.5 W on 5 V; transmitter 1.5 W and camera 0.8 W on 9 V. */
  @Test
  void loadsEveryRail() {
    var rails = rows(sheet(Parts.build()), "rails");

    assertThat(rails).hasSize(3);
    assertThat(rails.get(0).get(1)).isEqualTo(5.0);
    assertThat(number(rails.get(0).get(3))).isCloseTo(0.1, within(1e-12));
    assertThat(number(rails.get(0).get(4))).isCloseTo(0.12, within(1e-12));
    assertThat(number(rails.get(0).get(6))).isCloseTo(1.88, within(1e-12));
    assertThat(number(rails.get(1).get(4))).isCloseTo(1.2 * 2.3 / 9, within(1e-12));
    assertThat(rails.get(1).get(7)).isEqualTo("video transmitter, camera");
    assertThat(rails.get(2).get(7)).isEqualTo("flight board, motors");
  }

  @Test
  void countsPortsAndLeavesTheFreeOnes() {
    assertThat(rows(sheet(Parts.build()), "ports"))
        .containsExactly(
            List.of(1, "both", "receiver, Receiver [receiver]"),
            List.of(2, "one direction", "video transmitter, Transmitter [transmitter]"),
            List.of(3, "", "free"));
  }

  @Test
  void fillsEveryAntennaPort() {
    assertThat(rows(sheet(Parts.build()), "antennas"))
        .containsExactly(
            List.of(
                "video transmitter",
                1,
                "u.FL",
                "5.8 GHz",
                "right-hand circular",
                "Antenna [video-antenna]"),
            List.of("receiver", 1, "u.FL", "2.4 GHz", "linear", "Antenna [radio-antenna]"));
  }

  /** Motors one by one, propellers four at a time, screws by the bag of twenty. */
  @Test
  void buysWholeSellingUnits() {
    var sheet = sheet(Parts.build());

    assertThat(row(sheet, "purchases", "motor").subList(1, 6))
        .containsExactly(4, 0, 4, "each", new BigDecimal("60.00"));
    assertThat(row(sheet, "purchases", "propeller").subList(1, 6))
        .containsExactly(4, 0, 1, "set of 4", new BigDecimal("3.00"));
    assertThat(row(sheet, "purchases", "motor screws").subList(1, 6))
        .containsExactly(16, 0, 1, "bag of 20", new BigDecimal("4.00"));
  }

  @Test
  void leavesRoomBesideEveryMass() {
    var sheet = sheet(Parts.build());
    var all = rows(sheet, "weighing");
    var sums = all.subList(all.size() - 3, all.size());

    assertThat(all).allMatch(row -> row.get(3).equals(""));
    assertThat(row(sheet, "weighing", "motor").get(1)).isEqualTo(40.0);
    assertThat(row(sheet, "weighing", "motor").subList(4, 7)).containsExactly(4, 10.0, "motor");
    assertThat(number(sums.get(0).get(1)) + number(sums.get(1).get(1)))
        .isCloseTo(number(sums.get(2).get(1)), within(1e-9));
    assertThat(sums.get(1).get(1)).isEqualTo(100.0);
  }

  /** Leads of 2 × 60 mm at 11 g/m and half a plug of 1.25 g stay on the pack when it is weighed. */
  @Test
  void weighsThePackWithItsLeads() {
    var bare = Parts.with(Parts.battery(), "massIncludesLeads", false);

    assertThat(sheet(Parts.build(bare)).masses().rows())
        .contains(List.of("battery", "", 1, "", 102.57));
  }

  @Test
  void readsTheSamePackUnderLoad() {
    var sheet = sheet(Parts.build());
    var hover = rows(sheet, "hover");

    assertThat(hover).extracting(row -> row.get(0)).containsExactly("fresh", "half-empty");
    for (var row : hover) {
      assertThat(number(row.get(2)))
          .isCloseTo(number(row.get(3)) * number(row.get(4)), within(1e-9));
      assertThat(number(row.get(5))).isCloseTo(number(row.get(4)) / 4, within(1e-12));
    }
    assertThat(number(hover.get(0).get(4))).isGreaterThan(number(hover.get(1).get(4)));
  }

  @Test
  void landsTheFirstPacksAFifthSooner() {
    var sheet = sheet(Parts.build());
    var first = row(sheet, "landmarks", "land: timer, first packs");
    var timer = row(sheet, "landmarks", "land: timer");
    var latest = row(sheet, "landmarks", "estimate, no margin");

    assertThat(number(first.get(2))).isCloseTo(0.8 * number(timer.get(2)), within(1e-9));
    assertThat(number(latest.get(2))).isGreaterThan(number(timer.get(2)));
    assertThat(number(latest.get(3))).isLessThan(number(timer.get(3)));
    assertThat(number(first.get(5))).isLessThan(number(timer.get(5)));
  }

  /** Whoever turns back when the card says so is home before the card says land, first packs or not. */
  @Test
  void leavesTimeForTheWayHomeBeforeEachLanding() {
    for (var wind : List.of(0.0, 5.0)) {
      var flight =
          with(with(Flight.HOVERING, "style", Flight.Style.CRUISE), "windMetresPerSecond", wind);
      // Heard from so far that the pack ends first.
      var far = new Pilot(null, null, null, 20.0, 50.0, -120.0, 5000.0, 20.0);
      var scenario = with(with(Scenarios.plain(), "flight", flight), "pilot", far);
      var assessor = new Assessor(scenario, Stock.of(Parts.hardware()), Rules.ALL);
      var sheet = BenchSheet.of(assessor.assess(Parts.build()), assessor, "Candidate 1", List.of());
      var stretches =
          sheet.assessment().flight().orElseThrow().course().orElseThrow().stretches();
      var homeOverOut =
          wind == 0 ? 1 : stretches.get(0).groundSpeedMPerS() / stretches.get(1).groundSpeedMPerS();

      for (var packs : List.of(", first packs", "")) {
        var turn = number(row(sheet, "landmarks", "turn back" + packs).get(2));
        var land = number(row(sheet, "landmarks", "land: timer" + packs).get(2));
        assertThat(turn * (1 + homeOverOut))
            .as("%s m/s%s", wind, packs)
            .isCloseTo(land, within(1.0));
      }
      assertThat(says(sheet, "course"))
          .anyMatch(line -> line.startsWith("First packs: turn round after "));
    }
  }

  /** 25 mW and 1.5 dBi at both ends: a picture for 82 m at the low end of 163. */
  @Test
  void turnsBackBeforeALinkEnds() {
    var flight = with(Flight.HOVERING, "style", Flight.Style.CRUISE);
    var scenario = with(Scenarios.plain(), "flight", flight);
    var assessor = new Assessor(scenario, Stock.of(Parts.hardware()), Rules.ALL);
    var sheet = BenchSheet.of(assessor.assess(Parts.build()), assessor, "Candidate 1", List.of());
    var out = sheet
        .assessment()
        .flight()
        .orElseThrow()
        .course()
        .orElseThrow()
        .stretches()
        .get(0);

    assertThat(number(row(sheet, "landmarks", "turn back").get(2)) * out.groundSpeedMPerS())
        .isCloseTo(81.8, within(0.5));
    assertThat(says(sheet, "course"))
        .anyMatch(
            line -> line.contains("turn round after 81 m, the low end of what video reaches;"))
        .contains("First packs: turn round there too.");
    assertThat(number(row(sheet, "links", "video").get(3))).isCloseTo(163, within(0.5));
    assertThat(says(sheet, "links")).anyMatch(line -> line.endsWith(LinkWords.LAW));
  }

  /** Legs may lead anywhere: a fifth of the time need not be enough for the way home. */
  @Test
  void warnsOfTheWayHomeWhereLegsAreFlown() {
    var flight = Scenarios.legs(
        new Leg(500.0, null, null, null, null, null, null),
        new Leg(null, 30.0, null, null, null, null, null));
    var assessor = new Assessor(
        with(Scenarios.plain(), "flight", flight), Stock.of(Parts.hardware()), Rules.ALL);

    var sheet = BenchSheet.of(assessor.assess(Parts.build()), assessor, "Candidate 1", List.of());

    assertThat(says(sheet, "landmarks")).contains(FirstFlight.WAY_HOME);
    assertThat(says(sheet(Parts.build()), "landmarks")).doesNotContain(FirstFlight.WAY_HOME);
  }

  /** Whoever sets the limit does so at the bench, and reads the stick by it in the air. */
  @Test
  void tellsToWhatMotorOutputIsLimitedAtTheBenchAndInTheAir() {
    var weak = Parts.build(with(Parts.battery(), "labelRating", 20.0));
    var percent = sheet(weak).assessment().flight().orElseThrow().motorOutputPercent();
    assertThat(percent).isBetween(1, 99);

    var limit = "Limit motor output to " + percent + " % in the flight firmware: ";
    assertThat(sheet(weak).steps()).anyMatch(step -> step.startsWith(limit));
    assertThat(says(sheet(weak), "hover"))
        .anyMatch(said -> said.startsWith(limit))
        .contains(
            "With that limit set, the stick stands at the throttle divided by 0." + percent + ".");
    assertThat(sheet(Parts.build(with(Parts.motor(), "speedConstantRpmPerVolt", 2000.0)))
            .steps())
        .noneMatch(step -> step.startsWith("Limit motor output"));
  }

  @Test
  void roundsTheTimerDown() {
    assertThat(FlightCard.clock(1158.9)).isEqualTo("19:00");
    assertThat(FlightCard.clock(59.9)).isEqualTo("0:50");
    assertThat(FlightCard.clock(600)).isEqualTo("10:00");
  }

  @Test
  void expectsTheIdleDrawAtFullVolts() {
    var sheet = sheet(Parts.build());
    var watts = sheet.assessment().flight().orElseThrow().draws().stream()
        .mapToDouble(Draw::watts)
        .sum();

    assertThat(sheet.steps())
        .anyMatch(step -> step.contains(
            String.format(Locale.ROOT, "%.1f W, %.2f A at the 16.8 V", watts, watts / 16.8)));
    assertThat(sheet.steps()).anyMatch(step -> step.contains("9 V (8.55 to 9.45) for "));
  }

  @Test
  void saysWhatIsMissingWhereItDoesNotFly() {
    var sheet = sheet(Parts.build().without(Role.PROPELLER));

    assertThat(sheet.isSound()).isFalse();
    assertThat(sheet.card()).isEmpty();
    assertThat(sheet.remarks())
        .contains(
            "No flight can be computed: there is no propeller.",
            "There is no card for the first flights, since it does not fly.");
  }

  @Test
  void isSoundWhereItFlies() {
    Assessment assessment = sheet(Parts.build()).assessment();

    assertThat(assessment.broken()).isEmpty();
    assertThat(sheet(Parts.build()).remarks()).isEmpty();
  }
}
