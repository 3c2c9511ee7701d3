package pappus.assessment.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static pappus.part.Parts.battery;
import static pappus.part.Parts.build;
import static pappus.part.Parts.frame;
import static pappus.part.Parts.with;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import pappus.answers.build.Hints;
import pappus.assessment.Assessment;
import pappus.assessment.Assessor;
import pappus.assessment.Desk;
import pappus.assessment.Heat;
import pappus.compatibility.Rules;
import pappus.fitting.Stock;
import pappus.part.Chemistry;
import pappus.part.Parts;
import pappus.physics.flight.Ending;
import pappus.scenario.Air;
import pappus.scenario.Flight;
import pappus.scenario.Goal;
import pappus.scenario.Leg;
import pappus.scenario.PackAge;
import pappus.scenario.Scenario;
import pappus.scenario.Scenarios;

/** Ways of flying, on the four-inch quad of the tests. */
final class CourseTest {
  private static final Assessment HOVER = Desk.assess(build());

  private static Scenario flying(Flight flight) {
    return with(Scenarios.plain(), "flight", flight);
  }

  private static Flight styled(Flight.Style style) {
    return with(Flight.HOVERING, "style", style);
  }

  private static Flight cruise(@Nullable Double airspeed, double wind) {
    return with(
        with(styled(Flight.Style.CRUISE), "airspeedMetresPerSecond", airspeed),
        "windMetresPerSecond",
        wind);
  }

  private static Flight profile(Leg... legs) {
    return new Flight(
        Flight.Style.PROFILE,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        List.of(legs),
        null,
        null,
        null,
        null,
        null);
  }

  private static Leg leg(
      @Nullable Double metres,
      @Nullable Double seconds,
      @Nullable Double airspeed,
      double headwind) {
    return new Leg(metres, seconds, airspeed, headwind, null, null, null);
  }

  private static Assessment fly(Flight flight) {
    return Desk.assess(build(), flying(flight));
  }

  private static FlightEstimate flight(Assessment assessment) {
    return assessment.flight().orElseThrow();
  }

  private static Course course(Assessment assessment) {
    return flight(assessment).course().orElseThrow();
  }

  @Test
  void hoverHasNoCourse() {
    assertThat(flight(HOVER).course()).isEmpty();
    assertThat(flight(HOVER).speeds()).isEmpty();
    assertThat(flight(HOVER).rangeMetres()).isZero();
    assertThat(HOVER.objective() / 1000).isEqualTo(HOVER.milliseconds()).isPositive();
  }

  @Test
  void aLoiterStaysUpLongerThanAHoverAndGoesNowhere() {
    var loiter = fly(styled(Flight.Style.LOITER));

    assertThat(loiter.isFeasible()).isTrue();
    assertThat(loiter.milliseconds()).isGreaterThan(HOVER.milliseconds());
    // Best-endurance power is 0.914 of hover at least, avionics unchanged.
    assertThat(loiter.milliseconds()).isLessThan((long) (HOVER.milliseconds() / 0.90));
    assertThat(course(loiter).coversGround()).isFalse();
    assertThat(flight(loiter).rangeMetres()).isZero();
    assertThat(course(loiter).stretches().get(0).cruise().airspeedMPerS()).isBetween(4.0, 11.0);
  }

  private static Leg stay(boolean back) {
    return new Leg(null, null, 0.0, null, null, true, back);
  }

  /** By its own figure to plan with, and no other. */
  @Test
  void aStayKeepsBackWhatTheWayHomeIsPlannedWith() {
    var out = leg(800.0, null, 8.0, -2);
    var flown = fly(profile(out, stay(true)));
    var course = course(flown);
    var home = fly(profile(leg(800.0, null, 8.0, 2)));

    assertThat(flown.isFeasible()).isTrue();
    assertThat(course.stretches().stream().map(Stretch::where))
        .containsExactly("on leg 1", "on leg 2", "on leg 1, back");
    assertThat(course.stretches().get(0).groundSpeedMPerS()).isEqualTo(10);
    assertThat(course.stretches().get(2).groundSpeedMPerS()).isEqualTo(6);
    assertThat(course.rangeMetres()).isCloseTo(1600, within(1e-6));
    assertThat(flight(flown).figure()).isEqualTo(course.stretches().get(1).seconds());
    assertThat(flight(flown).endurance().seconds()).isCloseTo(course.roundSeconds(), within(1e-6));
    // The kit's own doubts, which are left out of what is kept back, are small.
    var homeward = new Assessor(
        flying(profile(leg(800.0, null, 8.0, 2))), Stock.of(Parts.hardware()), Rules.ALL);
    var planned = homeward.planWith(home);
    assertThat(course.stay().orElseThrow().planWith()).isCloseTo(planned, within(0.02));
    assertThat(course.stay().orElseThrow().leavesAtCharge())
        .isGreaterThan(0.2 + 800.0 / 6 / flight(home).endurance().seconds() * 0.5);
  }

