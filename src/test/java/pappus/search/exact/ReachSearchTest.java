package pappus.search.exact;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import pappus.assessment.Assessment;
import pappus.assessment.Supply;
import pappus.catalog.Catalog;
import pappus.catalog.Shelf;
import pappus.change.Asked;
import pappus.links.Link;
import pappus.part.Part;
import pappus.part.Role;
import pappus.part.VideoSender;
import pappus.search.Enumeration;
import pappus.search.Incumbents;
import pappus.search.LocalSearch;
import pappus.search.Question;
import pappus.shop.SmallShop;

/** Links that must reach so far, and powers that follow from it, against trying every build. */
class ReachSearchTest {
  private static final int CATALOGUES = 200;

  @Tag("slow")
  @Test
  void ranksTwoHundredCataloguesAsTryingEveryBuildDoes() {
    var feasible = 0;
    var turnedUp = 0;
    for (var seed = 0; seed < CATALOGUES; seed++) {
      var question = RandomQuestions.reaching(seed);
      var all = new Incumbents();
      var builds = Enumeration.feasible(question);
      builds.forEach(all::offer);
      feasible += builds.isEmpty() ? 0 : 1;
      turnedUp += builds.stream().anyMatch(ReachSearchTest::isTurnedUp) ? 1 : 0;

      assertThat(ExactSearchTest.exact(question, 2))
          .as("catalogue %s", seed)
          .isEqualTo(ExactSearchTest.enumerated(question, all));
    }
    // Else nothing would be asked of the reach, or of the powers that follow from it.
    assertThat(feasible).isBetween(CATALOGUES / 5, CATALOGUES * 4 / 5);
    assertThat(turnedUp).isGreaterThan(CATALOGUES / 20);
  }

  private static boolean isTurnedUp(Assessment build) {
    var lowest = build
        .build()
        .videoSender()
        .map(VideoSender::powers)
        .map(powers -> powers.get(0).atAntenna())
        .orElse(0.0);
    return build.fitting().reach().video().map(Link::milliwatts).orElse(0.0) > lowest;
  }

  /** Of few parts every swap is tried: a heavier antenna that lets the power down is one of them. */
  @Test
  void changesFindTheAntennaThatSavesPower() {
    var question = asking(Map.of("reachMetres", 300));
    var best = Enumeration.best(question).orElseThrow();
    var incumbents = new Incumbents();
    incumbents.offer(question
        .assessor()
        .assess(best.build().with(Role.VIDEO_ANTENNA, part(question, "stipule-u"))));

    new LocalSearch(question, incumbents).improve(1, () -> false);

    assertThat(best.build().videoAntenna().orElseThrow().id()).isEqualTo("umbel-u-right-feather");
    assertThat(incumbents.bestFirst().get(0).build()).isEqualTo(best.build());
  }

  /** Where no setting reaches with the wire, and the next one with another antenna, that one is the lesser evil. */
  @Test
  void theFartherItMustReachTheMoreItDraws() {
    var last = Long.MAX_VALUE;
    for (var metres : List.of(50, 200, 300, 600)) {
      var best = Enumeration.best(asking(Map.of("reachMetres", metres))).orElseThrow();

      assertThat(best.objective()).isLessThanOrEqualTo(last);
      last = best.objective();
    }
    assertThat(last)
        .isLessThan(
            Enumeration.best(asking(Map.of("reachMetres", 50))).orElseThrow().objective());
    assertThat(Enumeration.best(asking(Map.of("reachMetres", 9000)))).isEmpty();
  }

  private static Part part(Question question, String id) {
    return question.options(Role.VIDEO_ANTENNA).stream()
        .filter(part -> part.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  private static Question asking(Map<String, ?> changes) {
    var scenario = SmallShop.scenario(", \"pilot\": {\"polarisation\": \"right\"}");
    var supply = new Supply(Catalog.of(SmallShop.catalog(SmallShop.REACHING).parts()), Shelf.EMPTY);
    return new Asked(scenario, supply).with(changes).question();
  }
}
