package pappus.search.timefold;

import static org.assertj.core.api.Assertions.assertThat;

import ai.timefold.solver.core.api.score.buildin.hardsoftlong.HardSoftLongScore;
import ai.timefold.solver.core.api.solver.SolverFactory;
import ai.timefold.solver.core.config.solver.EnvironmentMode;
import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import pappus.assessment.Assessment;
import pappus.catalog.Catalog;
import pappus.part.Part;
import pappus.part.Role;
import pappus.search.Ending;
import pappus.search.Enumeration;
import pappus.search.Incumbents;
import pappus.search.Pairs;
import pappus.search.Question;
import pappus.shop.SmallShop;

class TimefoldSearchTest {
  private static final Catalog FEW = SmallShop.few();

  private final Question question = SmallShop.question(FEW, "");

  @Test
  void theScoreIsShortfallAndMillisecondsOfTheAssessment() {
    var feasible = start(question);
    var infeasible = start(question);
    infeasible.remove(Role.CAMERA);

    for (var start : List.of(feasible, infeasible)) {
      var incumbents = new Incumbents();
      var choice = new BuildChoice(start, question, incumbents, new Pairs(question));
      var assessment = question.assessor().assess(choice.toBuild());

      var score = new BuildScore().calculateScore(choice);

      assertThat(score)
          .isEqualTo(HardSoftLongScore.of(-assessment.shortfall(), assessment.objective()));
      assertThat(score.isFeasible()).isEqualTo(start == feasible);
      assertThat(incumbents.assessed()).isEqualTo(1);
    }
  }

  /** Full assertions work every score out again, before and after every change. */
  @Test
  void keepsItsScoresRightAndFindsTheBestOfATinyCatalogue() {
    var incumbents = new Incumbents();
    var config = TimefoldSearch.config(1, 800, Duration.ofMinutes(1))
        .withEnvironmentMode(EnvironmentMode.FULL_ASSERT);

    var best = SolverFactory.<BuildChoice>create(config)
        .buildSolver()
        .solve(new BuildChoice(start(question), question, incumbents, new Pairs(question)));

    var longest = Enumeration.of(question).bestFirst().get(0);
    assertThat(question.assessor().assess(best.toBuild()).milliseconds())
        .isEqualTo(longest.milliseconds());
    assertThat(texts(incumbents).get(0)).isEqualTo(longest.build().toString());
  }

  @Test
  void findsEveryCandidateThatEnumerationFindsAndNoneBetter() {
    var incumbents = new Incumbents();

    assertThat(new TimefoldSearch(question, 4_000).run(incumbents, done -> {}))
        .isEqualTo(Ending.MOVES);

    assertThat(texts(incumbents)).isEqualTo(texts(Enumeration.of(question)));
  }

  @Test
  void isNeverBetterThanEnumerationHoweverShort() {
    var limit = Enumeration.of(question).bestFirst().get(0).milliseconds();
    for (var moves : List.of(8, 80, 800)) {
      var incumbents = new Incumbents();
      new TimefoldSearch(question, moves).run(incumbents, done -> {});
      assertThat(incumbents.bestFirst()).allMatch(found -> found.milliseconds() <= limit);
    }
  }

  @Tag("slow")
  @Test
  void twoRunsMeetTheSameBuilds() {
    var all = SmallShop.all();
    var pools = new ArrayList<Incumbents>();
    for (var run = 0; run < 2; run++) {
      var incumbents = new Incumbents();
      new TimefoldSearch(SmallShop.question(all, ""), 1_600).run(incumbents, done -> {});
      pools.add(incumbents);
    }

    assertThat(texts(pools.get(0))).isNotEmpty().isEqualTo(texts(pools.get(1)));
    assertThat(pools.get(0).assessed()).isEqualTo(pools.get(1).assessed());
    assertThat(pools.get(0).feasible()).isEqualTo(pools.get(1).feasible());
  }

  @Test
  void endsAtOnceWhereNothingIsOpen() {
    var only = SmallShop.question(SmallShop.catalog(SmallShop.ONE_BUILD), "");
    var incumbents = new Incumbents();

    assertThat(new TimefoldSearch(only, 64_000).run(incumbents, done -> {}))
        .isEqualTo(Ending.MOVES);

    assertThat(incumbents.bestFirst()).hasSize(1);
    assertThat(incumbents.assessed()).isLessThan(100);
  }

  @Test
  void isInterruptedBeforeItBegins() {
    var incumbents = new Incumbents();
    var search = new TimefoldSearch(question, 64_000);
    search.stop();

    assertThat(search.run(incumbents, done -> {})).isEqualTo(Ending.INTERRUPTED);
    assertThat(incumbents.assessed()).isZero();
  }

  @Test
  void isInterruptedWhileItRuns() {
    var incumbents = new Incumbents();
    var search = new TimefoldSearch(question, 80);

    assertThat(search.run(incumbents, done -> search.stop())).isEqualTo(Ending.INTERRUPTED);
    assertThat(incumbents.bestFirst()).isNotEmpty();
  }

  @Test
  void tellsHowManyStartsAreDone() {
    var told = new ArrayList<Long>();
    new TimefoldSearch(question, 8).run(new Incumbents(), told::add);

    assertThat(told).containsExactly(1L, 2L, 3L, 4L, 5L, 6L, 7L, 8L);
  }

  private static List<String> texts(Incumbents incumbents) {
    return incumbents.bestFirst().stream()
        .map(Assessment::build)
        .map(Object::toString)
        .toList();
  }

  private static Map<Role, Part> start(Question question) {
    var chosen = new EnumMap<Role, Part>(Role.class);
    for (var role : Role.values()) {
      question.options(role).stream()
          .filter(part -> SmallShop.ONE_BUILD.contains(part.id()))
          .findFirst()
          .ifPresent(part -> chosen.put(role, part));
    }
    return chosen;
  }
}
