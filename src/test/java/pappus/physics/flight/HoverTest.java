package pappus.physics.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import pappus.physics.propeller.PropellerModel;
import pappus.physics.propeller.StaticPoint;
import pappus.quantity.Units;

class HoverTest {

  @Test
  void liftsItsWeightAndWhatTheArmsTake() {
    var hover = Hover.of(Examples.fiveInch(0.25));

    assertThat(4 * hover.thrustPerRotorN() * 0.95)
        .isCloseTo(0.25 * Units.GRAVITY_M_PER_S2, within(1e-12));
    assertThat(hover.inducedPowerW() + hover.profilePowerW())
        .isCloseTo(hover.steady().shaftPowerW(), within(1e-12));
    assertThat(hover.profilePowerW()).isPositive();
  }

  @Test
  void anyRotorCountSharesTheWeight() {
    var quad = Examples.fiveInch(0.25);
    var six = new Aircraft(quad.airframe(), 6, quad.rotor(), quad.avionicsW());

    assertThat(Hover.of(six).thrustPerRotorN())
        .isCloseTo(Hover.of(quad).thrustPerRotorN() * 4 / 6, within(1e-12));
    assertThat(Hover.of(six).idealPowerW()).isLessThan(Hover.of(quad).idealPowerW());
  }

  @Test
  void loadAndFlightDrawTheSame() {
    var steady = Hover.of(Examples.fiveInch(0.25)).steady();

    assertThat(steady.load().powerW(15)).isCloseTo(steady.busPowerW(15), within(1e-12));
    assertThat(steady.load().currentA(13)).isCloseTo(steady.busCurrentA(13), within(1e-12));
  }

  @Test
  void saysThatATableEndsShortOfItsSpeed() {
    var table = PropellerModel.ofTable(
        0.127,
        PropellerModel.DEFAULT_TEST_S_PER_M2,
        List.of(new StaticPoint(1500, 0.13, 0.06), new StaticPoint(2000, 0.13, 0.06)));
    var example = Examples.fiveInch(0.25);
    var aircraft = new Aircraft(
        example.airframe(),
        4,
        Examples.rotor(Examples.atSeaLevel(table), 1750, 0.15),
        example.avionicsW());

    assertThat(Hover.of(aircraft).isBeyondTest()).isTrue();
    assertThat(Hover.of(example).isBeyondTest()).isFalse();
  }

  @Test
  void bandsOfPlausibleEfficiencyGoByMass() {
    assertThat(EfficiencyBand.warning(0.249)).isEqualTo(new EfficiencyBand(0.13, 0.30));
    assertThat(EfficiencyBand.warning(0.9).highest()).isCloseTo(0.42, within(1e-12));
    assertThat(EfficiencyBand.warning(2)).isEqualTo(EfficiencyBand.warning(0.9));
    assertThat(EfficiencyBand.hard(0.03)).isEqualTo(0.24);
    assertThat(EfficiencyBand.hard(0.249)).isCloseTo(0.40, within(1e-12));
  }

  @Test
  void windTakesMoreShaftPowerAtTheSameThrust() {
    var aircraft = Examples.fiveInch(0.25);
    var calm = Hover.of(aircraft);

    var windy = calm.inWind(aircraft, 1.2);

    assertThat(calm.inWind(aircraft, 1)).isSameAs(calm);
    assertThat(windy.steady().shaftPowerW())
        .isCloseTo(1.2 * calm.steady().shaftPowerW(), within(1e-9));
    assertThat(windy.thrustPerRotorN()).isEqualTo(calm.thrustPerRotorN());
  }

  @Test
  void efficiencyIsIdealPowerOverWhatTheBatteryGives() {
    var hover = Hover.of(Examples.fiveInch(0.25));

    assertThat(hover.efficiency(15) * hover.steady().busPowerW(15))
        .isCloseTo(hover.idealPowerW(), within(1e-12));
  }
}
