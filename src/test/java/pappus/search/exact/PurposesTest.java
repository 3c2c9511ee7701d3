package pappus.search.exact;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import pappus.assessment.Assessment;
import pappus.assessment.Purpose;
import pappus.assessment.Purpose.Measure;
import pappus.ranking.Ranker;
import pappus.search.Ending;
import pappus.search.Incumbents;
import pappus.search.Question;

/** Whatever builds are ranked by, and whatever flight they must have, against trying every build. */
@Tag("slow")
class PurposesTest {
  private static final int CATALOGUES = 200;
  private static final int ROWS = 6;

  @ParameterizedTest
  @EnumSource(Measure.class)
  void ranksAsTryingEveryBuildDoes(Measure measure) {
    var answered = 0;
    var narrowed = 0;
    for (var seed = 0; seed < CATALOGUES; seed++) {
      var random = new Random(7919L * seed + 13);
      var base = RandomQuestions.of(seed);
      var feasible = RandomQuestions.feasible(seed);
      var plans = feasible.stream().mapToLong(base.assessor()::planned).sorted().toArray();
      random.nextInt();
      var least = plans.length == 0 || (measure.isOfFlight() && random.nextBoolean())
          ? 0
          : plans[random.nextInt(plans.length)];
      var question = base.with(new Purpose(measure, least, random.nextBoolean()));
      var all = new Incumbents();
      feasible.stream().map(build -> question.assessor().assess(build.build())).forEach(all::offer);
      answered += all.bestFirst().isEmpty() ? 0 : 1;
      narrowed += all.feasible() > 0 && all.feasible() < feasible.size() ? 1 : 0;

      assertThat(exact(question)).as("catalogue %s", seed).isEqualTo(enumerated(question, all));
    }
    assertThat(answered).isGreaterThanOrEqualTo(CATALOGUES / 3);
    assertThat(narrowed).isGreaterThanOrEqualTo(CATALOGUES / 8);
  }

  private static List<String> exact(Question question) {
    return new ExactSearch(question, 2)
        .run(ROWS, Long.MAX_VALUE, new Incumbents(), done -> {}).rows().stream()
            .map(row -> text(row.assessment()))
            .toList();
  }

  private static List<String> enumerated(Question question, Incumbents all) {
    return new Ranker(question, all)
        .rank(ROWS, Ending.MOVES).candidates().stream()
            .map(candidate -> text(candidate.assessment()))
            .toList();
  }

  private static String text(Assessment row) {
    return row.objective() + " " + row.merit().second() + " " + row.build();
  }
}
