package pappus.assessment.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static pappus.part.Parts.battery;
import static pappus.part.Parts.frame;
import static pappus.part.Parts.with;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import pappus.part.Frame;
import pappus.physics.airframe.ArmShadow;
import pappus.scenario.Flight;

class FrameAirTest {
  /** Half a spread, as all that no record states. */
  private static final double WORSE = Math.exp(0.5 * 0.35);

  private static final double FIVE_INCH = 127;

  private static FrameAir air(Frame frame) {
    return FrameAir.of(frame, Flight.HOVERING);
  }

  private static Frame arms(double width) {
    return with(frame(), "armWidthMillimetres", new Frame.ArmWidth(width, width));
  }

  @Test
  void armsTakeThrustByTheirMeanWidth() {
    var tapered = with(frame(), "armWidthMillimetres", new Frame.ArmWidth(10, 6));

    assertThat(air(tapered).leastLost(FIVE_INCH)).isEqualTo(air(arms(8)).leastLost(FIVE_INCH));
    assertThat(air(arms(8)).leastLost(FIVE_INCH)).isCloseTo(0.0248, within(0.00005));
  }

  @Test
  void unknownArmsTakeTheUsualAndAScenarioHasItsWay() {
    var unknown = with(frame(), "armWidthMillimetres", null);
    var asked = with(Flight.HOVERING, "thrustLost", 0.08);

    assertThat(air(unknown).leastLost(FIVE_INCH)).isEqualTo(ArmShadow.UNKNOWN);
    assertThat(FrameAir.of(arms(8), asked).leastLost(FIVE_INCH)).isEqualTo(0.08);
    assertThat(FrameAir.of(arms(8), asked).mostLost(FIVE_INCH)).isEqualTo(0.08);
  }

  @Test
  void ofManyFramesTheLeastAndTheMostAreThoseOfSome() {
    var unknown = with(frame(), "armWidthMillimetres", null);
    var any = FrameAir.any(Stream.of(arms(8), arms(16), unknown).map(FrameAirTest::air));

    assertThat(any.leastLost(FIVE_INCH)).isEqualTo(air(arms(8)).leastLost(FIVE_INCH));
    assertThat(any.mostLost(FIVE_INCH)).isEqualTo(air(arms(16)).leastLost(FIVE_INCH));
  }

  @Test
  void dragIsStatedOrGoesWithTheMass() {
    var stated = air(with(frame(), "dragAreaSquareMetres", 0.008));
    var assumed = air(with(frame(), "armWidthMillimetres", null));
    var any = FrameAir.any(Stream.of(stated, assumed));

    assertThat(stated.leastDragArea(900, battery())).isEqualTo(0.008);
    assertThat(assumed.leastDragArea(250, battery())).isCloseTo(WORSE * 0.0065, within(1e-15));
    assertThat(assumed.leastDragArea(2000, battery())).isCloseTo(WORSE * 4 * 0.0065, within(1e-12));
    assertThat(any.leastDragArea(250, battery())).isCloseTo(WORSE * 0.0065, within(1e-15));
    assertThat(any.mostDragArea(250, battery())).isEqualTo(0.008);
    assertThat(stated.isDragKnown()).isTrue();
    assertThat(assumed.isDragKnown()).isTrue();
    assertThat(any.isDragKnown()).isFalse();
  }

  /**
   * Plates of 100 by 40 mm, 20 mm apart, on a square of 130 mm: 9/13 of arms 7 mm wide and 2.5 mm thick are bare. From
   * the front 800 + 450 mm² and the pack, from above 4000 + 1781.91 mm² and what of the pack stands out.
   */
  @Test
  void dragOfKnownArmsIsThatOfPlatesArmsAndPackButNotBelowThatOfTheMass() {
    var seen = air(frame());
    var pack = with(
        with(with(battery(), "lengthMillimetres", 120.0), "widthMillimetres", 40.0),
        "heightMillimetres",
        45.0);
    var area = WORSE * 1.1e-6 * ((800 + 450 + 1800) * 0.9781476 + (5781.91 + 800) * 0.2079117);

    assertThat(seen.leastDragArea(100, pack)).isCloseTo(area, within(1e-8));
    assertThat(seen.mostDragArea(100, pack)).isEqualTo(seen.leastDragArea(100, pack));
    assertThat(seen.leastDragArea(100)).isLessThan(area);
    assertThat(seen.leastDragArea(250, pack)).isCloseTo(WORSE * 0.006, within(1e-15));
    assertThat(seen.leastDragArea(2000, pack)).isCloseTo(WORSE * 4 * 0.006, within(1e-12));
    assertThat(seen.isDragKnown()).isTrue();
  }

  /**
   * A 249 g quad that folds flies 16 m/s at 40° of tilt (from memory), which makes 2 W tan 40°/(ρ V²) = .0131 m² with
   * the force that a rotor has along its disc in an air stream, and .0071 is taken, half a spread more than is seen of it.
   */
  @Test
  void theDragOfAFrameIsBelowThatOfAnAircraftWithItsRotors() {
    var flown = 2 * 0.249 * 9.80665 * Math.tan(Math.toRadians(40)) / (1.225 * 16 * 16);

    assertThat(flown).isCloseTo(0.0131, within(0.00005));
    assertThat(air(frame()).leastDragArea(249, battery())).isCloseTo(0.0071, within(0.00005));
  }

  @Test
  void anOpenBodyIsAsHighAsItsCamera() {
    var open = with(
        with(frame(), "positions", List.of(open(frame().positions().get(0)))),
        "heights",
        List.of());

    assertThat(front(open)).isCloseTo(front(frame()) - 40, within(1e-9));
    assertThat(front(with(open, "cameraWidthsMillimetres", List.of())))
        .isCloseTo(front(frame()) - 240, within(1e-9));
  }

  private static double front(Frame frame) {
    return Objects.requireNonNull(air(frame).leastSeen()).front();
  }

  private static Frame.Position open(Frame.Position covered) {
    return new Frame.Position(covered.name(), covered.xMillimetres(), covered.patterns(), true);
  }

  @Test
  void noFrameOfSomeHasADragAreaOutsideThatOfAll() {
    var broad = with(frame(), "armWidthMillimetres", new Frame.ArmWidth(40, 40));
    var tall = with(frame(), "heights", List.of(new Frame.PlateHeight(60, 0)));
    var stated = with(frame(), "dragAreaSquareMetres", 0.004);
    var unknown = with(frame(), "armWidthMillimetres", null);
    var airs =
        Stream.of(frame(), broad, tall, stated, unknown).map(FrameAirTest::air).toList();
    for (var some = 1; some < 1 << airs.size(); some++) {
      var members = new ArrayList<FrameAir>();
      for (var index = 0; index < airs.size(); index++) {
        if ((some >> index & 1) == 1) {
          members.add(airs.get(index));
        }
      }
      var any = FrameAir.any(members.stream());
      for (var grams = 40.0; grams < 1000; grams *= 1.7) {
        for (var one : members) {
          var area = one.leastDragArea(grams, battery());
          assertThat(any.leastDragArea(grams)).isLessThanOrEqualTo(area);
          assertThat(any.leastDragArea(grams, battery())).isLessThanOrEqualTo(area);
          assertThat(any.mostDragArea(grams, battery())).isGreaterThanOrEqualTo(area);
        }
      }
      assertThat(any.isDragKnown()).isEqualTo(members.size() == 1);
      assertThat(any.hasDragOf(members.get(0))).isEqualTo(members.size() == 1);
    }
  }
}
