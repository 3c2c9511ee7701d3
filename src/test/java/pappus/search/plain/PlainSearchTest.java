package pappus.search.plain;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import pappus.assessment.Assessment;
import pappus.part.Build;
import pappus.ranking.Candidate;
import pappus.ranking.Ranker;
import pappus.search.Ending;
import pappus.search.Question;
import pappus.search.exact.RandomQuestions;
import pappus.shop.SmallShop;

/** The second route against trying every build. */
class PlainSearchTest {
  private static final int WANTED = 6;
  private static final int CATALOGUES = 30;

  @Tag("slow")
  @Test
  void findsNothingThatARankingOfAllBuildsLacks() {
    for (var seed = 0; seed < CATALOGUES; seed++) {
      var question = RandomQuestions.of(seed);
      var rows = enumerated(question, seed);

      var found = look(question, rows, rows.size() < WANTED);

      assertThat(found.better()).as("catalogue %s", seed).isEmpty();
      assertThat(found.isWhole()).isTrue();
    }
  }

  @Tag("slow")
  @Test
  void findsWhatIsMissing() {
    var missing = 0;
    for (var seed = 0; seed < CATALOGUES; seed++) {
      var question = RandomQuestions.of(seed);
      var rows = enumerated(question, seed);
      if (rows.isEmpty()) {
        continue;
      }
      var last = rows.get(rows.size() - 1);
      var lacking = rows.subList(0, rows.size() - 1);

      var found = look(question, lacking, true);

      assertThat(builds(found.better())).as("catalogue %s", seed).contains(last.build());
      missing++;
    }
    assertThat(missing).isGreaterThan(CATALOGUES / 3);
  }

  @Test
  void saysWhatIsLeftWhenItsEffortEnds() {
    var question = SmallShop.question(SmallShop.few(), "");

    var found = new PlainSearch(question, List.of(), true).run(1, looks -> {});

    assertThat(found.isWhole()).isFalse();
    assertThat(found.motors()).isLessThan(found.ofMotors());
  }

  private static PlainSearch.Found look(Question question, List<Assessment> rows, boolean areAll) {
    return new PlainSearch(question, rows, areAll).run(Long.MAX_VALUE, looks -> {});
  }

  private static List<Assessment> enumerated(Question question, int seed) {
    return new Ranker(question, RandomQuestions.tried(seed))
        .rank(WANTED, Ending.MOVES).candidates().stream()
            .map(Candidate::assessment)
            .toList();
  }

  private static List<Build> builds(List<Assessment> assessments) {
    return assessments.stream().map(Assessment::build).toList();
  }
}
