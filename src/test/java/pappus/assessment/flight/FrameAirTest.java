package pappus.assessment.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static pappus.part.Parts.frame;
import static pappus.part.Parts.with;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import pappus.part.Frame;
import pappus.physics.airframe.ArmShadow;
import pappus.scenario.Flight;

class FrameAirTest {
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
    var assumed = air(frame());
    var any = FrameAir.any(Stream.of(stated, assumed));

    assertThat(stated.leastDragArea(900)).isEqualTo(0.008);
    assertThat(assumed.leastDragArea(250)).isCloseTo(0.0065, within(1e-15));
    assertThat(assumed.leastDragArea(2000)).isCloseTo(4 * 0.0065, within(1e-12));
    assertThat(any.leastDragArea(250)).isCloseTo(0.0065, within(1e-15));
    assertThat(any.mostDragArea(250)).isEqualTo(0.008);
    assertThat(stated.isDragKnown()).isTrue();
    assertThat(assumed.isDragKnown()).isTrue();
    assertThat(any.isDragKnown()).isFalse();
  }
}
