package pappus.physics.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Line2D;
import java.util.Arrays;
import java.util.Random;
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

  @Test
  void movesWithWhatItIsOf() {
    for (var by : new double[] {-37, 1000}) {
      var moved = Outline.polygon(
          Arrays.stream(XS).map(x -> x + by).toArray(),
          Arrays.stream(YS).map(y -> y - by).toArray());

      assertThat(moved.area()).isCloseTo(1800, within(1e-9));
      assertThat(moved.x()).isCloseTo(70 / 3.0 + by, within(1e-9));
    }
  }

  /** Against the segments of java.awt.geom, on a grid so coarse that sides often touch or lie in a line. */
  @Test
  void sidesMeetWhereThoseOfAnotherLibraryDo() {
    var random = new Random(5);
    var crossed = 0;
    for (var draw = 0; draw < 4000; draw++) {
      var count = 4 + random.nextInt(3);
      var corners = random
          .ints(0, 25)
          .distinct()
          .limit(count)
          .mapToObj(at -> new double[] {at / 5 - 2, at % 5 - 1})
          .toList();
      var xs = corners.stream().mapToDouble(corner -> corner[0]).toArray();
      var ys = corners.stream().mapToDouble(corner -> corner[1]).toArray();
      var meets = false;
      for (var i = 0; i < count; i++) {
        for (var j = i + 2; j < count; j++) {
          var a = (i + 1) % count;
          var b = (j + 1) % count;
          meets |= b != i
              && Line2D.linesIntersect(xs[i], ys[i], xs[a], ys[a], xs[j], ys[j], xs[b], ys[b]);
        }
      }
      crossed += meets ? 1 : 0;

      assertThat(Outline.crossesItself(xs, ys))
          .as("%s %s", Arrays.toString(xs), Arrays.toString(ys))
          .isEqualTo(meets);
    }
    assertThat(crossed).isBetween(1000, 3800);
  }
}
