package pappus.search.exact;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import pappus.assessment.Assessment;
import pappus.catalog.Catalog;
import pappus.part.Motor;
import pappus.part.Motor.CirclesNeeded;
import pappus.part.Parts;
import pappus.ranking.Ranker;
import pappus.search.Ending;
import pappus.search.Enumeration;
import pappus.search.Incumbents;
import pappus.search.Question;
import pappus.search.Row;
import pappus.shop.SmallShop;

/** Exact ranking against trying every build, row for row. */
class ExactSearchTest {
  private static final int CATALOGUES = 200;
  /** Of these, at least half of two hundred have an answer. */
  private static final int WITH_LUMPS = 240;

  private static final int ROWS = 6;

  @Tag("slow")
  @Test
  void ranksTwoHundredCataloguesAsTryingEveryBuildDoes() {
    ranksAsTryingEveryBuildDoes(0);
  }

  /** What is kept back for the way home is known of whole main parts alone, and bounded before. */
  @Tag("slow")
  @Test
  void ranksStaysInTwoHundredCataloguesAsTryingEveryBuildDoes() {
    ranksAsTryingEveryBuildDoes(RandomQuestions.STAYS);
  }

  private static void ranksAsTryingEveryBuildDoes(int from) {
    var feasible = 0;
    var ordered = 0;
    for (var seed = from; seed < from + CATALOGUES; seed++) {
      var question = RandomQuestions.of(seed);
      var all = RandomQuestions.tried(seed);
      feasible += all.bestFirst().isEmpty() ? 0 : 1;

      var rows = run(question, 2).rows();
      ordered += rows.stream().anyMatch(ExactSearchTest::hasItsFrameOrderedOtherwise) ? 1 : 0;
      assertThat(texts(rows)).as("catalogue %s", seed).isEqualTo(enumerated(question, all));
    }
    assertThat(feasible).isGreaterThanOrEqualTo(CATALOGUES / 2);
    // Otherwise it could not tell whether ways to order a frame are one frame.
    assertThat(ordered).isGreaterThanOrEqualTo(CATALOGUES / 20);
  }

  private static boolean hasItsFrameOrderedOtherwise(Row row) {
    return row.variants().stream()
        .anyMatch(variant -> variant.build().differences(row.assessment().build()) == 0);
  }

  /** Packs, spares and lines of one's own within the budget, parts at hand. */
  @Tag("slow")
  @Test
  void ranksTheWholeOutlayOfTwoHundredCataloguesAsTryingEveryBuildDoes() {
    var bound = 0;
    for (var seed = 0; seed < CATALOGUES; seed++) {
      var question = RandomQuestions.buyingBeside(seed);
      var all = new Incumbents();
      Enumeration.feasible(question).forEach(all::offer);
      bound += question.assessor().scenario().budget() == null ? 0 : 1;

      assertThat(exact(question, 2)).as("catalogue %s", seed).isEqualTo(enumerated(question, all));
    }
    assertThat(bound).isGreaterThanOrEqualTo(CATALOGUES / 2);
  }

  /** A lump in the place of a board, of video, of all but the main parts. */
  @Tag("slow")
  @Test
  void ranksTwoHundredCataloguesWithALumpAsTryingEveryBuildDoes() {
    var flying = 0;
    for (var seed = 0; seed < WITH_LUMPS; seed++) {
      var question = RandomQuestions.lumped(seed);
      var all = new Incumbents();
      Enumeration.feasible(question).forEach(all::offer);
      flying += all.bestFirst().isEmpty() ? 0 : 1;

      assertThat(exact(question, 2)).as("catalogue %s", seed).isEqualTo(enumerated(question, all));
    }
    assertThat(flying).isGreaterThanOrEqualTo(CATALOGUES / 2);
  }

