package pappus.answers.explain;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pappus.assessment.Assessment;
import pappus.assessment.Assessor;
import pappus.assessment.Limit;
import pappus.assessment.LimitKind;
import pappus.catalog.Catalog;
import pappus.change.Changed;
import pappus.change.Swap;
import pappus.change.WhyNot;
import pappus.document.Spoken;
import pappus.part.Connector;
import pappus.part.Part;
import pappus.part.Parts;
import pappus.part.Role;
import pappus.ranking.Best;
import pappus.search.Ending;
import pappus.search.Proof;
import pappus.shop.SmallShop;

class WhyNotsTest {
  private static final Catalog FEW = SmallShop.few();
  private static final Assessor ASSESSOR = SmallShop.assessor(FEW, "");
  private static final Assessment BASE = told("tidewell-2s-3500", 1000, 20_000);
  private static final Best NONE = new Best(Optional.empty(), Proof.of(Ending.PROVEN));
  private static final String NO_BUILD =
      "Proven: no build with Tidewell 2S 3400 keeps every rule and limit.";

  /** The one build with a pack, flying so long at such a price. */
  private static Assessment told(String pack, double seconds, long cents) {
    return pappus.search.Changed.told(ASSESSOR.assess(SmallShop.oneBuild(pack)), seconds, cents);
  }

  private static Part part(String id) {
    return FEW.part(id).orElseThrow();
  }

  private static Swap swap(Assessment after, Changed... alongside) {
    return new Swap(Role.BATTERY, part("tidewell-2s-3400"), BASE, after, List.of(alongside));
  }

  private static final Swap SWAP = swap(told("tidewell-2s-3400", 990, 19_000));

  private static List<String> say(
      boolean isLeftOut,
      Swap swap,
      List<WhyNot.Cure> cures,
      Best best,
      WhyNot.Loosened... loosened) {
    return new WhyNots(
            SmallShop.scenario(""),
            new WhyNot(
                swap.part(),
                Role.BATTERY,
                isLeftOut,
                List.of(),
                false,
                swap,
                cures,
                best,
                List.of(loosened)))
        .all();
  }

  /** The pack of the base draws so much more than the smaller one. */
  private static String watts() {
    return Spoken.number(
        BASE.flight().orElseThrow().split().totalW()
            - SWAP.assessment().flight().orElseThrow().split().totalW(),
        1);
  }

  @Test
  void saysWhatHappensWhereItIsPutIn() {
    assertThat(watts()).matches("0\\.[1-9]");

    assertThat(say(false, SWAP, List.of(), NONE))
        .containsExactly(
            "Fitted to this build as its battery: 10 s shorter, 2.8 g lighter, EUR 10 cheaper, "
                + watts() + " W less.",
            NO_BUILD);
  }

  @Test
  void saysWhatChangesAlong() {
    var lead =
        new Changed(Role.LEAD, Optional.empty(), Optional.of(Parts.lead(null, Connector.XT30)));

    assertThat(say(false, swap(SWAP.assessment(), lead), List.of(), NONE).get(0))
        .endsWith(" W less; with it battery lead Lead.");
  }

  @Test
  void saysThatItIsInAlready() {
    var same = new Swap(Role.BATTERY, part("tidewell-2s-3500"), BASE, BASE, List.of());

    assertThat(say(false, same, List.of(), NONE))
        .containsExactly("Tidewell 2S 3500 is in this build already.");
  }

  @Test
  void saysThatTheScenarioLeavesItOut() {
    assertThat(say(true, SWAP, List.of(), NONE).get(0))
        .isEqualTo(
            "The scenario itself leaves Tidewell 2S 3400 out, or has nothing to choose here; what follows is as if it did not.");
  }

  @Test
  void saysEverythingThatItBreaksAndWhatCuresIt() {
    var broken = swap(pappus.search.Changed.limits(
        SWAP.assessment(),
        List.of(
            new Limit("mass-cap", "all-up mass", "g", 260, 249.999, true, false),
            new Limit("thrust-to-weight", "thrust-to-weight", "", 1.5, 2, false, false))));
    var packs = new ArrayList<Part>();
    for (var name : List.of("A", "B", "C", "D", "E", "F")) {
      packs.add(Parts.with(Parts.battery(), "name", name));
    }
    var one = new WhyNot.Cure("battery-plug", Role.LEAD, List.copyOf(packs.subList(0, 1)));
    var four = new WhyNot.Cure("capacitor", Role.CAPACITOR, List.copyOf(packs.subList(0, 4)));
    var six = new WhyNot.Cure("motor-cells", Role.MOTOR, List.copyOf(packs));

    assertThat(say(false, broken, List.of(one, four, six), NONE))
        .containsExactly(
            "Fitted to this build as its battery, Tidewell 2S 3400 breaks a limit (all-up mass is 260.0 g, but must be at most 250.0 g); a limit (thrust-to-weight is 1.50, but must be at least 2.00).",
            "That rule (battery-plug) is kept with another battery lead: A.",
            "That rule (capacitor) is kept with another capacitor: A, B, C, D.",
            "That rule (motor-cells) is kept with another motor: A, B, C, D and 2 more.",
            NO_BUILD);
  }

