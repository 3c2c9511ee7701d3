package pappus.physics.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class WarmingTest {
  private static Pack pack(Chemistry chemistry, double takeOffK, int parallel) {
    var condition = new Condition(takeOffK, Ageing.NEW, 1, 1);
    return Pack.of(Cell.of(chemistry, 3.5 * 3600, 0.04, 1, condition), 2, parallel, 0.01);
  }

  @Test
  void aHoverWarmsTheCellsAndEasesTheirCurrentButNotFullThrottle() {
    var cold = pack(Chemistry.LI_ION_ENERGY, 298.15, 1);

    var warm = cold.warmedBy(Load.ofPower(30));

    assertThat(warm.steadyOhm(0.5))
        .isLessThan(cold.steadyOhm(0.5))
        .isGreaterThan(0.6 * cold.steadyOhm(0.5));
    assertThat(warm.burstOhm(0.5)).isEqualTo(cold.burstOhm(0.5));
    assertThat(warm.wiringOhm()).isEqualTo(cold.wiringOhm());
  }

  @Test
  void cellsInParallelShareTheCurrentAndStayCooler() {
    var one = pack(Chemistry.LI_ION_ENERGY, 298.15, 1);
    var two = pack(Chemistry.LI_ION_ENERGY, 298.15, 2);

    assertThat(two.warmth(4)).isGreaterThan(one.warmth(4));
    // Each of two cells under half the current, for as long as one under it.
    assertThat(two.warmth(8)).isCloseTo(one.warmth(4), within(1e-12));
  }

  /** What bounds rely on: more load never sags less, however it warms the cells. */
  @Test
  void moreLoadNeverSagsLess() {
    var random = new Random(41);
    for (var draw = 0; draw < 400; draw++) {
      var chemistry = List.of(Chemistry.values()).get(draw % 4);
      var pack = pack(chemistry, 273.15 + 40 * random.nextDouble(), 1 + draw % 3);
      var charge = random.nextDouble();
      var last = Double.POSITIVE_INFINITY;
      for (var watts = 2.0; watts < 400; watts *= 1.05) {
        var load = Load.ofPower(watts);
        var volts = load.balanceVolts(
            pack.openVolts(charge), pack.warmedBy(load).steadyOhm(charge), pack.openVolts(charge));
        assertThat(volts).isLessThan(last);
        if (volts < 0) {
          break;
        }
        last = volts;
      }
    }
  }
}
