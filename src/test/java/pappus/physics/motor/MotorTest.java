package pappus.physics.motor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MotorTest {

  private static MotorModel motor() {
    return MotorModel.of(200, 0.10, MotorModel.DEFAULT_SERIES_OHM, 0.6, 10, 0.33);
  }

  @Test
  void voltsAndTorqueAreTwoViewsOfOnePoint() {
    var point = motor().at(0.02, 1500);

    var same = motor().atVolts(point.volts(), point.currentA());

    assertThat(same.speedRadPerS()).isCloseTo(1500, within(1e-9));
    assertThat(same.torqueNm()).isCloseTo(0.02, within(1e-12));
  }

  @Test
  void noLoadCurrentIsTheSheetsAtTheSheetsVoltsAndFallsWithSpeed() {
    assertThat(motor().noLoadCurrentA(200 * (10 - 0.6 * 0.11))).isCloseTo(0.6, within(1e-12));
    assertThat(motor().noLoadCurrentA(200 * (10 - 0.6 * 0.11) / 8))
        .isCloseTo(0.6 * Math.pow(8, -0.33), within(1e-12));
    assertThat(motor().noLoadCurrentA(0)).isZero();
  }

  @Test
  void aHotWindingHasMoreResistanceAndNothingElseChanges() {
    var hot = motor().withWindingAt(393.15);

    assertThat(hot.windingOhm()).isCloseTo(0.1393, within(1e-12));
    assertThat(hot.seriesOhm()).isEqualTo(0.010);
    assertThat(hot.noLoadSpeedRadPerS()).isEqualTo(motor().noLoadSpeedRadPerS());
    assertThat(hot.referenceResistanceOhm()).isCloseTo(0.11, within(1e-12));
    assertThat(hot.withWindingAt(293.15).windingOhm()).isCloseTo(0.10, within(1e-15));
  }

  @Test
  void refusesANoLoadCurrentThatItsVoltsCannotDrive() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> MotorModel.of(200, 2, 0, 6, 10, 0))
        .withMessageStartingWith("noLoadVolts less no-load current times resistance must be");
  }

  @Test
  void windingTemperatureSolvesItsOwnBalance() {
    var motor = motor();
    var windingK = WindingHeat.windingK(motor, 5, 4, 298.15);
    var lossW = 25 * motor.withWindingAt(windingK).windingOhm();

    assertThat(windingK).isCloseTo(298.15 + 4 * lossW, within(1e-9));
    assertThat(WindingHeat.windingK(motor.withWindingAt(350), 5, 4, 298.15))
        .isCloseTo(windingK, within(1e-9));
  }

  @Test
  void aWindingThatWouldRunAwayIsReportedAtTheLimit() {
    assertThat(WindingHeat.windingK(motor(), 60, 4, 298.15)).isEqualTo(WindingHeat.LIMIT_K);
    assertThat(WindingHeat.windingK(motor(), 16.5, 4, 298.15)).isEqualTo(WindingHeat.LIMIT_K);
  }

  @Test
  void biggerMotorsShedMoreHeat() {
    assertThat(WindingHeat.thermalResistanceKPerW(0.034)).isCloseTo(2.9, within(1e-12));
    assertThat(WindingHeat.thermalResistanceKPerW(0.034 / 8)).isCloseTo(11.6, within(1e-9));
  }

  @Test
  void controllerTakesNoMoreThanTheMotorAtFullThrottleButItsIdleCurrent() {
    var point = motor().at(0.02, 1500);
    var controller = new SpeedController(0.4, 0.1);

    assertThat(controller.busCurrentA(point, point.volts()))
        .isCloseTo(point.currentA() + 0.1, within(1e-12));
  }

  @Test
  void busPowerRisesWithTheBatterysVoltsAndWithTheMotorsPower() {
    var controller = new SpeedController(0.4, 0.1);
    var last = 0.0;
    for (var volts = 6.0; volts < 26; volts += 1) {
      var powerW = controller.busPowerW(motor().at(0.01, 1000), volts);
      assertThat(powerW).isGreaterThan(last);
      assertThat(controller.busPowerW(motor().at(0.0101, 1000), volts)).isGreaterThan(powerW);
      last = powerW;
    }
  }

  @Test
  void rippleGoesAgainstTheResistanceAndWithTheSquareOfASmallStator() {
    var law = PartLoadLaw.BENCH;
    assertThat(law.controllerFor(22, 0.2, 1).rippleS()).isEqualTo(0.10 / 0.2);
    assertThat(law.controllerFor(18, 0.2, 1).rippleS()).isEqualTo(0.10 / 0.2);
    assertThat(law.controllerFor(9, 0.4, 1).rippleS()).isCloseTo(0.40 / 0.4, within(1e-15));
    assertThat(law.controllerFor(22, 0.2, 0.5).rippleS()).isEqualTo(0.5 * 0.10 / 0.2);
    assertThat(PartLoadLaw.isInsideEvidence(8, 22)).isTrue();
    assertThat(PartLoadLaw.isInsideEvidence(16, 22)).isFalse();
    assertThat(PartLoadLaw.isInsideEvidence(8, 10)).isFalse();
  }

  /** 0.16 of 0.5 S by 10 V. */
  @ParameterizedTest
  @CsvSource({"0.79, false", "0.8, false", "0.81, true"})
  void currentRisesWithThrustWhereRippleIsTheLesserPart(double currentA, boolean rises) {
    assertThat(new SpeedController(0.5, 0).risesWithThrust(new OperatingPoint(1, 1, currentA, 10)))
        .isEqualTo(rises);
  }
}
