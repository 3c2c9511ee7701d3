package pappus.change;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import pappus.assessment.Assessment;
import pappus.assessment.Supply;
import pappus.catalog.Catalog;
import pappus.catalog.Shelf;
import pappus.catalog.ShelfEntry;
import pappus.change.Alternative.Grade;
import pappus.part.Part;
import pappus.part.Parts;
import pappus.part.Role;
import pappus.scenario.Scenario;
import pappus.search.Incumbents;
import pappus.search.Question;
import pappus.shop.SmallShop;

class AlternativesTest {
  private static final Catalog WORKSHOP = Quads.WORKSHOP;
  private static final Assessment SMALL_PACK =
      Quads.assess(Quads.WHOLE.build().toString().replace("tidewell-2s-3500", "neap-2s-450"));

  private static List<Alternative> of(Assessment base, Role role) {
    return Alternatives.of(base, role, WORKSHOP, Quads.QUESTION);
  }

  private static Alternative one(List<Alternative> all, String id) {
    return all.stream()
        .filter(one -> one.swap().part().id().equals(id))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no " + id));
  }

  private static List<String> told(List<Alternative> all) {
    return all.stream().map(one -> one.grade() + " " + one.swap().part().id()).toList();
  }

  private static Question question(Scenario scenario, ShelfEntry... entries) {
    return Question.of(
        WORKSHOP, new Supply(WORKSHOP, Shelf.of(List.of(entries))).assessor(scenario));
  }

  @Test
  void listsWhatAsksLeastFirst() {
    assertThat(told(of(Quads.WHOLE, Role.BATTERY)))
        .containsExactly(
            "DROP_IN tidewell-2s-3400",
            "DROP_IN neap-2s-450",
            "OTHER_PARTS neap-2s-350",
            "DOES_NOT_FIT tidewell-3s-3400");
    assertThat(told(of(Quads.WHOLE, Role.PROPELLER)))
        .containsExactly("DOES_NOT_FIT frond-4.5x3.2x3", "DOES_NOT_FIT awn-4.5x2.5x2");
  }

  @Test
  void withinAGradeTheLongestFlightComesFirst() {
    for (var role : Role.values()) {
      var all = of(Quads.SINGLE, role);
      for (var grade : Grade.values()) {
        assertThat(all.stream()
                .filter(one -> one.grade() == grade)
                .map(one -> one.swap().assessment()))
            .isSortedAccordingTo(Incumbents.BEST_FIRST);
      }
      assertThat(all).extracting(Alternative::grade).isSorted();
    }
  }

  @Test
  void aPartThatBreaksALimitFits() {
    var strong = question(Parts.with(SmallShop.scenario(""), "leastThrustToWeight", 2.285));
    var base = Quads.assess(Quads.WHOLE.build().toString(), strong);

    assertThat(told(Alternatives.of(base, Role.BATTERY, WORKSHOP, strong)))
        .contains("BREAKS_LIMIT tidewell-2s-3400");
  }

  /** A quad of 191 g where 150 are allowed: lighter packs are no worse, heavier ones are. */
  @Test
  void whatTheQuadItselfBreaksIsNoFaultOfAPart() {
    var scenario = SmallShop.scenario("");
    var cap = Parts.with(scenario.massCap(), "grams", 150.0);
    var light = question(Parts.with(scenario, "massCap", cap));
    var base = Quads.assess(Quads.WHOLE.build().toString(), light);
    var told = told(Alternatives.of(base, Role.BATTERY, WORKSHOP, light));

    assertThat(base.isFeasible()).isFalse();
    assertThat(told)
        .contains("DROP_IN tidewell-2s-3400")
        .noneMatch(one -> one.startsWith("DROP_IN") && one.contains("tidewell-3s"));
    assertThat(one(Alternatives.of(base, Role.BATTERY, WORKSHOP, light), "tidewell-2s-3400")
            .swap()
            .breaksNothing())
        .isTrue();
  }

  @Test
  void doesNotAskWhatTheScenarioFixesOrAllowsButWhatItExcludes() {
    var fixed = SmallShop.scenario(
        ", \"parts\": {\"fixed\": [\"tidewell-2s-3500\"], \"excluded\": [\"neap-2s-450\"]}");

    assertThat(Alternatives.of(Quads.WHOLE, Role.BATTERY, WORKSHOP, question(fixed)))
        .extracting(one -> one.swap().part().id())
        .containsExactlyInAnyOrder("tidewell-2s-3400", "neap-2s-350", "tidewell-3s-3400");
  }

  @Test
  void anAntennaIsForThePortOfItsBand() {
    assertThat(ids(of(Quads.SINGLE, Role.VIDEO_ANTENNA))).containsExactly("stipule-wire");
    assertThat(ids(of(Quads.SINGLE, Role.RADIO_ANTENNA))).containsExactly("withy-24-thread");
    assertThat(of(Quads.assess("cottongrass-4"), Role.VIDEO_ANTENNA)).isEmpty();
  }

  private static Set<String> ids(List<Alternative> all) {
    return all.stream().map(one -> one.swap().part().id()).collect(Collectors.toSet());
  }

  @Test
  void whatAnotherPartBringsAlongIsNoDropIn() {
    assertThat(told(of(Quads.WHOLE, Role.RECEIVER)))
        .containsExactlyInAnyOrder("DOES_NOT_FIT osier-t1", "DOES_NOT_FIT thrennel-leaf");
  }

