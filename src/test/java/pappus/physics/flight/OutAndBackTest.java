package pappus.physics.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import pappus.physics.battery.Pack;

class OutAndBackTest {
  private static final double INF = Double.POSITIVE_INFINITY;
  private static final Pack PACK = Examples.lipo(4, 0.85);
  private static final LandingRule RULE = new LandingRule(0.2, 3.3);
  private static final SteadyFlight FAST = at(20);
  private static final SteadyFlight SLOW = at(10);

  private static SteadyFlight at(double airspeedMPerS) {
    var aircraft = Examples.fiveInch(0.25);
    return new ForwardFlight(aircraft, Hover.of(aircraft)).at(airspeedMPerS).steady();
  }

  private static OutAndBack fly(
      SteadyFlight out, double outMPerS, SteadyFlight back, double backMPerS, LandingRule rule) {
    return OutAndBack.of(
        new OutAndBack.Way(out, outMPerS),
        new OutAndBack.Way(back, backMPerS),
        PACK,
        rule,
        Limits.NONE);
  }

  @Test
  void withoutWindItIsThePlainFlightHalfEachWay() {
    var plain = Endurance.of(SLOW, PACK, RULE, Limits.NONE);

    var flown = fly(SLOW, 10, SLOW, 10, RULE);

    assertThat(flown.endurance().seconds()).isCloseTo(plain.seconds(), withinPercentage(0.01));
    assertThat(flown.metresEachWay()).isCloseTo(5 * plain.seconds(), withinPercentage(0.01));
    assertThat(flown.endurance().ending()).isEqualTo(plain.ending());
    assertThat(flown.endurance().discharge().usedCoulomb())
        .isCloseTo(plain.discharge().usedCoulomb(), within(1e-6));
    assertThat(flown.endurance().discharge().energyJ())
        .isCloseTo(plain.discharge().energyJ(), withinPercentage(0.01));
    assertThat(flown.endingWay()).isEmpty();
  }

  /** The turn found by trying every hundredth of a percent of the charge. */
  @Test
  void turnsWhereTheChargeLeftJustBringsItHome() {
    var best = 0.0;
    for (var charge = 0.9999; charge > 0.2; charge -= 0.0001) {
      var out =
          Endurance.of(FAST, PACK, new LandingRule(charge, 3.3), Limits.NONE).seconds() * 15;
      var back = Endurance.of(SLOW, PACK, RULE, Limits.NONE, charge, INF).seconds() * 15;
      best = Math.max(best, Math.min(out, back));
    }

    var flown = fly(FAST, 15, SLOW, 15, RULE);

    assertThat(flown.metresEachWay()).isCloseTo(best, withinPercentage(0.02));
    assertThat(flown.outSeconds() * 15).isCloseTo(flown.backSeconds() * 15, within(1e-3));
    assertThat(flown.endurance().discharge().endCharge()).isCloseTo(0.2, within(1e-9));
    assertThat(flown.endsOut()).isFalse();
  }

  /** The way out meets the landing volts early; the way back takes less and comes home above them. */
  @Test
  void turnsAtTheLimitOfTheWayOutAndComesHomeWithMore() {
    var rule = new LandingRule(0.05, 3.75);
    var out = Endurance.of(FAST, PACK, rule, Limits.NONE);
    assertThat(out.ending()).isEqualTo(Ending.LANDING_VOLTS);

    var flown = fly(FAST, 10, SLOW, 40, rule);

    assertThat(flown.endsOut()).isTrue();
    assertThat(flown.endurance().ending()).isEqualTo(Ending.LANDING_VOLTS);
    assertThat(flown.endingWay()).isEqualTo(OptionalInt.of(0));
    assertThat(flown.metresEachWay()).isEqualTo(10 * out.seconds());
    assertThat(flown.backSeconds()).isCloseTo(flown.metresEachWay() / 40, within(1e-9));
    assertThat(flown.endurance().discharge().endVolts())
        .isGreaterThan(out.discharge().endVolts());
  }

  @Test
  void namesTheWayBackWhereItsLimitEndsTheFlight() {
    var rule = new LandingRule(0.05, 3.6);

    var flown = fly(SLOW, 15, FAST, 15, rule);

    assertThat(flown.endurance().ending()).isEqualTo(Ending.LANDING_VOLTS);
    assertThat(flown.endingWay()).isEqualTo(OptionalInt.of(1));
  }

  @Test
  void doesNotTakeOffWhereTheWayOutCannotBeFlown() {
    var limits = new Limits(SLOW.point().currentA() * 1.01, INF, INF, INF, INF);

    var flown = OutAndBack.of(
        new OutAndBack.Way(FAST, 15), new OutAndBack.Way(SLOW, 15), PACK, RULE, limits);

    assertThat(flown.endurance().seconds()).isZero();
    assertThat(flown.metresEachWay()).isZero();
    assertThat(flown.endurance().ending()).isEqualTo(Ending.MOTOR_CURRENT);
  }

  @Test
  void goesNowhereWhereTheWayBackCannotBeFlown() {
    var limits = new Limits(SLOW.point().currentA() * 1.01, INF, INF, INF, INF);

    var flown = OutAndBack.of(
        new OutAndBack.Way(SLOW, 15), new OutAndBack.Way(FAST, 15), PACK, RULE, limits);

    assertThat(flown.metresEachWay()).isZero();
    assertThat(flown.endurance().ending()).isEqualTo(Ending.MOTOR_CURRENT);
  }
}
