package pappus.doubt;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import pappus.assessment.Assessment;
import pappus.assessment.Assessor;
import pappus.catalog.BuildText;
import pappus.catalog.Catalog;
import pappus.part.Known;
import pappus.part.Propeller;
import pappus.part.Role;
import pappus.reliance.Doubt;
import pappus.reliance.Reliance;
import pappus.shop.SmallShop;

class DoubtsTest {
  private static final Catalog FEW = SmallShop.few();
  private static final Assessor ASSESSOR = SmallShop.assessor(FEW, "");
  private static final Assessment FIRST = assess(String.join(",", SmallShop.ONE_BUILD));

  @Test
  void theEstimateLiesBetweenTheEnds() {
    var band = band(FIRST);

    assertThat(band.estimate())
        .isEqualTo(FIRST.flight().orElseThrow().endurance().seconds());
    assertThat(band.low()).isPositive().isLessThan(band.estimate());
    assertThat(band.high()).isGreaterThan(band.estimate());
    // The endurance is bent downward: what can be lost is more than what can be gained.
    assertThat(band.high() - band.estimate()).isLessThan(band.estimate() - band.low());
  }

  @Test
  void sameBuildSameNumbers() {
    assertThat(band(FIRST)).isEqualTo(band(FIRST));
  }

  @Test
  void eachDoubtMovesTheEnduranceTheWayPhysicsSays() {
    var band = band(FIRST);
    var battery = FIRST.build().battery().orElseThrow().chemistry();

    assertThat(band.contributions()).hasSize(14).allMatch(one -> one.effect() != 0);
    assertThat(seconds(band, "figure of merit of ligule-4x1.9x2")).isPositive();
    assertThat(seconds(band, "resistance of spikerush-1303-3400")).isNegative();
    assertThat(seconds(band, "no-load current of spikerush-1303-3400")).isNegative();
    assertThat(seconds(band, "capacity of tidewell-2s-3500")).isPositive();
    assertThat(seconds(band, "law of part-load loss")).isNegative();
    assertThat(seconds(band, "thrust lost on cottongrass-4")).isNegative();
    assertThat(seconds(band, "electronics of " + FIRST.build())).isNegative();
    assertThat(seconds(band, "slow resistance of " + battery)).isNegative();
    // Less induced power, more ripple of slower motors: they all but cancel.
    assertThat(seconds(band, "diameter of ligule-4x1.9x2")).isCloseTo(0, within(1.0));
    assertThat(seconds(band, "growth of the no-load current of spikerush-1303-3400"))
        .isPositive();
    assertThat(seconds(band, "mass of " + FIRST.build())).isNegative();
  }

  @Test
  void aCautiousOutlookFliesShorterAndKeepsTheBandOfTheLikeliestFigures() {
    var cautious = SmallShop.assessor(FEW, ", \"outlook\": \"cautious\"");

    var seen = cautious.assess(FIRST.build());

    assertThat(seen.milliseconds()).isBetween(FIRST.milliseconds() * 8 / 10, FIRST.milliseconds());
    assertThat(seen.milliseconds()).isLessThan(FIRST.milliseconds());
    assertThat(new Doubts(cautious).band(seen)).isEqualTo(band(FIRST));
  }

  @Test
  void aWorseKnownPropellerWidensTheBand() {
    var propeller = FIRST.build().propeller().orElseThrow();
    assertThat(propeller.test()).isNotNull();

    var measured = band(with(propeller, Known.MEASURED));
    var maker = band(with(propeller, Known.MAKER));
    var estimated = band(with(propeller, Known.ESTIMATED));

    assertThat(measured.deviation()).isLessThan(maker.deviation());
    assertThat(maker.deviation()).isLessThan(estimated.deviation());
  }

  @Test
  void doubtsOfSharedPartsCancelInTheDifference() {
    var other = assess(FIRST.build().toString().replace("newteye-14-feather", "newteye-14"));
    var mine = band(FIRST);
    var theirs = band(other);

    var together = mine.deviationOfDifference(theirs);

    assertThat(mine.deviationOfDifference(mine)).isZero();
    assertThat(together).isLessThan(Math.hypot(mine.deviation(), theirs.deviation()) / 2);
    assertThat(together).isCloseTo(theirs.deviationOfDifference(mine), within(1e-9));
  }

