package pappus.whatif.relax;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import pappus.assessment.Finding;
import pappus.catalog.Catalog;
import pappus.change.Asking;
import pappus.part.Part;
import pappus.part.Parts;
import pappus.part.Role;
import pappus.search.Enumeration;
import pappus.search.Question;
import pappus.shop.SmallShop;

class ClashesTest {
  private static final String CAMERA = "lumfret-eye-14";

  private static Catalog few(String... more) {
    var ids = new ArrayList<>(SmallShop.ONE_BUILD);
    ids.addAll(SmallShop.MORE);
    ids.addAll(List.of(more));
    return SmallShop.catalog(ids);
  }

  private static List<String> told(Question question) {
    return Clashes.of(question).stream()
        .map(count -> "%s %s %s: %s of %s"
            .formatted(
                count.rule(),
                count.one().key(),
                count.other().key(),
                count.clashes(),
                count.pairs()))
        .toList();
  }

  /** By hand: one frame takes 4 inch, and two of three propellers have 4.5. */
  @Test
  void countsPairsThatARuleSetsApart() {
    var counts = Clashes.of(SmallShop.question(few(), ""));

    assertThat(counts)
        .containsExactly(new ClashCount("propeller-clearance", Role.FRAME, Role.PROPELLER, 2, 6));
    assertThat(counts.get(0).share()).isEqualTo(2.0 / 6);
  }

  @Test
  void countsOnlyWhatTheScenarioLeavesOpen() {
    var one = ", \"parts\": {\"fixed\": [\"cottongrass-4\"], \"excluded\": [\"awn-4.5x2.5x2\"]}";
    var none = ", \"parts\": {\"fixed\": [\"thistledown-5\"]}";

    assertThat(told(SmallShop.question(few(), one)))
        .containsExactly("propeller-clearance frame propeller: 1 of 2");
    assertThat(told(SmallShop.question(few(), none))).isEmpty();
  }

  /** By hand: the board sends analogue video, one of three cameras is digital. */
  @Test
  void theLargestShareComesFirst() {
    assertThat(told(SmallShop.question(few(CAMERA), "")))
        .containsExactly(
            "propeller-clearance frame propeller: 2 of 6", "video-family board camera: 1 of 3");
    assertThat(told(SmallShop.question(
            few(CAMERA), ", \"parts\": {\"excluded\": [\"newteye-14\", \"newteye-14-feather\"]}")))
        .containsExactly(
            "video-family board camera: 1 of 1", "propeller-clearance frame propeller: 2 of 6");
  }

  @Test
  void whatIsSetAsideIsNoClash() {
    var waiver =
        ", \"waivers\": [{\"rule\": \"%s\", \"parts\": [\"%s\"], \"reason\": \"We cut it.\"}]";

    assertThat(told(SmallShop.question(
            few(CAMERA), waiver.formatted("propeller-clearance", "awn-4.5x2.5x2"))))
        .containsExactly(
            "video-family board camera: 1 of 3", "propeller-clearance frame propeller: 1 of 6");
    assertThat(told(SmallShop.question(few(CAMERA), waiver.formatted("video-family", CAMERA))))
        .containsExactly("propeller-clearance frame propeller: 2 of 6");
  }

  /** The board has an XT30 plug and the pack PH: the one lead joins them, another does not. */
  @Test
  void whatALeadCuresIsNoClash() {
    var question = SmallShop.question(few("neap-2s-350", "isthmus-30-to-ph"), "");
    assertThat(told(question))
        .noneMatch(count -> count.startsWith("battery-plug board battery"))
        .contains("battery-plug battery lead: 2 of 3");

    // A lead for bare pads goes with no board that has a plug.
    assertThat(told(SmallShop.question(few("tether-30-20"), "")))
        .contains("battery-plug board lead: 1 of 1");
  }

  /** Every build of these parts that has both of a pair breaks the rule that is said to set them apart. */
  @Test
  void noBuildHasAPairThatIsSetApart() {
    var question = SmallShop.question(
        few(
            "sluice-10",
            "sluice-13",
            "rushlight-50-wire",
            "glowmoss-100",
            CAMERA,
            "thrennel-leaf",
            "stipule-u",
            "tendril-24-u",
            "neap-2s-350",
            "isthmus-30-to-ph"),
        ", \"parts\": {\"fixed\": [\"spikerush-1303-3400\"], \"excluded\": [\"frond-4.5x3.2x3\", \"newteye-14\", \"tidewell-2s-3400\"]}");
    var kept = new HashMap<String, Set<List<Part>>>();
    var seen = new HashSet<List<Part>>();
    Enumeration.each(question, build -> {
      var broken = new HashSet<>(build.broken().stream().map(Finding::rule).toList());
      var parts = build.build().parts();
      for (var one : parts.entrySet()) {
        for (var other : parts.entrySet()) {
          if (one.getKey().compareTo(other.getKey()) < 0) {
            var pair = List.of(one.getValue(), other.getValue());
            seen.add(pair);
            for (var rule : question.assessor().ruleBook().all()) {
              if (!broken.contains(rule.id())) {
                kept.computeIfAbsent(rule.id(), fresh -> new HashSet<>()).add(pair);
              }
            }
          }
        }
      }
    });
    var counts = Clashes.of(question);

    assertThat(counts).hasSizeGreaterThan(5);
    for (var count : counts) {
      var never = pairs(question, count).stream()
          .filter(pair -> !kept.getOrDefault(count.rule(), Set.of()).contains(pair))
          .count();
      assertThat((long) count.clashes()).as(count.toString()).isLessThanOrEqualTo(never);
      assertThat(count.pairs()).isEqualTo(pairs(question, count).size());
    }
    // Two parts that are all a rule reads are told apart by it in full.
    for (var rule : question.assessor().ruleBook().all()) {
      var roles = rule.reads().stream().sorted().toList();
      if (roles.size() == 2) {
        var all = new ClashCount(rule.id(), roles.get(0), roles.get(1), 0, 0);
        var never = pairs(question, all).stream()
            .filter(seen::contains)
            .filter(pair -> !kept.getOrDefault(rule.id(), Set.of()).contains(pair))
            .count();
        var counted = counts.stream()
            .filter(count -> count.rule().equals(rule.id()))
            .mapToLong(ClashCount::clashes)
            .sum();
        assertThat(counted).as(rule.id()).isEqualTo(never);
      }
    }
  }

  private static List<List<Part>> pairs(Question question, ClashCount count) {
    var pairs = new ArrayList<List<Part>>();
    for (var one : question.options(count.one())) {
      for (var other : question.options(count.other())) {
        pairs.add(List.of(one, other));
      }
    }
    return pairs;
  }

  @Test
  void aChangedScenarioIsAskedWithTheSameParts() {
    var asked = Asking.asked(SmallShop.scenario(""));

    var changed =
        asked.with(Map.of("leastThrustToWeight", 3, "parts.excluded", List.of("awn-4.5x2.5x2")));

    assertThat(changed.supply()).isSameAs(asked.supply());
    assertThat(changed.scenario())
        .isEqualTo(Parts.with(
            SmallShop.scenario(", \"parts\": {\"excluded\": [\"awn-4.5x2.5x2\"]}"),
            "leastThrustToWeight",
            3.0));
    assertThat(SmallShop.ids(changed.question(), Role.PROPELLER))
        .containsExactly("frond-4.5x3.2x3", "ligule-4x1.9x2");
    assertThat(changed.question().assessor().scenario()).isEqualTo(changed.scenario());
  }
}
