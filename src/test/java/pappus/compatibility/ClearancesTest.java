package pappus.compatibility;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static pappus.part.Parts.battery;
import static pappus.part.Parts.board;
import static pappus.part.Parts.build;
import static pappus.part.Parts.frame;
import static pappus.part.Parts.gps;
import static pappus.part.Parts.motor;
import static pappus.part.Parts.propeller;
import static pappus.part.Parts.receiver;
import static pappus.part.Parts.transmitter;
import static pappus.part.Parts.with;

import java.util.List;
import org.junit.jupiter.api.Test;
import pappus.part.Board;
import pappus.part.Build;
import pappus.part.Frame;
import pappus.part.Parts;
import pappus.part.Role;
import pappus.part.SerialNeed;

class ClearancesTest {
  private static List<Clearance> of(Build build) {
    return Clearances.of(Bench.plain().fit(build));
  }

  private static Clearance one(Build build, String id) {
    return of(build).stream()
        .filter(clearance -> clearance.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no " + id + " in " + of(build)));
  }

  private static List<String> ids(Build build) {
    return of(build).stream().map(Clearance::id).toList();
  }

  private static void assertIs(
      Clearance clearance, String label, String unit, double value, double bound, boolean most) {
    assertThat(clearance.label()).isEqualTo(label);
    assertThat(clearance.unit()).isEqualTo(unit);
    assertThat(clearance.value()).isCloseTo(value, within(1e-9));
    assertThat(clearance.bound()).isCloseTo(bound, within(1e-9));
    assertThat(clearance.most()).isEqualTo(most);
  }

  @Test
  void tellsEveryRoomOfTheExampleInOrder() {
    assertThat(ids(build()))
        .containsExactly(
            "tip-to-tip",
            "screw-depth",
            "plate-height",
            "pack-width",
            "pack-overhang",
            "pack-to-discs",
            "centre-of-mass",
            "strap-length",
            "board-full-volts",
            "board-low-volts",
            "rail-load",
            "rail-load",
            "serial-ports");
  }

  /** Motors 130 mm apart, discs of 4 inch, which are 101.6 mm. */
  @Test
  void measuresBetweenPropellerTips() {
    assertIs(one(build(), "tip-to-tip"), "clearance between propeller tips", "mm", 28.4, 2, false);
    assertThat(one(build(with(frame(), "sideSpacingMillimetres", 110.0)), "tip-to-tip")
            .value())
        .isCloseTo(8.4, within(1e-9));
  }

  /** Screws of 4 mm through arms of 2.5 mm into threads of 2.5 mm. */
  @Test
  void measuresHowDeepMotorScrewsGo() {
    assertIs(one(build(), "screw-depth"), "depth of the motor screws", "mm", 1.5, 2.5, true);
    assertThat(ids(build(with(frame(), "armThicknessMillimetres", 3.9))))
        .doesNotContain("screw-depth");
  }

  /** A bell of 19 mm with half a millimetre on either side. */
  @Test
  void measuresTheMotorInItsGuard() {
    assertThat(ids(build())).doesNotContain("motor-guard");
    assertIs(
        one(build(with(frame(), "guardInnerMillimetres", 24.0)), "motor-guard"),
        "bell with its clearance in the motor guard",
        "mm",
        20,
        24,
        true);
  }

  /** Boards of 8 and 5 mm, 1.5 between them, 2 to the carbon, 2 for plugs and 1 to spare. */
  @Test
  void measuresTheBoardsBetweenThePlates() {
    assertIs(one(build(), "plate-height"), "stack height between the plates", "mm", 19.5, 20, true);
  }

  /** The pack of 60 × 30 × 28 mm in a bay 40 mm wide from -50 to 50 mm. */
  @Test
  void measuresThePackInItsBay() {
    var low = with(frame(), "bay", new Frame.Bay(Frame.Bay.Side.TOP, 40, -50, 50, 35.0, 20));
    var shortBay = with(frame(), "bay", new Frame.Bay(Frame.Bay.Side.TOP, 40, -25, 25, null, 20));

    assertIs(one(build(), "pack-width"), "width of the pack", "mm", 30, 40, true);
    assertThat(ids(build())).doesNotContain("pack-height");
    assertIs(one(build(low), "pack-height"), "height of the pack", "mm", 28, 35, true);
    assertIs(one(build(), "pack-overhang"), "pack overhang beyond its bay", "mm", 0, 15, true);
    // Its middle at x reaches 5 mm and |x| beyond the end of a bay of 50 mm.
    var x = Bench.plain().fit(build(shortBay)).placing().orElseThrow().packXMillimetres();
    assertThat(one(build(shortBay), "pack-overhang").value())
        .isCloseTo(5 + Math.abs(x), within(1e-9));
  }

  /** The strap of 200 mm goes round 30 + 28 + 3 mm twice and 30 mm over itself. */
  @Test
  void measuresTheStrapRoundThePack() {
    assertIs(one(build(), "strap-length"), "strap length needed", "mm", 152, 200, true);
    assertThat(ids(build(with(battery(), "heightMillimetres", 60.0))))
        .doesNotContain("strap-length");
  }

  /** Of a pack whose middle is at x: the disc's centre is at 65 mm, 65 mm to the side. */
  @Test
  void measuresFromPackToDiscs() {
    var x = Bench.plain().fit(build()).placing().orElseThrow().packXMillimetres();
    var along = Math.max(0, 65 - Math.abs(x) - 30);

    assertIs(
        one(build(), "pack-to-discs"),
        "clearance from pack to propellers",
        "mm",
        Math.sqrt(along * along + 50 * 50) - 50.8,
        3,
        false);
    assertThat(ids(Parts.of(frame(), battery())))
        .containsExactly("pack-width", "pack-overhang", "centre-of-mass", "strap-length");
  }

  /** Frame 40 g at 2 mm, pack 100 g held at most at 5 mm back: (40 × 2 - 500) / 140 = -3 mm. */
  @Test
  void measuresTheCentreOfMass() {
    var narrow = with(
        with(frame(), "centreOfMassXMillimetres", 2.0),
        "bay",
        new Frame.Bay(Frame.Bay.Side.TOP, 40, -50, 10, null, 20));

    // 80 g mm are brought to nothing by 100 g 0.8 mm back, which the bay allows.
    assertIs(
        one(Parts.of(with(frame(), "centreOfMassXMillimetres", 2.0), battery()), "centre-of-mass"),
        "offset of the centre of mass",
        "mm",
        0,
        13,
        true);
    // From -50 to 10 mm and 15 mm over its ends the middle of 60 mm sits from -35 to -5 mm.
    assertThat(one(Parts.of(narrow, battery()), "centre-of-mass").value())
        .isCloseTo(3, within(1e-9));
  }

  /** Four cells of 4.2 V and of 3 V under full throttle, at a board of 6 to 26 V. */
  @Test
  void comparesVoltsAtTheBoard() {
    assertIs(one(build(), "board-full-volts"), "board voltage, pack full", "V", 16.8, 26, true);
    assertIs(
        one(build(), "board-low-volts"), "board voltage, pack at its lowest", "V", 12, 6, false);
  }

  /** Camera 0.8 W and receiver 0.5 W; the transmitter's 1.5 W; with a fifth more, by volts. */
  @Test
  void addsUpWhatRailsCarry() {
    var rails = of(build()).stream()
        .filter(clearance -> clearance.id().equals("rail-load"))
        .toList();

    assertThat(rails).hasSize(2);
    assertIs(rails.get(0), "5 V rail load plus a fifth", "A", 1.2 * 0.5 / 5, 2, true);
    assertIs(rails.get(1), "9 V rail load plus a fifth", "A", 1.2 * (1.5 + 0.8) / 9, 2, true);
  }

  @Test
  void railsOfTheSameVoltsShareTheirLoad() {
    var twin = with(
        board(),
        "regulators",
        List.of(
            new Board.Regulator(9, 0.25, null),
            new Board.Regulator(9, 0.25, null),
            new Board.Regulator(5, 1, null)));
    var rails = of(build(twin)).stream()
        .filter(clearance -> clearance.id().equals("rail-load"))
        .toList();

    // 0.2 A of the transmitter and 0.107 A of the camera do not go on one of them.
    assertThat(rails).hasSize(2);
    assertIs(rails.get(1), "9 V rail load plus a fifth", "A", 1.2 * (1.5 + 0.8) / 9, 0.5, true);
  }

  /** The receiver takes one, a transmitter that makes do with half of one none. */
  @Test
  void countsSerialPorts() {
    assertIs(one(build(), "serial-ports"), "serial ports needed", "pieces", 1, 3, true);
    assertThat(one(build().with(Role.GPS, gps()), "serial-ports").value()).isEqualTo(2);
    assertThat(one(build(with(transmitter(), "serial", SerialNeed.FULL)), "serial-ports")
            .value())
        .isEqualTo(2);
    assertThat(one(build(with(receiver(), "serial", SerialNeed.NONE)), "serial-ports")
            .value())
        .isZero();
  }

  @Test
  void tellsNothingOfWhatIsNotChosen() {
    assertThat(of(Build.empty())).isEmpty();
    assertThat(of(Parts.of(board()))).isEmpty();
    assertThat(of(Parts.of(frame()))).isEmpty();
    assertThat(of(Parts.of(motor(), propeller()))).isEmpty();
    assertThat(ids(Parts.of(frame(), propeller()))).containsExactly("tip-to-tip");
    assertThat(ids(Parts.of(frame(), motor()))).containsExactly("screw-depth");
  }

  /** Each stands on its right side exactly where the rules say that the build goes together. */
  @Test
  void agreesWithTheRules() {
    assertThat(of(build()))
        .allMatch(clearance -> clearance.most()
            ? clearance.value() <= clearance.bound()
            : clearance.value() >= clearance.bound());
    var near = build(with(frame(), "frontSpacingMillimetres", 103.0));
    assertThat(one(near, "tip-to-tip").value()).isLessThan(2);
    assertThat(Bench.plain().says(new PropellerClearanceRule(), near)).startsWith("clashes: ");
  }
}
