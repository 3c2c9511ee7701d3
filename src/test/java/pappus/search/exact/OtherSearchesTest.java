package pappus.search.exact;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import pappus.assessment.Assessment;
import pappus.search.Incumbents;
import pappus.search.Question;
import pappus.search.Row;
import pappus.search.flat.ChocoSearch;
import pappus.search.flat.FlatModel;
import pappus.search.timefold.TimefoldSearch;

/** The exact search against searches that know nothing of its bounds. */
@Tag("slow")
class OtherSearchesTest {
  private static final int CATALOGUES = 200;
  private static final int ROWS = 3;
  private static final long MOVES = 320;
  private static final long TABLE_ROWS = 5_000;

  /** A question with what the exact search finds, which all others are held to. */
  private record Solved(int seed, Question question, List<Assessment> rows) {
    static Solved of(int seed) {
      var question = RandomQuestions.of(seed);
      return new Solved(seed, question, exact(question));
    }
  }

  private static final List<Solved> SOLVED =
      IntStream.range(0, CATALOGUES).mapToObj(Solved::of).toList();

  @Test
  void changesFindNothingThatTheExactRankingShouldHaveHad() {
    var reached = 0;
    for (var solved : SOLVED) {
      var question = solved.question();
      var exact = solved.rows();
      var incumbents = new Incumbents();

      new TimefoldSearch(question, MOVES).run(incumbents, done -> {});

      var changed = incumbents.bestFirst();
      var apart = question.assessor().scenario().differences();
      assertThat(changed.stream().filter(build -> isMissing(build, exact, apart)))
          .as("catalogue %s", solved.seed())
          .isEmpty();
      reached +=
          !changed.isEmpty() && exact.get(0).build().equals(changed.get(0).build()) ? 1 : 0;
    }
    // Otherwise it could not find what a wrong proof lacks.
    assertThat(reached).isGreaterThan(CATALOGUES / 3);
  }

  /** Whether a build is better than the row it would have kept out, or belongs behind rows that leave room for it. */
  private static boolean isMissing(Assessment build, List<Assessment> rows, int apart) {
    for (var row : rows) {
      if (Incumbents.BEST_FIRST.compare(build, row) < 0) {
        return true;
      }
      if (build.build().differences(row.build()) < apart) {
        return false;
      }
    }
    return rows.size() < ROWS;
  }

  @Test
  void chocoFindsTheSameOptimum() {
    for (var solved : SOLVED) {
      var model = new FlatModel(solved.question(), TABLE_ROWS);

      var found = new ChocoSearch(model, false).run(Duration.ofMinutes(5));

      assertThat(found.isProven()).isTrue();
      assertThat(found.best().map(OtherSearchesTest::coarse))
          .as("catalogue %s", solved.seed())
          .isEqualTo(first(solved.rows()).map(OtherSearchesTest::coarse));
    }
  }

  private static long coarse(Assessment assessment) {
    return assessment.objective() / FlatModel.COARSE;
  }

  private static Optional<Assessment> first(List<Assessment> rows) {
    return rows.stream().findFirst();
  }

  private static List<Assessment> exact(Question question) {
    return new ExactSearch(question, 2)
        .run(ROWS, Long.MAX_VALUE, new Incumbents(), done -> {}).rows().stream()
            .map(Row::assessment)
            .toList();
  }
}
