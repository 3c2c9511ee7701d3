package pappus.search;

import static org.assertj.core.api.Assertions.assertThat;
import static pappus.shop.SmallShop.ids;
import static pappus.shop.SmallShop.question;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import pappus.catalog.BuildText;
import pappus.catalog.Catalog;
import pappus.part.Build;
import pappus.part.Part;
import pappus.part.Parts;
import pappus.part.Propeller;
import pappus.part.Role;
import pappus.shop.SmallShop;

class QuestionTest {
  private static final Catalog ALL = SmallShop.all();
  private static final Catalog FEW = SmallShop.few();

  @Test
  void leavesEveryPartOpenInTheOrderOfIds() {
    var question = question(FEW, "");

    assertThat(ids(question, Role.MOTOR))
        .containsExactly("cypsela-1404-2800", "spikerush-1303-3400");
    assertThat(ids(question, Role.PROPELLER))
        .containsExactly("awn-4.5x2.5x2", "frond-4.5x3.2x3", "ligule-4x1.9x2");
    assertThat(ids(question, Role.GPS)).isEmpty();
  }

  @Test
  void countsTheWaysToFillTheRoles() {
    // 2 frames, 2 motors, 3 propellers, 2 batteries, 2 cameras; one part in each other role.
    assertThat(question(FEW, "").combinations()).isEqualTo(48);
  }

  @Test
  void oneOfTwoPartsThatAreTheSameInEveryNumberStandsForBoth() {
    var twice = withTwin("awn-4.5x2.5x2");
    var awn = twice.part("awn-4.5x2.5x2").orElseThrow();

    var question = question(twice, "");

    assertThat(ids(question, Role.PROPELLER))
        .containsExactly("awn-4.5x2.5x2", "frond-4.5x3.2x3", "ligule-4x1.9x2");
    assertThat(question.twins(awn)).extracting(Part::id).containsExactly("bristle-4.5x2.5x2");
    assertThat(question.twins(FEW.part("thistledown-5").orElseThrow())).isEmpty();
  }

  @Test
  void aPartThatTheScenarioNamesIsNoTwin() {
    var question = question(withTwin("awn-4.5x2.5x2"), """
        , "parts": {"owned": ["bristle-4.5x2.5x2"]}""");

    assertThat(ids(question, Role.PROPELLER)).contains("awn-4.5x2.5x2", "bristle-4.5x2.5x2");
  }

  /** The few parts, and one of them once more under another name. */
  private static Catalog withTwin(String id) {
    var parts = new ArrayList<Part>(FEW.parts());
    var part = FEW.part(id).orElseThrow();
    var named = Parts.with((Propeller) part, "id", id.replace("awn", "bristle"));
    parts.add(Parts.with(Parts.with(named, "maker", "Sedgewick"), "name", "Bristle 4.5×2.5×2"));
    return Catalog.of(parts);
  }

  @Test
  void aFixedPartLeavesNoOtherInItsRole() {
    var question = question(FEW, """
        , "parts": {"fixed": ["awn-4.5x2.5x2", "thistledown-5"]}""");

    assertThat(ids(question, Role.PROPELLER)).containsExactly("awn-4.5x2.5x2");
    assertThat(ids(question, Role.FRAME)).containsExactly("thistledown-5");
    assertThat(ids(question, Role.MOTOR)).hasSize(2);
  }

  @Test
  void allowedPartsAreTheOnlyOnesOfTheirRole() {
    var question = question(FEW, """
        , "parts": {"allowed": [{"role": "propeller", "parts": ["ligule-4x1.9x2", "awn-4.5x2.5x2"]}]}""");

    assertThat(ids(question, Role.PROPELLER)).containsExactly("awn-4.5x2.5x2", "ligule-4x1.9x2");
    assertThat(ids(question, Role.FRAME)).hasSize(2);
  }

  @Test
  void excludedPartsAreNoOption() {
    var question = question(FEW, """
        , "parts": {"excluded": ["ligule-4x1.9x2"]}""");

    assertThat(ids(question, Role.PROPELLER)).containsExactly("awn-4.5x2.5x2", "frond-4.5x3.2x3");
  }

  @Test
  void ownedPartsStayOneOptionAmongOthersAndCostNothing() {
    var owned = """
        , "parts": {"owned": ["tidewell-2s-3500"]}""";
    var build = build(FEW, SmallShop.ONE_BUILD);

    var bought = SmallShop.assessor(FEW, "").assess(build).cost();
    var had = SmallShop.assessor(FEW, owned).assess(build).cost();

    assertThat(ids(question(FEW, owned), Role.BATTERY)).hasSize(2);
    assertThat(bought.cents() - had.cents())
        .isEqualTo(FEW.part("tidewell-2s-3500").orElseThrow().price().cents());
  }

  @Test
  void extrasAreAskedForOrLeftOut() {
    assertThat(ids(question(ALL, ""), Role.BUZZER)).isEmpty();
    assertThat(ids(question(ALL, ", \"wants\": [\"buzzer\"]"), Role.BUZZER)).contains("chirp");
    assertThat(ids(question(ALL, ", \"wants\": [\"buzzer\"]"), Role.GPS)).isEmpty();
    assertThat(ids(question(ALL, ", \"wants\": [\"gps\"]"), Role.GPS)).contains("mudmark-10");
    assertThat(ids(question(ALL, ", \"wants\": [\"gps\"]"), Role.PAYLOAD_CAMERA))
        .isEmpty();
    assertThat(ids(question(ALL, ", \"wants\": [\"payload-camera\"]"), Role.PAYLOAD_CAMERA))
        .contains("coot-stripped");
    assertThat(ids(question(ALL, ", \"parts\": {\"fixed\": [\"mudmark-10\"]}"), Role.GPS))
        .containsExactly("mudmark-10");
  }