  @Tag("slow")
  @Test
  void oneTwoAndEightThreadsGiveTheSame() {
    for (var seed = 0; seed < 10; seed++) {
      var question = RandomQuestions.of(seed);
      var two = exact(question, 2);

      assertThat(exact(question, 1)).isEqualTo(two);
      assertThat(exact(question, 8)).isEqualTo(two);
      assertThat(run(question, 8).nodes()).isEqualTo(run(question, 1).nodes());
    }
  }

  @Test
  void saysHowMuchIsLeftWhenItsEffortEnds() {
    var question = SmallShop.question(SmallShop.few(), "");
    var best = Enumeration.of(question).bestFirst().get(0);

    var found = new ExactSearch(question, 2).run(ROWS, 1, new Incumbents(), done -> {});

    assertThat(found.ending()).isEqualTo(Ending.EFFORT);
    assertThat(found.atMost().orElseThrow()).isGreaterThanOrEqualTo(best.objective());
  }

  @Test
  void rowsMayDifferInOnePartWhereTheScenarioSaysSo() {
    var question = SmallShop.question(SmallShop.few(), ", \"candidatesDifferIn\": 1");
    var best = Enumeration.of(question).bestFirst().subList(0, ROWS);

    var rows = run(question, 2).rows();

    assertThat(rows.stream().map(row -> row.assessment().build()))
        .containsExactlyElementsOf(best.stream().map(Assessment::build).toList());
    assertThat(rows).allSatisfy(row -> assertThat(row.variants()).isEmpty());
  }

  /** What wind costs depends on the frame's drag, which bounds take at its least. */
  @Test
  void ranksInWindAndGustsAsTryingEveryBuildDoes() {
    for (var style : List.of("hover", "loiter")) {
      var windy = SmallShop.scenarioText("")
          .replace("\"altitudeMetres\": 5", "\"altitudeMetres\": 5, \"windMetresPerSecond\": 9")
          .replace("hover", style);
      var question = SmallShop.questionOf(SmallShop.few(), windy);

      assertThat(exact(question, 2))
          .isNotEmpty()
          .isEqualTo(enumerated(question, Enumeration.of(question)));
    }
  }

  /** No frame here is drilled for 25 mm. */
  @Test
  void aMotorDrilledTwiceFliesWhereOneOfItsCirclesFits() {
    var drilledOnce = exact(drilled(motor -> motor), 2);

    assertThat(drilledOnce).isNotEmpty();
    assertThat(exact(drilled(motor -> second(motor, CirclesNeeded.EITHER)), 2))
        .isEqualTo(drilledOnce);
    assertThat(exact(drilled(motor -> second(motor, CirclesNeeded.BOTH)), 2)).isEmpty();
  }

  private static Motor second(Motor motor, CirclesNeeded needed) {
    return Parts.drilled(motor, needed, 25.0, motor.boltCirclesMillimetres().get(0));
  }

  private static Question drilled(UnaryOperator<Motor> drill) {
    return SmallShop.question(
        Catalog.of(SmallShop.few().parts().stream()
            .map(part -> part instanceof Motor motor ? drill.apply(motor) : part)
            .toList()),
        "");
  }

  static List<String> exact(Question question, int threads) {
    return texts(run(question, threads).rows());
  }

  private static List<String> texts(List<Row> rows) {
    return rows.stream().map(row -> text(row.assessment(), row.variants())).toList();
  }

  private static ExactSearch.Found run(Question question, int threads) {
    return new ExactSearch(question, threads)
        .run(ROWS, Long.MAX_VALUE, new Incumbents(), done -> {});
  }

  static List<String> enumerated(Question question, Incumbents all) {
    return new Ranker(question, all)
        .rank(ROWS, Ending.MOVES).candidates().stream()
            .map(candidate -> text(candidate.assessment(), candidate.variants()))
            .toList();
  }

  private static String text(Assessment row, List<Assessment> variants) {
    var text = new StringBuilder(row.objective() + " " + row.build());
    variants.forEach(variant ->
        text.append("\n  ").append(variant.objective()).append(' ').append(variant.build()));
    return text.toString();
  }
}
