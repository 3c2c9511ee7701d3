package pappus.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import pappus.answers.build.Hints;
import pappus.catalog.BuildText;
import pappus.catalog.Catalog;
import pappus.catalog.Shelf;
import pappus.catalog.ShelfEntry;
import pappus.part.Flown;
import pappus.scenario.Scenario;
import pappus.search.Enumeration;
import pappus.search.Incumbents;
import pappus.search.Question;
import pappus.search.exact.ExactSearch;
import pappus.shop.SmallShop;

class SupplyTest {
  private static final Catalog FEW = SmallShop.few();
  private static final String BUILD = String.join(",", SmallShop.ONE_BUILD);

  private static Supply flown(String style, double factor) {
    return new Supply(FEW, Shelf.EMPTY, Map.of(style, new Flown(style, factor, 0.02, 5, "my log")));
  }

  private static Assessment assess(Supply supply, Scenario scenario) {
    return supply.assessor(scenario).assess(BuildText.parse(BUILD, supply.catalog()));
  }

  /** Induced and profile power go up by the factor; motors, controllers and avionics follow or stay. */
  @Test
  void ownFlightsCountForTheirWayOfFlying() {
    var hover = SmallShop.scenario("");
    var before = assess(new Supply(FEW, Shelf.EMPTY), hover).flight().orElseThrow();
    var after = assess(flown("hover", 1.1), hover).flight().orElseThrow();

    var shaft = before.split().inducedW() + before.split().profileW();
    assertThat(after.split().inducedW() + after.split().profileW())
        .isCloseTo(1.1 * shaft, within(1e-9));
    assertThat(after.split().avionicsW()).isEqualTo(before.split().avionicsW());
    assertThat(after.endurance().seconds())
        .isLessThan(before.endurance().seconds())
        .isGreaterThan(before.endurance().seconds() / 1.2);
    assertThat(Hints.of(assess(flown("hover", 1.1), hover)))
        .contains("Propeller power counts 1.10 times what is computed, from your own flights.");
    assertThat(Hints.of(assess(new Supply(FEW, Shelf.EMPTY), hover)))
        .noneMatch(hint -> hint.contains("your own flights"));
  }

  @Test
  void otherWaysOfFlyingDoNotKnowThem() {
    var loiter = SmallShop.flying("{\"style\": \"loiter\"}", "");

    assertThat(assess(flown("hover", 1.1), loiter).objective())
        .isEqualTo(assess(new Supply(FEW, Shelf.EMPTY), loiter).objective());
    assertThat(assess(flown("loiter", 1.1), loiter).objective())
        .isLessThan(assess(new Supply(FEW, Shelf.EMPTY), loiter).objective());
  }

  @Test
  void theProofHoldsWithThem() {
    for (var factor : List.of(0.9, 1.15)) {
      var supply = flown("hover", factor);
      var question = Question.of(FEW, supply.assessor(SmallShop.scenario("")));
      var best = Enumeration.of(question).bestFirst().get(0);

      var found = new ExactSearch(question, 2).best(Long.MAX_VALUE, new Incumbents(), done -> {});

      assertThat(found.rows().get(0).assessment().build()).isEqualTo(best.build());
      assertThat(found.rows().get(0).assessment().objective()).isEqualTo(best.objective());
    }
  }

  @Test
  void whatIsAtHandStaysWhereNothingIsCounted() {
    var shelf = Shelf.of(List.of(
        new ShelfEntry("cottongrass-4", 1, 0, null, null),
        new ShelfEntry("thistledown-5", null, 0, null, null)));

    var free = new Supply(FEW, shelf).uncounted();

    assertThat(free.shelf().owned(FEW.part("cottongrass-4").orElseThrow())).isEqualTo(1);
    assertThat(free.shelf().pieces(FEW.part("cottongrass-4").orElseThrow())).isEmpty();
    assertThat(free.shelf().pieces(FEW.part("thistledown-5").orElseThrow())).isEmpty();
  }
}
