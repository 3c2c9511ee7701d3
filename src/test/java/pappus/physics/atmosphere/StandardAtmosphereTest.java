package pappus.physics.atmosphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class StandardAtmosphereTest {

  @ParameterizedTest(name = "{0} m")
  @CsvFileSource(resources = "standard-atmosphere.csv")
  void matchesThePublishedTable(
      double altitudeM,
      double temperatureK,
      double pressurePa,
      double densityKgPerM3,
      double densityToleranceKgPerM3) {
    var air = StandardAtmosphere.at(altitudeM);

    assertThat(air.temperatureK()).isCloseTo(temperatureK, within(0.0005));
    assertThat(air.pressurePa()).isCloseTo(pressurePa, within(0.05));
    assertThat(air.densityKgPerM3()).isCloseTo(densityKgPerM3, within(densityToleranceKgPerM3));
  }

  /** ISO 2533 at sea level, 1.7894e-5 Pa·s; from memory, not re-read in print. */
  @Test
  void viscosityAtSeaLevelIsTheStandards() {
    assertThat(StandardAtmosphere.at(0).viscosityPaS()).isCloseTo(1.7894e-5, within(0.00005e-5));
  }

  @Test
  void warmAirIsThinnerAtTheSamePressure() {
    var standard = StandardAtmosphere.at(2000);
    var hot = StandardAtmosphere.at(2000, 303.15);

    assertThat(hot.pressurePa()).isEqualTo(standard.pressurePa());
    assertThat(hot.densityKgPerM3() * hot.temperatureK())
        .isCloseTo(standard.densityKgPerM3() * standard.temperatureK(), within(1e-9));
    assertThat(hot.viscosityPaS()).isGreaterThan(standard.viscosityPaS());
  }

  @Test
  void refusesAltitudesAboveItsLayer() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> StandardAtmosphere.at(12_000))
        .withMessage("altitudeM must be from -430 to 11000, but is 12000.");
  }

  @Test
  void guessesThatALowTemperatureIsInCelsius() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> StandardAtmosphere.at(0, 25))
        .withMessage("temperatureK must be from 213.15 to 333.15, but is 25. Maybe it is in °C.");
  }
}
