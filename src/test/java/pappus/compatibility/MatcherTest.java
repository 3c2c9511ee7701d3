package pappus.compatibility;

import static org.assertj.core.api.Assertions.assertThat;
import static pappus.part.Parts.cameraShims;
import static pappus.part.Parts.holes;
import static pappus.part.Parts.lead;
import static pappus.part.Parts.position;
import static pappus.part.Parts.reducingRings;
import static pappus.part.Parts.screw;
import static pappus.part.Parts.stackPlate;
import static pappus.part.Parts.strap;
import static pappus.part.Parts.with;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import pappus.catalog.Catalog;
import pappus.compatibility.Match.Grade;
import pappus.fitting.Fitter;
import pappus.fitting.Stock;
import pappus.part.Antenna;
import pappus.part.AntennaConnector;
import pappus.part.AntennaPort;
import pappus.part.Band;
import pappus.part.Board;
import pappus.part.Build;
import pappus.part.Connector;
import pappus.part.Kind;
import pappus.part.Known;
import pappus.part.Mass;
import pappus.part.MountingHoles;
import pappus.part.Part;
import pappus.part.Parts;
import pappus.part.Role;
import pappus.part.Screw;
import pappus.part.ScrewThread;
import pappus.part.Seat;
import pappus.part.StackPattern;
import pappus.scenario.Scenario;
import pappus.shop.SmallShop;

class MatcherTest {
  /** How a part goes with one other where the catalogue has screws, a strap and these. */
  private static Match match(Part given, Part part, Part... more) {
    List<Part> stock = new ArrayList<>(Parts.hardware());
    stock.addAll(List.of(more));
    return new Matcher(Catalog.of(stock)).match(List.of(given), part).orElseThrow();
  }

  private static void assertMatch(Match match, Grade grade, String... text) {
    assertThat(match.text()).containsExactly(text);
    assertThat(match.grade()).isEqualTo(grade);
    assertThat(match.adapters()).isEmpty();
    assertThat(match.adapter()).isEmpty();
  }

  @Test
  void whatFitsAsItComesFitsDirectly() {
    assertMatch(match(Parts.frame(), Parts.battery()), Grade.DIRECT);
    assertMatch(match(Parts.motor(), Parts.propeller()), Grade.DIRECT);
    assertMatch(match(Parts.propeller(), Parts.motor()), Grade.DIRECT);
  }

  @Test
  void whatDoesNotFitSaysBothNumbers() {
    var motor = with(Parts.motor(), "boltCirclesMillimetres", List.of(16.0));

    for (var match : List.of(match(Parts.frame(), motor), match(motor, Parts.frame()))) {
      assertMatch(
          match,
          Grade.NOT,
          "Motor motor needs a bolt circle of 16 mm, but frame frame offers 12 mm.");
    }
  }

  @Test
  void whatIsNotKnownIsNamed() {
    var frame = with(Parts.frame(), "cameraWidthsMillimetres", List.of());

    assertMatch(
        match(frame, Parts.camera()), Grade.UNKNOWN, "Not known: camera widths of frame frame.");
  }

  /** A clash counts for more than what is not known, and that for more than a note. */
  @Test
  void theWorstThatIsSaidCounts() {
    var frame = with(
        with(Parts.frame(), "motorBoltCirclesMillimetres", List.of()),
        "guardInnerMillimetres",
        18.0);

    assertMatch(
        match(frame, Parts.motor()),
        Grade.NOT,
        "Motor motor needs guards of 20 mm inside, but those of frame frame are 18 mm.");
    assertMatch(
        match(with(frame, "guardInnerMillimetres", null), Parts.motor()),
        Grade.UNKNOWN,
        "Not known: bolt circles of frame frame.");
  }

  @Test
  void whatTheBuilderShouldKnowIsAWarning() {
    assertMatch(
        match(Parts.motor(), with(Parts.propeller(), "diameterInches", 4.5)),
        Grade.WARNING,
        "Propeller propeller is 4.5 inch; a 14 mm stator usually swings 4 inch at most: feel the motors after the first minute.");
  }

