package pappus.search.exact;

import static org.assertj.core.api.Assertions.assertThat;
import static pappus.part.Parts.with;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import pappus.assessment.Assessment;
import pappus.change.Asked;
import pappus.quantity.Money;
import pappus.ranking.Candidate;
import pappus.ranking.Finder;
import pappus.search.Enumeration;
import pappus.search.Question;
import pappus.whatif.sweep.Axes;
import pappus.whatif.sweep.Sweeper;

/** Whom a builder takes who would rather use what is there, against trying every build. */
@Tag("slow")
class PreferOwnedTest {
  private static final int CATALOGUES = 200;
  private static final int SWEPT = 60;
  private static final int STEPS = 4;

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

  /** With the longest flight gone, one with fewer pieces to buy may come near enough to what is left. */
  @Test
  void findsThemAtEachStepOfASweep() {
    var steps = 0;
    var others = 0;
    for (var seed = 0; seed < SWEPT; seed++) {
      var asked = RandomQuestions.preferring(seed);
      var all = Enumeration.feasible(asked.question());
      var cents =
          all.stream().map(build -> build.cost().cents()).distinct().sorted().toList();
      if (cents.size() < STEPS) {
        continue;
      }
      var budgets = IntStream.rangeClosed(1, STEPS)
          .mapToObj(i -> Money.ofCents(cents.get(i * (cents.size() - 1) / STEPS), "EUR"))
          .toList();
      var over = "budget="
          + budgets.stream()
              .map(budget -> budget.amount().toPlainString())
              .collect(Collectors.joining(","));
      var finder = new Finder(Finder.Way.EXACT, Long.MAX_VALUE, 0, told -> {});
      var sweep = new Sweeper(asked, List.of(Axes.of(over, asked)), finder, done -> {}).sweep();
      var looser = Optional.<Assessment>empty();
      for (var i = sweep.steps().size() - 1; i >= 0; i--) {
        var step = sweep.steps().get(i);
        var question =
            new Asked(with(asked.scenario(), "budget", budgets.get(i)), asked.supply()).question();
        var assessor = question.assessor();
        var wanted = preferred(all.stream()
            .map(build -> assessor.assess(build.build()))
            .filter(Assessment::isFeasible)
            .toList());
        assertThat(step.best().build().map(Assessment::build))
            .as("catalogue %s, %s", seed, step.values())
            .isEqualTo(wanted.map(Assessment::build));
        steps++;
        others += wanted.isPresent()
                && looser.isPresent()
                && !wanted.get().build().equals(looser.get().build())
                && assessor.assess(looser.get().build()).isFeasible()
            ? 1
            : 0;
        looser = wanted;
      }
    }
    assertThat(steps).isGreaterThan(SWEPT);
    assertThat(others).isPositive();
  }

  private static Object longest(List<Assessment> feasible, Question question) {
    return feasible.stream()
        .max(Comparator.comparingLong(question.assessor()::planned))
        .orElseThrow()
        .build();
  }

  /** Of builds that plan with nearly as much as the best, the one with the fewest pieces to buy. */
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
