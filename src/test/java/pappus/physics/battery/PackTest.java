package pappus.physics.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

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
}
