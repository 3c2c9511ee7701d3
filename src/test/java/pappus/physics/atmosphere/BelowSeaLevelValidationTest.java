package pappus.physics.atmosphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * ISO 2533 below sea level, where its troposphere goes on: its formulas worked by an independent program, geopotential
 * altitude, at half of the last digit.
 */
class BelowSeaLevelValidationTest {

  @ParameterizedTest(name = "{0} m")
  @CsvSource({
    "-430, 290.945, 106598.4, 1.27637",
    "-400, 290.750, 106223.4, 1.27274",
    "-200, 289.450, 103750.8, 1.24869"
  })
  void airOfLowLand(double altitudeM, double temperatureK, double pressurePa, double density) {
    var air = StandardAtmosphere.at(altitudeM);

    assertThat(air.temperatureK()).isCloseTo(temperatureK, within(0.0005));
    assertThat(air.pressurePa()).isCloseTo(pressurePa, within(0.05));
    assertThat(air.densityKgPerM3()).isCloseTo(density, within(0.000006));
  }

  @Test
  void refusesWhatIsBelowAllLand() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> StandardAtmosphere.at(-431))
        .withMessage("altitudeM must be from -430 to 11000, but is -431.");
  }
}
