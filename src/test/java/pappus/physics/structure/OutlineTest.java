package pappus.physics.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class OutlineTest {
  /** An L of 60 by 20 and 20 by 30 mm. */
  private static final double[] XS = {0, 60, 60, 20, 20, 0};

  private static final double[] YS = {0, 0, 20, 20, 50, 50};

  @Test
  void anAngleIsItsTwoRectangles() {
    var whole = Outline.polygon(XS, YS);

    assertThat(whole.area()).isCloseTo(60 * 20 + 20 * 30, within(1e-9));
    assertThat(whole.x()).isCloseTo((1200 * 30 + 600 * 10) / 1800.0, within(1e-9));
  }

  @Test
  void itDoesNotMatterWhichWayRoundNorWhere() {
    var back = Outline.polygon(
        new double[] {1000, 1000, 1020, 1020, 1060, 1060}, new double[] {0, 50, 50, 20, 20, 0});

    assertThat(back.area()).isCloseTo(1800, within(1e-9));
    assertThat(back.x()).isCloseTo(1000 + 70 / 3.0, within(1e-9));
  }

  @Test
  void aHoleTakesItsAreaAndMovesTheMiddleAway() {
    var left = Outline.polygon(XS, YS).without(Outline.circle(10, 8));

    assertThat(left.area()).isCloseTo(1800 - Math.PI * 16, within(1e-9));
    assertThat(left.area() * left.x()).isCloseTo(42_000 - Math.PI * 16 * 10, within(1e-9));
  }

  @Test
  void sidesThatCrossAreFound() {
    assertThat(Outline.crossesItself(XS, YS)).isFalse();
    assertThat(Outline.crossesItself(new double[] {0, 10, 10, 0}, new double[] {0, 10, 0, 10}))
        .isTrue();
    assertThat(Outline.crossesItself(new double[] {0, 10, 5, 5}, new double[] {0, 0, 0, 8}))
        .isTrue();
    assertThat(Outline.crossesItself(new double[] {0, 10, 5}, new double[] {0, 0, 8}))
        .isFalse();
  }
}
