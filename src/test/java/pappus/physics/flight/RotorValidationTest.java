package pappus.physics.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import pappus.physics.airframe.Airframe;
import pappus.physics.battery.Cell;
import pappus.physics.battery.Chemistry;
import pappus.physics.battery.Curve;
import pappus.physics.battery.Pack;
import pappus.physics.battery.Warming;
import pappus.physics.motor.MotorModel;
import pappus.physics.motor.SpeedController;
import pappus.physics.propeller.PropellerModel;

/**
 * Drela's motor (2400 rpm/V, 0.1 Ω, 1 A without load at every speed) on a propeller of 0.127 m, C_T 0.1283, C_P
 * 0.0592, in air of 1.225 kg/m³, worked by an independent program at half of its last digit.
 */
class RotorValidationTest {
  private static final double GRAM_FORCE_N = 0.00980665;
  private static final double RPM = Math.PI / 30;

  private static Rotor rotor() {
    return new Rotor(
        PropellerModel.ofPair(0.127, 0.1283, 0.0592).in(1.225, 1.79e-5),
        MotorModel.of(2400 * RPM, 0.1, 0, 1, 7.4, 0),
        new SpeedController(1, 0));
  }

  @Test
  void fullThrottleOnAStiffSupplyOfSevenPointFourVolts() {
    var supply = Pack.of(
        new Cell(
            Curve.constant(7.4),
            Curve.constant(1e-12),
            0,
            Warming.inDownwash(Chemistry.LIPO, 298.15),
            3600,
            1),
        1,
        1,
        0);
    var aircraft = new Aircraft(new Airframe(0.1, 0, 0), 1, rotor(), 0);

    var full = FullThrottle.of(aircraft, supply, 0.5, 3, Limits.NONE);

    assertThat(full.point().speedRadPerS() / RPM).isCloseTo(15_903.95, within(0.005));
    assertThat(full.busCurrentA()).isCloseTo(7.7335, within(0.00005));
    assertThat(full.thrustN() / GRAM_FORCE_N).isCloseTo(292.93, within(0.005));
    assertThat(full.point().efficiency()).isCloseTo(0.7797, within(0.00005));
    assertThat(full.limit()).isEqualTo(ThrottleLimit.FULL_DUTY);
    assertThat(full.duty()).isCloseTo(1, within(1e-9));
  }

  @Test
  void hoverAtAGivenThrust() {
    var aircraft = new Aircraft(new Airframe(0.06125, 0, 0), 1, rotor(), 0);

    var point = Hover.of(aircraft).steady().point();

    assertThat(point.speedRadPerS() / RPM).isCloseTo(7272.37, within(0.005));
    assertThat(point.currentA()).isCloseTo(2.407944, within(0.0000005));
    assertThat(point.volts()).isCloseTo(3.270948, within(0.0000005));
  }
}
