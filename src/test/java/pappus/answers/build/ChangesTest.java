package pappus.answers.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pappus.assessment.Assessment;
import pappus.assessment.Assessor;
import pappus.assessment.Finding;
import pappus.assessment.Limit;
import pappus.catalog.Catalog;
import pappus.change.BestSwaps;
import pappus.change.Changed;
import pappus.change.Rates;
import pappus.change.Saving;
import pappus.change.Swap;
import pappus.compatibility.Verdict;
import pappus.part.Battery;
import pappus.part.Connector;
import pappus.part.Part;
import pappus.part.Parts;
import pappus.part.Role;
import pappus.shop.SmallShop;

class ChangesTest {
  private static final Catalog FEW = SmallShop.few();
  private static final Assessor ASSESSOR = SmallShop.assessor(FEW, "");
  private static final Assessment BASE = told(SmallShop.ONE_BUILD.get(3), 1000, 20_000);
  private static final Changes SECONDS = new Changes(SmallShop.scenario(""), BASE);
  private static final Changes METRES = new Changes(true, "EUR");
  private static final String PACK = "tidewell-2s-3400";

  /** The one build with a pack, flying so long at such a price. */
  private static Assessment told(String pack, double seconds, long cents) {
    return pappus.search.Changed.told(ASSESSOR.assess(SmallShop.oneBuild(pack)), seconds, cents);
  }

  private static Part part(String id) {
    return FEW.part(id).orElseThrow();
  }

  /** The smaller pack, 2.8 g lighter. */
  private static Swap swap(double seconds, long cents, Changed... alongside) {
    return new Swap(Role.BATTERY, part(PACK), BASE, told(PACK, seconds, cents), List.of(alongside));
  }

  private static Swap broken(double seconds, Limit... limits) {
    return new Swap(
        Role.BATTERY,
        part(PACK),
        BASE,
        pappus.search.Changed.limits(told(PACK, seconds, 20_000), List.of(limits)),
        List.of());
  }

  private static Limit heavy() {
    return new Limit("mass-cap", "all-up mass", "g", 260, 249.999, true, false);
  }

