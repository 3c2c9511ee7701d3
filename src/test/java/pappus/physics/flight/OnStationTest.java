package pappus.physics.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import pappus.physics.battery.Pack;

class OnStationTest {
  private static final double INF = Double.POSITIVE_INFINITY;
  private static final Pack PACK = Examples.lipo(4, 0.85);
  private static final LandingRule RULE = new LandingRule(0.2, 3.3);
  private static final SteadyFlight FAST = at(20);
  private static final SteadyFlight SLOW = at(10);

  private static SteadyFlight at(double airspeedMPerS) {
    var aircraft = Examples.fiveInch(0.25);
    return new ForwardFlight(aircraft, Hover.of(aircraft)).at(airspeedMPerS).steady();
  }

  private static Circuit.Turn turn(SteadyFlight flight, double seconds) {
    return new Circuit.Turn(flight, seconds);
  }

  private static OnStation fly(double planWith, LandingRule rule, Circuit.Turn... turns) {
    return OnStation.of(List.of(turns), 1, planWith, PACK, rule, Limits.NONE);
  }

  @Test
  void aStayAloneIsThePlainFlight() {
    var plain = Endurance.of(SLOW, PACK, RULE, Limits.NONE);

    var flown = OnStation.of(List.of(turn(SLOW, 1)), 0, 1, PACK, RULE, Limits.NONE);

    assertThat(flown.staySeconds()).isEqualTo(plain.seconds());
    assertThat(flown.endurance().ending()).isEqualTo(plain.ending());
    assertThat(flown.leavesAtCharge()).isEqualTo(RULE.reserve());
  }

  /** Found by trying to leave at every hundredth of a percent of the charge. */
  @Test
  void leavesWhenTheChargeLeftJustBringsItHome() {
    var out = Endurance.of(FAST, PACK, RULE, Limits.NONE, PACK.startCharge(), 40);
    var longest = 0.0;
    for (var charge = 0.9; charge > 0.2; charge -= 0.0001) {
      var home = Endurance.of(FAST, PACK, RULE, Limits.NONE, charge, INF).seconds();
      if (home * 0.8 >= 60) {
        longest = Endurance.of(
                SLOW,
                PACK,
                new LandingRule(charge, 3.3),
                Limits.NONE,
                out.discharge().endCharge(),
                INF)
            .seconds();
      }
    }

    var flown = fly(0.8, RULE, turn(FAST, 40), turn(SLOW, 1), turn(FAST, 60));

    assertThat(flown.staySeconds()).isCloseTo(longest, withinPercentage(0.05));
    assertThat(flown.endurance().seconds()).isCloseTo(40 + flown.staySeconds() + 60, within(1e-9));
    assertThat(flown.endurance().ending()).isEqualTo(Ending.RESERVE);
    assertThat(flown.endingTurn()).isEmpty();
    // What was kept back beyond the estimate is left.
    assertThat(flown.endurance().discharge().endCharge()).isGreaterThan(RULE.reserve() + 0.02);
    assertThat(flown.endurance().discharge().usedCoulomb())
        .isCloseTo(
            PACK.capacityCoulomb()
                * (PACK.startCharge() - flown.endurance().discharge().endCharge()),
            within(1e-6));
  }

  @Test
  void ofSeveralWaysHomeEachBeginsWithWhatTheRestAsksFor() {
    var whole = fly(1, RULE, turn(FAST, 40), turn(SLOW, 1), turn(FAST, 60));
    var halves = fly(1, RULE, turn(FAST, 40), turn(SLOW, 1), turn(FAST, 25), turn(FAST, 35));

    assertThat(halves.staySeconds()).isCloseTo(whole.staySeconds(), withinPercentage(0.01));
    assertThat(halves.leavesAtCharge()).isCloseTo(whole.leavesAtCharge(), within(1e-5));
    assertThat(whole.endurance().discharge().endCharge()).isCloseTo(0.2, within(1e-6));
  }

  @Test
  void landsAtTheVoltsThatTheWayHomeMeets() {
    var rule = new LandingRule(0.05, 3.6);

    var flown = fly(1, rule, turn(SLOW, 40), turn(SLOW, 1), turn(FAST, 30));

    assertThat(flown.endurance().ending()).isEqualTo(Ending.LANDING_VOLTS);
    assertThat(flown.endingTurn()).isEqualTo(OptionalInt.of(2));
    assertThat(flown.endurance().discharge().endVolts())
        .isCloseTo(3.6 * PACK.series(), within(0.01));
  }

  @Test
  void aStayOfMorePowerThanTheWayHomeMeetsItsOwnVolts() {
    var rule = new LandingRule(0.05, 3.6);

    var flown = fly(1, rule, turn(SLOW, 40), turn(FAST, 1), turn(SLOW, 1));

    assertThat(flown.endingTurn()).isEqualTo(OptionalInt.of(1));
    assertThat(flown.endurance().ending()).isEqualTo(Ending.LANDING_VOLTS);
    assertThat(flown.endurance().discharge().ending())
        .isEqualTo(pappus.physics.battery.Discharge.Ending.TIME);
  }

  @Test
  void thereIsNoStayWhereTheWaysTakeEverything() {
    var plain = Endurance.of(FAST, PACK, RULE, Limits.NONE).seconds();

    assertThat(fly(1, RULE, turn(FAST, plain / 2), turn(SLOW, 1), turn(FAST, plain / 2 + 5))
            .staySeconds())
        .isZero();
    assertThat(fly(1, RULE, turn(FAST, plain + 5), turn(SLOW, 1), turn(FAST, 5)).endingTurn())
        .isEqualTo(OptionalInt.of(0));
    assertThat(fly(0, RULE, turn(FAST, 5), turn(SLOW, 1), turn(FAST, 5)).staySeconds())
        .isZero();
    assertThat(fly(1, RULE, turn(FAST, plain / 2), turn(SLOW, 1), turn(FAST, plain / 2 - 5))
            .staySeconds())
        .isBetween(5.0, 60.0);
  }

  @Test
  void theLessIsReliedOnTheSoonerItLeaves() {
    var last = INF;
    for (var planWith : List.of(1.0, 0.9, 0.8, 0.5)) {
      var seconds =
          fly(planWith, RULE, turn(FAST, 40), turn(SLOW, 1), turn(FAST, 60)).staySeconds();
      assertThat(seconds).isLessThan(last);
      last = seconds;
    }
  }
}