  @Test
  void aStackPlateIsAnAdapter() {
    var board = with(Parts.board(), "mount", holes(StackPattern.P25_5));
    var plate = stackPlate("plate", StackPattern.P20, StackPattern.P25_5, 1.5);

    var with = match(Parts.frame(), board, plate);
    assertThat(with.grade()).isEqualTo(Grade.ADAPTER);
    assertThat(with.adapters()).containsExactly(plate);
    assertThat(match(board, Parts.frame(), plate).adapters()).containsExactly(plate);
    assertThat(match(Parts.frame(), board).grade()).isEqualTo(Grade.NOT);
    assertThat(match(Parts.frame(), Parts.board(), plate).adapters()).isEmpty();
  }

  @Test
  void shimsAreAnAdapter() {
    var camera = with(Parts.camera(), "widthMillimetres", 14.0);
    var shims = cameraShims(19, 14);

    var with = match(Parts.frame(), camera, shims);
    assertThat(with.grade()).isEqualTo(Grade.ADAPTER);
    assertThat(with.adapters()).containsExactly(shims);
    assertThat(with.text())
        .containsExactly("The 14 mm camera goes into frame frame with shims shims (1 g).");
    assertMatch(
        match(Parts.frame(), camera),
        Grade.NOT,
        "The camera is 14 mm wide, but frame frame takes 19 mm and no shims are in stock for it.");
  }

  @Test
  void reducingRingsAreAnAdapter() {
    var propeller = with(Parts.propeller(), "seats", List.of(Seat.NUT_M5));
    var rings = reducingRings();

    var with = match(Parts.motor(), propeller, rings);
    assertThat(with.grade()).isEqualTo(Grade.ADAPTER);
    assertThat(with.adapters()).containsExactly(rings);
    assertThat(with.text())
        .containsExactly("Propeller propeller goes on motor motor with reducing rings.");
    assertThat(match(Parts.motor(), propeller).grade()).isEqualTo(Grade.NOT);
  }

  @Test
  void theLightestLeadBetweenPlugsIsAnAdapter() {
    var battery = with(Parts.battery(), "connector", Connector.XT60);
    var heavy = with(with(lead(Connector.XT30, Connector.XT60), "id", "a-heavy"), "mass", mass(9));
    var light = with(with(lead(Connector.XT30, Connector.XT60), "id", "z-light"), "mass", mass(3));
    var lightest = with(with(lead(Connector.XT60, Connector.XT60), "id", "other"), "mass", mass(1));

    var with = match(Parts.board(), battery, heavy, light, lightest);
    assertThat(with.grade()).isEqualTo(Grade.ADAPTER);
    assertThat(with.adapters()).containsExactly(light);
    assertThat(match(battery, Parts.board(), heavy, light).adapters()).containsExactly(light);
    assertMatch(
        match(Parts.board(), battery, lightest),
        Grade.NOT,
        "Board board has a XT30 plug, but pack battery has XT60: an adapter is needed.");
  }

  private static Mass mass(double grams) {
    return Mass.of(grams, Known.MEASURED);
  }

  @Test
  void severalAreJudgedTogether() {
    var matcher = new Matcher(Catalog.of(List.of()));
    var propeller = with(Parts.propeller(), "diameterInches", 4.5);
    var wide = with(Parts.frame(), "largestPropellerInches", 5.0);

    // 130 mm less 114.3 mm: the frame takes it, the motor only with care.
    assertThat(matcher.match(List.of(wide), propeller).orElseThrow().grade())
        .isEqualTo(Grade.DIRECT);
    assertThat(
            matcher.match(List.of(wide, Parts.motor()), propeller).orElseThrow().grade())
        .isEqualTo(Grade.WARNING);
    assertThat(matcher.match(List.of(Parts.frame(), Parts.motor()), propeller).orElseThrow())
        .isEqualTo(new Match(
            propeller,
            Grade.NOT,
            List.of(),
            List.of("Propeller propeller is 4.5 inch, but frame frame takes 4 inch.")));
  }

