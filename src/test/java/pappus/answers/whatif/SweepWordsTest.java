package pappus.answers.whatif;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import pappus.answers.build.Against;
import pappus.assessment.Assessment;
import pappus.assessment.Supply;
import pappus.catalog.BuildText;
import pappus.catalog.Catalog;
import pappus.catalog.Shelf;
import pappus.change.Asked;
import pappus.change.Changed;
import pappus.part.Role;
import pappus.ranking.Best;
import pappus.ranking.ParetoFront;
import pappus.scenario.Scenario;
import pappus.search.Ending;
import pappus.search.Proof;
import pappus.shop.SmallShop;
import pappus.whatif.relax.Demand;
import pappus.whatif.relax.Relaxer;
import pappus.whatif.sweep.Axes;
import pappus.whatif.sweep.Step;
import pappus.whatif.sweep.Sweep;

class SweepWordsTest {
  private static final Catalog FEW = SmallShop.few();
  private static final Assessment FIRST = SmallShop.assessor(FEW, "").assess(SmallShop.oneBuild());

  private static Assessment flying(double seconds) {
    return pappus.search.Changed.seconds(FIRST, seconds);
  }

  private static Proof proof(Ending ending) {
    return new Proof(ending, OptionalLong.empty(), 1);
  }

  private static Step step(String value, @Nullable Assessment build, Ending ending) {
    return new Step(
        List.of(value),
        new Best(Optional.ofNullable(build), proof(ending)),
        List.of(),
        false,
        Optional.empty());
  }

  private static Sweep sweep(String over, int searches, Step... steps) {
    var asked = new Asked(SmallShop.scenario(""), new Supply(FEW, Shelf.EMPTY));
    return new Sweep(List.of(Axes.of(over, asked)), List.of(steps), searches);
  }

  @Test
  void theFirstIsNamedByItsMainParts() {
    assertThat(SweepWords.winner(step("0", FIRST, Ending.PROVEN), true))
        .isEqualTo("Cottongrass 4, Spikerush 1303-3400, Ligule 4×1.9×2, Tidewell 2S 3500");
  }

  @Test
  void whatIsAlikeButForAFewPartsIsNamedByThose() {
    var lighter = SmallShop.assessor(FEW, "")
        .assess(BuildText.parse(
            String.join(",", SmallShop.ONE_BUILD)
                .replace("newteye-14-feather", "newteye-14")
                .replace(",dewpond-220-16", ""),
            FEW));
    assertThat(SweepWords.beside(FIRST, lighter))
        .isEqualTo("the same with camera Newteye 14, no capacitor");
  }

  @Test
  void theNextByWhatChanges() {
    var best = new Best(Optional.of(FIRST), proof(Ending.PROVEN));
    var changed = List.of(
        new Changed(Role.BATTERY, Optional.empty(), FEW.part("tidewell-2s-3400")),
        new Changed(Role.LEAD, FEW.part("newteye-14"), Optional.empty()));

    assertThat(
            SweepWords.winner(new Step(List.of("1"), best, changed, true, Optional.empty()), false))
        .isEqualTo("Tidewell 2S 3400, no battery lead");
    assertThat(SweepWords.winner(
            new Step(List.of("1"), best, List.of(), true, Optional.empty()), false))
        .isEqualTo("the same");
  }

  @Test
  void nothingIsToldApartFromNothingFound() {
    for (var isFirst : List.of(true, false)) {
      assertThat(SweepWords.winner(step("0", null, Ending.PROVEN), isFirst))
          .isEqualTo("nothing is feasible");
      assertThat(SweepWords.winner(step("0", null, Ending.EFFORT), isFirst))
          .isEqualTo("nothing was found");
    }
  }

  @Test
  void whatLeavesNothingIsNamed() {
    var asked =
        new Asked(SmallShop.scenario(", \"wants\": [\"gps\"]"), new Supply(FEW, Shelf.EMPTY));
    var demands = Relaxer.demands(asked, List.of("mass-cap", "wants-gps"));
    var none = step("0", null, Ending.PROVEN).best();

    assertThat(inTheWay(none, List.of()))
        .isEqualTo("nothing is feasible: no parts of the catalogue go together");
    assertThat(inTheWay(none, demands.subList(0, 1)))
        .isEqualTo("nothing is feasible; in the way: a GPS");
    assertThat(inTheWay(none, demands))
        .isEqualTo("nothing is feasible; in the way: a GPS with below 250 g");
  }

  private static String inTheWay(Best none, List<Demand> demands) {
    return SweepWords.winner(
        new Step(List.of("0"), none, List.of(), false, Optional.of(demands)), true);
  }

  private static final Scenario BY_FLIGHT = SmallShop.scenario("");
  private static final Scenario BY_RANGE =
      SmallShop.flying("{\"style\": \"cruise\"}", ", \"goal\": \"range\"");

