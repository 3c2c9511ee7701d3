package pappus.change;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import pappus.assessment.Assessment;
import pappus.assessment.Limit;
import pappus.assessment.Margins;
import pappus.part.Board;
import pappus.part.Parts;
import pappus.part.Role;
import pappus.search.Enumeration;
import pappus.search.Question;
import pappus.shop.SmallShop;

class WhyTest {
  private static final Question QUESTION = Quads.QUESTION;
  private static final Why WHY = Why.of(Quads.SINGLE, QUESTION);

  private static final Assessment CHEAP = Quads.assess(Quads.WHOLE
      .build()
      .toString()
      .replace("tidewell-2s-3500", "tidewell-2s-3400")
      .replace("newteye-14-feather", "newteye-14"));

  private static List<Swap> everySwap(Assessment base) {
    var swapper = new Swapper(QUESTION);
    return swapper.roles(base.build()).stream()
        .flatMap(role -> swapper.all(base, role).stream())
        .filter(swap -> swap.assessment().isFeasible())
        .toList();
  }

  private static double seconds(Swap swap) {
    return swap.assessment().flight().orElseThrow().endurance().seconds()
        - swap.base().flight().orElseThrow().endurance().seconds();
  }

  @Test
  void hasTheBestSwapOfEveryRoleThatHasAnotherPart() {
    assertThat(WHY.swaps())
        .extracting(BestSwaps::role)
        .containsExactlyElementsOf(new Swapper(QUESTION).roles(Quads.SINGLE.build()));
    for (var swaps : WHY.swaps()) {
      var longest = everySwap(Quads.SINGLE).stream()
          .filter(swap -> swap.role() == swaps.role())
          .max(Comparator.comparingDouble(WhyTest::seconds));
      assertThat(swaps.best().map(swap -> swap.part().id()))
          .as(swaps.role().label())
          .isEqualTo(longest.map(swap -> swap.part().id()));
    }
  }

  @Test
  void asksHowOftenControllersSwitchOfWhichNothingIsKnown() {
    var board = Quads.SINGLE.build().board().orElseThrow();
    var stated = Parts.<Board>with(board, "pwmKilohertz", 48.0);
    var known = QUESTION.assessor().assess(Quads.SINGLE.build().with(Role.BOARD, stated));

    assertThat(WHY.forSwitching().orElseThrow())
        .isCloseTo(seconds(known) - seconds(Quads.SINGLE), within(1e-9))
        .isPositive();
    assertThat(Why.of(known, QUESTION).forSwitching()).isEmpty();
  }

  private static double seconds(Assessment assessment) {
    return assessment.flight().orElseThrow().endurance().seconds();
  }

  /** With the smaller of two packs and the heavier of two cameras, both cheaper. */
  @Test
  void findsTheMostForTheMoney() {
    var why = Why.of(CHEAP, QUESTION);
    var dearer = everySwap(CHEAP).stream()
        .filter(swap -> swap.centsMore() > 0 && seconds(swap) > 0)
        .toList();
    var most = dearer.stream()
        .max(Comparator.comparingDouble(swap -> seconds(swap) / swap.centsMore()))
        .orElseThrow();

    assertThat(dearer)
        .extracting(swap -> swap.part().id())
        .contains("tidewell-2s-3500", "newteye-14-feather");
    assertThat(most.part().id()).isEqualTo("tidewell-2s-3500");
    assertThat(why.forMoney().orElseThrow().part()).isEqualTo(most.part());
    assertThat(why.forMoney().orElseThrow().centsMore()).isEqualTo(250);
  }

  @Test
  void findsWhatIsCheapestToGiveUp() {
    for (var base : List.of(Quads.WHOLE, Quads.SINGLE, CHEAP)) {
      var cheapest = everySwap(base).stream()
          .filter(swap -> swap.centsMore() < -0.01 * base.cost().cents())
          .max(Comparator.comparingDouble(
              swap -> -swap.centsMore() / Math.max(1e-3, -seconds(swap))));

      assertThat(Why.of(base, QUESTION).toGiveUp().map(swap -> swap.part().id()))
          .as(base.build().toString())
          .isEqualTo(cheapest.map(swap -> swap.part().id()))
          .isPresent();
    }
  }

  @Tag("slow")
  @Test
  void asksNobodyToPayForNothingAndToSaveCents() {
    // The best of the workshop: nothing that costs more flies longer.
    var best = Quads.assess(Enumeration.of(QUESTION).bestFirst().get(0).build().toString());
    assertThat(Why.of(best, QUESTION).forMoney()).isEmpty();

    var one = SmallShop.catalog(
        Stream.concat(SmallShop.ONE_BUILD.stream(), Stream.of("cistern-220-25", "culvert-6-whole"))
            .toList());
    assertThat(Why.of(Quads.WHOLE, SmallShop.question(one, "")).toGiveUp()).isEmpty();
  }

  @Test
  void hasNeitherRatesNorSavingsWithoutAFlight() {
    var begun = Quads.assess("cottongrass-4,ligule-4x1.9x2");
    var why = Why.of(begun, QUESTION);

    assertThat(why.rates()).isEmpty();
    assertThat(why.savings()).isEmpty();
    assertThat(why.forMoney()).isEmpty();
    assertThat(why.toGiveUp()).isEmpty();
    assertThat(why.margins()).extracting(Limit::id).containsExactly("tip-to-tip");
  }

  @Test
  void hasMarginsRatesAndSavingsOfTheBuildItself() {
    assertThat(WHY.margins()).isEqualTo(Margins.of(Quads.SINGLE, QUESTION.assessor()));
    assertThat(WHY.rates()).isPresent().isEqualTo(Rates.of(Quads.SINGLE, QUESTION.assessor()));
    assertThat(WHY.savings()).isNotEmpty();
  }
}
