package pappus.physics.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pappus.physics.propeller.PropellerModel;
import pappus.quantity.Units;

/** Momentum theory worked by an independent program, at half of its last digit. */
class MomentumValidationTest {

  /** 0.25 kg under four discs of 0.127 m. */
  @ParameterizedTest(name = "{0} kg/m³")
  @CsvSource({"1.225, 4.44394, 10.89505", "1.00655, 4.90252, 12.01931"})
  void leastHoverPower(double densityKgPerM3, double inducedMPerS, double powerW) {
    var weightN = 0.25 * Units.GRAVITY_M_PER_S2;
    var areaM2 =
        4 * PropellerModel.ofPair(0.127, 0.13, 0.06).in(densityKgPerM3, 1.8e-5).discAreaM2();

    assertThat(Momentum.hoverInducedMPerS(weightN, densityKgPerM3, areaM2))
        .isCloseTo(inducedMPerS, within(0.000005));
    assertThat(Momentum.idealPowerW(weightN, densityKgPerM3, areaM2))
        .isCloseTo(powerW, within(0.000005));
  }

  /** Glauert's formula: induced over hover's induced speed at V over hover's induced speed. */
  @ParameterizedTest(name = "{1} at {0}°")
  @CsvSource({
    "0, 1, .786151", "0, 2, .485868", "0, 3, .331319",
    "10, 1, .743200", "10, 2, .469025", "10, 3, .325388"
  })
  void inducedSpeedInForwardFlight(double tiltDegrees, double airspeed, double induced) {
    var tiltSine = Math.sin(Math.toRadians(tiltDegrees));

    assertThat(Momentum.inducedMPerS(5, 5 * airspeed, tiltSine) / 5)
        .isCloseTo(induced, within(0.0000005));
  }
}
