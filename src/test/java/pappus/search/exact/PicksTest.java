package pappus.search.exact;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import pappus.assessment.Assessment;
import pappus.assessment.Purpose;
import pappus.assessment.Purpose.Measure;
import pappus.part.Build;
import pappus.ranking.Finder;
import pappus.ranking.Pick;
import pappus.ranking.Picks;
import pappus.search.Incumbents;
import pappus.search.Question;

/** What one is told to take, against trying every build. */
@Tag("slow")
class PicksTest {
  private static final int CATALOGUES = 200;

  private static final List<Double> SHARES = List.of(0.80, 0.90, 0.95, 0.98);

  @ParameterizedTest
  @EnumSource(names = {"FLIGHT", "PRICE", "MASS", "THRUST"})
  void picksWhatTryingEveryBuildFinds(Measure measure) {
    var picked = 0;
    for (var seed = 0; seed < CATALOGUES; seed++) {
      var plain = RandomQuestions.of(seed);
      var feasible = RandomQuestions.feasible(seed);
      var plans =
          feasible.stream().mapToLong(plain.assessor()::planned).sorted().toArray();
      var least = measure == Measure.FLIGHT || plans.length == 0
          ? 0
          : plans[new Random(31L * seed + 7).nextInt(plans.length)];
      var question = plain.with(new Purpose(measure, least, false));
      var finder = new Finder(Finder.Way.EXACT, Long.MAX_VALUE, 0, told -> {});

      var picks = finder.picks(question, finder.rank(question, 3));

      var tried = new Tried(question, feasible);
      assertThat(kinds(picks)).as("catalogue %s", seed).isEqualTo(tried.picks());
      assertThat(picks.isProven()).isTrue();
      assertThat(picks.areBelieved())
          .isEqualTo(tried.onlyBelieved || tried.longest().isEmpty());
      var givenUp = picks.givingUp().isEmpty() ? List.<Build>of() : tried.givenUp();
      assertThat(picks.givingUp())
          .allSatisfy(given -> assertThat(givenUp).contains(given.build().build()));
      picked += picks.picks().size() > 1 ? 1 : 0;
    }
    assertThat(picked).isGreaterThan(CATALOGUES / 8);
  }

  private static Map<Pick.Kind, Build> kinds(Picks picks) {
    var kinds = new EnumMap<Pick.Kind, Build>(Pick.Kind.class);
    picks.picks().forEach(pick -> kinds.put(pick.kind(), pick.build().build()));
    return kinds;
  }

  /** Every build that may be picked. */
  private static final class Tried {
    private final Question question;
    private final List<Assessment> feasible;
    private final boolean onlyBelieved;
    private final Map<Purpose, Optional<Assessment>> known = new HashMap<>();

    Tried(Question question, List<Assessment> feasible) {
      this.question = question;
      this.feasible = feasible;
      this.onlyBelieved = best(Measure.PLAN_WITH, question.assessor().purpose().leastFlight(), true)
          .isPresent();
    }

    /** Each purpose is asked for several times, and every build is assessed for it. */
    private Optional<Assessment> best(Measure measure, long least, boolean onlyBelieved) {
      return known.computeIfAbsent(new Purpose(measure, least, onlyBelieved), this::best);
    }

    private Optional<Assessment> best(Purpose purpose) {
      var assessor = question.with(purpose).assessor();
      return feasible.stream()
          .map(build -> assessor.assess(build.build()))
          .filter(Assessment::isFeasible)
          .min(Incumbents.BEST_FIRST);
    }

    Optional<Assessment> longest() {
      return best(Measure.PLAN_WITH, question.assessor().purpose().leastFlight(), onlyBelieved);
    }

    private Assessment at(Measure measure, double share) {
      var planWith = question.assessor().planned(longest().orElseThrow());
      var asked = question.assessor().purpose().leastFlight();
      return best(measure, Math.max(asked, (long) Math.ceil(share * planWith)), onlyBelieved)
          .orElseThrow();
    }

    List<Build> givenUp() {
      return SHARES.stream()
          .flatMap(share -> List.of(at(Measure.PRICE, share), at(Measure.MASS, share)).stream())
          .map(Assessment::build)
          .toList();
    }

    Map<Pick.Kind, Build> picks() {
      var picks = new EnumMap<Pick.Kind, Build>(Pick.Kind.class);
      var longest = longest();
      if (longest.isEmpty()) {
        return picks;
      }
      var first = longest.get();
      switch (question.assessor().purpose().measure()) {
        case PRICE -> add(Pick.Kind.CHEAPEST, at(Measure.PRICE, 0), true, picks);
        case MASS -> add(Pick.Kind.LIGHTEST, at(Measure.MASS, 0), true, picks);
        case THRUST -> add(Pick.Kind.STRONGEST, at(Measure.THRUST, 0), true, picks);
        default -> {}
      }
      var isForRange = question.assessor().scenario().isForRange();
      add(isForRange ? Pick.Kind.FARTHEST : Pick.Kind.LONGEST, first, true, picks);
      var thrifty = at(Measure.PRICE, 0.95);
      add(
          Pick.Kind.THRIFTY,
          thrifty,
          (double) thrifty.cost().cents() <= 0.95 * (double) first.cost().cents(),
          picks);
      var strongest = at(Measure.THRUST, 0.8);
      add(Pick.Kind.STRONGEST, strongest, thrust(strongest) >= 1.1 * thrust(first), picks);
      var lightest = at(Measure.MASS, 0.8);
      add(
          Pick.Kind.LIGHTEST,
          lightest,
          lightest.mass().grams() <= 0.97 * first.mass().grams(),
          picks);
      return picks;
    }

    private static void add(
        Pick.Kind kind, Assessment build, boolean isWorthIt, Map<Pick.Kind, Build> picks) {
      if (isWorthIt && picks.size() < 4 && !picks.containsValue(build.build())) {
        picks.putIfAbsent(kind, build.build());
      }
    }

    private static double thrust(Assessment build) {
      return build.flight().orElseThrow().thrustToWeight();
    }
  }
}