  @Test
  void saysHowTheBestBuildWithItCompares() {
    var proven = new Best(Optional.of(SWAP.assessment()), Proof.of(Ending.PROVEN));
    var found =
        new Best(Optional.of(told("tidewell-2s-3500", 1000, 20_000)), Proof.of(Ending.MOVES));
    var nothing = new Best(Optional.empty(), Proof.of(Ending.MOVES));

    assertThat(say(false, SWAP, List.of(), proven))
        .contains(
            "The best build with Tidewell 2S 3400, proven: less than half a minute shorter, 2.8 g lighter, "
                + watts() + " W less, EUR 10 cheaper; differs in battery.");
    assertThat(say(false, SWAP, List.of(), found))
        .contains(
            "The best build with Tidewell 2S 3400, not proven: as long, as heavy, at the same price; differs in nothing.");
    assertThat(say(false, SWAP, List.of(), nothing))
        .contains(
            "No build with Tidewell 2S 3400 was found that keeps every rule and limit, without proof.");
  }

  private static final Assessment DEARER = told("tidewell-2s-3400", 1120, 22_000);

  private static Best best(Assessment build, Ending ending) {
    return new Best(Optional.of(build), Proof.of(ending));
  }

  @Test
  void saysWhichLimitsKeepItDown() {
    var with = best(DEARER, Ending.PROVEN);
    var then = "at EUR 240 its best build is 2 min longer, 2.8 g lighter, " + watts()
        + " W less, EUR 20 dearer";

    assertThat(say(
            false,
            SWAP,
            List.of(),
            NONE,
            new WhyNot.Loosened(LimitKind.BUDGET, 240, with, Optional.of(with))))
        .contains(
            "Kept down by the limit budget: " + then + ", and none without it is better then.");
    assertThat(say(
            false,
            SWAP,
            List.of(),
            NONE,
            new WhyNot.Loosened(
                LimitKind.BUDGET, 240, with, Optional.of(best(DEARER, Ending.EFFORT)))))
        .contains("Kept down by the limit budget: " + then
            + ", and none without it was found to be better then.");
    var better = told("tidewell-2s-3500", 1200, 22_000);
    assertThat(say(
            false,
            SWAP,
            List.of(),
            NONE,
            new WhyNot.Loosened(
                LimitKind.MASS_CAP, 300, with, Optional.of(best(better, Ending.EFFORT))),
            new WhyNot.Loosened(
                LimitKind.THRUST_TO_WEIGHT, 1.76, with, Optional.of(best(better, Ending.PROVEN)))))
        .anyMatch(line -> line.startsWith("Not kept down by the limit mass-cap alone: at 300.0 g")
            && line.endsWith(" dearer, but builds without it gain more then."))
        .anyMatch(line ->
            line.startsWith("Not kept down by the limit thrust-to-weight alone: at 1.76 its"));
  }

  @Test
  void saysWhatWasTriedInVain() {
    var cap =
        new WhyNot.Loosened(LimitKind.MASS_CAP, 300, best(BASE, Ending.PROVEN), Optional.empty());
    var thrust = new WhyNot.Loosened(LimitKind.THRUST_TO_WEIGHT, 1.76, NONE, Optional.empty());
    var cut = new WhyNot.Loosened(
        LimitKind.BUDGET,
        240,
        new Best(Optional.empty(), Proof.of(Ending.INTERRUPTED)),
        Optional.empty());

    assertThat(say(false, SWAP, List.of(), NONE, cap, thrust))
        .contains(
            "No better build has it with mass-cap of 300.0 g, nor with thrust-to-weight of 1.76 either.");
    assertThat(say(false, SWAP, List.of(), NONE, cap, cut))
        .contains(
            "No better build with it was found with mass-cap of 300.0 g, nor with budget of EUR 240 either, without proof.");
    assertThat(say(false, SWAP, List.of(), NONE)).noneMatch(line -> line.contains("either"));
  }

  @Test
  void blamesNoLimitWhereItDoesBetterWithinAll() {
    var better =
        new Best(Optional.of(told("tidewell-2s-3400", 1120, 22_000)), Proof.of(Ending.PROVEN));

    assertThat(say(true, SWAP, List.of(), better))
        .noneMatch(line -> line.contains("either"))
        .hasSize(3);
  }
}
