package pappus.search.exact;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import pappus.assessment.Assessment;
import pappus.assessment.Supply;
import pappus.catalog.Catalog;
import pappus.catalog.Shelf;
import pappus.change.Asked;
import pappus.part.Part;
import pappus.part.Role;
import pappus.search.Incumbents;
import pappus.search.Question;
import pappus.shop.SmallShop;

/** Packs that must stand full throttle, against trying every build. */
class FullThrottleDemandTest {
  private static final int CATALOGUES = 200;

  @Tag("slow")
  @Test
  void findsWhatTryingEveryBuildFinds() {
    var without = 0;
    for (var seed = 0; seed < CATALOGUES; seed++) {
      var question = demanding(RandomQuestions.of(seed));
      var all = new Incumbents();
      // What breaks a limit without the demand breaks it with the demand too.
      RandomQuestions.feasible(seed).stream()
          .map(build -> question.assessor().assess(build.build()))
          .filter(Assessment::isFeasible)
          .forEach(all::offer);
      var best = all.bestFirst().stream().findFirst().map(FullThrottleDemandTest::told);

      var incumbents = new Incumbents();
      new ExactSearch(question, 2).best(Long.MAX_VALUE, incumbents, done -> {});
      var found = incumbents.bestFirst().stream().findFirst();

      assertThat(found.map(FullThrottleDemandTest::told))
          .as("catalogue %s", seed)
          .isEqualTo(best);
      found.ifPresent(build -> assertThat(build.flight().orElseThrow())
          .satisfies(flight -> assertThat(flight.packThrottle()).isEqualTo(1)));
      without += all.bestFirst().size() < RandomQuestions.feasible(seed).size() ? 1 : 0;
    }
    // Else the demand would exclude nothing, and this would test nothing.
    assertThat(without).isGreaterThan(CATALOGUES / 10);
  }

  private static String told(Assessment build) {
    return build.objective() + " " + build.build();
  }

  /** The same parts under the same scenario with that demand. */
  private static Question demanding(Question question) {
    var parts = new LinkedHashSet<Part>(SmallShop.catalog(List.of()).parts());
    Stream.of(Role.values()).map(question::options).forEach(parts::addAll);
    var supply = new Supply(Catalog.of(List.copyOf(parts)), Shelf.EMPTY);
    return new Asked(question.assessor().scenario(), supply)
        .with(Map.of("flight.packStandsFullThrottle", true))
        .question();
  }
}