  /** By hand: 600 s over 40 g are 15 s each. */
  @Test
  void theSlopeIsBetweenTheFirstAndTheLastFeasible() {
    var nothing = step("60", null, Ending.PROVEN);
    var steps = List.of(
        step("0", flying(2700), Ending.PROVEN),
        step("20", flying(2690), Ending.PROVEN),
        step("40", flying(2100), Ending.PROVEN));

    assertThat(SweepWords.slope(
            sweep("payload=0:60:20", 4, steps.get(0), steps.get(1), steps.get(2), nothing),
            BY_FLIGHT))
        .contains("From 0 to 40 g, the best build flies 15 s shorter per g on average.");
    // Downward the same.
    assertThat(SweepWords.slope(
            sweep("payload=60:0:20", 4, nothing, steps.get(2), steps.get(1), steps.get(0)),
            BY_FLIGHT))
        .contains("From 40 to 0 g, the best build flies 15 s shorter per g on average.");
    assertThat(SweepWords.slope(
            sweep(
                "temperature=0,20",
                2,
                step("0", flying(2100), Ending.PROVEN),
                step("20", flying(2110), Ending.PROVEN)),
            BY_FLIGHT))
        .contains("From 0 to 20 °C, the best build flies 0.5 s longer per °C on average.");
    // What builds are ranked by counts as metres then.
    assertThat(SweepWords.slope(sweep("payload=0:20:20", 2, steps.get(0), steps.get(1)), BY_RANGE))
        .contains("From 0 to 20 g, the best build flies 0.5 m less far per g on average.");
    assertThat(SweepWords.slope(
            sweep(
                "altitude=0,4000",
                2,
                step("0", flying(2100), Ending.PROVEN),
                step("4000", flying(2000), Ending.PROVEN)),
            BY_FLIGHT))
        .contains("From 0 to 4000 m, the best build flies 1.5 min shorter in all.");
  }

  @Test
  void aLimitAWordAndALoneStepHaveNoSlope() {
    var one = step("2", flying(2700), Ending.PROVEN);
    var two = step("3", flying(2600), Ending.PROVEN);

    assertThat(SweepWords.slope(sweep("cells=2,3", 2, one, two), BY_FLIGHT)).isEmpty();
    assertThat(SweepWords.slope(sweep("mass-cap=2,3", 2, one, two), BY_FLIGHT)).isEmpty();
    assertThat(SweepWords.slope(sweep("budget=2,3", 2, one, two), BY_FLIGHT)).isEmpty();
    assertThat(SweepWords.slope(sweep("payload=2", 1, one), BY_FLIGHT)).isEmpty();
    assertThat(SweepWords.slope(
            sweep("payload=2,3", 2, one, step("3", null, Ending.PROVEN)), BY_FLIGHT))
        .isEmpty();
  }

  /** Where builds are ranked by price, that is what changes. */
  @Test
  void aSweepOfPricesSaysWhatTheFirstAndTheLastCost() {
    var byPrice = SmallShop.scenario(", \"goal\": \"price\", \"leastMinutes\": 20");

    assertThat(SweepWords.slope(
            sweep(
                "payload=0:20:20",
                2,
                step("0", pappus.search.Changed.cents(FIRST, 18_000), Ending.PROVEN),
                step("20", pappus.search.Changed.cents(FIRST, 20_450), Ending.PROVEN)),
            byPrice))
        .contains(
            "From 0 to 20 g: the best build costs EUR 180 at first, and costs EUR 205 at last.");
  }

  @Test
  void saysHowFarASweepCanBeTrusted() {
    var one = step("2", FIRST, Ending.PROVEN);
    var two = step("3", FIRST, Ending.PROVEN);
    var open = step("4", FIRST, Ending.EFFORT);

    assertThat(SweepWords.standing(sweep("payload=2,3", 2, one, two)))
        .isEqualTo("Proven at each step: no other build from this catalogue does better.");
    assertThat(SweepWords.standing(sweep("mass-cap=2,3", 1, one, two)))
        .isEqualTo(
            "Proven at each step: no other build from this catalogue does better. 2 steps took 1 search; the others follow from looser ones.");
    assertThat(SweepWords.standing(sweep("payload=2:4:1", 3, one, two, open)))
        .isEqualTo("Not proven at 1 of 3 steps: there may be something better.");
    assertThat(SweepWords.standing(sweep("mass-cap=2:4:1", 2, one, two, open)))
        .isEqualTo(
            "Not proven at 1 of 3 steps: there may be something better. 3 steps took 2 searches; the others follow from looser ones.");
  }

  @Test
  void saysHowFarATradeOffCanBeTrusted() {
    var against = new Against(SmallShop.scenario(""));

    assertThat(SweepWords.standing(new ParetoFront(List.of(), 0.5, proof(Ending.PROVEN)), against))
        .isEqualTo("Proven: none is missing down to 50 % of the longest flight.");
    assertThat(SweepWords.standing(new ParetoFront(List.of(), 0, proof(Ending.PROVEN)), against))
        .isEqualTo("Proven: none is missing at all.");
    assertThat(SweepWords.standing(
            new ParetoFront(
                List.of(), 0.5, new Proof(Ending.EFFORT, OptionalLong.of(2_400_000_000L), 1)),
            against))
        .isEqualTo(
            "The search stopped early: every build above the flight it had come down to is here. No unseen build reaches more than 40.0 min.");
    assertThat(SweepWords.standing(
            new ParetoFront(List.of(), 0.5, proof(Ending.INTERRUPTED)), against))
        .isEqualTo("Not proven: these were found along the way. You stopped the search.");
    assertThat(SweepWords.standing(
            new ParetoFront(List.of(), 0.5, new Proof(Ending.MOVES, OptionalLong.empty(), 0)),
            against))
        .isEqualTo("Not proven: these were found along the way.");
  }
}
