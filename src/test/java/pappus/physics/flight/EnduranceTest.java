package pappus.physics.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class EnduranceTest {
  private static final double INF = Double.POSITIVE_INFINITY;

  private static Endurance endurance(double massKg, LandingRule rule, Limits limits) {
    return Endurance.of(
        Hover.of(Examples.fiveInch(massKg)).steady(), Examples.lipo(4, 0.85), rule, limits);
  }

  @Test
  void endsAtTheReserve() {
    var endurance = endurance(0.25, new LandingRule(0.2, 3.3), Limits.NONE);

    assertThat(endurance.ending()).isEqualTo(Ending.RESERVE);
    assertThat(endurance.discharge().endCharge()).isEqualTo(0.2);
    assertThat(endurance.meanPowerW()).isBetween(30.0, 70.0);
  }

  @Test
  void endsAtTheLandingVolts() {
    var endurance = endurance(0.25, new LandingRule(0.05, 3.6), Limits.NONE);

    assertThat(endurance.ending()).isEqualTo(Ending.LANDING_VOLTS);
    assertThat(endurance.discharge().endVolts()).isCloseTo(4 * 3.6, within(1e-6));
  }

  @Test
  void endsWhenTheControllersAreFullyOpen() {
    var flight = Hover.of(Examples.fiveInch(1.2)).steady();
    var pack = Examples.lipo(3, 4);

    var endurance = Endurance.of(flight, pack, new LandingRule(0, 2.0), Limits.NONE);

    assertThat(endurance.ending()).isEqualTo(Ending.FULL_DUTY);
    assertThat(flight.duty(endurance.discharge().endVolts())).isCloseTo(1, within(1e-6));
  }

  @Test
  void endsAtTheCurrentThatTheTightestPartAllows() {
    var startA =
        endurance(0.25, new LandingRule(0.2, 3.3), Limits.NONE).discharge().startA();
    var rule = new LandingRule(0.1, 3.3);

    var pack = endurance(0.25, rule, new Limits(INF, INF, startA * 1.05, INF, INF));
    var connector = endurance(0.25, rule, new Limits(INF, INF, 50, startA * 1.05, INF));
    var lead = endurance(0.25, rule, new Limits(INF, INF, 50, 50, startA * 1.05));

    assertThat(pack.ending()).isEqualTo(Ending.PACK_CURRENT);
    assertThat(connector.ending()).isEqualTo(Ending.CONNECTOR_CURRENT);
    assertThat(lead.ending()).isEqualTo(Ending.LEAD_CURRENT);
    assertThat(pack.discharge().endA()).isCloseTo(startA * 1.05, within(1e-6));
    assertThat(pack.seconds()).isEqualTo(lead.seconds()).isPositive();
  }

  @Test
  void doesNotTakeOffWhereACurrentIsTooHighFromTheStart() {
    var rule = new LandingRule(0.2, 3.3);

    assertThat(endurance(0.25, rule, new Limits(1, 5, INF, INF, INF)).ending())
        .isEqualTo(Ending.MOTOR_CURRENT);
    assertThat(endurance(0.25, rule, new Limits(5, 1, INF, INF, INF)).ending())
        .isEqualTo(Ending.CONTROLLER_CURRENT);
    assertThat(endurance(0.25, rule, new Limits(5, 5, 0.3, INF, INF)).ending())
        .isEqualTo(Ending.PACK_CURRENT);
    assertThat(endurance(0.25, rule, new Limits(5, 5, 0.3, INF, INF)).seconds()).isZero();
  }

  @Test
  void doesNotTakeOffWhereTheBatteryCannotCarryIt() {
    var endurance = endurance(3.0, new LandingRule(0.2, 0.1), Limits.NONE);

    assertThat(endurance.seconds()).isZero();
    assertThat(endurance.ending()).isIn(Ending.UNDELIVERABLE, Ending.FULL_DUTY);
    assertThat(endurance.meanPowerW()).isZero();
  }

  @Test
  void legsAddUpToTheWhole() {
    var flight = Hover.of(Examples.fiveInch(0.25)).steady();
    var pack = Examples.lipo(4, 0.85);
    var rule = new LandingRule(0.2, 3.3);
    var whole = Endurance.of(flight, pack, rule, Limits.NONE);

    var first = Endurance.of(flight, pack, rule, Limits.NONE, 1, 120);
    var rest = Endurance.of(flight, pack, rule, Limits.NONE, first.discharge().endCharge(), INF);

    assertThat(first.ending()).isEqualTo(Ending.TIME);
    assertThat(first.seconds() + rest.seconds()).isCloseTo(whole.seconds(), within(0.05));
  }
}
