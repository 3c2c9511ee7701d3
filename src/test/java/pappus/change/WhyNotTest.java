package pappus.change;

import static org.assertj.core.api.Assertions.assertThat;
import static pappus.part.Parts.with;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pappus.assessment.Assessment;
import pappus.assessment.LimitKind;
import pappus.assessment.Supply;
import pappus.catalog.Catalog;
import pappus.catalog.Shelf;
import pappus.part.Part;
import pappus.part.Role;
import pappus.quantity.Money;
import pappus.ranking.Finder;
import pappus.scenario.Choice;
import pappus.scenario.Scenario;
import pappus.search.Enumeration;
import pappus.search.Question;
import pappus.shop.SmallShop;

class WhyNotTest {
  private static final Catalog FEW = SmallShop.few();
  private static final Supply SUPPLY = new Supply(FEW, Shelf.EMPTY);

  private static final Scenario PLAIN = SmallShop.scenario("");

  private static Part part(String id) {
    return FEW.part(id).orElseThrow();
  }

  private static Role role(String id) {
    return Stream.of(Role.values())
        .filter(role -> question(PLAIN).options(role).contains(part(id)))
        .findFirst()
        .orElseThrow();
  }

  private static Question question(Scenario scenario) {
    return Question.of(FEW, SUPPLY.assessor(scenario));
  }

  /** The best of all builds, by trying each. */
  private static Optional<Assessment> best(Scenario scenario) {
    return Enumeration.best(question(scenario));
  }

  private static Assessment winner(Scenario scenario) {
    return best(scenario).orElseThrow();
  }

  /** The best of all that take nothing else than these parts in their roles, by trying each. */
  private static Optional<Assessment> bestWith(Scenario scenario, String... ids) {
    var allowed =
        Stream.of(ids).map(id -> new Choice.Allowed(role(id), List.of(id))).toList();
    return best(with(scenario, "parts", new Choice(null, allowed, null, null)));
  }

  private static Scenario choosing(String choice) {
    return SmallShop.scenario(", \"parts\": {" + choice + "}");
  }

  private static WhyNot of(String id, Assessment winner, Scenario scenario) {
    return WhyNot.of(
        part(id),
        role(id),
        winner,
        scenario,
        SUPPLY,
        new Finder(Finder.Way.AUTO, Finder.EFFORT, Finder.FEWER_MOVES, done -> {}));
  }