  @Test
  void windOnTheWayHomeShortensTheStay() {
    var last = Double.POSITIVE_INFINITY;
    for (var wind : new double[] {0, 2, 4}) {
      var stayed =
          flight(fly(profile(leg(800.0, null, 8.0, -wind), stay(true)))).figure();
      assertThat(stayed).isLessThan(last).isPositive();
      last = stayed;
    }
    assertThat(fly(profile(leg(800.0, null, 8.0, -9), stay(true))).isFeasible()).isFalse();
  }

  @Test
  void lessThanOneRoundIsInfeasible() {
    var round = flight(fly(profile(leg(null, 60.0, 0.0, 0)))).endurance().seconds();

    assertThat(fly(profile(leg(null, round - 1, 0.0, 0))).isFeasible()).isTrue();
    assertThat(fly(profile(leg(null, round + 1, 0.0, 0))).isFeasible()).isFalse();
  }

  @Test
  void aCalmCruiseGoesAsFarAsItsSpeedAndTime() {
    var cruise = fly(cruise(12.0, 0));

    assertThat(flight(cruise).rangeMetres())
        .isCloseTo(12 * flight(cruise).endurance().seconds(), within(1e-6));
    assertThat(flight(cruise).endurance().ending()).isEqualTo(Ending.RESERVE);
  }

  @Test
  void noCalmAirspeedGoesFartherThanTheBest() {
    var best = flight(fly(cruise(null, 0))).rangeMetres();

    // Best range is that of shaft energy; ripple costs less the faster the motors turn, so battery
    // energy favours more
    // speed.
    for (var airspeed = 4.0; airspeed < 24; airspeed += 1) {
      assertThat(flight(fly(cruise(airspeed, 0))).rangeMetres()).isLessThan(1.05 * best);
    }
    assertThat(flight(fly(cruise(5.0, 0))).rangeMetres()).isLessThan(0.8 * best);
  }

  @Test
  void inWindItFliesFasterOutThanBackAndBothWaysAreEquallyLong() {
    var windy = fly(cruise(null, 5));
    var out = course(windy).stretches().get(0);
    var back = course(windy).stretches().get(1);

    assertThat(out.cruise().airspeedMPerS()).isGreaterThan(back.cruise().airspeedMPerS());
    assertThat(out.groundSpeedMPerS()).isCloseTo(out.cruise().airspeedMPerS() - 5, within(1e-9));
    assertThat(back.groundSpeedMPerS()).isCloseTo(back.cruise().airspeedMPerS() + 5, within(1e-9));
    assertThat(out.metres()).isCloseTo(back.metres(), within(1e-9));
    assertThat(flight(windy).rangeMetres())
        .isLessThan(flight(fly(cruise(null, 0))).rangeMetres());
  }

  @Test
  void inWindAtOneAirspeedTheRangeIsThatOfTheHarmonicMean() {
    var windy = flight(fly(cruise(12.0, 4)));

    assertThat(windy.rangeMetres())
        .isCloseTo(windy.endurance().seconds() * 2 / (1.0 / 8 + 1.0 / 16), withinPercentage(1e-6));
    assertThat(windy.endurance().seconds())
        .isCloseTo(flight(fly(cruise(12.0, 0))).endurance().seconds(), withinPercentage(1e-6));
  }

  @Test
  void aWindThatIsNotOvercomeIsABrokenLimit() {
    var blown = fly(cruise(6.0, 9));

    assertThat(blown.isFeasible()).isFalse();
    var limit = Desk.limit(blown, "ground-speed");
    assertThat(limit.met()).isFalse();
    assertThat(limit.label()).isEqualTo("speed over ground on the way out");
    assertThat(limit.value()).isCloseTo(-3, within(1e-9));
    assertThat(flight(blown).endurance().ending()).isEqualTo(Ending.WIND);
    assertThat(blown.objective()).isZero();
  }

  @Test
  void aStormWithoutAnAirspeedIsABrokenLimitToo() {
    var blown = fly(cruise(null, 30));

    assertThat(Desk.limit(blown, "ground-speed").met()).isFalse();
    assertThat(blown.whyNoFlight()).isEmpty();
  }

