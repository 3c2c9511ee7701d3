package pappus.physics.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pappus.physics.airframe.Airframe;
import pappus.physics.atmosphere.StandardAtmosphere;
import pappus.physics.battery.Cell;
import pappus.physics.battery.Chemistry;
import pappus.physics.battery.Condition;
import pappus.physics.battery.Discharge;
import pappus.physics.battery.Load;
import pappus.physics.battery.Pack;
import pappus.physics.battery.Until;
import pappus.quantity.Units;

/** Against aircraft that have been flown. */
class WholeAircraftValidationTest {
  private static final double DENSITY_KG_PER_M3 = StandardAtmosphere.at(0).densityKgPerM3();

  private static Pack lipo(int series, int parallel, double capacityAh) {
    var coulomb = capacityAh * 3600;
    var ohm = Chemistry.LIPO.classResistanceOhm(coulomb);
    return Pack.of(
        Cell.of(Chemistry.LIPO, coulomb, ohm, 1, Condition.STANDARD), series, parallel, 0);
  }

  /**
   * A 27 g research quad with coreless motors and four 47 mm propellers hovers at 3.685 V and 2.003 A: its open
   * firmware documentation, bench table.
   */
  @Test
  void researchQuadOf27GramsNeedsSevenTimesTheLeastPower() {
    var areaM2 = 4 * Math.PI / 4 * 0.047 * 0.047;
    var idealW = Momentum.idealPowerW(0.027 * Units.GRAVITY_M_PER_S2, DENSITY_KG_PER_M3, areaM2);

    var efficiency = idealW / (3.685 * 2.003);

    assertThat(efficiency).isCloseTo(0.14, within(0.005));
    assertThat(EfficiencyBand.warning(0.027).contains(efficiency)).isTrue();
    // Figure of merit 0.54 by 0.75, the four of Bauersfeld and Scaramuzza 2022.
    assertThat(EfficiencyBand.warning(0.9).contains(0.54 * 0.75)).isTrue();
  }

  /** The same quad flies about 7 min on its 250 mAh cell; until empty or at its 3.0 V floor. */
  @Test
  void researchQuadOf27GramsFliesSevenMinutes() {
    var discharge = Discharge.of(lipo(1, 1, 0.250), Load.ofCurrent(2.003), Until.drained(0, 3.0));

    assertThat(discharge.seconds() / 60).isCloseTo(7, withinPercentage(15));
  }

  /**
   * Best endurance of four multirotors, L. Bauersfeld and D. Scaramuzza, IEEE RA-L 7(2), 2022, table III: figure of
   * merit 0.54, motor and controller 0.75, best endurance at 0.914 of the hover power, no reserve.
   */
  @ParameterizedTest(name = "{0} kg")
  @CsvSource({
    "0.90, 4, 0.119, 4, 1, 5.0, 48",
    "0.91, 4, 0.110, 4, 1, 3.9, 33",
    "6.14, 4, 0.216, 6, 2, 7.65, 23",
    "15.5, 6, 0.267, 6, 6, 5.7, 18"
  })
  void publishedMultirotorsFlyAsLongAsPublished(
      double massKg,
      int rotors,
      double radiusM,
      int series,
      int parallel,
      double capacityAh,
      double minutes) {
    var idealW = Momentum.idealPowerW(
        massKg * Units.GRAVITY_M_PER_S2, DENSITY_KG_PER_M3, rotors * Math.PI * radiusM * radiusM);
    var load = Load.ofPower(ForwardFlight.LEAST_OF_HOVER * idealW / 0.54 / 0.75);

    var discharge =
        Discharge.of(lipo(series, parallel, capacityAh), load, Until.drained(0, series * 3.5));

    assertThat(discharge.seconds() / 60).isCloseTo(minutes, withinPercentage(15));
  }

  /**
   * With drag areas of 0.006 to 0.010 m² a 0.25 kg five-inch quad in theory needs 0.85 to 0.93 of its hover power
   * at best endurance and 1.08 to 1.22 at best range, where fits over many multirotors give 0.914 and 1.092
   * (Bauersfeld and Scaramuzza 2022).
   */
  @ParameterizedTest(name = "{0} m²")
  @CsvSource({"0.006", "0.008", "0.010"})
  void forwardFlightNeedsTheSharesOfHoverThatTheoryGives(double dragAreaM2) {
    var example = Examples.fiveInch(0.25);
    var aircraft = new Aircraft(new Airframe(0.25, 0.035, dragAreaM2), 4, example.rotor(), 0);
    var hover = Hover.of(aircraft);
    var theory = new ForwardFlight(aircraft, hover, 0);
    var hoverW = hover.steady().shaftPowerW();

    var slow = theory.bestEndurance();
    var far = theory.bestRange(new Leg(1000, 0, 0));

    assertThat(slow.steady().shaftPowerW() / hoverW).isBetween(0.845, 0.935);
    assertThat(far.steady().shaftPowerW() / hoverW).isBetween(1.075, 1.225);
    assertThat(far.airspeedMPerS()).isGreaterThan(slow.airspeedMPerS());
  }
}