  @Test
  void twoOfOneRoleAreJudgedByNothing() {
    var matcher = new Matcher(Catalog.of(List.of()));

    assertThat(matcher.match(List.of(Parts.frame()), with(Parts.frame(), "id", "other")))
        .isEmpty();
    assertThat(matcher.match(
            List.of(Parts.frame(), with(Parts.frame(), "id", "other")), Parts.motor()))
        .isEmpty();
  }

  @Test
  void whatNoRuleReadsTogetherIsNotListed() {
    var matcher = new Matcher(Catalog.of(List.of()));

    assertThat(matcher.match(List.of(Parts.propeller()), Parts.camera())).isEmpty();
    assertThat(matcher.match(List.of(Parts.propeller()), strap("strap", 15, 200, 4)))
        .isEmpty();
    assertThat(matcher.match(List.of(Parts.camera()), Parts.videoAntenna())).isEmpty();
    assertThat(matcher.match(
            List.of(strap("strap", 15, 200, 4)),
            screw(ScrewThread.M2, 4, Screw.Material.STEEL, 0.2)))
        .isEmpty();
  }

  @Test
  void anAntennaIsForThePortOfItsBand() {
    var video = Parts.videoAntenna();
    var radio = Parts.radioAntenna();

    assertMatch(match(Parts.transmitter(), video), Grade.DIRECT);
    assertMatch(match(video, Parts.transmitter()), Grade.DIRECT);
    assertMatch(match(Parts.receiver(), radio), Grade.DIRECT);
    assertMatch(match(radio, Parts.receiver()), Grade.DIRECT);
    assertMatch(
        match(Parts.transmitter(), radio),
        Grade.NOT,
        "Antenna radio-antenna is tuned to 2.4 GHz, but the port works at 5.8 GHz.");
    assertMatch(
        match(Parts.receiver(), video),
        Grade.NOT,
        "Antenna video-antenna is tuned to 5.8 GHz, but the port works at 2.4 GHz.");
    assertMatch(
        match(Parts.transmitter(), with(video, "connector", AntennaConnector.MMCX)),
        Grade.NOT,
        "Antenna video-antenna has a MMCX plug, but the port is u.FL.");
  }

  @Test
  void besideBothPortsEachAntennaFindsItsOwn() {
    var matcher = new Matcher(Catalog.of(List.of()));
    var both = List.<Part>of(Parts.transmitter(), Parts.receiver());

    for (var antenna : List.of(Parts.videoAntenna(), Parts.radioAntenna())) {
      assertThat(matcher.match(both, antenna).orElseThrow().grade()).isEqualTo(Grade.DIRECT);
    }
    var none = with(Parts.videoAntenna(), "band", Band.MHZ_900);
    assertThat(matcher.match(both, none).orElseThrow().grade()).isEqualTo(Grade.NOT);
    var same = with(
        Parts.receiver(),
        "antenna",
        new AntennaPort(AntennaConnector.U_FL, Band.GHZ_5_8, 1, null, null));
    // The port for video is taken first.
    assertThat(matcher.match(
            List.of(Parts.transmitter(), same, Parts.videoAntenna()),
            with(Parts.videoAntenna(), "id", "second")))
        .isEmpty();
  }

  @Test
  void everyPartIsListedByKindButThoseOfTheGivenKinds() {
    var few = SmallShop.few();

    var matches = new Matcher(few).with(List.of(few.part("cottongrass-4").orElseThrow()));

    assertThat(matches.keySet())
        .containsExactly(
            Kind.MOTOR,
            Kind.PROPELLER,
            Kind.BATTERY,
            Kind.BOARD,
            Kind.CAMERA,
            Kind.STRAP,
            Kind.ADAPTER);
    matches.forEach((kind, list) -> assertThat(list)
        .extracting(match -> match.part().id())
        .isSorted()
        .allMatch(id -> few.part(id).orElseThrow().kind() == kind));
    assertThat(matches.get(Kind.PROPELLER))
        .extracting(match -> match.part().id() + " " + match.grade())
        .containsExactly("awn-4.5x2.5x2 NOT", "frond-4.5x3.2x3 NOT", "ligule-4x1.9x2 DIRECT");
  }

