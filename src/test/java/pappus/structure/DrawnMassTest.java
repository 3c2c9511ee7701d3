package pappus.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static pappus.part.Parts.with;

import java.util.List;
import org.junit.jupiter.api.Test;
import pappus.part.Frame;
import pappus.part.FrameDrawing;
import pappus.part.FrameDrawing.Arm;
import pappus.part.FrameDrawing.Hole;
import pappus.part.FrameDrawing.Opening;
import pappus.part.FrameDrawing.Pair;
import pappus.part.FrameDrawing.Plate;
import pappus.part.FrameDrawing.Point;
import pappus.part.FrameDrawing.Screws;
import pappus.part.FrameDrawing.Standoffs;
import pappus.part.Known;
import pappus.part.Mass;
import pappus.part.Parts;

class DrawnMassTest {
  /** 100 by 40 mm from −50 to 50 with four holes of 3.2 mm and an opening of 20 by 10 mm at 20 to 40. */
  static final Plate BOTTOM = new Plate(
      "bottom",
      2,
      null,
      null,
      null,
      box(-50, 50, -20, 20),
      List.of(hole(-15, -15), hole(-15, 15), hole(15, -15), hole(15, 15)),
      List.of(new Opening(box(20, 40, -5, 5))),
      null);

  static final Plate TOP = new Plate("top plate", 1.5, null, 3000.0, -10.0, null, null, null, null);

  static List<Point> box(double rear, double front, double left, double right) {
    return List.of(
        new Point(rear, left),
        new Point(front, left),
        new Point(front, right),
        new Point(rear, right));
  }

  private static Hole hole(double x, double y) {
    return new Hole(x, y, 3.2);
  }

  static Arm arm(Pair pair) {
    return new Arm(pair, 60, null, null, null, null, null, 16.0);
  }

  static FrameDrawing drawing() {
    return new FrameDrawing(
        List.of(BOTTOM, TOP),
        List.of(arm(Pair.FRONT), arm(Pair.REAR)),
        new Standoffs(6, 0.019),
        new Screws(20, 0.3));
  }

  /** Arms of 8 to 6 mm, 2.5 mm thick, 20 mm between the plates as listed. */
  private static Frame frame() {
    return with(Parts.frame(), "drawing", drawing());
  }

  /** 4000 − 4 π 1.6² − 200 = 3767.83 mm², times 2 mm and 1.55 mg/mm³: 11.680 g. */
  @Test
  void aPlateWeighsItsOutlineWithoutItsHoles() {
    var plate = DrawnMass.of(frame()).items().get(0);

    assertThat(plate.label()).isEqualTo("bottom plate");
    assertThat(plate.grams()).isCloseTo(11.680, within(0.0005));
    // The opening's 200 mm² stand at 30 mm.
    assertThat(plate.x()).isCloseTo(-200 * 30 / 3767.83, within(0.0005));
  }

  /**
   * Two arms of 60 by 7 by 2.5 mm and their round ends, π 8² − 6 · 8 = 153.06 mm² each: 2 (1.6275 + .5931) = 4.441 g; the
   * top plate 6.975 g; six standoffs of 20 mm 2.28 g; twenty screws 6 g.
   */
  @Test
  void aFrameWeighsAllOfIt() {
    var drawn = DrawnMass.of(frame());

    assertThat(drawn.items())
        .extracting(DrawnMass.Item::label)
        .containsExactly(
            "bottom plate", "top plate", "front arms", "rear arms", "standoffs", "screws");
    assertThat(drawn.items())
        .extracting(item -> Math.rint(item.grams() * 1000) / 1000)
        .containsExactly(11.68, 6.975, 4.441, 4.441, 2.28, 6.0);
    assertThat(drawn.grams()).isCloseTo(35.817, within(0.001));
  }

  /** The arms of both pairs weigh alike and stand as far from the middle: they cancel. */
  @Test
  void itsMiddleIsThatOfItsPlates() {
    var drawn = DrawnMass.of(frame());
    // The opening's 200 mm² at 30 mm are lacking: −6000/3767.83 = −1.592 mm.
    var plates = 11.68 * -1.5924 + 6.975 * -10;

    assertThat(drawn.items().get(2).x()).isCloseTo(-drawn.items().get(3).x(), within(1e-9));
    // Standoffs and screws stand amid the others.
    assertThat(drawn.x()).isCloseTo(plates / (11.68 + 6.975 + 8.882), within(0.001));
  }

  @Test
  void whatARecordLeavesOutIsDrawn() {
    var settled = DrawnMass.settled(frame(), false, false);

    assertThat(settled.mass()).isEqualTo(new Mass(35.82, Known.ESTIMATED, 2.15));
    assertThat(settled.centreOfMassXMillimetres()).isEqualTo(-3.21);
    assertThat(DrawnMass.settled(frame(), true, false).mass()).isEqualTo(frame().mass());
    assertThat(DrawnMass.settled(frame(), true, true)).isEqualTo(frame());
    var undrawn = with(frame(), "drawing", new FrameDrawing(List.of(), List.of(), null, null));
    assertThat(DrawnMass.settled(undrawn, false, false)).isEqualTo(undrawn);
  }

  /** 40 g are on the scale; arms of 3 in place of 2.5 mm weigh a fifth more. */
  @Test
  void aStatedMassScalesTheRest() {
    var thicker = with(frame(), "armThicknessMillimetres", 3.0);
    var more = 2 * 4.441 * 0.2 * 40 / 35.817;

    assertThat(DrawnMass.massAfter(frame(), thicker).grams()).isCloseTo(40 + more, within(0.006));
    assertThat(DrawnMass.massAfter(frame(), thicker).doubtGrams())
        .isCloseTo(Math.hypot(0.1, 0.06 * more), within(0.006));
    assertThat(DrawnMass.massAfter(frame(), frame())).isEqualTo(frame().mass());
  }

  @Test
  void whereTheArmsAloneAreDrawnTheRestStays() {
    var arms = with(frame(), "drawing", new FrameDrawing(List.of(), drawing().arms(), null, null));
    var thicker = with(arms, "armThicknessMillimetres", 3.0);

    assertThat(DrawnMass.massAfter(arms, thicker).grams())
        .isCloseTo(40 + 2 * 4.441 * 0.2, within(0.006));
    assertThat(DrawnMass.centreAfter(arms, thicker)).isEqualTo(arms.centreOfMassXMillimetres());
  }

  /** A height that adds .57 g stands on standoffs of five more millimetres. */
  @Test
  void itIsDrawnWithTheHeightThatItIsListedWith() {
    var taller = with(frame(), "heights", List.of(new Frame.PlateHeight(25, 0.57)));

    assertThat(DrawnMass.of(taller).grams()).isCloseTo(DrawnMass.of(frame()).grams(), within(1e-9));
  }
}
