package pappus.physics.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Random;
import org.junit.jupiter.api.Test;

class LoadTest {
  /** Nearly open motors with much ripple: between 9 and 10 V the current rises with the volts. */
  private static final Load HUMP = new Load(30, 8, 2, 0.2, 3);

  private static Load random(Random random) {
    return new Load(
        5 + 60 * random.nextDouble(),
        2 + 8 * random.nextDouble(),
        3 * random.nextDouble() * random.nextDouble(),
        0.3 * random.nextDouble(),
        4 * random.nextDouble());
  }

  @Test
  void currentNeedNotFallWithTheVolts() {
    assertThat(HUMP.currentA(10)).isGreaterThan(HUMP.currentA(9));
    assertThat(HUMP.currentA(20)).isLessThan(HUMP.currentA(13));
  }

  @Test
  void fromTheVoltsOfACurrentOnNoMoreIsDrawn() {
    var random = new Random(31);
    for (var draw = 0; draw < 2000; draw++) {
      var load = draw % 4 == 0 ? HUMP : random(random);
      var allowed = load.currentA(3 + 20 * random.nextDouble());

      var volts = load.voltsAtCurrent(allowed);

      assertThat(load.currentA(volts)).isCloseTo(allowed, withinPercentage(1e-6));
      for (var above = volts * 1.0001; above < 40; above *= 1.01) {
        assertThat(load.currentA(above)).isLessThanOrEqualTo(allowed * (1 + 1e-9));
      }
    }
  }

  @Test
  void aCurrentBelowWhatNeverGoesAwayHasNoVolts() {
    assertThat(HUMP.voltsAtCurrent(0.2)).isEqualTo(Double.POSITIVE_INFINITY);
    assertThat(Load.ofCurrent(2).voltsAtCurrent(3)).isZero();
  }

  @Test
  void sourceAndLoadAgreeOnTheVoltsAndTheLessIsTakenTheHigherTheyAre() {
    var random = new Random(32);
    for (var draw = 0; draw < 2000; draw++) {
      var load = random(random);
      var open = 6 + 20 * random.nextDouble();
      var ohm = 0.3 * random.nextDouble();

      var volts = load.balanceVolts(open, ohm, open);

      if (volts < 0) {
        assertThat(open * open / (4 * ohm)).isLessThan(load.powerW(open / 2));
        continue;
      }
      assertThat(open - ohm * load.currentA(volts)).isCloseTo(volts, within(1e-6));
      assertThat(load.balanceVolts(open, ohm, 0.6 * open)).isCloseTo(volts, within(1e-6));
      assertThat(load.and(1).balanceVolts(open, ohm, open)).isLessThan(volts);
    }
  }

  @Test
  void withoutResistanceOrRippleItIsClosedForm() {
    assertThat(HUMP.balanceVolts(12, 0, 7)).isEqualTo(12);
    assertThat(Load.ofPower(24).voltsAtCurrent(2)).isEqualTo(12);
    // 12 V behind 0.1 Ω into 20 W: V² − 12 V + 2 = 0.
    assertThat(Load.ofPower(20).balanceVolts(12, 0.1, 12))
        .isCloseTo(6 + Math.sqrt(34), within(1e-12));
    assertThat(Load.ofCurrent(3).and(5).powerW(10)).isCloseTo(35, within(1e-12));
  }

  @Test
  void theGuessDoesNotMatter() {
    for (var guess : new double[] {0, 8.1, 10, 14.9, 20}) {
      assertThat(HUMP.balanceVolts(15, 0.2, guess))
          .isCloseTo(HUMP.balanceVolts(15, 0.2, 15), within(1e-9));
    }
  }
}
