package pappus.physics.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Seconds of one cell of constant resistance, worked by an independent program, within 0.1 %. Each case gives
 * its own cut-off; no temperature, no ageing.
 */
class DischargeValidationTest {

  /**
   * The curve of M. Chen and G. A. Rincón-Mora, IEEE Trans. Energy Conversion 21(2):504–511, 2006, which
   * stands in for the product's own curves here only.
   */
  private static double chenVolts(double charge) {
    return -1.031 * Math.exp(-35 * charge)
        + 3.685
        + 0.2156 * charge
        - 0.1178 * charge * charge
        + 0.3201 * charge * charge * charge;
  }

  private static Pack cell(Curve openCircuitVolts, double capacityAh, double ohm) {
    return Pack.of(
        new Cell(
            openCircuitVolts,
            Curve.constant(ohm),
            0,
            Warming.inDownwash(Chemistry.LIPO, 298.15),
            capacityAh * 3600,
            1),
        1,
        1,
        0);
  }

  private static Pack chenCell(double ohm) {
    var knots = IntStream.rangeClosed(0, 500).mapToDouble(knot -> knot / 500.0).toArray();
    var volts = IntStream.rangeClosed(0, 500)
        .mapToDouble(knot -> chenVolts(knot / 500.0))
        .toArray();
    return cell(Curve.of(knots, volts), 0.85, ohm);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({"1, 4.102900", ".5, 3.803362", ".2, 3.725029", ".1, 3.674569", "0, 2.654000"})
  void restedVoltsOfChenAndRinconMora(double charge, double volts) {
    assertThat(chenVolts(charge)).isCloseTo(volts, within(0.0000005));
    assertThat(chenCell(0.1).openVolts(charge)).isCloseTo(volts, within(0.0000005));
  }

  @ParameterizedTest(name = "{1} W or {2} A at {0} Ω")
  @CsvSource({
    "0.012, 10, 0, 3.3, 1126.204",
    "0.17099, 3, 0, 3.0, 3681.649",
    "0.17099, 0, 0.85, 3.0, 3534.157"
  })
  void secondsWithChensCurve(
      double ohm, double powerW, double currentA, double cutOffVolts, double seconds) {
    var load = new Load(0, 0, 0, currentA, powerW);

    var discharge = Discharge.of(chenCell(ohm), load, Until.drained(0, cutOffVolts));

    assertThat(discharge.seconds()).isCloseTo(seconds, withinPercentage(0.1));
    assertThat(discharge.ending()).isEqualTo(Discharge.Ending.LEAST_VOLTS);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "LIPO, 0.85, .018, 10, 3.3, 1129.13, .03249, 944.68",
    "LIHV, 0.85, .018, 10, 3.3, 1149.86, .02674, 957.69",
    "LI_ION_ENERGY, 3.0, .045, 15, 2.8, 2453.60, .04060, 2096.68",
    "LI_ION_POWER, 2.8, .025, 15, 2.8, 2386.97, .02351, 2006.15"
  })
  void secondsWithTheProductsCurves(
      Chemistry chemistry,
      double capacityAh,
      double ohm,
      double powerW,
      double cutOffVolts,
      double seconds,
      double endCharge,
      double secondsWithReserve) {
    var pack = cell(chemistry.openCircuitVolts(), capacityAh, ohm);
    var load = Load.ofPower(powerW);

    var whole = Discharge.of(pack, load, Until.drained(0, cutOffVolts));
    var reserved = Discharge.of(pack, load, Until.drained(0.2, cutOffVolts));

    assertThat(whole.seconds()).isCloseTo(seconds, withinPercentage(0.1));
    assertThat(whole.endCharge()).isCloseTo(endCharge, within(0.000005));
    assertThat(reserved.seconds()).isCloseTo(secondsWithReserve, withinPercentage(0.1));
    assertThat(reserved.ending()).isEqualTo(Discharge.Ending.RESERVE);
  }
}
