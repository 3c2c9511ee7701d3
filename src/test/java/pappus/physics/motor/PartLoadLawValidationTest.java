package pappus.physics.motor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The law of part load, worked by an independent program at half of its last digit. */
class PartLoadLawValidationTest {

  /** 3.270948 V and 2.407945 A in a motor of 22 mm and 0.1 Ω. */
  @ParameterizedTest(name = "{0} V")
  @CsvSource({"14.8, 15.824", "7.4, 12.632"})
  void batteryPowerOfAMotorAtPartLoad(double busVolts, double watts) {
    var point = new OperatingPoint(1, 1, 2.407945, 3.270948);

    assertThat(PartLoadLaw.BENCH.controllerFor(22, 0.1, 1).busPowerW(point, busVolts))
        .isCloseTo(watts, within(0.0005));
  }

  /** c = 0.10 max(1, 18/D)² by hand: 0.268 at 11 mm, 0.225 at 12, 0.165 at 14. */
  @ParameterizedTest(name = "{0} mm")
  @CsvSource({"11, .26777", "12, .22500", "14, .16531", "18, .1", "22, .1"})
  void rippleOfSmallStators(double statorMm, double ripple) {
    assertThat(PartLoadLaw.BENCH.rippleOf(statorMm)).isCloseTo(ripple, within(0.000005));
  }
}