  private static Limit weak() {
    return new Limit("thrust-to-weight", "thrust-to-weight", "", 1.5, 2, false, false);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "0.04, as long, as far",
    "-0.04, as long, as far",
    "0.05, 0.1 s longer, 0.1 m farther",
    "-3.21, 3.2 s shorter, 3.2 m less far",
    "42.4, 42 s longer, 42 m farther",
    "90, 1.5 min longer, 90 m farther",
    "-999, 16.7 min shorter, 999 m less far",
    "1250, 20.8 min longer, 1.3 km farther"
  })
  void tellsMoreOrLessFlight(double gained, String seconds, String metres) {
    assertThat(SECONDS.longer(gained)).isEqualTo(seconds);
    assertThat(METRES.longer(gained)).isEqualTo(metres);
  }

  @Test
  void tellsWhatAGramAndAWattAreWorth() {
    assertThat(SECONDS.rates(new Rates(17.2, 102)))
        .isEqualTo("One more gram costs 17 s; one more watt of electronics costs 1.7 min.");
    assertThat(METRES.rates(new Rates(8.12, 1040)))
        .isEqualTo("One more gram costs 8.1 m; one more watt of electronics costs 1.0 km.");
  }

  @Test
  void tellsWhatMoneyIsWorth() {
    var dearer = swap(1030, 20_500);
    var cheaper = swap(980, 18_000);

    assertThat(SECONDS.money(Optional.of(dearer), Optional.empty()))
        .isEqualTo(
            "Most for the money: Tidewell 2S 3400 in place of Tidewell 2S 3500, 30 s longer for EUR 5 more: 6.0 s per EUR.");
    assertThat(SECONDS.money(Optional.empty(), Optional.of(cheaper)))
        .isEqualTo(
            "No dearer part flies longer. Cheapest to give up: Tidewell 2S 3400 in place of Tidewell 2S 3500 saves EUR 20 for 20 s.");
    assertThat(SECONDS.money(Optional.empty(), Optional.of(swap(1001, 18_000))))
        .endsWith(" saves EUR 20 and flies no shorter.");
    assertThat(METRES.money(Optional.empty(), Optional.empty()))
        .isEqualTo("No dearer part flies farther.");
    assertThat(METRES.money(Optional.of(dearer), Optional.of(swap(1001, 18_000))))
        .isEqualTo(
            "Most for the money: Tidewell 2S 3400 in place of Tidewell 2S 3500, 30 m farther for EUR 5 more: 6.0 m per EUR. Cheapest to give up: Tidewell 2S 3400 in place of Tidewell 2S 3500 saves EUR 20 and flies no less far.");
  }

  @Test
  void tellsTheBestSwapOfARole() {
    assertThat(SECONDS.best(
            new BestSwaps(Role.BATTERY, 3, Optional.of(swap(990, 19_750)), Optional.empty())))
        .isEqualTo(
            "battery: Tidewell 2S 3400 in place of Tidewell 2S 3500: 10 s shorter, 2.8 g lighter, EUR 3 cheaper.");
    assertThat(SECONDS.best(new BestSwaps(Role.BOARD, 1, Optional.empty(), Optional.empty())))
        .isEqualTo("flight board: the other one breaks something.");
    assertThat(SECONDS.best(new BestSwaps(
            Role.BATTERY, 2, Optional.empty(), Optional.of(broken(1120, heavy(), weak())))))
        .isEqualTo(
            "battery: each of the other 2 breaks something. Tidewell 2S 3400 would fly 2.0 min longer, but breaks a limit (all-up mass is 260.0 g, but must be at most 250.0 g), and 1 more.");
  }

  @Test
  void tellsWhatASwapChanges() {
    assertThat(SECONDS.effects(swap(1010, 20_049)))
        .containsExactly("10 s longer", "2.8 g lighter", "at the same price");
    assertThat(SECONDS.effects(swap(1000, 20_050)))
        .containsExactly("as long", "2.8 g lighter", "EUR 1 dearer");
    var heavier =
        new Swap(Role.BATTERY, part("tidewell-2s-3500"), swap(1, 1).assessment(), BASE, List.of());
    assertThat(SECONDS.effects(heavier)).contains("2.8 g heavier");
    var same = new Swap(Role.BATTERY, part("tidewell-2s-3500"), BASE, BASE, List.of());
    assertThat(SECONDS.effects(same)).containsExactly("as long", "at the same price");
    assertThat(METRES.effects(swap(1010, 20_000)).get(0)).isEqualTo("10 m farther");
  }

  @Test
  void tellsWhatChangesAlong() {
    var lead =
        new Changed(Role.LEAD, Optional.empty(), Optional.of(Parts.lead(null, Connector.XT30)));
    var buzzer = new Changed(Role.BUZZER, Optional.of(Parts.buzzer()), Optional.empty());

    assertThat(SECONDS.alongside(List.of())).isEmpty();
    assertThat(SECONDS.swap(swap(1010, 20_000, lead, buzzer)))
        .isEqualTo(
            "Tidewell 2S 3400 in place of Tidewell 2S 3500: 10 s longer, 2.8 g lighter, at the same price; with it battery lead Lead, no buzzer.");
  }

  @Test
  void nothingIsReplacedInAnEmptyRole() {
    var gps = new Swap(Role.GPS, Parts.gps(), BASE, told(PACK, 990, 21_500), List.of());

    assertThat(SECONDS.swap(gps)).startsWith("GPS: 10 s shorter, ");
  }

  @Test
  void tellsWhereGramsCanBeSaved() {
    assertThat(SECONDS.saving(saving(Saving.Way.SHORTER_WIRES, "pack's wires", 0.14, 2.43)))
        .isEqualTo("10 mm off the pack's wires: 0.1 g lighter, 2.4 s longer, at no cost.");
    assertThat(SECONDS.saving(saving(Saving.Way.SMALLER_PLUG, "XT30 in place of XT60", 4.5, 75)))
        .isEqualTo(
            "plug XT30 in place of XT60 on pack and lead: 4.5 g lighter, 1.3 min longer; rated for the currents computed here.");
    assertThat(METRES.saving(saving(Saving.Way.TITANIUM_SCREWS, "motor screws", 0.96, 12)))
        .isEqualTo(
            "titanium in place of steel for the motor screws: 1.0 g lighter, 12 m farther; never aluminium for motors.");
    assertThat(SECONDS.saving(new Saving(
            Saving.Way.SWAP,
            "battery",
            2.8,
            -10,
            OptionalLong.of(-250),
            Optional.of(swap(990, 19_750)))))
        .isEqualTo(
            "battery: Tidewell 2S 3400 in place of Tidewell 2S 3500: 10 s shorter, 2.8 g lighter, EUR 3 cheaper.");
  }

  private static Saving saving(Saving.Way way, String what, double grams, double gained) {
    return new Saving(way, what, grams, gained, OptionalLong.empty(), Optional.empty());
  }

  @Test
  void tellsWhatABuildBreaks() {
    var clash = new Finding(
        "capacitor", Verdict.clashes("Pack %s is too strong.", "p"), Optional.empty(), true);

    assertThat(Changes.broken(BASE)).isEqualTo("nothing");
    assertThat(Changes.broken(pappus.search.Changed.findings(BASE, List.of(clash))))
        .isEqualTo("a rule (Pack p is too strong)");
    assertThat(Changes.broken(broken(1, weak(), heavy()).assessment()))
        .isEqualTo("a limit (thrust-to-weight is 1.50, but must be at least 2.00), and 1 more");
    assertThat(Changes.allBroken(broken(1, weak(), heavy()).assessment()))
        .isEqualTo(
            "a limit (thrust-to-weight is 1.50, but must be at least 2.00); a limit (all-up mass is 260.0 g, but must be at most 250.0 g)");
  }

  @Test
  void controlCharactersInNamesComeOutVisible() {
    var strange = Parts.with((Battery) part(PACK), "name", "a\u202Eb");
    var swap = new Swap(Role.BATTERY, strange, BASE, told(PACK, 990, 20_000), List.of());

    assertThat(SECONDS.swap(swap)).startsWith("a\u202Eb in place of ");
  }
}
