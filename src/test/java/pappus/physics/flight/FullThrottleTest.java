package pappus.physics.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.junit.jupiter.api.Test;
import pappus.physics.motor.OperatingPoint;
import pappus.quantity.Units;

class FullThrottleTest {
  private static final double INF = Double.POSITIVE_INFINITY;

  /** The same equation by a library: the battery's volts under the current are the motors' volts. */
  @Test
  void fullyOpenAgreesWithHipparchus() {
    var random = new Random(21);
    var solver = new BracketingNthOrderBrentSolver(1e-13, 1e-11, 5);
    for (var draw = 0; draw < 200; draw++) {
      var aircraft = Examples.random(random);
      var pack = Examples.lipo(4, 1 + random.nextDouble());
      var motor = aircraft.rotor().motor();
      var propeller = aircraft.rotor().propeller();

      var full = FullThrottle.of(aircraft, pack, 0.5, 0.6, Limits.NONE);

      var speed = solver.solve(
          200,
          w -> {
            var motorA = motor.currentA(propeller.torqueNm(w), w);
            var volts = motor.volts(motorA, w);
            var idleA = aircraft.rotor().controller().idleA();
            var busA = 4 * (motorA + idleA) + aircraft.avionicsW() / volts;
            return pack.openVolts(0.5) - pack.burstOhm(0.5) * busA - volts;
          },
          0.1 * motor.kvRadPerSPerV() * pack.openVolts(0.5),
          motor.kvRadPerSPerV() * pack.openVolts(0.5));
      assertThat(full.limit()).isEqualTo(ThrottleLimit.FULL_DUTY);
      assertThat(full.point().speedRadPerS()).isCloseTo(speed, within(1e-8 * speed));
    }
  }

  @Test
  void namesThePartAndTheThrottleThatLimitIt() {
    var aircraft = Examples.fiveInch(0.25);
    var pack = Examples.lipo(4, 0.85);
    var free = FullThrottle.of(aircraft, pack, 0.5, 2, Limits.NONE);
    var motorA = 0.7 * free.point().currentA();
    var busA = 0.6 * free.busCurrentA();

    var byMotor = FullThrottle.of(aircraft, pack, 0.5, 2, new Limits(motorA, INF, INF, INF, INF));
    var byController =
        FullThrottle.of(aircraft, pack, 0.5, 2, new Limits(INF, motorA, INF, INF, INF));
    var byPack = FullThrottle.of(aircraft, pack, 0.5, 2, new Limits(INF, INF, busA, INF, INF));
    var byLead = FullThrottle.of(aircraft, pack, 0.5, 2, new Limits(INF, INF, INF, INF, busA));

    assertThat(byMotor.limit()).isEqualTo(ThrottleLimit.MOTOR);
    assertThat(byMotor.point().currentA()).isCloseTo(motorA, within(1e-9));
    assertThat(byController.limit()).isEqualTo(ThrottleLimit.CONTROLLER);
    assertThat(byPack.limit()).isEqualTo(ThrottleLimit.PACK);
    assertThat(byPack.busCurrentA()).isEqualTo(busA);
    assertThat(byLead.limit()).isEqualTo(ThrottleLimit.LEAD);
    assertBalanced(aircraft, pack.openVolts(0.5), pack.burstOhm(0.5), byMotor);
    assertBalanced(aircraft, pack.openVolts(0.5), pack.burstOhm(0.5), byPack);
  }

  private static void assertBalanced(
      Aircraft aircraft, double openVolts, double ohm, FullThrottle full) {
    var steady =
        new SteadyFlight(4, full.point(), aircraft.rotor().controller(), aircraft.avionicsW());
    assertThat(steady.busCurrentA(full.busVolts())).isCloseTo(full.busCurrentA(), within(1e-8));
    assertThat(openVolts - ohm * full.busCurrentA()).isCloseTo(full.busVolts(), within(1e-8));
    assertThat(steady.duty(full.busVolts()))
        .isCloseTo(full.duty(), within(1e-12))
        .isLessThan(1);
  }

  @Test
  void theTighterOfMotorAndPackDecides() {
    var aircraft = Examples.fiveInch(0.25);
    var pack = Examples.lipo(4, 0.85);
    var byPack = FullThrottle.of(aircraft, pack, 0.5, 2, new Limits(INF, INF, 20, INF, INF));
    var tightMotorA = 0.9 * byPack.point().currentA();

    var both = FullThrottle.of(aircraft, pack, 0.5, 2, new Limits(tightMotorA, INF, 20, INF, INF));

    assertThat(both.limit()).isEqualTo(ThrottleLimit.MOTOR);
    assertThat(both.busCurrentA()).isLessThan(20);
    assertThat(both.thrustN()).isLessThan(byPack.thrustN());
  }

