package pappus.sight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static pappus.part.Parts.build;
import static pappus.part.Parts.with;

import org.junit.jupiter.api.Test;
import pappus.answers.build.SightWords;
import pappus.assessment.Desk;
import pappus.part.CameraView;
import pappus.part.Parts;

class SightTest {
  private static final CameraView VIEW = new CameraView(150, 110, 20.0, 1.0);

  /** Motors 130 mm apart, discs of 101.6 mm, the camera at 60 mm: atan2(65, 5) − asin(50.8/65.192) = 34.411°. */
  @Test
  void itIsClearBetweenTheFrontDiscs() {
    var sight = Sight.of(build()).orElseThrow();

    assertThat(sight.freeHalfAngle()).isCloseTo(34.411, within(0.001));
    assertThat(Sight.clearDegrees(Parts.frame(), Parts.propeller()))
        .isEqualTo(2 * sight.freeHalfAngle());
    assertThat(sight.covered()).isEmpty();
    assertThat(sight.horizon(10)).isEmpty();
  }

  /** What a search leaves out by the largest disc is what the limit refuses. */
  @Test
  void theLargestDiscLeavesJustSoMuchClear() {
    for (var x : new double[] {20, 60, 64, 90}) {
      var frame = with(Parts.frame(), "cameraXMillimetres", x);
      for (var degrees = 1.0; degrees <= 180; degrees += 7) {
        var inches = Sight.largestDisc(frame, degrees) / 25.4;
        if (inches < 1.01 || inches > 7.9) {
          continue;
        }
        assertThat(
                Sight.clearDegrees(frame, with(Parts.propeller(), "diameterInches", inches - 1e-9)))
            .isGreaterThanOrEqualTo(degrees - 1e-9);
        assertThat(
                Sight.clearDegrees(frame, with(Parts.propeller(), "diameterInches", inches + 0.01)))
            .isLessThan(degrees);
      }
    }
  }

  /** Where discs are above the lens, they are seen in the picture's upper half, else in its lower. */
  @Test
  void aKnownLensSeesDiscsAboveOrBelowIt() {
    var camera = with(Parts.camera(), "view", VIEW);
    var low = with(
        with(with(Parts.frame(), "cameraHeightMillimetres", 0.0), "discHeightMillimetres", 20.0),
        "cameraXMillimetres",
        20.0);
    var level = with(low, "cameraHeightMillimetres", 19.0);

    assertThat(Sight.of(build(low, camera)).orElseThrow().covered().getAsDouble())
        .isBetween(0.02, 0.5);
    assertThat(Sight.of(build(level, camera)).orElseThrow().covered().getAsDouble())
        .isZero();
    assertThat(Sight.of(build(low, camera)).orElseThrow().horizon(31).getAsDouble())
        .isCloseTo(0.2, within(1e-12));
  }

  @Test
  void itIsToldInASentence() {
    assertThat(SightWords.sentence(Desk.assess(build())).orElseThrow())
        .startsWith("Ahead of the camera 34° to either side are clear of propellers")
        .doesNotContain("picture");
    assertThat(SightWords.sentence(Desk.assess(build(with(Parts.camera(), "view", VIEW))))
            .orElseThrow())
        .contains("it sees 75°")
        .contains(" % of its picture")
        .doesNotContain("horizon");
  }
}