  /** Every pair of a workshop, against the rules asked one by one of the two alone. */
  @Test
  void agreesWithTheRulesOnEveryPair() {
    var catalog = SmallShop.catalog(List.of(
        "cottongrass-4",
        "thistledown-5",
        "arrowgrass-3",
        "bulrush-3-ring",
        "spikerush-1303-3400",
        "cypsela-1404-2800",
        "ligule-4x1.9x2",
        "awn-4.5x2.5x2",
        "frond-4.5x3.2x3",
        "tidewell-2s-3500",
        "tidewell-3s-3400",
        "neap-2s-350",
        "culvert-6-whole",
        "weir-stack-20",
        "weir-stack-35",
        "sluice-13",
        "rushlight-50-wire",
        "glowmoss-100",
        "newteye-14",
        "hernlook-14",
        "lumfret-eye-14",
        "osier-t1",
        "thrennel-leaf",
        "stipule-wire",
        "stipule-u",
        "withy-24-thread",
        "dewpond-220-16",
        "cistern-330-25"));
    var parts = catalog.parts().stream().filter(part -> !part.fills().isEmpty()).toList();
    var matcher = new Matcher(catalog);
    var fitter = new Fitter(Scenario.anything(), Stock.of(List.copyOf(catalog.parts())));
    var seen = new TreeSet<Grade>();
    var pairs = 0;
    for (var given : parts) {
      for (var part : parts) {
        var roles = List.of(given.fills().get(0), part.fills().get(0));
        if (roles.get(0) == roles.get(1)) {
          continue;
        }
        var build = Build.empty().with(roles.get(0), given).with(roles.get(1), part);
        var clashes = new ArrayList<String>();
        var notes = new ArrayList<String>();
        var unknown = false;
        for (var rule : Rules.ALL) {
          // A rule that reads every role, and where the plugs meet, is asked of more than two.
          if (rule instanceof RolesRule
              || !rule.reads().containsAll(roles)
              || rule.reads().size() == Role.values().length) {
            continue;
          }
          var verdict = rule.check(fitter.fit(build));
          if (verdict instanceof Verdict.Clashes clash && !rule.id().equals("battery-plug")) {
            clashes.add(clash.reason().text());
          }
          if (verdict instanceof Verdict.Fits fits) {
            fits.notes().forEach(note -> notes.add(note.text()));
          }
          unknown |= verdict instanceof Verdict.Unknown;
        }
        var match = matcher.match(List.of(given), part);
        var what = given.id() + " " + part.id();
        if (!clashes.isEmpty()) {
          assertThat(match.map(Match::grade)).as(what).contains(Grade.NOT);
          assertThat(match.orElseThrow().text()).as(what).containsAll(clashes);
        } else if (unknown) {
          assertThat(match.map(Match::grade))
              .as(what)
              .isIn(Optional.of(Grade.UNKNOWN), Optional.of(Grade.NOT));
        } else if (!notes.isEmpty()) {
          assertThat(match.map(Match::grade))
              .as(what)
              .isIn(Optional.of(Grade.ADAPTER), Optional.of(Grade.WARNING), Optional.of(Grade.NOT));
          if (match.orElseThrow().grade() != Grade.NOT) {
            assertThat(match.get().text()).as(what).isEqualTo(notes);
          }
        }
        var back = matcher.match(List.of(part), given);
        assertThat(back.map(Match::grade)).as(what).isEqualTo(match.map(Match::grade));
        assertThat(back.map(Match::text)).as(what).isEqualTo(match.map(Match::text));
        match.map(Match::grade).ifPresent(seen::add);
        pairs++;
      }
    }
    assertThat(pairs).isGreaterThan(500);
    assertThat(seen).contains(Grade.DIRECT, Grade.ADAPTER, Grade.WARNING, Grade.NOT);
  }

  @Test
  void strapsAreHeldToSlotsAndPacks() {
    // Round 30 by 28 mm and a 3 mm plate, with 30 mm to overlap: 2 * (30 + 28 + 3) + 30 = 152.
    assertMatch(match(Parts.frame(), strap("strap", 20, 200, 4)), Grade.DIRECT);
    assertMatch(
        match(Parts.frame(), strap("strap", 20.1, 200, 4)),
        Grade.NOT,
        "Strap strap is 20.1 mm wide, but the slots of frame frame take 20 mm.");
    var pack = girth(60, 30, 28);
    assertMatch(match(pack, strap("strap", 15, 152, 4)), Grade.DIRECT);
    assertMatch(
        match(pack, strap("strap", 15, 151, 4)),
        Grade.NOT,
        "Strap strap is 151 mm long, but pack battery needs 152 mm.");
  }

