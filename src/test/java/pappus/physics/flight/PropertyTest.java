package pappus.physics.flight;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import pappus.physics.battery.Pack;
import pappus.physics.motor.SpeedController;

/** What must hold for every aircraft; invented ones from a fixed seed. */
@Tag("slow")
class PropertyTest {
  private static final int DRAWS = 300;

  private static Pack pack(Random random) {
    return Examples.lipo(2 + random.nextInt(5), 0.3 + 1.5 * random.nextDouble());
  }

  @Test
  void noHoverBeatsMomentumTheory() {
    var random = new Random(1);
    for (var draw = 0; draw < DRAWS; draw++) {
      var hover = Hover.of(Examples.random(random));
      var busVolts = hover.steady().point().volts() * (1 + 3 * random.nextDouble());

      assertThat(hover.steady().shaftPowerW()).isGreaterThan(hover.idealPowerW());
      assertThat(hover.efficiency(busVolts)).isBetween(0.0, 1.0);
    }
  }

  @Test
  void powerRisesWithWeightAtAnyVolts() {
    var random = new Random(2);
    for (var draw = 0; draw < DRAWS; draw++) {
      var aircraft = Examples.random(random);
      var busVolts = 5 + 20 * random.nextDouble();
      var last = 0.0;
      for (var factor = 0.5; factor < 2; factor += 0.05) {
        var hover = Hover.of(Examples.heavier(aircraft, factor));
        assertThat(hover.steady().busPowerW(busVolts)).isGreaterThan(last);
        last = hover.steady().busPowerW(busVolts);
      }
    }
  }

  /** What bounds rely on where ripple is much of what is taken. */
  @Test
  void powerRisesWithWeightWhereTheControllerSaysSo() {
    var random = new Random(21);
    var sure = 0;
    for (var draw = 0; draw < DRAWS; draw++) {
      var plain = Examples.random(random);
      for (var ripple = 0.02; ripple < 60; ripple *= 1.5) {
        var rotor = new Rotor(
            plain.rotor().propeller(), plain.rotor().motor(), new SpeedController(ripple, 0.04));
        var aircraft = new Aircraft(plain.airframe(), plain.rotorCount(), rotor, plain.avionicsW());
        var light = Hover.of(aircraft).steady();
        if (!rotor.controller().risesWithThrust(light.point())) {
          continue;
        }
        sure++;
        var volts = light.point().volts() * (1.01 + random.nextDouble());
        var heavy = Hover.of(Examples.heavier(aircraft, 1.001 + 0.3 * random.nextDouble()))
            .steady();
        assertThat(heavy.busPowerW(volts)).isGreaterThan(light.busPowerW(volts));
      }
    }
    assertThat(sure).isGreaterThan(5 * DRAWS);
  }

  @Test
  void powerRisesWithTheHeatOfTheWindingAndWithEveryLoss() {
    var random = new Random(3);
    for (var draw = 0; draw < DRAWS; draw++) {
      var aircraft = Examples.random(random);
      var cold = Hover.of(aircraft);
      var volts = 2 * cold.steady().point().volts();

      var warm = Hover.of(aircraft.warmedInHover(5, 308.15));

      assertThat(warm.steady().busPowerW(volts)).isGreaterThan(cold.steady().busPowerW(volts));
      assertThat(warm.steady().point().currentA())
          .isEqualTo(cold.steady().point().currentA());
    }
  }

  @Test
  void enduranceFallsWithWeight() {
    var random = new Random(4);
    for (var draw = 0; draw < DRAWS; draw++) {
      var aircraft = Examples.random(random);
      var pack = pack(random);
      var limits = draw % 2 == 0 ? Limits.NONE : new Limits(12, 14, 20, 30, 25);
      var rule = new LandingRule(0.2 * random.nextDouble(), 2 + 1.6 * random.nextDouble());
      var last = Double.POSITIVE_INFINITY;
      for (var factor = 0.5; factor < 4; factor += 0.1) {
        var hover = Hover.of(Examples.heavier(aircraft, factor));
        var endurance = Endurance.of(hover.steady(), pack, rule, limits);
        assertThat(endurance.seconds()).isLessThanOrEqualTo(last).isNotNegative();
        if (last > 0 && endurance.seconds() > 0) {
          assertThat(endurance.seconds()).isLessThan(last);
        }
        last = endurance.seconds();
      }
    }
  }

  @Test
  void fullThrottleIsAlwaysANumberWithinItsLimits() {
    var random = new Random(5);
    for (var draw = 0; draw < 3 * DRAWS; draw++) {
      var aircraft = Examples.random(random);
      var pack = pack(random);
      var limits = new Limits(
          amps(random), amps(random), 3 * amps(random), 3 * amps(random), 3 * amps(random));
      var floor = 2.5 + 1.5 * random.nextDouble();

      var full = FullThrottle.of(aircraft, pack, random.nextDouble(), floor, limits);

      assertThat(full.thrustN()).isNotNegative().isFinite();
      assertThat(full.duty()).isBetween(0.0, 1.0);
      if (full.thrustN() > 0) {
        var slack = 1 + 1e-8;
        assertThat(full.point().currentA()).isLessThanOrEqualTo(limits.eachMotorA() * slack);
        assertThat(full.busCurrentA()).isLessThanOrEqualTo(limits.busA() * slack);
        assertThat(full.busVolts() * slack).isGreaterThanOrEqualTo(floor * pack.series());
      }
    }
  }

  private static double amps(Random random) {
    return random.nextInt(3) == 0 ? Double.POSITIVE_INFINITY : 1 + 20 * random.nextDouble();
  }

  @Test
  void lessIsNeverMoreThrust() {
    var random = new Random(6);
    for (var draw = 0; draw < DRAWS; draw++) {
      var aircraft = Examples.random(random);
      var pack = pack(random);
      var wide = new Limits(20, 20, 60, 60, 60);
      var narrow =
          new Limits(10 + 10 * random.nextDouble(), 20, 20 + 40 * random.nextDouble(), 60, 60);

      var much = FullThrottle.of(aircraft, pack, 0.5, 3, wide).thrustN();

      assertThat(FullThrottle.of(aircraft, pack, 0.5, 3, narrow).thrustN())
          .isLessThanOrEqualTo(much * (1 + 1e-9));
      assertThat(FullThrottle.of(aircraft, pack, 0.2, 3, wide).thrustN())
          .isLessThanOrEqualTo(much * (1 + 1e-9));
      assertThat(FullThrottle.of(aircraft, pack, 0.5, 3.4, wide).thrustN())
          .isLessThanOrEqualTo(much * (1 + 1e-9));
    }
  }
}
