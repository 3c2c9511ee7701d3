package pappus.physics.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import pappus.physics.battery.Pack;

class CircuitTest {
  private static final double INF = Double.POSITIVE_INFINITY;
  private static final Pack PACK = Examples.lipo(4, 0.85);
  private static final LandingRule RULE = new LandingRule(0.2, 3.3);
  private static final SteadyFlight HOVER = Hover.of(Examples.fiveInch(0.25)).steady();
  private static final SteadyFlight FAST = fast();

  private static SteadyFlight fast() {
    var aircraft = Examples.fiveInch(0.25);
    return new ForwardFlight(aircraft, Hover.of(aircraft)).at(20).steady();
  }

  private static Circuit circuit(LandingRule rule, Limits limits, Circuit.Turn... turns) {
    return Circuit.of(List.of(turns), PACK, rule, limits);
  }

  private static Circuit.Turn turn(SteadyFlight flight, double seconds) {
    return new Circuit.Turn(flight, seconds);
  }

  @Test
  void oneTurnIsThePlainFlight() {
    var plain = Endurance.of(HOVER, PACK, RULE, Limits.NONE);

    assertThat(circuit(RULE, Limits.NONE, turn(HOVER, 60)).endurance()).isEqualTo(plain);
  }

  @Test
  void equalTurnsAreThePlainFlight() {
    var rule = new LandingRule(0.05, 3.6);
    var plain = Endurance.of(HOVER, PACK, rule, Limits.NONE);

    var circuit = circuit(rule, Limits.NONE, turn(HOVER, 60), turn(HOVER, 30));

    assertThat(circuit.endurance().seconds()).isCloseTo(plain.seconds(), within(1e-6));
    assertThat(circuit.endurance().ending()).isEqualTo(Ending.LANDING_VOLTS);
    assertThat(circuit.endurance().meanPowerW()).isCloseTo(plain.meanPowerW(), within(1e-6));
  }

  @Test
  void liesBetweenItsTurnsAndNamesNoneAtTheReserve() {
    var slow = Endurance.of(HOVER, PACK, RULE, Limits.NONE).seconds();
    var fast = Endurance.of(FAST, PACK, RULE, Limits.NONE).seconds();
    assertThat(fast).isLessThan(slow);

    var even = circuit(RULE, Limits.NONE, turn(HOVER, 60), turn(FAST, 60));
    var mostlyFast = circuit(RULE, Limits.NONE, turn(HOVER, 10), turn(FAST, 60));

    assertThat(even.endurance().ending()).isEqualTo(Ending.RESERVE);
    assertThat(even.endingTurn()).isEmpty();
    assertThat(even.endurance().seconds()).isBetween(fast, slow);
    assertThat(mostlyFast.endurance().seconds())
        .isBetween(fast, even.endurance().seconds());
  }

  @Test
  void endsAtTheFirstLimitThatAnyTurnMeets() {
    var rule = new LandingRule(0.05, 3.6);

    var circuit = circuit(rule, Limits.NONE, turn(HOVER, 600), turn(FAST, 10));

    assertThat(circuit.endurance().ending()).isEqualTo(Ending.LANDING_VOLTS);
    assertThat(circuit.endingTurn()).isEqualTo(OptionalInt.of(1));
    assertThat(circuit.endurance().discharge().endCharge())
        .isEqualTo(Endurance.of(FAST, PACK, rule, Limits.NONE).discharge().endCharge())
        .isGreaterThan(Endurance.of(HOVER, PACK, rule, Limits.NONE).discharge().endCharge());
  }

  @Test
  void doesNotTakeOffWhereOneTurnCannotBeFlown() {
    var limits = new Limits(HOVER.point().currentA() * 1.05, INF, INF, INF, INF);

    var circuit = circuit(RULE, limits, turn(HOVER, 60), turn(FAST, 60));

    assertThat(circuit.endurance().seconds()).isZero();
    assertThat(circuit.endurance().ending()).isEqualTo(Ending.MOTOR_CURRENT);
    assertThat(circuit.endingTurn()).isEqualTo(OptionalInt.of(1));
  }

  /** Short legs flown one after the other by hand, each from the charge the last one left. */
  @Test
  void agreesWithLegsFlownOneByOne() {
    var legs = List.of(turn(HOVER, 2), turn(FAST, 1));
    var charge = 1.0;
    var seconds = 0.0;
    var ending = Ending.TIME;
    for (var leg = 0; ending == Ending.TIME; leg++) {
      var turn = legs.get(leg % 2);
      var flown = Endurance.of(turn.flight(), PACK, RULE, Limits.NONE, charge, turn.seconds());
      seconds += flown.seconds();
      charge = flown.discharge().endCharge();
      ending = flown.ending();
    }

    var circuit = Circuit.of(legs, PACK, RULE, Limits.NONE);

    assertThat(ending).isEqualTo(Ending.RESERVE);
    assertThat(circuit.endurance().seconds()).isCloseTo(seconds, withinPercentage(0.2));
  }
}
