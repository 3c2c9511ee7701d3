package pappus.ranking;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import pappus.assessment.Assessment;
import pappus.catalog.Catalog;
import pappus.ranking.Finder.Way;
import pappus.search.Ending;
import pappus.search.Enumeration;
import pappus.search.Incumbents;
import pappus.search.Question;
import pappus.shop.SmallShop;

class FinderTest {
  private static final Catalog FEW = SmallShop.few();
  private static final long MOVES = 800;

  private static Finder finder(Way way) {
    return new Finder(way, Finder.EFFORT, MOVES, done -> {});
  }

  private static Question question(String fields) {
    return SmallShop.question(FEW, fields);
  }

  private static String budget(long euros) {
    return ", \"budget\": {\"amount\": " + euros + ", \"currency\": \"EUR\"}";
  }

  private static Optional<String> told(Optional<Assessment> build) {
    return build.map(one -> one.objective() + " " + one.build());
  }

  private static Optional<String> enumerated(Question question) {
    return told(Enumeration.best(question));
  }

  @ParameterizedTest
  @ValueSource(longs = {1000, 210, 195, 185, 180, 175})
  void theBestIsThatOfTryingEveryBuild(long euros) {
    var question = question(budget(euros));

    for (var way : new Way[] {Way.AUTO, Way.EXACT}) {
      var best = finder(way).best(question);

      assertThat(told(best.build())).isEqualTo(enumerated(question));
      assertThat(best.isProof()).isTrue();
    }
  }

  @Test
  void aFrontWithoutEffortIsWhatChangesMeet() {
    var front = new Finder(Way.AUTO, 1, MOVES, done -> {}).front(question(""), 0.5);

    assertThat(front.isProof()).isFalse();
    assertThat(front.builds()).isNotEmpty().allMatch(Assessment::isFeasible);
  }

  @ParameterizedTest
  @ValueSource(strings = {"price", "mass", "thrust"})
  void aFrontTradesFlightsWhateverARankingGoesBy(String goal) {
    var least = ", \"leastMinutes\": 20";
    var other = finder(Way.EXACT).front(question(least + ", \"goal\": \"" + goal + "\""), 0.5);
    var byFlight = finder(Way.EXACT).front(question(least), 0.5);

    assertThat(byFlight.builds()).hasSizeGreaterThan(2);
    assertThat(other.builds().stream().map(Assessment::build))
        .containsExactlyElementsOf(
            byFlight.builds().stream().map(Assessment::build).toList());
  }

  /** The first that keeps lower limits is the best of all that keep them. */
  @ParameterizedTest
  @ValueSource(strings = {"price", "mass", "thrust"})
  void looksUpWhatIsBestUnderLowerLimits(String goal) {
    var question = question(", \"leastMinutes\": 20, \"goal\": \"" + goal + "\"");
    var all = Enumeration.feasible(question).stream()
        .filter(build -> !build.isBeyondBelief())
        .sorted(Incumbents.BEST_FIRST)
        .toList();

    var lookup = finder(Way.AUTO).lookup(question, Finder.EFFORT);
    var few = finder(Way.AUTO).lookup(question, 60);

    assertThat(lookup.isWhole()).isTrue();
    assertThat(few.isWhole()).isFalse();
    assertThat(names(lookup)).hasSizeGreaterThan(1);
    assertThat(names(lookup).subList(0, few.builds().size())).isEqualTo(names(few));
    for (var mass : all) {
      for (var price : lookup.builds()) {
        assertThat(within(lookup.builds(), mass, price, question))
            .isEqualTo(within(all, mass, price, question));
      }
    }
    assertThat(finder(Way.HEURISTIC).lookup(question, Finder.EFFORT)).isEqualTo(Lookup.NOTHING);
  }

  private static List<String> names(Lookup lookup) {
    return lookup.builds().stream().map(build -> build.build().toString()).toList();
  }

  /** The first that needs no more mass than one and costs no more than another. */
  private static Optional<String> within(
      List<Assessment> builds, Assessment mass, Assessment price, Question question) {
    var deviations = question.assessor().deviations();
    var most = mass.mass().neededMilligrams(deviations);
    return told(builds.stream()
        .filter(build -> build.mass().neededMilligrams(deviations) <= most
            && build.cost().cents() <= price.cost().cents())
        .findFirst());
  }

  @Test
  void whatIsStillPossibleIsToldOfFlightsAlone() {
    var least = ", \"leastMinutes\": 20";
    var byPrice = new Finder(Way.EXACT, 1, MOVES, done -> {})
        .rank(question(least + ", \"goal\": \"price\""), 3);
    var byFlight = new Finder(Way.EXACT, 1, MOVES, done -> {}).rank(question(least), 3);

    assertThat(byPrice.coverage().isProof()).isFalse();
    assertThat(byPrice.coverage().proof().atMost()).isEmpty();
    assertThat(byFlight.coverage().proof().atMost()).isPresent();
  }

  @Test
  void changesFindTheSameInASmallCatalogueAndProveNothing() {
    var best = finder(Way.HEURISTIC).best(question(""));

    assertThat(told(best.build())).isEqualTo(enumerated(question("")));
    assertThat(best.isProof()).isFalse();
    assertThat(best.proof().ending()).isEqualTo(Ending.MOVES);
  }

