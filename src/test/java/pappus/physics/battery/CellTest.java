package pappus.physics.battery;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class CellTest {

  /** Of two, the best of each figure. */
  @Test
  void theBestOfTwoHasTheLeastResistanceAndTheMostCharge() {
    var small = Cell.of(Chemistry.LIPO, 3000, 0.010, 1, Condition.STANDARD);
    var large = Cell.of(Chemistry.LIPO, 6000, 0.020, 0.1, Condition.STANDARD).inParallel(2);

    for (var best : new Cell[] {small.best(large), large.best(small)}) {
      assertThat(best.resistanceOhm().at(0.5)).isEqualTo(small.resistanceOhm().at(0.5));
      assertThat(best.capacityCoulomb()).isEqualTo(large.capacityCoulomb());
      assertThat(best.slowOhm()).isEqualTo(Math.min(small.slowOhm(), large.slowOhm()));
      assertThat(best.warming().kelvinPerWatt()).isEqualTo(8);
      assertThat(best.startCharge()).isEqualTo(1);
    }
  }
}
