package pappus.physics.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DiscsAheadTest {
  private static final DiscsAhead FRONT = new DiscsAhead(75, 75, 63.5, 14);

  /** From 30 mm: atan2(75, 45) = 59.036°, asin(63.5/87.464) = 46.553°. */
  @ParameterizedTest(name = "{0} mm: {1}°")
  @CsvSource({"30, 12.483", "75, 32.149", "0, 8.224", "100, 54.996", "12, 9.556"})
  void theFreeHalfAngleIsTheFormulasOwn(double lensX, double degrees) {
    assertThat(FRONT.freeHalfAngle(lensX)).isCloseTo(degrees, within(0.001));
  }

  @Test
  void withinADiscNothingIsFree() {
    assertThat(new DiscsAhead(75, 60, 63.5, 14).freeHalfAngle(70)).isZero();
    assertThat(new DiscsAhead(300, 40, 63.5, 14).freeHalfAngle(0)).isZero();
  }

  @Test
  void aRayAtTheFreeHalfAngleTouchesTheDisc() {
    var angle = StrictMath.toRadians(FRONT.freeHalfAngle(30));
    var nearest = Math.abs(StrictMath.sin(angle) * (75 - 30) - StrictMath.cos(angle) * 75);

    assertThat(nearest).isCloseTo(63.5, within(1e-9));
  }

  /** A disc without end below a level lens fills the lower half, one above a lens that looks down 15 of 90° a third. */
  @Test
  void aBoundlessDiscFillsThePictureToTheHorizon() {
    var below = new DiscsAhead(0, 1, 1e9, -10);

    assertThat(below.covered(0, 0, 0, 100, 80)).isCloseTo(0.5, within(0.005));
    assertThat(below.covered(0, 0, 30, 2, 120)).isCloseTo(0.25, within(0.01));
    assertThat(new DiscsAhead(0, 1, 1e9, 10).covered(0, 0, -15, 2, 90))
        .isCloseTo(1.0 / 3, within(0.01));
  }

  /** A small disc far ahead: π R² sin(elevation)/d² over the picture's angles. */
  @Test
  void aSmallDiscFarAwayCoversWhatItLooksLike() {
    var far = new DiscsAhead(1000, 0.001, 120, -250);
    var distance = Math.hypot(1000, 250);
    var looks = Math.PI * 120 * 120 * (250 / distance) / (distance * distance);
    var picture = Math.toRadians(50) * Math.toRadians(50);

    assertThat(far.covered(0, 0, 0, 50, 50)).isCloseTo(looks / picture, within(0.002));
  }

  @Test
  void aDiscAtTheLensesOwnHeightIsALine() {
    assertThat(FRONT.covered(30, 14, 20, 150, 110)).isZero();
    assertThat(FRONT.covered(30, 13, 20, 150, 110)).isGreaterThan(0);
  }

  @Test
  void theHorizonRisesAsTheAircraftLeans() {
    assertThat(DiscsAhead.horizon(12, 12, 90)).isZero();
    assertThat(DiscsAhead.horizon(30, 12, 90)).isCloseTo(0.4, within(1e-12));
    assertThat(DiscsAhead.horizon(0, 45, 90)).isEqualTo(-1);
  }

  /** The largest disc that leaves an angle free leaves just that. */
  @ParameterizedTest
  @ValueSource(doubles = {1, 10, 30, 44.9})
  void theLargestDiscLeavesJustTheAngleFree(double degrees) {
    var radius = DiscsAhead.largestRadius(75, 75, degrees);

    assertThat(new DiscsAhead(75, 75, radius, 14).freeHalfAngle(0))
        .isCloseTo(degrees, within(1e-9));
  }

  @Test
  void noDiscLeavesMoreThanItsMiddleAndOneBesideTheLensMayReachIt() {
    assertThat(DiscsAhead.largestRadius(75, 75, 45.1)).isZero();
    assertThat(DiscsAhead.largestRadius(-30, 40, 10)).isCloseTo(50, within(1e-9));
    assertThat(DiscsAhead.largestRadius(0, 40, 10))
        .isCloseTo(40 * Math.cos(Math.toRadians(10)), within(1e-9));
  }

  /** A small picture that points at a small disc far away, and a wide one that has one on either side. */
  @Test
  void aTiltedLensSeesWhatItPointsAt() {
    var distance = Math.hypot(1000, 250);
    var looks = Math.PI * 120 * 120 * (250 / distance) / (distance * distance);
    var down = Math.toDegrees(Math.atan2(250, 1000));
    var small = Math.toRadians(20) * Math.toRadians(12);

    assertThat(new DiscsAhead(1000, 0.001, 120, -250).covered(0, 0, -down, 20, 12))
        .isCloseTo(looks / small, within(0.01));
    assertThat(new DiscsAhead(1000, 0.001, 120, 250).covered(0, 0, down, 20, 12))
        .isCloseTo(looks / small, within(0.01));
    assertThat(new DiscsAhead(1000, 0.001, 120, 250).covered(0, 0, -down, 20, 12))
        .isZero();

    var beside = Math.hypot(distance, 300);
    var two = 2 * Math.PI * 120 * 120 * (250 / beside) / (beside * beside);
    assertThat(new DiscsAhead(1000, 300, 120, -250).covered(0, 0, -down, 60, 12))
        .isCloseTo(two / (Math.toRadians(60) * Math.toRadians(12)), within(0.01));
    assertThat(new DiscsAhead(2000, 300, 120, -250).covered(1000, 0, -down, 60, 12))
        .isCloseTo(two / (Math.toRadians(60) * Math.toRadians(12)), within(0.01));
  }
}