  @Test
  void anAirspeedBeyondFullThrottleIsABrokenLimit() {
    var fast = fly(cruise(60.0, 0));

    assertThat(fast.isFeasible()).isFalse();
    var limit = Desk.limit(fast, "top-speed");
    assertThat(limit.met()).isFalse();
    assertThat(limit.label()).isEqualTo("airspeed in the cruise");
    assertThat(limit.value()).isEqualTo(60);
    assertThat(limit.bound()).isBetween(15.0, 50.0);
    assertThat(fast.whyNoFlight()).isEmpty();
  }

  @Test
  void closeToTheTopSpeedSaysThatItIsAnUpperBound() {
    var top = course(fly(cruise(null, 0))).topSpeedMPerS();

    assertThat(Hints.of(fly(cruise(0.8 * top, 0))))
        .anyMatch(hint -> hint.startsWith("Top speed is an upper bound"));
    assertThat(Hints.of(fly(cruise(0.4 * top, 0))))
        .noneMatch(hint -> hint.startsWith("Top speed is an upper bound"));
  }

  @Test
  void saysWhenADragAreaIsAssumed() {
    assertThat(frame().dragAreaSquareMetres()).isNull();
    assertThat(Hints.of(fly(cruise(null, 0))))
        .anyMatch(
            hint -> hint.matches(
                "The frame's drag area is not known: 0\\.00[3-9]\\d m² is assumed by its plates and arms, the pack and the mass, an engineering estimate."));
    assertThat(Hints.of(Desk.assess(
            build(with(frame(), "armWidthMillimetres", null)), flying(cruise(null, 0)))))
        .anyMatch(
            hint -> hint.endsWith(
                "is assumed by the mass, since its arms' width is not known either, an engineering estimate."));
    assertThat(Hints.of(Desk.assess(
            build(with(frame(), "dragAreaSquareMetres", 0.005)), flying(cruise(null, 0)))))
        .noneMatch(hint -> hint.contains("drag area"));
    assertThat(Hints.of(HOVER)).noneMatch(hint -> hint.contains("drag area"));
  }

  @Test
  void aProfileOfOneLegIsACruise() {
    var cruise = flight(fly(cruise(11.0, 0)));
    var profile = flight(fly(profile(leg(400.0, null, 11.0, 0))));

    assertThat(profile.endurance()).isEqualTo(cruise.endurance());
    assertThat(profile.rangeMetres()).isCloseTo(cruise.rangeMetres(), within(1e-6));
  }

  @Test
  void aProfileOfAHoverIsAHover() {
    var profile = flight(fly(profile(leg(null, 60.0, 0.0, 0))));

    assertThat(profile.endurance().seconds())
        .isCloseTo(flight(HOVER).endurance().seconds(), withinPercentage(1e-6));
  }

  @Test
  void legsOverASpotFlyAsFastAsTheWind() {
    var course = course(fly(profile(leg(null, 60.0, 0.0, 7), leg(null, 60.0, null, -1))));

    assertThat(course.stretches().get(0).cruise().airspeedMPerS()).isEqualTo(7);
    assertThat(course.stretches().get(1).cruise().airspeedMPerS())
        .isEqualTo(course.forward().bestEndurance().airspeedMPerS());
    assertThat(course.coversGround()).isFalse();
  }

  @Test
  void aProfileRepeatsItsLegsUntilItEnds() {
    var assessment = fly(profile(leg(300.0, null, 10.0, 5), leg(null, 40.0, null, 0)));
    var flight = flight(assessment);
    var course = course(assessment);

    assertThat(course.roundSeconds()).isCloseTo(100, within(1e-9));
    assertThat(flight.rangeMetres())
        .isCloseTo(300 * flight.endurance().seconds() / 100, within(1e-6));
    assertThat(flight.endurance().seconds()).isGreaterThan(200);
  }

  @Test
  void namesTheLegWhoseLimitEndsTheFlight() {
    var legs = profile(leg(null, 60.0, null, 0), leg(500.0, null, 22.0, 0));
    var assessment = fly(with(legs, "landingVoltsPerCell", 3.72));

    assertThat(flight(assessment).endurance().ending()).isEqualTo(Ending.LANDING_VOLTS);
    assertThat(course(assessment).endsOn()).hasValue(1);
  }

  @Test
  void ranksByRangeWhereThatIsTheGoal() {
    var ranged = Desk.assess(build(), with(flying(cruise(null, 4)), "goal", Goal.RANGE));

    assertThat(flight(ranged).isForRange()).isTrue();
    assertThat(ranged.objective()).isEqualTo((long) Math.floor(flight(ranged).rangeMetres() * 1e6));
    assertThat(fly(cruise(null, 4)).objective() / 1000)
        .isEqualTo(fly(cruise(null, 4)).milliseconds());
  }

