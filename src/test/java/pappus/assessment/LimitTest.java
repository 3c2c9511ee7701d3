package pappus.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static pappus.part.Parts.battery;
import static pappus.part.Parts.build;
import static pappus.part.Parts.motor;
import static pappus.part.Parts.with;

import org.junit.jupiter.api.Test;
import pappus.catalog.ShelfEntry;
import pappus.part.Build;
import pappus.part.Connector;
import pappus.physics.flight.ThrottleLimit;
import pappus.scenario.MassCap;
import pappus.scenario.Payload;
import pappus.scenario.Scenarios;

final class LimitTest {
  private static final double EVEN_ODDS = 0.5;

  /** The whole build with a payload that brings it to a mass. */
  private static Limit massLimit(double grams, boolean strict) {
    var scenario = Desk.capped(new MassCap(250, strict, "an example", EVEN_ODDS));
    var left = grams - Desk.assess(build()).mass().grams();
    var payload = new Payload("ballast", left, 0, 0, null, null);
    return Desk.limit(Desk.assess(build(), with(scenario, "payload", payload)), "mass-cap");
  }

  @Test
  void aStrictCapIsBrokenByItsOwnMass() {
    assertThat(massLimit(250, true).met()).isFalse();
    assertThat(massLimit(249.999, true).met()).isTrue();
  }

  @Test
  void anotherCapMayBeReached() {
    assertThat(massLimit(250, false).met()).isTrue();
    assertThat(massLimit(250.001, false).met()).isFalse();
  }

  /** 1.6449 and 2.3263 deviations for 95 and 99 % (any table of the normal distribution). */
  @Test
  void confidenceKeepsDeviationsFree() {
    var mass = Desk.assess(build()).mass();

    assertThat(massAt(0.95)).isCloseTo(mass.grams() + 1.6449 * mass.doubtGrams(), within(2e-3));
    assertThat(massAt(0.99)).isCloseTo(mass.grams() + 2.3263 * mass.doubtGrams(), within(2e-3));
  }

  private static double massAt(double confidence) {
    var scenario = Desk.capped(new MassCap(250, true, "an example", confidence));
    return Desk.limit(Desk.assess(build(), scenario), "mass-cap").value();
  }

  @Test
  void hoverAboveAContinuousRatingIsBroken() {
    var weak = with(with(motor(), "continuousAmps", 0.5), "burstAmps", 40.0);
    var assessment = Desk.assess(build(weak));
    var limit = Desk.limit(assessment, "motor-current");

    assertThat(limit.met()).isFalse();
    assertThat(limit.bound()).isEqualTo(0.5);
    assertThat(assessment.isFeasible()).isFalse();
  }

  @Test
  void hoverAboveAPlugsRatingIsBroken() {
    assertThat(Desk.limit(
                Desk.assess(build(with(battery(), "connector", Connector.PH2))), "plug-current")
            .met())
        .isFalse();
  }

  @Test
  void fullThrottleAboveABurstRatingOnlyCapsTheThrust() {
    var free = Desk.assess(build(with(motor(), "burstAmps", 40.0)));
    var capped = Desk.assess(build(with(motor(), "burstAmps", 5.0)));

    assertThat(capped.flight().orElseThrow().full().limit()).isEqualTo(ThrottleLimit.MOTOR);
    assertThat(thrust(capped)).isLessThan(thrust(free));
    assertThat(capped.limits())
        .filteredOn(limit -> limit.id().endsWith("-current"))
        .isNotEmpty()
        .allMatch(Limit::met);
    assertThat(capped.broken()).isEmpty();
  }

