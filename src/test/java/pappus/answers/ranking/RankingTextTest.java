package pappus.answers.ranking;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pappus.answers.build.AssessmentText;
import pappus.catalog.Catalog;
import pappus.document.Style;
import pappus.doubt.Doubts;
import pappus.ranking.Ranker;
import pappus.ranking.Ranking;
import pappus.search.Ending;
import pappus.search.Enumeration;
import pappus.search.Question;
import pappus.shop.SmallShop;

class RankingTextTest {
  private static final Catalog FEW = SmallShop.few();
  private static final String POOR = ", \"budget\": {\"amount\": 20, \"currency\": \"EUR\"}";
  private static final Question QUESTION = SmallShop.question(FEW, "");

  @Test
  void keepsToTheColumnsOfTheTerminal() {
    var ranking = rank(QUESTION, Ending.MOVES);
    var poor = rank(SmallShop.question(FEW, POOR), Ending.MOVES);
    var build = SmallShop.oneBuild();
    var assessment = QUESTION.assessor().assess(build);
    var band = Optional.of(new Doubts(QUESTION.assessor()).band(assessment));

    for (var width : List.of(60, 72, 100)) {
      var text = new RankingText(SmallShop.scenario(""), width, Style.PLAIN, 1);
      for (var answer : List.of(
          text.of(ranking, List.of()),
          text.of(poor, List.of()),
          new AssessmentText(SmallShop.scenario(""), width).of(assessment, band))) {
        assertThat(answer.lines()).allMatch(line -> line.length() <= width);
        assertThat(answer.lines()).anyMatch(line -> line.length() > width - 10);
        assertThat(answer).endsWith("\n").doesNotContain(" \n");
      }
    }
  }

  @Test
  void losesNoWordToTheWidth() {
    var ranking = rank(QUESTION, Ending.MOVES);

    var narrow = new RankingText(SmallShop.scenario(""), 60, Style.PLAIN, 1).of(ranking, List.of());
    var wide = new RankingText(SmallShop.scenario(""), 1000, Style.PLAIN, 1).of(ranking, List.of());

    // Rows name as many parts as there is room for; the first in detail is told whole.
    assertThat(detail(narrow)).isEqualTo(detail(wide)).hasSizeGreaterThan(50);
  }

  private static List<String> detail(String text) {
    return List.of(text.substring(text.indexOf("Row 1 in detail")).split("\\s+"));
  }

  @Test
  void saysWhatEndedTheSearch() {
    assertThat(text(Ending.MOVES)).doesNotContain("The clock", "You stopped");
    assertThat(text(Ending.CLOCK))
        .contains(" The clock ended the search: another run may differ.\n");
    assertThat(text(Ending.INTERRUPTED))
        .contains(" You stopped the search: this is the best so far.\n");
  }

  @Test
  void countsWhatWasLookedAt() {
    assertThat(text(Ending.MOVES))
        .contains("Longest found, not proven best: 48 builds assessed, ")
        .contains(" of them feasible, of 48 combinations.");
  }

  private static String text(Ending ending) {
    return new RankingText(SmallShop.scenario(""), 1000, Style.PLAIN, 1)
        .of(rank(QUESTION, ending), List.of());
  }

  private static Ranking rank(Question question, Ending ending) {
    return new Ranker(question, Enumeration.of(question)).rank(10, ending);
  }
}
