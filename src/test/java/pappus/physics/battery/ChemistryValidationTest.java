package pappus.physics.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.analysis.integration.TrapezoidIntegrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Against the measured curves; the source of each row stands in the file. */
class ChemistryValidationTest {

  @ParameterizedTest(name = "{0} at {1}")
  @CsvFileSource(resources = "open-circuit-volts.csv")
  void restedVoltsAreTheMeasuredOnes(String curve, double charge, double volts, String source) {
    var name = curve.replace(" second", "");
    var modelled = Chemistry.valueOf(name).openCircuitVolts().at(charge);

    if (curve.equals(name)) {
      assertThat(modelled).isCloseTo(volts, within(1e-12));
    } else if (charge >= 0.1) {
      assertThat(modelled).isCloseTo(volts, within(secondSourceVolts(name, charge)));
    }
  }

  /** How far two sources of one curve were found apart. */
  private static double secondSourceVolts(String name, double charge) {
    return switch (name) {
      case "LIPO" -> 0.0275;
      case "LI_ION_ENERGY" -> 0.0345;
      default -> charge < 0.25 ? 0.0855 : 0.0395;
    };
  }

  /**
   * Mean volts from full to a fifth, computed from the same tables, at half of the last digit plus half of the
   * tables' own last digit.
   */
  @ParameterizedTest(name = "{0}")
  @CsvSource({"LIPO, 3.906", "LIHV, 3.958", "LI_ION_ENERGY, 3.826", "LI_ION_POWER, 3.833"})
  void meanVoltsDownToAFifth(Chemistry chemistry, double volts) {
    // A multiple of 16 trapezoids a knot is exact on straight pieces.
    var curve = chemistry.openCircuitVolts();
    var sum = 0.0;
    for (var piece = 4; piece < 20; piece++) {
      sum += new TrapezoidIntegrator(1e-10, 1e-12, 1, 20)
          .integrate(1000, curve::at, piece / 20.0, (piece + 1) / 20.0);
    }

    assertThat(sum / 0.8).isCloseTo(volts, within(0.0005 + 0.00005));
  }

  /** A pack for 4.35 V charged to 4.20 V: 0.894 of its table. */
  @Test
  void startOfAHighVoltagePackChargedLikeAnOrdinaryOne() {
    assertThat(Chemistry.LIHV.chargeAtVolts(4.20)).isCloseTo(0.894, within(0.0005));
    assertThat(Chemistry.LIHV.chargeAtVolts(4.35)).isEqualTo(1);
  }

  /** The law's own values, printed to two digits. */
  @ParameterizedTest(name = "{0} at {1} K")
  @CsvSource({
    "LIPO, 273.15, 3.6",
    "LIPO, 283.15, 2.1",
    "LI_ION_POWER, 273.15, 2.5",
    "LI_ION_ENERGY, 283.15, 1.7"
  })
  void resistanceOfTheColdCell(Chemistry chemistry, double temperatureK, double factor) {
    assertThat(chemistry.temperatureResistanceFactor(temperatureK)).isCloseTo(factor, within(0.05));
  }

  /**
   * Measured over that at 23.9 °C at 5 C, state of charge 0.47: Kollmeyer and Skells 2020. The law's residual
   * is 10 to 12 %.
   */
  @ParameterizedTest(name = "{0} °C")
  @CsvSource({"-10, 5.7", "-0.6, 3.5", "9.3, 2.2", "38.4, .56"})
  void resistanceFollowsTheMeasuredCellWithinTheLawsResidual(double celsius, double factor) {
    var law = Chemistry.LIPO.temperatureResistanceFactor(273.15 + celsius)
        / Chemistry.LIPO.temperatureResistanceFactor(273.15 + 23.9);

    assertThat(law / factor).isCloseTo(1, within(0.12));
  }

  /** Same cell, share of the charge at 25 °C: 0.935 at −10 °C, 0.984 at 0, 0.993 at 10. */
  @ParameterizedTest(name = "{0} °C")
  @CsvSource({"-10, .935, .93", "0, .984, .98", "10, .993, .988", "25, 1, 1", "40, 1.004, 1"})
  void coldTakesLittleCharge(double celsius, double measured, double law) {
    var factor = Temperature.capacityFactor(273.15 + celsius);

    assertThat(factor).isCloseTo(law, within(1e-9));
    assertThat(factor).isCloseTo(measured, within(0.006));
  }

  /** Same cell, 24 °C, 2 C for ten seconds. */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "1, 1.03",
    ".95, 1.05",
    ".9, 1.06",
    ".8, 1.05",
    ".7, .97",
    ".6, .95",
    ".5, 1",
    ".4, 1.05",
    ".3, 1.09",
    ".25, 1.11",
    ".2, 1.16",
    ".15, 1.22",
    ".1, 1.40",
    ".05, 2.1",
    "0, 3"
  })
  void resistanceOverCharge(double charge, double factor) {
    assertThat(Chemistry.LIPO.resistanceShape().at(charge)).isCloseTo(factor, within(1e-9));
  }

  /** ASTM B258, Ω/km, at half of the last digit. */
  @ParameterizedTest(name = "{0} AWG")
  @CsvSource({"18, 20.95, .005", "20, 33.3, .05", "22, 52.96, .005"})
  void copperWire(int gauge, double ohmPerKm, double tolerance) {
    assertThat(1000 * CopperWire.ohmPerM(gauge)).isCloseTo(ohmPerKm, within(tolerance));
  }
}
