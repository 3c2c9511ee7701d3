package pappus.physics.motor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class WindingHeatTest {
  private static final double KG = 0.012;
  private static final double AIR_K = 288.15;
  private static final MotorModel MOTOR =
      MotorModel.of(200, 0.10, MotorModel.DEFAULT_SERIES_OHM, 0.6, 10, 0.33);

  private static double burstK(double currentA, double startK, double seconds) {
    return WindingHeat.afterBurstK(MOTOR, currentA, KG, startK, AIR_K, seconds);
  }

  /** Small steps of the balance of heat by hand. */
  @Test
  void aBurstWarmsAsSmallStepsDo() {
    var kelvin = 300.0;
    var steps = 100_000;
    for (var step = 0; step < steps; step++) {
      var lossW = 15 * 15 * MOTOR.withWindingAt(kelvin).windingOhm();
      var cooledW = (kelvin - AIR_K) / WindingHeat.thermalResistanceKPerW(KG);
      kelvin += (lossW - cooledW) / (0.5 * KG * 420) * 5 / steps;
    }

    assertThat(burstK(15, 300, 5)).isCloseTo(kelvin, within(0.01));
  }

  @Test
  void noTimeChangesNothing() {
    assertThat(burstK(15, 300, 0)).isEqualTo(300);
  }

  @Test
  void aLongBurstEndsAtTheSteadyTemperature() {
    var steadyK = WindingHeat.windingK(MOTOR, 5, WindingHeat.thermalResistanceKPerW(KG), AIR_K);

    assertThat(burstK(5, 300, 3600)).isCloseTo(steadyK, within(1e-6));
  }

  @Test
  void moreCurrentIsWarmerUpToTheLimit() {
    assertThat(burstK(10, 300, 5)).isLessThan(burstK(20, 300, 5));
    assertThat(burstK(100, 300, 5)).isEqualTo(WindingHeat.LIMIT_K);
  }
}