  @Test
  void keepsTheTerminalsAtTheFloor() {
    var aircraft = Examples.fiveInch(0.25);
    var pack = Examples.lipo(4, 0.4);

    var full = FullThrottle.of(aircraft, pack, 0.5, 3.4, Limits.NONE);

    assertThat(full.limit()).isEqualTo(ThrottleLimit.FLOOR_VOLTS);
    assertThat(full.busVolts()).isCloseTo(4 * 3.4, within(1e-9));
  }

  @Test
  void hasNoThrustBelowTheFloorOrWithoutAmps() {
    var aircraft = Examples.fiveInch(0.25);
    var pack = Examples.lipo(4, 0.85);

    var low = FullThrottle.of(aircraft, pack, 0, 3.4, Limits.NONE);
    var starved = FullThrottle.of(aircraft, pack, 0.5, 3, new Limits(INF, INF, 0.3, INF, INF));

    assertThat(low.thrustN()).isZero();
    assertThat(low.limit()).isEqualTo(ThrottleLimit.FLOOR_VOLTS);
    assertThat(low.point()).isEqualTo(new OperatingPoint(0, 0, 0, 0));
    assertThat(starved.thrustN()).isZero();
    assertThat(starved.limit()).isEqualTo(ThrottleLimit.PACK);
  }

  @Test
  void listsTheThrottleOfEveryLimitThatWouldBePassed() {
    var aircraft = Examples.fiveInch(0.25);
    var pack = Examples.lipo(4, 0.85);

    var throttles = FullThrottle.throttles(aircraft, pack, 0.5, 2, new Limits(5, 6, 8, 10, 500));

    assertThat(throttles)
        .containsOnlyKeys(
            ThrottleLimit.MOTOR,
            ThrottleLimit.CONTROLLER,
            ThrottleLimit.PACK,
            ThrottleLimit.CONNECTOR);
    assertThat(throttles.get(ThrottleLimit.MOTOR))
        .isLessThan(throttles.get(ThrottleLimit.CONTROLLER));
    assertThat(throttles.get(ThrottleLimit.PACK))
        .isLessThan(throttles.get(ThrottleLimit.CONNECTOR));
  }

  @Test
  void thrustToWeightLosesWhatArmsAndBodyTake() {
    var aircraft = Examples.fiveInch(0.25);
    var full = FullThrottle.of(aircraft, Examples.lipo(4, 0.85), 0.5, 3, Limits.NONE);

    assertThat(full.thrustToWeight(aircraft.airframe()))
        .isCloseTo(full.thrustN() * 0.95 / (0.25 * Units.GRAVITY_M_PER_S2), within(1e-12));
  }

  /** From a step above rest to full throttle, by equal steps of speed; each balances source and motors. */
  @Test
  void stepsUpToFullThrottle() {
    var aircraft = Examples.fiveInch(0.25);
    var pack = Examples.lipo(4, 0.85);
    var full = FullThrottle.of(aircraft, pack, 0.5, 2, Limits.NONE);

    var steps = FullThrottle.upTo(full, aircraft, pack, 0.5, 2, 8);

    assertThat(steps).hasSize(8).endsWith(full);
    for (var step = 1; step < 8; step++) {
      var one = steps.get(step - 1);
      var speed = full.point().speedRadPerS() * step / 8;
      assertThat(one.point().speedRadPerS()).isCloseTo(speed, within(1e-9));
      assertThat(one.thrustN())
          .isCloseTo(4 * aircraft.rotor().propeller().thrustN(speed), within(1e-9));
      assertBalanced(aircraft, pack.openVolts(0.5), pack.burstOhm(0.5), one);
    }
    var rest = FullThrottle.of(aircraft, pack, 0, 3.4, Limits.NONE);
    assertThat(FullThrottle.upTo(rest, aircraft, pack, 0, 3.4, 8)).isEmpty();
  }

  /** Fully open, the bus gives what motors and controllers take and what the rest draws. */
  @Test
  void fullyOpenTheBusGivesWhatAllTake() {
    var aircraft = Examples.fiveInch(0.25);
    var pack = Examples.lipo(4, 0.85);

    var full = FullThrottle.of(aircraft, pack, 0.5, 2, Limits.NONE);

    assertThat(full.busCurrentA())
        .isCloseTo(
            4 * (full.point().currentA() + aircraft.rotor().controller().idleA())
                + aircraft.avionicsW() / full.busVolts(),
            within(1e-9));
    assertThat(full.duty()).isCloseTo(1, within(1e-9));
  }

  @Test
  void aMotorAsTightAsItsControllerIsNamed() {
    var aircraft = Examples.fiveInch(0.25);
    var pack = Examples.lipo(4, 0.85);

    assertThat(FullThrottle.of(aircraft, pack, 0.5, 2, new Limits(5, 5, INF, INF, INF))
            .limit())
        .isEqualTo(ThrottleLimit.MOTOR);
  }
}
