package pappus.physics.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import pappus.physics.motor.WindingHeat;

/**
 * Values this program computed itself, to notice unintended changes. They prove nothing about the physics;
 * the validation tests do.
 */
class FlightRegressionTest {

  @Test
  void theFiveInchExampleHasNotMoved() {
    var aircraft = Examples.fiveInch(0.25);
    var pack = Examples.lipo(4, 0.85);
    var hover = Hover.of(aircraft);
    var endurance = Endurance.of(hover.steady(), pack, new LandingRule(0.2, 3.5), Limits.NONE);
    var full = FullThrottle.of(aircraft, pack, 0.5, 3, Limits.NONE);
    var cruise = new ForwardFlight(aircraft, hover).bestRange(new Leg(1000, 0, 0));

    assertThat(endurance.seconds()).isCloseTo(522.8241042, within(1e-3));
    assertThat(hover.steady().busPowerW(15)).isCloseTo(66.8907627, within(1e-5));
    assertThat(full.thrustN()).isCloseTo(20.0705341, within(1e-5));
    assertThat(cruise.airspeedMPerS()).isCloseTo(10.7996072, within(1e-3));
    assertThat(WindingHeat.windingK(
            aircraft.rotor().motor(), hover.steady().point().currentA(), 5, 298.15))
        .isCloseTo(299.9112132, within(1e-3));
  }
}
