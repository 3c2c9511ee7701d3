package pappus.physics.airframe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class SilhouetteTest {
  private static final double ROUNDING = 1 + 1e-14;

  /** A plate of 100 by 40 mm, 20 mm high, on a square of 150 mm, with arms of 8 by 3 mm. */
  private static final Silhouette QUAD = Silhouette.of(100, 40, 20, 150, 150, 8, 3);

  /**
   * Arms leave the plate by its sides, 4/15 of the way out: 11/15 of two times 212.132 mm are bare. From the front
   * 40·20 + 300·(11/15)·3 = 1460 mm², arms from above 2489.016 mm².
   */
  @Test
  void countsArmsWhereNoPlateCoversThem() {
    assertThat(QUAD.front()).isCloseTo(1460, within(1e-9));
    assertThat(QUAD.arms()).isCloseTo(2489.016, within(0.001));
    assertThat(Silhouette.of(100, 40, 20, 150, 150, 16, 3).arms())
        .isCloseTo(2 * QUAD.arms(), within(1e-9));
    assertThat(Silhouette.of(160, 160, 20, 150, 150, 8, 3).arms()).isZero();
  }

  /** 1.1 (A_front cos 12° + A_top sin 12°): a pack of 70 by 36 by 22 mm lies within the plate. */
  @Test
  void seesThePackFromTheFrontAndWhatOfItStandsOut() {
    var bare = 1.1e-6 * (1460 * 0.9781476 + (2489.016 + 4000) * 0.2079117);
    var within = 1.1e-6 * (36 * 22 * 0.9781476);
    var standsOut = 1.1e-6 * (36 * 22 * 0.9781476 + 36 * 20 * 0.2079117);

    assertThat(QUAD.dragAreaM2(0, 0, 0)).isCloseTo(bare, within(1e-9));
    assertThat(QUAD.dragAreaM2(70, 36, 22)).isCloseTo(bare + within, within(1e-9));
    assertThat(QUAD.dragAreaM2(120, 36, 22)).isCloseTo(bare + standsOut, within(1e-9));
  }

  @Test
  void theLeastOfTwoHasNoMoreDragThanEitherWhateverThePack() {
    var random = new SplittableRandom(20261130);
    for (var trial = 0; trial < 2000; trial++) {
      var one = any(random);
      var other = any(random);
      var pack = new double[] {
        random.nextDouble(20, 160), random.nextDouble(8, 60), random.nextDouble(5, 50)
      };
      var bare = one.least(other).dragAreaM2(0, 0, 0);
      var least = area(one.least(other), pack);
      var most = area(one.most(other), pack);

      assertThat(bare).isLessThan(least);
      assertThat(least)
          .isLessThanOrEqualTo(ROUNDING * Math.min(area(one, pack), area(other, pack)));
      assertThat(ROUNDING * most)
          .isGreaterThanOrEqualTo(Math.max(area(one, pack), area(other, pack)));
    }
  }

  private static double area(Silhouette silhouette, double... pack) {
    return silhouette.dragAreaM2(pack[0], pack[1], pack[2]);
  }

  private static Silhouette any(SplittableRandom random) {
    return Silhouette.of(
        random.nextDouble(20, 160),
        random.nextDouble(10, 80),
        random.nextDouble(8, 60),
        random.nextDouble(60, 250),
        random.nextDouble(60, 250),
        random.nextDouble(2, 40),
        random.nextDouble(1, 12));
  }

  /** Motors farther apart across than along: a fifth of the arms lies on the plate. */
  @Test
  void armsLeaveThePlateWhereTheyMeetItsEdgeFirst() {
    var wide = Silhouette.of(100, 40, 20, 200, 120, 8, 3);
    var narrow = Silhouette.of(60, 90, 20, 120, 200, 8, 3);

    assertThat(wide.front()).isCloseTo(40 * 20 + 2 * 200 * 0.8 * 3, within(1e-9));
    assertThat(wide.arms()).isCloseTo(2 * Math.hypot(200, 120) * 0.8 * 8, within(1e-9));
    assertThat(narrow.front()).isCloseTo(90 * 20 + 2 * 120 * 0.7 * 3, within(1e-9));
  }
}