  @Test
  void doubtsOfDifferentPartsAddInSquares() {
    var one = new Band(
        100,
        List.of(
            new Contribution(Doubt.MERIT, "a", 0.1, 3, 3, 3),
            new Contribution(Doubt.MERIT, "shared", 0.1, 10, 10, 10)),
        0.9);
    var other = new Band(
        90,
        List.of(
            new Contribution(Doubt.MERIT, "b", 0.1, -4, 4, 4),
            new Contribution(Doubt.MERIT, "shared", 0.1, 10, 10, 10)),
        0.9);

    assertThat(one.deviation()).isCloseTo(Math.sqrt(109), within(1e-12));
    assertThat(one.deviationOfDifference(other)).isCloseTo(5, within(1e-12));
  }

  /** 10 and 90 % points of the normal distribution: 1.2816, from memory, not re-read in print. */
  @Test
  void theEndsAreTheTenthAndTheNinetiethOfAHundred() {
    var band = new Band(
        100,
        List.of(new Contribution(Doubt.MERIT, "a", 0.1, 10, 10, 10)),
        Reliance.ofLosses(0.1 * 0.1));

    assertThat(band.low()).isCloseTo(100 - 12.816, within(0.001));
    assertThat(band.high()).isCloseTo(100 + 12.816, within(0.001));
  }

  @Test
  void theFigureToPlanWithIsAShareOfTheEstimateInWholeThousandthsRoundedDown() {
    assertThat(new Band(100, List.of(), 0.8765432).low()).isEqualTo(87.654);
    assertThat(new Band(0, List.of(), 0.9).low()).isZero();
    // No flight is shorter than none.
    assertThat(Reliance.ofLosses(1)).isZero();
  }

  @Test
  void theLargestContributionStandsFirstWhateverItsSign() {
    var small = new Contribution(Doubt.MERIT, "a", 0.1, 1, 1, 1);
    var large = new Contribution(Doubt.MERIT, "c", 0.1, -3, 3, 3);
    var alike = new Contribution(Doubt.MERIT, "b", 0.1, 3, 3, 3);

    assertThat(new Band(100, List.of(small, large, alike), 0.9).largestFirst())
        .containsExactly(alike, large, small);
  }

  /** Kits of the same main parts differ in their masses and draws alone. */
  @Test
  void accessoriesHardlyMoveTheShareToPlanWith() {
    var band = band(FIRST);
    var share = band.planWith();
    var other = band(assess(FIRST.build().toString().replace("newteye-14-feather", "newteye-14")));

    assertThat(share).isBetween(0.75, 0.95);
    assertThat(other.planWith()).isCloseTo(share, within(0.0064)).isNotEqualTo(share);
    assertThat(band.low()).isEqualTo(Math.floor(share * band.estimate() * 1000) / 1000);
  }

  private static Assessment with(Propeller propeller, Known known) {
    var changed = new Propeller(
        propeller.id(),
        propeller.maker(),
        propeller.name(),
        propeller.price(),
        propeller.sold(),
        propeller.mass(),
        propeller.diameterInches(),
        propeller.pitchInches(),
        propeller.blades(),
        propeller.seats(),
        propeller.hubThicknessMillimetres(),
        propeller.test(),
        known,
        null,
        propeller.source(),
        List.of());
    // An assessor of its own: one keeps what counts of a part by its id.
    return SmallShop.assessor(FEW, "").assess(FIRST.build().with(Role.PROPELLER, changed));
  }

  private static Band band(Assessment assessment) {
    return new Doubts(ASSESSOR).band(assessment);
  }

  private static double seconds(Band band, String source) {
    return band.contributions().stream()
        .filter(one -> one.source().equals(source))
        .mapToDouble(Contribution::effect)
        .findFirst()
        .orElseThrow();
  }

  private static Assessment assess(String build) {
    return ASSESSOR.assess(BuildText.parse(build, FEW));
  }
}
