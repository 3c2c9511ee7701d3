package pappus.answers.whatif;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pappus.answers.result.Run;
import pappus.assessment.Assessment;
import pappus.catalog.BuildText;
import pappus.catalog.Catalog;
import pappus.part.Role;
import pappus.ranking.Best;
import pappus.scenario.Scenario;
import pappus.search.Ending;
import pappus.search.Proof;
import pappus.shop.SmallShop;
import pappus.whatif.relax.ClashCount;
import pappus.whatif.relax.Demand;
import pappus.whatif.relax.Demanded;
import pappus.whatif.relax.Relaxation;
import pappus.whatif.relax.SmallestRelaxation;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class RelaxationReportTest {
  private static final Catalog FEW = SmallShop.few();
  private static final Scenario SCENARIO = SmallShop.scenario("");
  private static final String IDS = String.join(",", SmallShop.ONE_BUILD);
  private static final Assessment BUILD =
      SmallShop.assessor(FEW, SCENARIO).assess(BuildText.parse(IDS, FEW));
  private static final String WORDS =
      "Cottongrass 4, Spikerush 1303-3400, Ligule 4×1.9×2, Tidewell 2S 3500: plan on 32.0 min, expect 39.5, 191 g, T/W 2.3, EUR 190.";
  private static final Run RUN =
      new Run("pappus test", 1, 0, List.of("parts"), List.of(), List.of());

  private static final Demand GPS = Demanded.of("wants-gps", "a GPS", "do without a GPS");
  private static final Demand CAP = Demanded.of("mass-cap", "below 190 g", "");
  private static final ClashCount CLASH =
      new ClashCount("propeller-clearance", Role.FRAME, Role.PROPELLER, 2, 6);
  private static final SmallestRelaxation LIGHTER =
      new SmallestRelaxation(CAP, "190 g", "196.7 g", BUILD, true, true);
  private static final SmallestRelaxation NO_GPS =
      new SmallestRelaxation(GPS, "", "", BUILD, true, false);
  private static final Relaxation.Together PAIR =
      new Relaxation.Together(List.of(CAP, GPS), BUILD, true);

  private static Best best(Optional<Assessment> build, Ending ending) {
    return new Best(build, new Proof(ending, OptionalLong.empty(), 1));
  }

  private static Relaxation relaxation(
      List<Demand> conflict,
      List<SmallestRelaxation> reliefs,
      List<Relaxation.Together> pairs,
      List<ClashCount> clashes) {
    return new Relaxation(
        best(Optional.empty(), Ending.PROVEN), conflict, reliefs, pairs, clashes, true, false, 9);
  }

  private static Relaxation found(Ending ending) {
    return new Relaxation(
        best(Optional.of(BUILD), ending),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        true,
        false,
        1);
  }

  private static String text(Relaxation relaxation, int width) {
    return new RelaxationReport(SCENARIO, relaxation).text(width);
  }

  private static JsonNode json(Relaxation relaxation) {
    return JsonMapper.shared().readTree(new RelaxationReport(SCENARIO, relaxation).json(RUN));
  }

  @Test
  void saysWhatIsInTheWayAndWhatHelps() {
    var all = relaxation(List.of(GPS, CAP), List.of(NO_GPS, LIGHTER), List.of(), List.of(CLASH));

    assertThat(text(all, 2000)).startsWith("""
        marsh: hover, 5 m above sea level; below 250 g; T/W at least 2.0.

        These demands together rule out every build, even with nothing else asked for; any one of them fewer would leave a build: a GPS; below 190 g.

        Smallest change of each that helps on its own, and the best build then:
        - Do without a GPS: %1$s
        - Mass cap 190 g → 196.7 g: %1$s

        Fit rules that keep apart the parts left open:
        - propeller-clearance: 2 of 6 pairs of frame and propeller (33 %%).

        Proven: what is called impossible was searched to the end, in 9 searches.

        ! A mass cap that is law (Below 250 g at take-off) is not yours to raise, and thrust in hand is what gets a quad out of trouble.
        ! Estimates: nothing here was measured.""".formatted(WORDS));
  }

  @Test
  void saysWhatHasToGoTogether() {
    assertThat(text(relaxation(List.of(CAP), List.of(), List.of(PAIR), List.of()), 2000))
        .contains("""

            One demand alone rules out every build, even with nothing else asked for: below 190 g.

            Changing one of them alone does not help: other demands are in the way too.
            - Without both of these: below 190 g; a GPS: %s

            Proven: what is called impossible was searched to the end, in 9 searches.
            """.formatted(WORDS))
        .doesNotContain("smallest change", "Fit rules");
  }

  @Test
  void saysWhereABetterBuildMayBe() {
    var relief = new SmallestRelaxation(CAP, "190 g", "196.7 g", BUILD, false, true);
    var together = new Relaxation.Together(List.of(CAP, GPS), BUILD, false);

    assertThat(text(relaxation(List.of(CAP), List.of(relief), List.of(), List.of()), 2000))
        .contains("- Mass cap 190 g → 196.7 g: %s Perhaps not the best then.\n".formatted(WORDS));
    assertThat(text(relaxation(List.of(CAP), List.of(), List.of(together), List.of()), 2000))
        .contains("a GPS: %s Perhaps not the best then.\n".formatted(WORDS));
  }

  @Test
  void saysThatPartsDoNotFitAtAll() {
    assertThat(text(relaxation(List.of(), List.of(), List.of(), List.of(CLASH)), 2000))
        .contains("""

            No build goes together, even with nothing asked for: the parts themselves do not fit.

            Fit rules that keep apart the parts left open:
            - propeller-clearance: 2 of 6 pairs of frame and propeller (33 %).
            """)
        .doesNotContain("No change", "smallest change");
  }

  @Test
  void namesEightKindsOfPairsAndCountsTheRest() {
    var clashes = new ArrayList<ClashCount>();
    for (var i = 1; i <= 8; i++) {
      clashes.add(new ClashCount("rule-" + i, Role.FRAME, Role.MOTOR, 1, i));
    }
    assertThat(text(relaxation(List.of(CAP), List.of(), List.of(), clashes), 100))
        .contains("\n- rule-8: 1 of 8 pairs of frame and motor (13 %).\n\n");

    clashes.add(CLASH);
    clashes.add(CLASH);
    assertThat(text(relaxation(List.of(CAP), List.of(), List.of(), clashes), 100))
        .contains(
            "\n- rule-8: 1 of 8 pairs of frame and motor (13 %).\n- and 2 more kinds of pairs.\n")
        .doesNotContain("propeller-clearance");
  }

  @Test
  void saysThatNothingIsInTheWay() {
    assertThat(text(found(Ending.PROVEN), 2000)).isEqualTo("""
        marsh: hover, 5 m above sea level; below 250 g; T/W at least 2.0.

        Nothing is in the way: %s
        Proven: no other build from this catalogue does better.
        """.formatted(WORDS));
    assertThat(text(found(Ending.MOVES), 100))
        .endsWith("\nNothing better was found, without proof.\n");
  }

  @ParameterizedTest
  @ValueSource(ints = {40, 100})
  void keepsToTheColumns(int width) {
    var all = relaxation(List.of(GPS, CAP), List.of(NO_GPS, LIGHTER), List.of(), List.of(CLASH));
    for (var one : List.of(
        all, relaxation(List.of(CAP), List.of(), List.of(PAIR), List.of()), found(Ending.MOVES))) {
      var said = text(one, width);

      assertThat(said.lines()).allMatch(line -> line.length() <= width);
      assertThat(said.lines()).allMatch(line -> line.equals(line.stripTrailing()));
      assertThat(said).endsWith(".\n");
      // The same words as where no line ends.
      assertThat(said.split("\\s+")).isEqualTo(text(one, 2000).split("\\s+"));
    }
  }

  @Test
  void theDocumentHasChangesAndTheirBuilds() {
    var json =
        json(relaxation(List.of(GPS, CAP), List.of(NO_GPS, LIGHTER), List.of(), List.of(CLASH)));

    assertThat(json.propertyNames())
        .containsExactly(
            "status",
            "tool",
            "catalogs",
            "inputs",
            "scenario",
            "standing",
            "conflict",
            "reliefs",
            "together",
            "clashes",
            "cautions",
            "parts");
    assertThat(json.path("status").asString()).isEqualTo("relaxed");
    assertThat(json.path("standing").toString())
        .isEqualTo(
            "{\"proven\":true,\"text\":\"Proven: what is called impossible was searched to the end, in 9 searches.\",\"endedEarly\":false,\"searches\":9}");
    assertThat(json.path("conflict").toString())
        .isEqualTo(
            "[{\"demand\":\"wants-gps\",\"asks\":\"a GPS\"},{\"demand\":\"mass-cap\",\"asks\":\"below 190 g\"}]");
    assertThat(json.path("reliefs")).hasSize(2);
    var whole = json.path("reliefs").get(0);
    assertThat(whole.propertyNames())
        .containsExactly("demand", "asks", "leastProven", "bestProven", "text", "build");
    assertThat(whole.path("leastProven").asBoolean()).isFalse();
    var step = json.path("reliefs").get(1);
    assertThat(step.path("demand").asString()).isEqualTo("mass-cap");
    assertThat(step.path("from").asString()).isEqualTo("190 g");
    assertThat(step.path("to").asString()).isEqualTo("196.7 g");
    assertThat(step.path("leastProven").asBoolean()).isTrue();
    assertThat(step.path("text").asString()).isEqualTo("Mass cap 190 g → 196.7 g");
    assertThat(step.path("build").path("build").asString())
        .isEqualTo(BUILD.build().toString());
    assertThat(json.path("together")).isEmpty();
    assertThat(json.path("clashes").toString())
        .isEqualTo(
            "[{\"rule\":\"propeller-clearance\",\"one\":\"frame\",\"other\":\"propeller\",\"clashes\":2,\"pairs\":6}]");
    assertThat(json.path("parts").propertyNames()).contains("cottongrass-4");
  }

  @Test
  void theDocumentHasWhatGoesTogether() {
    var json = json(relaxation(List.of(CAP), List.of(), List.of(PAIR), List.of()));

    assertThat(json.path("status").asString()).isEqualTo("relaxed");
    var pair = json.path("together").get(0);
    assertThat(pair.path("demands").get(0).path("demand").asString()).isEqualTo("mass-cap");
    assertThat(pair.path("demands").get(1).path("demand").asString()).isEqualTo("wants-gps");
    assertThat(pair.path("build").path("milliseconds").asLong()).isEqualTo(BUILD.milliseconds());
  }

  @Test
  void theDocumentSaysWhereNothingHelpsAndWhereNothingHasTo() {
    var none = json(relaxation(List.of(CAP), List.of(), List.of(), List.of()));
    var feasible = json(found(Ending.PROVEN));

    assertThat(none.path("status").asString()).isEqualTo("infeasible");
    assertThat(none.has("best")).isFalse();
    assertThat(feasible.path("status").asString()).isEqualTo("feasible");
    assertThat(feasible.path("best").path("build").asString())
        .isEqualTo(BUILD.build().toString());
    assertThat(feasible.path("conflict")).isEmpty();
    assertThat(feasible.path("standing").toString())
        .isEqualTo(
            "{\"proven\":true,\"text\":\"Proven: no other build from this catalogue does better.\",\"endedEarly\":false,\"searches\":1}");
  }

  @Test
  void aBestBuildThatIsNotProvenIsNotCalledSo() {
    assertThat(json(found(Ending.MOVES)).path("standing").toString())
        .isEqualTo(
            "{\"proven\":false,\"text\":\"Nothing better was found, without proof.\",\"endedEarly\":false,\"searches\":1}");
  }
}
