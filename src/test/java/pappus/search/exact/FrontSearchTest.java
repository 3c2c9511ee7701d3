package pappus.search.exact;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import pappus.assessment.Assessment;
import pappus.assessment.Purpose;
import pappus.search.Ending;
import pappus.search.Enumeration;
import pappus.search.Question;
import pappus.shop.SmallShop;

/** The front against trying every build. */
class FrontSearchTest {
  private static final int CATALOGUES = 90;

  /** What a build is on the front for: builds that are alike in all three may stand for each other. */
  private record Point(long objective, long milligrams, long cents) implements Comparable<Point> {
    boolean surpasses(Point other) {
      return !equals(other)
          && objective >= other.objective
          && milligrams <= other.milligrams
          && cents <= other.cents;
    }

    @Override
    public int compareTo(Point other) {
      return objective != other.objective
          ? Long.compare(other.objective, objective)
          : milligrams != other.milligrams
              ? Long.compare(milligrams, other.milligrams)
              : Long.compare(cents, other.cents);
    }
  }

  private static Point point(Assessment build, Question question) {
    return new Point(
        build.objective(),
        build.mass().neededMilligrams(question.assessor().deviations()),
        build.cost().cents());
  }

  /** By what to plan with, of those that are believed, as pages look limits up. */
  @Tag("slow")
  @Test
  void byWhatToPlanWithIsThatOfTryingEveryBuild() {
    var points = 0;
    for (var seed = 0; seed < CATALOGUES / 3; seed++) {
      var question = RandomQuestions.of(seed).with(new Purpose(Purpose.Measure.PLAN_WITH, 0, true));
      var believed = RandomQuestions.feasible(seed).stream()
          .filter(build -> !build.isBeyondBelief())
          .map(build -> question.assessor().assess(build.build()))
          .toList();
      var all = front(believed, question);
      points += all.size();

      assertThat(found(question, 0, 2)).as("catalogue %s", seed).isEqualTo(all);
    }
    assertThat(points).isGreaterThan(CATALOGUES / 3);
  }

  private static List<Point> front(List<Assessment> feasible, Question question) {
    var all = new TreeSet<Point>();
    feasible.forEach(build -> all.add(point(build, question)));
    return all.stream()
        .filter(one -> all.stream().noneMatch(other -> other.surpasses(one)))
        .toList();
  }

  private static List<Point> enumerated(int seed) {
    return front(RandomQuestions.feasible(seed), RandomQuestions.of(seed));
  }

  private static FrontSearch.Found run(Question question, double share, int threads) {
    return new FrontSearch(question, threads).run(share, Long.MAX_VALUE, done -> {});
  }

  private static List<Point> found(Question question, double share, int threads) {
    return run(question, share, threads).builds().stream()
        .map(build -> point(build, question))
        .sorted()
        .toList();
  }

  /** Whom nobody believes hides nobody who is. */
  @Tag("slow")
  @Test
  void ofThoseThatAreBelievedIsThatOfTryingThem() {
    var hidden = 0;
    for (var seed = 0; seed < CATALOGUES; seed++) {
      var question = RandomQuestions.of(seed);
      var believed = RandomQuestions.feasible(seed).stream()
          .filter(build -> !build.isBeyondBelief())
          .toList();
      var all = front(believed, question);
      hidden += enumerated(seed).containsAll(all) ? 0 : 1;

      var found = found(question.with(new Purpose(Purpose.Measure.FLIGHT, 0, true)), 0, 2);

      assertThat(found).as("catalogue %s", seed).isEqualTo(all);
    }
    assertThat(hidden).isPositive();
  }

  @Tag("slow")
  @Test
  void isThatOfTryingEveryBuild() {
    var points = 0;
    for (var seed = 0; seed < CATALOGUES; seed++) {
      var question = RandomQuestions.of(seed);
      var all = enumerated(seed);
      points += all.size();

      assertThat(found(question, 0, 2)).as("catalogue %s", seed).isEqualTo(all);
    }
    assertThat(points).isGreaterThan(120);
  }

  @Tag("slow")
  @Test
  void oneTwoAndEightThreadsGiveTheSame() {
    for (var seed = 0; seed < 10; seed++) {
      var question = RandomQuestions.of(seed);
      var two = found(question, 0, 2);

      assertThat(found(question, 0, 1)).isEqualTo(two);
      assertThat(found(question, 0, 8)).isEqualTo(two);
      assertThat(run(question, 0, 8).nodes()).isEqualTo(run(question, 0, 1).nodes());
    }
  }

  @Tag("slow")
  @Test
  void isWholeDownToTheShareAskedFor() {
    for (var seed = 0; seed < 15; seed++) {
      var question = RandomQuestions.of(seed);
      var all = enumerated(seed);
      if (all.isEmpty()) {
        continue;
      }
      var least = Math.ceil(0.8 * all.get(0).objective());

      assertThat(found(question, 0.8, 2))
          .containsExactlyElementsOf(
              all.stream().filter(point -> point.objective() >= least).toList());
    }
  }

  @Test
  void saysWhatIsLeftWhereItEndsEarly() {
    var question = SmallShop.question(SmallShop.few(), "");
    var all = front(Enumeration.feasible(question), question);

    var found = new FrontSearch(question, 2).run(0, 20, done -> {});

    assertThat(found.ending()).isEqualTo(Ending.EFFORT);
    var most = found.atMost().orElseThrow();
    var told = new ArrayList<Point>();
    found.builds().forEach(build -> told.add(point(build, question)));
    assertThat(told)
        .containsAll(all.stream().filter(one -> one.objective() > most).toList());
    assertThat(most).isGreaterThanOrEqualTo(all.get(all.size() - 1).objective());
  }

  @Test
  void nothingIsOnAnEmptyFront() {
    var question =
        SmallShop.question(SmallShop.few(), ", \"budget\": {\"amount\": 1, \"currency\": \"EUR\"}");

    var found = run(question, 0, 2);

    assertThat(found.builds()).isEmpty();
    assertThat(found.ending()).isEqualTo(Ending.PROVEN);
  }
}