  /** A plug that passes less than the motors take is no fault, unless the scenario asks that it passes all. */
  @Test
  void aPackThatDoesNotStandFullThrottleIsBrokenWhereThatIsAskedFor() {
    var asking = with(
        Scenarios.plain(),
        "flight",
        with(Scenarios.plain().flight(), "packStandsFullThrottle", true));
    var weak = build(with(battery(), "labelRating", 5.0));
    var strong = build(with(motor(), "speedConstantRpmPerVolt", 2000.0));

    assertThat(Desk.assess(weak).limits()).noneMatch(limit -> limit.is(LimitKind.PACK_THROTTLE));
    var broken = Desk.limit(Desk.assess(weak, asking), "pack-throttle");
    assertThat(broken.met()).isFalse();
    assertThat(broken.value())
        .isEqualTo(Desk.assess(weak).flight().orElseThrow().fresh().duty());
    assertThat(broken.bound()).isEqualTo(1);
    var kept = Desk.assess(strong, asking);
    assertThat(Desk.limit(kept, "pack-throttle").met()).isTrue();
    // Nothing is left of it, and nothing has to be.
    assertThat(kept.tightest().orElseThrow().id()).isNotEqualTo("pack-throttle");
  }

  /** What motors or controllers do not stand is not the pack's doing. */
  @Test
  void aMotorsLimitIsNoneOfThePack() {
    var asking = with(
        Scenarios.plain(),
        "flight",
        with(Scenarios.plain().flight(), "packStandsFullThrottle", true));
    var capped = Desk.assess(build(with(motor(), "burstAmps", 5.0)), asking);

    assertThat(capped.flight().orElseThrow().motorOutputPercent()).isLessThan(100);
    assertThat(Desk.limit(capped, "pack-throttle").met()).isTrue();
  }

  /** The scenario's thrust-to-weight is judged on what is left. */
  @Test
  void thrustOverWeightIsThatOfTheCappedThrottle() {
    var capped = Desk.assess(build(with(motor(), "burstAmps", 3.0)));

    assertThat(Desk.limit(capped, "thrust-to-weight").value()).isEqualTo(thrust(capped));
  }

  private static double thrust(Assessment assessment) {
    return assessment.flight().orElseThrow().thrustToWeight();
  }

  @Test
  void aMotorWithoutARatingHasNoLimit() {
    Build build = build(with(motor(), "continuousAmps", null));

    assertThat(Desk.assess(build).limits()).noneMatch(limit -> limit.id().equals("motor-current"));
  }

  @Test
  void excessIsCountedInMillionthsAndIsNeverLostInRounding() {
    assertThat(Limit.atMost("a", "a", "", 100, 100).excessMillionths()).isZero();
    assertThat(Limit.atMost("a", "a", "", 101, 100).excessMillionths()).isEqualTo(10_000);
    assertThat(Limit.atLeast("a", "a", "", 1, 2).excessMillionths()).isEqualTo(500_000);
    assertThat(Limit.atMost("a", "a", "", 100 + 1e-12, 100).excessMillionths()).isEqualTo(1);
    assertThat(Limit.atMost("a", "a", "", 1e12, 100).excessMillionths())
        .isEqualTo(Limit.LARGEST_EXCESS);
  }

  /** Two motors can be bought where four are needed; six propellers, in sets of four, are enough. */
  @Test
  void namesThePartThatIsShortest() {
    var assessment = Desk.assess(
        build(),
        new ShelfEntry("motor", 1, 2, null, null),
        new ShelfEntry("propeller", null, 2, null, null));
    var limit = Desk.limit(assessment, "in-stock");

    assertThat(limit.label()).isEqualTo("motor in the build");
    assertThat(limit.value()).isEqualTo(4);
    assertThat(limit.bound()).isEqualTo(3);
    assertThat(limit.met()).isFalse();
    assertThat(assessment.shortfall()).isPositive();
  }

  @Test
  void keepsTheStockWhereThereIsEnough() {
    var assessment = Desk.assess(build(), new ShelfEntry("motor", 2, 2, null, null));

    assertThat(Desk.limit(assessment, "in-stock").met()).isTrue();
    assertThat(assessment.shortfall()).isZero();
    assertThat(assessment.tightest().orElseThrow().isCount()).isFalse();
  }

  @Test
  void saysNothingOfStockThatNobodyCounted() {
    assertThat(Desk.assess(build()).limits()).noneMatch(limit -> limit.id().equals("in-stock"));
    assertThat(
            Desk.assess(build(), new ShelfEntry("motor", 2, null, null, null)).limits())
        .noneMatch(limit -> limit.id().equals("in-stock"));
  }
}