  private static Part girth(double length, double width, double height) {
    return with(
        with(with(Parts.battery(), "lengthMillimetres", length), "widthMillimetres", width),
        "heightMillimetres",
        height);
  }

  /** A strap that is given does not keep the other rules from judging. */
  @Test
  void smallHardwareThatIsGivenHidesNoRule() {
    var frame = Parts.frame();
    var propeller = with(Parts.propeller(), "diameterInches", 7.0);
    var matcher = new Matcher(Catalog.of(List.of(frame, propeller)));
    var alone = matcher.match(List.of(frame), propeller).orElseThrow();

    assertThat(alone.grade()).isEqualTo(Grade.NOT);
    assertThat(matcher.match(List.of(frame, strap("band", 10, 200, 3)), propeller))
        .contains(alone);
  }

  /** What the given parts need among themselves is no fault of the part that is asked about. */
  @Test
  void anAdapterOfTheGivenPartsIsNoOther() {
    var catalog = SmallShop.all();
    var matcher = new Matcher(catalog);
    var given = List.of(
        catalog.part("cottongrass-2.5").orElseThrow(),
        catalog.part("lockkeeper-16").orElseThrow());

    assertThat(matcher.match(given.subList(0, 1), given.get(1)).orElseThrow().adapters())
        .isNotEmpty();
    assertThat(matcher.with(given).get(Kind.MOTOR))
        .isNotEmpty()
        .allMatch(match -> match.adapters().isEmpty());
  }

  @Test
  void partsThatClashAmongThemselvesAreNamed() {
    var propeller = with(Parts.propeller(), "diameterInches", 7.0);
    var matcher = new Matcher(Catalog.of(List.of(Parts.frame(), Parts.motor(), propeller)));

    assertThat(matcher.among(List.of(Parts.frame()))).isEmpty();
    assertThat(matcher.among(List.of(Parts.frame(), Parts.motor(), propeller)))
        .extracting(match -> match.part().id() + " " + match.grade())
        .contains(propeller.id() + " NOT");
  }

  /** The motor takes 1.5 to 2.5 mm of thread. */
  @Test
  void screwsAreJudgedOnTheArmsOfAFrameThatIsGiven() {
    var frame = with(Parts.frame(), "armThicknessMillimetres", 4.0);
    var catalog = new Matcher(Catalog.of(
        List.of(frame, Parts.motor(), screw(ScrewThread.M2, 6, Screw.Material.STEEL, 0.2))));
    assertMatch(
        catalog
            .match(
                List.of(frame, Parts.motor()), screw(ScrewThread.M2, 6, Screw.Material.STEEL, 0.2))
            .orElseThrow(),
        Grade.DIRECT);
    assertMatch(
        catalog
            .match(
                List.of(Parts.motor(), frame), screw(ScrewThread.M2, 5, Screw.Material.STEEL, 0.2))
            .orElseThrow(),
        Grade.NOT,
        "Screw m2-5.0-steel goes 1 mm into motor motor on the 4 mm arms of frame frame, but must go in 1.5 to 2.5 mm.");
    assertMatch(
        catalog
            .match(
                List.of(frame, screw(ScrewThread.M2, 5, Screw.Material.STEEL, 0.2)), Parts.motor())
            .orElseThrow(),
        Grade.NOT,
        "Screw m2-5.0-steel goes 1 mm into motor motor on the 4 mm arms of frame frame, but must go in 1.5 to 2.5 mm.");
    assertMatch(
        catalog
            .match(
                List.of(frame, Parts.motor()), screw(ScrewThread.M3, 6, Screw.Material.STEEL, 0.2))
            .orElseThrow(),
        Grade.NOT,
        "Screw m3-6.0-steel is M3, but motor motor takes M2.");
  }