  @Test
  void aProfileIsProven() {
    var profile = SmallShop.flying(
        "{\"style\": \"profile\", \"legs\": [{\"seconds\": 60}, {\"seconds\": 60, \"airspeedMetresPerSecond\": 8}]}",
        "");
    var question = Question.of(FEW, SmallShop.assessor(FEW, profile));

    var best = finder(Way.AUTO).best(question);

    assertThat(best.isProof()).isTrue();
    assertThat(told(best.build())).isEqualTo(enumerated(question));
  }

  @ParameterizedTest
  @ValueSource(longs = {1000, 185, 180, 175, 100})
  void anyIsFoundExactlyWhereSomethingIsFeasible(long euros) {
    var question = question(budget(euros));

    var any = finder(Way.AUTO).any(question);

    assertThat(any.build().isPresent()).isEqualTo(enumerated(question).isPresent());
    any.build().ifPresent(build -> assertThat(build.isFeasible()).isTrue());
    if (any.build().isEmpty()) {
      assertThat(any.isProof()).isTrue();
    }
  }

  @Test
  void fewLooksProveNothing() {
    var any = finder(Way.AUTO).any(question(""), 1);

    assertThat(any.build()).isEmpty();
    assertThat(any.proof().ending()).isEqualTo(Ending.EFFORT);
    assertThat(any.isProof()).isFalse();
    assertThat(finder(Way.AUTO).any(question("")).build()).isPresent();
  }

  /** The effort of the finder holds, however many looks are asked for. */
  @Test
  void theEffortEndsAnyToo() {
    var lazy = new Finder(Way.AUTO, 1, MOVES, done -> {});

    assertThat(lazy.any(question(""), 1_000_000).proof().ending()).isEqualTo(Ending.EFFORT);
    assertThat(lazy.any(question("")).proof().ending()).isEqualTo(Ending.EFFORT);
  }

  /** Builds by trying each, without those that another surpasses. */
  private static List<String> front(Question question, double share) {
    var deviations = question.assessor().deviations();
    var all = Enumeration.feasible(question);
    var most = all.stream().mapToLong(Assessment::objective).max().orElseThrow();
    var front = new ArrayList<String>();
    for (var one : all) {
      var surpassed = all.stream()
          .anyMatch(other -> other.objective() >= one.objective()
              && other.mass().neededMilligrams(deviations)
                  <= one.mass().neededMilligrams(deviations)
              && other.cost().cents() <= one.cost().cents()
              && !other.build().toString().equals(one.build().toString()));
      if (!surpassed && one.objective() >= share * most) {
        front.add(one.build().toString());
      }
    }
    return front;
  }

  @Test
  void theFrontIsThatOfTryingEveryBuild() {
    var question = question("");
    for (var share : new double[] {0, 0.5, 0.98}) {
      var found = finder(Way.AUTO).front(question, share);

      assertThat(found.builds())
          .extracting(build -> build.build().toString())
          .containsExactlyInAnyOrderElementsOf(front(question, share));
      assertThat(found.builds())
          .isSortedAccordingTo((a, b) -> Long.compare(b.objective(), a.objective()));
      assertThat(found.isProof()).isTrue();
      assertThat(found.share()).isEqualTo(share);
    }
    assertThat(front(question, 0.98)).hasSizeLessThan(front(question, 0).size());
  }

  /** What was met on the way holds the longest flight, and nothing that another surpasses. */
  @Test
  void theFrontOfChangesIsOfWhatWasMet() {
    var question = question("");

    var found = finder(Way.HEURISTIC).front(question, 0.5);

    assertThat(found.isProof()).isFalse();
    assertThat(told(found.builds().stream().findFirst())).isEqualTo(enumerated(question));
    for (var one : found.builds()) {
      assertThat(found.builds())
          .filteredOn(other -> !other.build().toString().equals(one.build().toString()))
          .noneMatch(other -> other.objective() >= one.objective()
              && other.mass().neededMilligrams(question.assessor().deviations())
                  <= one.mass().neededMilligrams(question.assessor().deviations())
              && other.cost().cents() <= one.cost().cents());
    }
  }

  @ParameterizedTest
  @EnumSource(Way.class)
  void aStopBeforeItBeginsIsNotLost(Way way) {
    var finder = finder(way);
    finder.stop();

    assertThat(finder.isStopped()).isTrue();
    assertThat(finder.best(question("")).proof().ending()).isEqualTo(Ending.INTERRUPTED);
    assertThat(finder.any(question("")).proof().ending()).isEqualTo(Ending.INTERRUPTED);
    assertThat(finder.front(question(""), 0).proof().ending()).isEqualTo(Ending.INTERRUPTED);
    assertThat(finder.front(question(""), 0).isProof()).isFalse();
    assertThat(finder.rank(question(""), 3).coverage().proof().ending())
        .isEqualTo(Ending.INTERRUPTED);
  }

  @Test
  void oneFinderIsAskedAgainAndAgain() {
    var finder = finder(Way.AUTO);

    for (var euros : new long[] {210, 175, 185}) {
      assertThat(told(finder.best(question(budget(euros))).build()))
          .isEqualTo(enumerated(question(budget(euros))));
    }
  }
}