  @Test
  void movesTheRangeByFactorsAndDrag() {
    var scenario = with(flying(cruise(null, 0)), "goal", Goal.RANGE);
    var assessor = new Assessor(scenario, Stock.of(Parts.hardware()), Rules.ALL);
    var metres = flight(assessor.assess(build())).rangeMetres();

    var whatIf = assessor.likeliest().whatIf(assessor.assess(build()));
    assertThat(whatIf.applyAsDouble(Factors.NONE)).isEqualTo(metres);
    assertThat(whatIf.applyAsDouble(Factors.NONE.with(values -> values.drag = 1.4)))
        .isLessThan(metres);
    assertThat(whatIf.applyAsDouble(Factors.added(20, 0))).isLessThan(metres);
  }

  @Test
  void limitsOnCurrentsSpeakOfTheFlightWhereItIsNoHover() {
    assertThat(Stream.of("motor-current", "pack-current")
            .map(id -> Desk.limit(fly(styled(Flight.Style.LOITER)), id).label()))
        .containsExactly("motor current in flight", "pack current in flight");
    assertThat(Desk.limit(HOVER, "motor-current").label()).isEqualTo("motor current in hover");
  }

  /** State of charge 0.894 at 4.20 V a cell, of which 0.2 stays: 13 % less, a little less by falling current. */
  @Test
  void aHighVoltagePackChargedTo420FliesATenthShorter() {
    var pack = build(with(battery(), "chemistry", Chemistry.LIHV));
    var full = Desk.assess(pack, Scenarios.plain());
    var short420 = Desk.assess(pack, flying(with(Flight.HOVERING, "chargedToVoltsPerCell", 4.2)));

    assertThat((double) short420.milliseconds() / full.milliseconds()).isBetween(0.84, 0.92);
    assertThat(flight(short420).freshThrustToWeight())
        .isLessThan(flight(full).freshThrustToWeight());
  }

  @Test
  void voltsAboveWhatAChemistryTakesAreFull() {
    var lipo = fly(with(Flight.HOVERING, "chargedToVoltsPerCell", 4.35));

    assertThat(lipo.milliseconds()).isEqualTo(HOVER.milliseconds());
  }

  @Test
  void anAgedPackFliesShorter() {
    var used = fly(with(Flight.HOVERING, "packAge", PackAge.USED));
    var tired = fly(with(Flight.HOVERING, "packAge", PackAge.TIRED));

    assertThat((double) used.milliseconds() / HOVER.milliseconds()).isBetween(0.88, 0.94);
    assertThat((double) tired.milliseconds() / HOVER.milliseconds()).isBetween(0.50, 0.70);
    assertThat(flight(tired).thrustToWeight()).isLessThan(flight(HOVER).thrustToWeight());
  }

  /**
   * At −5 °C the cells still hold 0.955 of their charge, but nearly five times the resistance meets the landing
   * volts long before the reserve.
   */
  @Test
  void onAColdMountainResistanceMeetsTheLandingVolts() {
    var cold = with(Scenarios.plain(), "air", new Air(2500, -5.0, -5.0, null, null));
    var warm = with(Scenarios.plain(), "air", new Air(2500, -5.0, 25.0, null, null));
    var frozen = flight(Desk.assess(build(), cold)).endurance();
    var kept = flight(Desk.assess(build(), warm)).endurance();

    assertThat(kept.ending()).isEqualTo(Ending.RESERVE);
    assertThat(frozen.ending()).isEqualTo(Ending.LANDING_VOLTS);
    assertThat(frozen.discharge().endCharge()).isGreaterThan(0.25);
    assertThat(frozen.seconds()).isLessThan(0.9 * kept.seconds());
    assertThat(frozen.discharge().endVolts()).isCloseTo(4 * 3.5, within(1e-6));
  }

  @Test
  void aLongerBurstIsHotterAndHeatNeverRanks() {
    var scenario = flying(with(Flight.HOVERING, "burstSeconds", 1.0));
    var longer = flying(with(Flight.HOVERING, "burstSeconds", 10.0));
    var brief = Heat.of(scenario, Desk.assess(build(), scenario));
    var lasting = Heat.of(longer, Desk.assess(build(), longer));

    assertThat(brief.steadyCelsius()).isEqualTo(lasting.steadyCelsius()).isBetween(16.0, 100.0);
    assertThat(brief.burstCelsius()).isBetween(brief.steadyCelsius(), lasting.burstCelsius());
    assertThat(Desk.assess(build(), longer).shortfall())
        .isEqualTo(Desk.assess(build(), scenario).shortfall());
    assertThat(new Heat(90, 101, 5).isHigh()).isTrue();
    assertThat(new Heat(90, 99, 5).isHigh()).isFalse();
  }
}
