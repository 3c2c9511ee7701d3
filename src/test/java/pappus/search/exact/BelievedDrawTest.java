package pappus.search.exact;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import pappus.assessment.Assessment;
import pappus.assessment.Disbelief;
import pappus.assessment.Purpose;
import pappus.assessment.Purpose.Measure;
import pappus.assessment.flight.BelievedDraw;
import pappus.assessment.flight.Draw;
import pappus.part.Build;
import pappus.part.Role;
import pappus.search.Enumeration;
import pappus.search.Incumbents;
import pappus.search.Question;
import pappus.shop.SmallShop;

/**
 * The floor under what builds draw that are believed, over parts of the shipped catalogue of which some make builds
 * beyond belief: random handfuls of it hardly do.
 */
@Tag("slow")
class BelievedDrawTest {
  private static final Question QUESTION = SmallShop.question(
      SmallShop.catalog(List.of(
          "thistledown-5",
          "cottongrass-4.5",
          "cypsela-1404-2800",
          "spikerush-1303-3400",
          "sepal-4.5x2.8x2",
          "auricle-4.5x2.4x2",
          "awn-4.5x2.5x2",
          "tidewell-2s-3500",
          "saltpan-2s-3000",
          "penstock-20-smooth",
          "penstock-12-smooth",
          "culvert-6-whole",
          "glowmoss-200",
          "glowmoss-100",
          "newteye-14-feather",
          "newteye-14",
          "thrennel-seed",
          "stipule-u",
          "stipule-wire",
          "dewpond-220-16",
          "tether-30-20-short",
          "tether-30-18-short")),
      "");

  private static final List<Assessment> FEASIBLE = Enumeration.feasible(QUESTION);

  private static boolean isBelieved(Assessment build) {
    return !build.disbelief().contains(Disbelief.EFFICIENCY);
  }

  @Test
  void noBuildThatIsBelievedDrawsLess() {
    var believed = 0;
    var closed = 0;
    for (var build : FEASIBLE) {
      var drawn =
          build.flight().orElseThrow().draws().stream().mapToDouble(Draw::watts).sum();
      var whole = draw(build, true).leastWatts(build.mass().grams());
      var begun = draw(build, false).leastWatts(build.mass().grams());
      if (isBelieved(build)) {
        believed++;
        assertThat(drawn).as(build.build().toString()).isGreaterThanOrEqualTo(whole - 1e-9);
        assertThat(drawn).as(build.build().toString()).isGreaterThanOrEqualTo(begun - 1e-9);
      } else {
        closed += drawn < whole ? 1 : 0;
      }
    }
    System.out.printf(
        "%d feasible, %d believed, %d closed by the floor%n", FEASIBLE.size(), believed, closed);
    assertThat(believed).isBetween(FEASIBLE.size() / 10, FEASIBLE.size() * 9 / 10);
    assertThat(closed).isGreaterThan((FEASIBLE.size() - believed) / 2);
  }

  /** As it is bounded with all of a build decided, or with its motor, propeller and battery alone. */
  private static BelievedDraw draw(Assessment assessment, boolean isWhole) {
    var assessor = QUESTION.assessor();
    var build = assessment.build();
    var mains = Build.empty()
        .with(Role.MOTOR, build.motor().orElseThrow())
        .with(Role.PROPELLER, build.propeller().orElseThrow())
        .with(Role.BATTERY, build.battery().orElseThrow());
    return assessor
        .prospects()
        .of(isWhole ? build : mains)
        .orElseThrow()
        .belief()
        .draw(
            assessor.prospects().begun(mains).grams(),
            assessor.scenario().massCap().largestMilligrams() / 1000.0,
            0,
            List.of(assessor.prospects().rippleShare(build.board().orElseThrow())),
            assessor.prospects().air(build.frame().orElseThrow()));
  }

  @ParameterizedTest
  @EnumSource(Measure.class)
  void theBestThatIsBelievedIsThatOfTryingEveryBuild(Measure measure) {
    var plans =
        FEASIBLE.stream().mapToLong(QUESTION.assessor()::planned).sorted().toArray();
    var found = new ArrayList<String>();
    var tried = new ArrayList<String>();
    for (var tenth = 0; tenth < 10; tenth++) {
      var least = plans[tenth * plans.length / 10];
      var question = QUESTION.with(new Purpose(measure, least, true));
      var incumbents = new Incumbents();
      new ExactSearch(question, 2).best(Long.MAX_VALUE, incumbents, done -> {});
      found.add(first(incumbents));
      var all = new Incumbents();
      FEASIBLE.forEach(build -> all.offer(question.assessor().assess(build.build())));
      tried.add(first(all));
    }

    assertThat(found).isEqualTo(tried);
    assertThat(tried).doesNotContain("none");
  }

  private static String first(Incumbents incumbents) {
    return incumbents.bestFirst().stream()
        .findFirst()
        .map(build -> build.objective() + " " + build.build())
        .orElse("none");
  }
}