  @Test
  void anAntennaIsAskedAboutWhereAPortHasItsBand() {
    var question = question(ALL, "");

    assertThat(ids(question, Role.VIDEO_ANTENNA))
        .contains("stipule-u")
        .doesNotContain("tendril-24-u", "callowhit-whisker");
    assertThat(ids(question, Role.RADIO_ANTENNA))
        .contains("tendril-24-u", "callowhit-whisker")
        .doesNotContain("stipule-u");
  }

  @Test
  void aFixedVideoAntennaLeavesTheRadioItsOwn() {
    var question = question(ALL, ", \"parts\": {\"fixed\": [\"stipule-u\"]}");

    assertThat(ids(question, Role.VIDEO_ANTENNA)).containsExactly("stipule-u");
    assertThat(ids(question, Role.RADIO_ANTENNA)).contains("tendril-24-u");
  }

  @Test
  void nothingThatBringsItsOwnPushesAFixedPartOut() {
    var question = question(ALL, ", \"parts\": {\"fixed\": [\"thrennel-leaf\"]}");

    assertThat(ids(question, Role.RECEIVER)).containsExactly("thrennel-leaf");
    assertThat(ids(question, Role.BOARD))
        .contains("culvert-12")
        .doesNotContain("culvert-12-whole", "sluice-15-link");
  }

  @Test
  void noReceiverWithAnAntennaOfItsOwnPushesAFixedOneOut() {
    var question = question(ALL, ", \"parts\": {\"fixed\": [\"tendril-24-u\"]}");

    assertThat(ids(question, Role.RADIO_ANTENNA)).containsExactly("tendril-24-u");
    assertThat(ids(question, Role.VIDEO_ANTENNA)).contains("stipule-u");
    assertThat(ids(question, Role.RECEIVER))
        .contains("callowhit-quill")
        .doesNotContain("callowhit-nib");
  }

  @Test
  void aFixedLeadLeavesNoBoardAndPackThatPlugTogether() {
    var lead = part(ALL, "isthmus-60-to-30");
    for (var beside :
        List.of("", ", \"culvert-8\"", ", \"tidewell-2s-3500\"", ", \"floodmark-4s-1300\"")) {
      var question =
          question(ALL, ", \"parts\": {\"fixed\": [\"isthmus-60-to-30\"%s]}".formatted(beside));

      assertThat(question.options(Role.LEAD)).containsExactly(lead);
      for (var board : question.options(Role.BOARD)) {
        for (var battery : question.options(Role.BATTERY)) {
          var build = Map.of(Role.BOARD, board, Role.BATTERY, battery, Role.LEAD, lead);
          assertThat(Question.tidy(build).lead())
              .as(board.id() + " " + battery.id())
              .isPresent();
        }
      }
      if (beside.isEmpty()) {
        assertThat(ids(question, Role.BOARD)).contains("weir-stack-35", "culvert-12");
        assertThat(ids(question, Role.BATTERY)).contains("tidewell-2s-3500");
      }
    }
  }

  @Test
  void tidyingDropsWhatTheBoardBringsAlong() {
    var build = Question.tidy(
        build(ALL, List.of("culvert-6-whole", "thrennel-leaf", "glowmoss-100", "newteye-14"))
            .with(Role.RADIO_ANTENNA, part(ALL, "tendril-24-u"))
            .with(Role.VIDEO_ANTENNA, part(ALL, "stipule-wire"))
            .parts());

    assertThat(build.toString()).isEqualTo("culvert-6-whole,newteye-14,stipule-wire");
  }

  @Test
  void tidyingDropsACameraBesideTheOneOfTheTransmitter() {
    var build = Question.tidy(
        build(ALL, List.of("culvert-12", "lumfret-sprig", "lumfret-eye-14")).parts());

    assertThat(build.toString()).isEqualTo("culvert-12,lumfret-sprig");
  }

  @Test
  void tidyingDropsALeadWhereThePlugsMatch() {
    var same = build(ALL, List.of("culvert-6-whole", "tidewell-2s-3500", "isthmus-60-to-30"));
    var other = build(ALL, List.of("culvert-6-whole", "tidewell-4s-5000", "isthmus-60-to-30"));
    var none = build(ALL, List.of("culvert-12", "tidewell-2s-3500", "tether-30-20"));

    assertThat(Question.tidy(same.parts()).part(Role.LEAD)).isEmpty();
    assertThat(Question.tidy(other.parts()).part(Role.LEAD)).isPresent();
    assertThat(Question.tidy(none.parts()).part(Role.LEAD)).isPresent();
  }

  @Test
  void tidyingKeepsWhatNothingElseBrings() {
    var build = build(FEW, SmallShop.ONE_BUILD);

    assertThat(Question.tidy(build.parts())).isEqualTo(build);
    assertThat(Question.tidy(Map.of()).parts()).isEmpty();
  }

  private static Part part(Catalog catalog, String id) {
    return catalog.part(id).orElseThrow();
  }

  private static Build build(Catalog catalog, List<String> ids) {
    return BuildText.parse(String.join(",", ids), catalog);
  }
}