  /** The pack of 5.90 and the lead of 2.99 that it needs; the strap that is there goes round. */
  @Test
  void countsWhatHasToBeBought() {
    assertThat(one(of(Quads.WHOLE, Role.BATTERY), "neap-2s-350").cents()).isEqualTo(590 + 299);
    // A longer pack of 14.90 asks for a longer strap of 2.49.
    assertThat(one(of(SMALL_PACK, Role.BATTERY), "tidewell-2s-3500").cents()).isEqualTo(1490 + 249);
    assertThat(one(of(Quads.WHOLE, Role.BATTERY), "tidewell-2s-3400").cents()).isEqualTo(1240);
    assertThat(one(of(Quads.WHOLE, Role.CAMERA), "newteye-14").cents()).isEqualTo(1690);
    // A motor of 14.40 four times.
    assertThat(one(of(Quads.WHOLE, Role.MOTOR), "cypsela-1404-2800").cents())
        .isEqualTo(4 * WORKSHOP.part("cypsela-1404-2800").orElseThrow().price().cents());
  }

  @Test
  void saysWhatTheMoneyGains() {
    var cheap = Quads.assess(Quads.WHOLE.build().toString().replace("-3500", "-3400"));
    var larger = one(of(cheap, Role.BATTERY), "tidewell-2s-3500");

    assertThat(larger.gainedForMoney().orElseThrow())
        .isCloseTo(larger.swap().gained() / 14.9, within(1e-9));
    assertThat(one(of(Quads.WHOLE, Role.BATTERY), "tidewell-2s-3400").gainedForMoney())
        .isEmpty();
  }

  @Test
  void knowsWhatIsSoldOut() {
    var shelf = question(
        SmallShop.scenario(""),
        new ShelfEntry("tidewell-2s-3400", null, 0, null, null),
        new ShelfEntry("neap-2s-450", 1, 0, null, null),
        new ShelfEntry("cypsela-1404-2800", 1, 2, null, null));
    var base = shelf.assessor().assess(Quads.WHOLE.build());
    var packs = Alternatives.of(base, Role.BATTERY, WORKSHOP, shelf);

    assertThat(one(packs, "tidewell-2s-3400").inStock()).isFalse();
    assertThat(one(packs, "tidewell-2s-3400").grade()).isEqualTo(Grade.BREAKS_LIMIT);
    assertThat(one(packs, "neap-2s-450").inStock()).isTrue();
    assertThat(one(packs, "neap-2s-450").cents()).isZero();
    // Three motors are to be had, but four are needed.
    assertThat(one(Alternatives.of(base, Role.MOTOR, WORKSHOP, shelf), "cypsela-1404-2800")
            .inStock())
        .isFalse();
  }

  @Test
  void saysHowFarThePackMoves() {
    var lighter = one(of(Quads.WHOLE, Role.BATTERY), "neap-2s-450");
    var before = Quads.WHOLE.fitting().placing().orElseThrow();
    var after = lighter.swap().assessment().fitting().placing().orElseThrow();

    assertThat(lighter.packMillimetres().orElseThrow())
        .isEqualTo(after.packXMillimetres() - before.packXMillimetres());
    // What balances a nose of the same weight sits farther back the lighter it is.
    assertThat(lighter.packMillimetres().orElseThrow()).isNegative();
    assertThat(
            Alternatives.of(Quads.assess("cottongrass-4"), Role.BATTERY, WORKSHOP, Quads.QUESTION)
                .get(0)
                .packMillimetres())
        .isEmpty();
  }

  @Test
  void namesSmallThingsThatChange() {
    assertThat(one(of(SMALL_PACK, Role.BATTERY), "tidewell-2s-3500").hardware())
        .containsExactly(
            new HardwareChange("battery strap", any("bindweed-10x130"), any("bindweed-10x150")));
    assertThat(one(of(SMALL_PACK, Role.BATTERY), "tidewell-2s-3500").grade())
        .isEqualTo(Grade.OTHER_HARDWARE);
    // The longer strap goes round a smaller pack too.
    assertThat(one(of(Quads.WHOLE, Role.BATTERY), "neap-2s-450").hardware()).isEmpty();
    assertThat(one(of(Quads.WHOLE, Role.PROPELLER), "frond-4.5x3.2x3").hardware())
        .containsExactly(
            new HardwareChange("reducing rings", Optional.empty(), any("auricle-rings")));
    assertThat(one(of(Quads.WHOLE, Role.BATTERY), "tidewell-2s-3400").hardware())
        .isEmpty();
  }

  private static Optional<Part> any(String id) {
    return WORKSHOP.part(id);
  }

  @Test
  void namesSmallThingsThatAreNotNeededAnyMore() {
    var withRings =
        Quads.assess(Quads.WHOLE.build().toString().replace("ligule-4x1.9x2", "frond-4.5x3.2x3"));

    assertThat(HardwareChange.between(withRings, Quads.WHOLE))
        .containsExactly(
            new HardwareChange("reducing rings", any("auricle-rings"), Optional.empty()));
    assertThat(HardwareChange.between(Quads.WHOLE, Quads.WHOLE)).isEmpty();
  }
}
