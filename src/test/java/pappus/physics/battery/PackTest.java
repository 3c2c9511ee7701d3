package pappus.physics.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PackTest {
  private static final double COULOMB = 0.85 * 3600;

  private static Pack pack(Condition condition) {
    return Pack.of(Cell.of(Chemistry.LIPO, COULOMB, 0.016, 1, condition), 4, 2, 0.006);
  }

  @Test
  void addsCellsInSeriesSharesThemInParallelAndKeepsItsWires() {
    var pack = pack(Condition.STANDARD);

    assertThat(pack.openVolts(1)).isCloseTo(4 * 4.1995, within(1e-12));
    assertThat(pack.capacityCoulomb()).isCloseTo(2 * 0.95 * COULOMB, within(1e-9));
    assertThat(pack.steadyOhm(0.5)).isCloseTo((1 + 0.8) * 4 * 0.016 / 2 + 0.006, within(1e-12));
    assertThat(pack.steadyOhm(0.1)).isCloseTo((1.4 + 0.8) * 4 * 0.016 / 2 + 0.006, within(1e-12));
  }

  @Test
  void aSecondOfFullThrottleSeesTwoThirdsOfTheCellsAndAllOfTheWires() {
    assertThat(pack(Condition.STANDARD).burstOhm(0.5))
        .isCloseTo(2.0 / 3 * 4 * 0.016 / 2 + 0.006, within(1e-12));
  }

  @Test
  void ageAndColdTakeChargeAndAddResistance() {
    var tired = pack(new Condition(273.15, Ageing.TIRED, 0.95, 1));
    var cold = Chemistry.LIPO.temperatureResistanceFactor(273.15);

    assertThat(tired.capacityCoulomb()).isCloseTo(2 * 0.95 * 0.98 * 0.80 * COULOMB, within(1e-9));
    assertThat(tired.steadyOhm(0.5))
        .isCloseTo(2 * cold * (1 + 0.8) * 0.016 * 2 + 0.006, within(1e-12));
  }

  @Test
  void lithiumIonAgesInItsOwnWay() {
    var used = new Condition(298.15, Ageing.USED, 0.95, 1);
    var pack = Pack.of(Cell.of(Chemistry.LI_ION_POWER, 10_000, 0.02, 1, used), 2, 1, 0);

    assertThat(pack.capacityCoulomb()).isCloseTo(0.95 * 0.95 * 10_000, within(1e-9));
    assertThat(pack.steadyOhm(0.5))
        .isCloseTo(2 * 1.2 * (0.02 + 0.045 * 3600 / 10_000), within(1e-12));
  }

  @Test
  void refusesToPredictBelowMinusTenDegrees() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Condition(262.15, Ageing.NEW, 0.95, 1))
        .withMessage("pack temperatureK must be from 263.15 to 333.15, but is 262.15. Maybe keep "
            + "the pack warm until take-off: below −10 °C nothing is known.");
  }

  @Test
  void aFullHighVoltagePackChargedToFourPointTwoStartsLower() {
    var start = Chemistry.LIHV.chargeAtVolts(4.20);
    var condition = new Condition(298.15, Ageing.NEW, 0.95, start);
    var pack = Pack.of(Cell.of(Chemistry.LIHV, COULOMB, 0.016, 1, condition), 1, 1, 0);

    var discharge = Discharge.of(pack, Load.ofPower(8), Until.drained(0.2, 3.5));

    assertThat(discharge.usedCoulomb())
        .isCloseTo((start - 0.2) * pack.capacityCoulomb(), within(1e-9));
  }

  @Test
  void classResistanceKnowsSmallPouches() {
    assertThat(Chemistry.LIPO.classResistanceOhm(3600)).isCloseTo(0.014, within(1e-12));
    assertThat(Chemistry.LIHV.classResistanceOhm(0.3 * 3600)).isCloseTo(0.06, within(1e-12));
    assertThat(Chemistry.LI_ION_POWER.classResistanceOhm(0.3 * 3600)).isCloseTo(0.2, within(1e-12));
    assertThat(Chemistry.LI_ION_ENERGY.classResistanceOhm(3.5 * 3600))
        .isCloseTo(0.04, within(1e-12));
  }

  @Test
  void moreLeadsAddTheirResistanceAndNothingElse() {
    var pack = pack(Condition.STANDARD);

    assertThat(pack.behind(0)).isSameAs(pack);
    assertThat(pack.behind(0.004).steadyOhm(0.5))
        .isCloseTo(pack.steadyOhm(0.5) + 0.004, within(1e-12));
    assertThat(pack.behind(0.004).wiringOhm()).isCloseTo(0.010, within(1e-12));
    assertThat(pack.behind(0.004).openVolts(0.5)).isEqualTo(pack.openVolts(0.5));
  }

  /** Half the charge at its current, through each of the cells in series: eight cells, of which two share each current. */
  @Test
  void warmsAsOneOfItsCellsDoes() {
    var cell = Cell.of(Chemistry.LIPO, COULOMB, 0.016, 1, Condition.STANDARD).inParallel(2);
    var pack = pack(Condition.STANDARD);
    var amps = 6.0;

    var warmth = cell.warming()
        .resistanceFactor(
            amps,
            cell.resistanceOhm().at(0.5) + cell.slowOhm(),
            0.5 * cell.startCharge() * cell.capacityCoulomb() / amps);

    assertThat(pack.warmth(amps)).isCloseTo(warmth, within(1e-12)).isLessThan(1);
    assertThat(pack.warmth(0)).isEqualTo(1);
    assertThat(pack.warmth(2 * amps)).isLessThan(warmth);
    var warm = pack.warmedBy(Load.ofCurrent(amps));
    assertThat(warm.steadyOhm(0.5) - warm.wiringOhm())
        .isCloseTo(warmth * (pack.steadyOhm(0.5) - pack.wiringOhm()), within(1e-12));
  }

  /** Kollmeyer and Skells 2020: 0.984 at 0 °C, 0.935 at -10 °C; two straight lines within half a hundredth of them. */
  @ParameterizedTest
  @CsvSource({
    "263.15, 0.930",
    "268.15, 0.955",
    "273.15, 0.980",
    "285.65, 0.990",
    "298.15, 1",
    "310, 1"
  })
  void coldTakesCharge(double temperatureK, double factor) {
    assertThat(Temperature.capacityFactor(temperatureK)).isCloseTo(factor, within(1e-12));
    assertThat(Temperature.require(temperatureK)).isEqualTo(temperatureK);
  }

  /** 14 mΩ·Ah, 18 below half an ampere-hour. */
  @ParameterizedTest
  @CsvSource({"0.49, 18", "0.5, 14", "2, 14"})
  void smallPouchesResistMore(double ampHours, double milliohmAmpHours) {
    assertThat(Chemistry.LIPO.classResistanceOhm(3600 * ampHours))
        .isCloseTo(milliohmAmpHours / 1000 / ampHours, within(1e-12));
  }

  @Test
  void doubtsAreOfTheShape() {
    assertThat(Chemistry.LIPO.slowDoubt()).isEqualTo(0.5);
    assertThat(Chemistry.LI_ION_POWER.slowDoubt()).isEqualTo(0.4);
    assertThat(Chemistry.LI_ION_ENERGY.classResistanceDoubt()).isPositive();
  }
}
