package pappus.ranking;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import pappus.catalog.Catalog;
import pappus.search.Ending;
import pappus.shop.SmallShop;

/** Catalogues that leave a search nothing to hold on to: it is proven all the same, within counted choices. */
@Tag("slow")
class StressTest {
  private static Ranking rank(Catalog catalog, String grams, String thrust) {
    var scenario = SmallShop.scenarioText("")
        .replace("\"grams\": 250", "\"grams\": " + grams)
        .replace("\"leastThrustToWeight\": 2", "\"leastThrustToWeight\": " + thrust);
    var question = SmallShop.questionOf(catalog, scenario);
    return new Finder(Finder.Way.AUTO, Finder.EFFORT, Finder.MOVES, said -> {}).rank(question, 10);
  }

  private static void assertProven(Ranking ranking, long choices) {
    assertThat(ranking.coverage().proof().ending()).isEqualTo(Ending.PROVEN);
    assertThat(ranking.coverage().proof().looks()).isLessThan(choices);
  }

  @Test
  void twoThousandMotorsThatAreTheSame() {
    var ranking = rank(SmallShop.withMotors(2000, i -> Map.of("id", "same-" + i)), "250", "2");

    assertProven(ranking, 20_000);
    assertThat(ranking.candidates()).isNotEmpty();
  }

  @Test
  void twoThousandMotorsThatDifferInMassAlone() {
    var ranking = rank(
        SmallShop.withMotors(2000, i -> Map.of("id", "other-" + i, "mass.grams", 4 + i * 0.002)),
        "250",
        "2");

    assertProven(ranking, 200_000);
    assertThat(ranking.candidates()).isNotEmpty();
  }

  @Test
  void nothingThatBinds() {
    var ranking = rank(
        SmallShop.withMotors(500, i -> Map.of("id", "free-" + i, "mass.grams", 4 + i * 0.01)),
        "25000",
        "1");

    assertProven(ranking, 200_000);
    assertThat(ranking.candidates()).isNotEmpty();
  }

  @Test
  void nothingThatIsFeasible() {
    var ranking = rank(
        SmallShop.withMotors(2000, i -> Map.of("id", "heavy-" + i, "mass.grams", 40 + i * 0.01)),
        "20",
        "2");

    assertProven(ranking, 20_000);
    assertThat(ranking.candidates()).isEqualTo(List.of());
    assertThat(ranking.closest()).isPresent();
  }
}
