package pappus.search.exact;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import pappus.assessment.Assessment;
import pappus.ranking.Candidate;
import pappus.ranking.Finder;
import pappus.search.Enumeration;
import pappus.search.Question;

/** Whom a builder takes who would rather use what is there, against trying every build. */
@Tag("slow")
class PreferOwnedTest {
  private static final int CATALOGUES = 200;

  @Test
  void takesTheFewestPiecesThatPlanWithNearlyAsMuch() {
    var answered = 0;
    var others = 0;
    for (var seed = 0; seed < CATALOGUES; seed++) {
      var question = RandomQuestions.owning(seed);
      var feasible = Enumeration.feasible(question);
      var wanted = preferred(feasible);
      var finder = new Finder(Finder.Way.EXACT, Long.MAX_VALUE, 0, told -> {});

      var ranking = finder.rank(question, 1);

      var found = ranking.candidates().stream().findFirst().map(Candidate::assessment);
      assertThat(found.map(Assessment::build))
          .as("catalogue %s", seed)
          .isEqualTo(wanted.map(Assessment::build));
      assertThat(ranking.coverage().isProof()).isTrue();
      answered += wanted.isPresent() ? 1 : 0;
      others +=
          wanted.isPresent() && !wanted.get().build().equals(longest(feasible, question)) ? 1 : 0;
    }
    assertThat(answered).isGreaterThan(CATALOGUES / 3);
    assertThat(others).isGreaterThan(CATALOGUES / 10);
  }

  private static Object longest(List<Assessment> feasible, Question question) {
    return feasible.stream()
        .max(Comparator.comparingLong(question.assessor()::planned))
        .orElseThrow()
        .build();
  }

  private static Optional<Assessment> preferred(List<Assessment> feasible) {
    var believed = feasible.stream().filter(build -> !build.isBeyondBelief()).toList();
    var among = believed.isEmpty() ? feasible : believed;
    var best = among.stream().mapToLong(Assessment::planned).max().orElse(0);
    return among.stream()
        .filter(build -> build.planned() >= Math.ceil(0.95 * best))
        .min(Comparator.comparingInt((Assessment build) -> build.cost().piecesToBuy())
            .thenComparingLong(build -> build.cost().cents())
            .thenComparing(Comparator.comparingLong(Assessment::flown).reversed())
            .thenComparing(build -> build.build().toString()));
  }
}