  private static WhyNot of(String id, Scenario scenario) {
    return of(id, winner(scenario), scenario);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "thistledown-5",
        "cottongrass-4",
        "cypsela-1404-2800",
        "spikerush-1303-3400",
        "frond-4.5x3.2x3",
        "awn-4.5x2.5x2",
        "ligule-4x1.9x2",
        "tidewell-2s-3400",
        "newteye-14"
      })
  void theBestBuildWithAPartIsTheBestOfAllThatHaveIt(String id) {
    var why = of(id, PLAIN);

    assertThat(why.best().isProof()).isTrue();
    assertThat(why.best().build().map(Assessment::build))
        .isEqualTo(bestWith(PLAIN, id).map(Assessment::build));
    assertThat(why.isLeftOut()).isFalse();
  }

  @Test
  void aPartThatIsInIsSaidToBe() {
    var winner = winner(PLAIN);

    for (var part : winner.build().parts().values()) {
      assertThat(of(part.id(), winner, PLAIN).isIn()).as(part.id()).isTrue();
    }
    assertThat(of("newteye-14", winner, PLAIN).isIn()).isFalse();
  }

  @Test
  void whatTheScenarioLeavesOutIsLookedForAllTheSame() {
    var excluded = choosing("\"excluded\": [\"tidewell-2s-3500\", \"newteye-14-feather\"]");
    var fixed = choosing("\"fixed\": [\"tidewell-2s-3400\", \"newteye-14\"]");
    var allowed = choosing(
        "\"allowed\": [{\"role\": \"battery\", \"parts\": [\"tidewell-2s-3400\"]}, {\"role\": \"camera\", \"parts\": [\"newteye-14\"]}]");

    for (var scenario : List.of(excluded, fixed, allowed)) {
      var why = of("tidewell-2s-3500", scenario);

      assertThat(why.isLeftOut()).as(scenario.choice().toString()).isTrue();
      // The camera stays as the scenario wants it.
      assertThat(why.best().build().map(Assessment::build))
          .as(scenario.choice().toString())
          .isEqualTo(bestWith(PLAIN, "tidewell-2s-3500", "newteye-14").map(Assessment::build))
          .isPresent();
    }
  }

  @Test
  void aBoardThatBringsAReceiverAlongLeavesOutTheOneThatIsFixed() {
    var ids = new ArrayList<>(SmallShop.ONE_BUILD);
    ids.addAll(List.of("newteye-14", "thrennel-leaf"));
    var supply = new Supply(SmallShop.catalog(ids), Shelf.EMPTY);
    var scenario = choosing("\"fixed\": [\"thrennel-leaf\", \"newteye-14\"]");
    var finder = new Finder(Finder.Way.AUTO, Finder.EFFORT, Finder.FEWER_MOVES, done -> {});

    var why = WhyNot.of(
        supply.catalog().part("culvert-6-whole").orElseThrow(),
        Role.BOARD,
        winner(PLAIN),
        scenario,
        supply,
        finder);

    assertThat(why.isLeftOut()).isTrue();
    assertThat(why.best().build()).hasValueSatisfying(best -> {
      assertThat(best.build().toString()).contains(",culvert-6-whole,", ",newteye-14,");
      assertThat(best.build().receiver()).isEmpty();
    });
  }

  @Test
  void namesPartsThatWouldCureAClash() {
    var winner = bestWith(PLAIN, "cottongrass-4").orElseThrow();
    var why = of("awn-4.5x2.5x2", winner, PLAIN);

    assertThat(why.swap().assessment().broken())
        .extracting(finding -> finding.rule())
        .containsExactly("propeller-clearance", "battery-bay");
    // The pack in the discs depends on all parts: no one part is said to cure that.
    assertThat(why.cures())
        .containsExactly(
            new WhyNot.Cure("propeller-clearance", Role.FRAME, List.of(part("thistledown-5"))));
  }

  @Test
  void aPartThatBreaksNothingNeedsNoCure() {
    assertThat(of("newteye-14", PLAIN).cures()).isEmpty();
  }

  @Test
  void aPartIsKeptDownByTheMassCap() {
    var capped = with(PLAIN, "massCap", with(PLAIN.massCap(), "grams", 197.5));
    var why = of("awn-4.5x2.5x2", capped);

    assertThat(bestWith(capped, "awn-4.5x2.5x2")).isEmpty();
    assertThat(why.best().build()).isEmpty();
    assertThat(why.best().isProof()).isTrue();
    var looser = with(PLAIN, "massCap", with(PLAIN.massCap(), "grams", 237.0));
    assertKeptDown(why, LimitKind.MASS_CAP, 237, looser, "awn-4.5x2.5x2");
  }

  @Test
  void aPartIsKeptDownByTheThrustAskedFor() {
    var strong = with(PLAIN, "leastThrustToWeight", 2.5);
    var why = of("spikerush-1303-3400", strong);

    assertThat(bestWith(strong, "spikerush-1303-3400")).isEmpty();
    assertKeptDown(
        why,
        LimitKind.THRUST_TO_WEIGHT,
        0.8 * 2.5,
        with(PLAIN, "leastThrustToWeight", 0.8 * 2.5),
        "spikerush-1303-3400");
  }

  @Test
  void aPartIsKeptDownByTheBudget() {
    var poor = with(PLAIN, "budget", Money.ofCents(20_000, "EUR"));
    var why = of("thistledown-5", poor);

    assertThat(bestWith(poor, "thistledown-5")).isEmpty();
    assertKeptDown(
        why,
        LimitKind.BUDGET,
        240,
        with(PLAIN, "budget", Money.ofCents(24_000, "EUR")),
        "thistledown-5");
  }

  private static void assertKeptDown(
      WhyNot why, LimitKind limit, double at, Scenario looser, String id) {
    var best = bestWith(looser, id).orElseThrow();
    assertThat(best.objective()).isGreaterThan(why.swap().base().objective());
    var one = why.loosened().stream()
        .filter(each -> each.limit() == limit)
        .findFirst()
        .orElseThrow();
    assertThat(one.at()).isEqualTo(at);
    assertThat(one.isProof()).isTrue();
    assertThat(one.with().build().orElseThrow().build()).isEqualTo(best.build());
    assertThat(one.any().orElseThrow().build().orElseThrow().build())
        .isEqualTo(winner(looser).build());
    assertThat(one.keepsDown()).isEqualTo(best.objective() >= winner(looser).objective());
  }

  @Test
  void aPartThatIsInIsKeptDownByNothing() {
    var capped = with(PLAIN, "massCap", with(PLAIN.massCap(), "grams", 197.5));
    assertThat(of("cottongrass-4", capped).isIn()).isTrue();
    assertThat(of("cottongrass-4", capped).loosened()).isEmpty();
  }

  @Test
  void aPartThatIsOnlyWorseIsKeptDownByNothing() {
    assertThat(of("newteye-14", PLAIN).loosened())
        .extracting(WhyNot.Loosened::limit)
        .containsExactly(LimitKind.MASS_CAP, LimitKind.THRUST_TO_WEIGHT);
    assertThat(of("newteye-14", PLAIN).loosened()).noneMatch(WhyNot.Loosened::keepsDown);
    assertThat(of("newteye-14", PLAIN).isBetter()).isFalse();
  }

  /** The scenario leaves it out: no limit is to blame. */
  @Test
  void noLimitKeepsDownWhatDoesBetterWithinAll() {
    var why = of("tidewell-2s-3500", choosing("\"excluded\": [\"tidewell-2s-3500\"]"));

    assertThat(why.isBetter()).isTrue();
    assertThat(why.loosened()).noneMatch(WhyNot.Loosened::keepsDown);
  }
}