  @Test
  void screwsSayForWhichArms() {
    // M2 holds from 1.5 mm; this motor takes 2.5 mm: 6 mm are for arms of 3.5 to 4.5.
    assertMatch(
        match(Parts.motor(), screw(ScrewThread.M2, 6, Screw.Material.STEEL, 0.2)),
        Grade.WARNING,
        "Screw m2-6.0-steel holds motor motor on arms of 3.5 to 4.5 mm.");
    assertMatch(
        match(screw(ScrewThread.M2, 2, Screw.Material.TITANIUM, 0.2), Parts.motor()),
        Grade.WARNING,
        "Screw m2-2.0-titanium holds motor motor on arms of 0 to 0.5 mm.");
    assertMatch(
        match(Parts.motor(), screw(ScrewThread.M3, 6, Screw.Material.STEEL, 0.2)),
        Grade.NOT,
        "Screw m3-6.0-steel is M3, but motor motor takes M2.");
  }

  @ParameterizedTest
  @EnumSource(
      value = Screw.Material.class,
      names = {"ALUMINIUM", "NYLON"})
  void softScrewsHoldNoMotor(Screw.Material material) {
    var soft = screw(ScrewThread.M2, 6, material, 0.2);

    assertMatch(
        match(Parts.motor(), soft),
        Grade.NOT,
        "Screw " + soft.id() + " is too soft to hold motor motor: steel or titanium only.");
  }

  @Test
  void adaptersHaveTwoSides() {
    var plate = stackPlate("plate", StackPattern.P20, StackPattern.P25_5, 1.5);
    var other = with(Parts.board(), "mount", holes(StackPattern.P26));

    assertMatch(match(plate, Parts.frame()), Grade.DIRECT);
    // 26 by 26 takes the screws of 25.5 by 25.5.
    assertMatch(match(plate, other), Grade.DIRECT);
    assertMatch(
        match(plate, Parts.board()),
        Grade.NOT,
        "Adapter plate has 25.5x25.5 holes on that side, but board has 20x20.");
    assertMatch(
        match(
            with(
                Parts.frame(),
                "positions",
                List.of(position("middle", 0, holes(StackPattern.P16), holes(StackPattern.P25)))),
            plate),
        Grade.NOT,
        "Adapter plate has 20x20 holes on that side, but frame frame has 16x16, 25x25.");
    assertMatch(
        match(
            plate,
            with(Parts.transmitter(), "mount", new MountingHoles(StackPattern.P25_5, 2.2, false))),
        Grade.DIRECT);
    assertThat(new Matcher(Catalog.of(List.of()))
            .match(List.of(plate), with(Parts.transmitter(), "mount", null)))
        .isEmpty();
  }

  @Test
  void shimsHaveTwoSides() {
    var shims = cameraShims(21, 14);

    // 20 mm is within the millimetre that sheets are rounded to, 19 is not.
    assertMatch(
        match(shims, with(Parts.frame(), "cameraWidthsMillimetres", List.of(20.0))), Grade.DIRECT);
    assertMatch(
        match(shims, Parts.frame()),
        Grade.NOT,
        "Shims shims are for 21 mm on that side, but frame frame takes 19 mm.");
    assertMatch(match(with(Parts.camera(), "widthMillimetres", 14.5), shims), Grade.DIRECT);
    assertMatch(
        match(Parts.camera(), shims),
        Grade.NOT,
        "Shims shims are for 14 mm on that side, but camera camera is 19 mm.");
    assertThat(new Matcher(Catalog.of(List.of())).match(List.of(Parts.motor()), reducingRings()))
        .isEmpty();
  }

  @Test
  void anAntennaOfABoardIsForTheBoard() {
    var few = SmallShop.few();
    var whole = (Board) few.part("culvert-6-whole").orElseThrow();
    var antenna = (Antenna) few.part("stipule-wire").orElseThrow();

    assertThat(new Matcher(few).match(List.of(whole), antenna).orElseThrow().grade())
        .isEqualTo(Grade.DIRECT);
    assertThat(new Matcher(few).match(List.of(antenna), whole).orElseThrow().grade())
        .isEqualTo(Grade.DIRECT);
  }
}
