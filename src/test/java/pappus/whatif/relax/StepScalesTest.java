package pappus.whatif.relax;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import pappus.assessment.Assessment;
import pappus.assessment.LimitKind;
import pappus.catalog.BuildText;
import pappus.change.Asked;
import pappus.change.Asking;
import pappus.part.Parts;
import pappus.quantity.Money;
import pappus.scenario.MassCap;
import pappus.scenario.Scenario;
import pappus.shop.SmallShop;

class StepScalesTest {
  /** It needs 196.650 g at the confidence asked for, lifts 2.2881 times its weight and costs 190.34. */
  private static final Assessment BUILD = SmallShop.assessor(
          Asking.FEW, ", \"budget\": {\"amount\": 200, \"currency\": \"EUR\"}")
      .assess(BuildText.parse(String.join(",", SmallShop.ONE_BUILD), Asking.FEW));

  private static Asked capped(double grams, boolean strict) {
    return Asking.asked(
        Parts.with(SmallShop.scenario(""), "massCap", new MassCap(grams, strict, "a law", null)));
  }

  private static Scenario at(StepScale dial, int step) {
    return dial.at(step).scenario();
  }

  private static String shown(StepScale dial, int... steps) {
    return String.join(", ", IntStream.of(steps).mapToObj(dial::shown).toList());
  }

  @Test
  void massCapGoesUpByTenthsToTheHeaviest() {
    var dial = StepScales.bound(LimitKind.MASS_CAP, capped(249.95, true));

    assertThat(shown(dial, 0, 1, 2, dial.steps() - 1, dial.steps()))
        .isEqualTo("249.95 g, 250.05 g, 250.15 g, 24999.95 g, 25000 g");
    assertThat(dial.steps()).isEqualTo(247_501);
    assertThat(at(dial, 0)).isEqualTo(capped(249.95, true).scenario());
    assertThat(at(dial, 3)).isEqualTo(capped(250.25, true).scenario());
    assertThat(StepScales.bound(LimitKind.MASS_CAP, capped(25_000, true)).steps())
        .isZero();
  }

  @Test
  void massCapIsOfAMilligramMoreWhereItIsStrict() {
    assertThat(StepScales.bound(LimitKind.MASS_CAP, capped(190, true)).first(BUILD))
        .isEqualTo(67);
    assertThat(StepScales.bound(LimitKind.MASS_CAP, capped(190.05, true)).first(BUILD))
        .isEqualTo(67);
    assertThat(StepScales.bound(LimitKind.MASS_CAP, capped(190.05, false)).first(BUILD))
        .isEqualTo(66);
    assertThat(StepScales.bound(LimitKind.MASS_CAP, capped(190.051, true)).first(BUILD))
        .isEqualTo(66);
    assertThat(StepScales.bound(LimitKind.MASS_CAP, capped(250, true)).first(BUILD))
        .isZero();
  }

  @Test
  void thrustOverWeightGoesDownByHundredthsToOne() {
    var dial =
        StepScales.bound(LimitKind.THRUST_TO_WEIGHT, Asking.asked(Asking.hover(250, 3.005, "")));

    assertThat(shown(dial, 0, 1, dial.steps() - 1, dial.steps()))
        .isEqualTo("3.005, 2.995, 1.005, 1");
    assertThat(dial.steps()).isEqualTo(201);
    assertThat(at(dial, 1)).isEqualTo(Asking.hover(250, 2.995, ""));
    // 3.005 - 0.76 is 2.245.
    assertThat(dial.first(BUILD)).isEqualTo(76);
    assertThat(StepScales.bound(LimitKind.THRUST_TO_WEIGHT, Asking.asked(Asking.hover(250, 1, "")))
            .steps())
        .isZero();
  }

  private static StepScale budget(String amount) {
    var money = new Money(new BigDecimal(amount), "EUR");
    return StepScales.bound(
        LimitKind.BUDGET, Asking.asked(Parts.with(SmallShop.scenario(""), "budget", money)));
  }

  @Test
  void budgetGoesUpByWholeUnits() {
    var dial = budget("169.50");

    assertThat(shown(dial, 0, 1, 21)).isEqualTo("169.5 EUR, 170.5 EUR, 190.5 EUR");
    assertThat(at(dial, 1).budget()).isEqualTo(Money.ofCents(17_050, "EUR"));
    assertThat(at(dial, 0).massCap()).isEqualTo(SmallShop.scenario("").massCap());
    // 190.34 is within 190.50, but not within 189.50.
    assertThat(dial.first(BUILD)).isEqualTo(21);
    assertThat(budget("190.34").first(BUILD)).isZero();
    assertThat(budget("190.33").first(BUILD)).isEqualTo(1);
  }

  /** As much as a price may be, since units of some currencies are small. */
  @Test
  void aBudgetOfSmallUnitsGoesUpToo() {
    var dial = budget("150000");

    assertThat(shown(dial, 0, 1, dial.steps())).isEqualTo("150000 EUR, 150001 EUR, 1000000 EUR");
    assertThat(budget("1000000").steps()).isZero();
  }

  @Test
  void confidenceGoesDownByHundredthsToAHalf() {
    var dial = StepScales.confidence(capped(250, true));

    assertThat(shown(dial, 0, 1, dial.steps())).isEqualTo("0.95, 0.94, 0.5");
    assertThat(dial.steps()).isEqualTo(45);
    assertThat(at(dial, 5).massCap()).isEqualTo(new MassCap(250, true, "a law", 0.9));
    assertThat(dial.first(BUILD)).isEqualTo(45);
  }

  @Test
  void payloadGoesDownByGramsToNothing() {
    var text =
        ", \"payload\": {\"name\": \"seeds\", \"massGrams\": %s, \"watts\": 2, \"xMillimetres\": 20}";
    var dial = StepScales.payload(Asking.asked(SmallShop.scenario(text.formatted(2.5))));

    assertThat(shown(dial, 0, 1, 2, 3)).isEqualTo("2.5 g, 1.5 g, 0.5 g, 0 g");
    assertThat(dial.steps()).isEqualTo(3);
    assertThat(at(dial, 2)).isEqualTo(SmallShop.scenario(text.formatted(0.5)));
  }

  @Test
  void airspeedAndWindGoDownByHalfMetresASecond() {
    var text =
        "{\"style\": \"cruise\", \"airspeedMetresPerSecond\": %s, \"windMetresPerSecond\": %s}";
    var asked = Asking.asked(SmallShop.flying(text.formatted(2.2, 1.2), ""));
    var airspeed = StepScales.airspeed(asked, 2.2);
    var wind = StepScales.wind(asked);

    assertThat(shown(airspeed, 0, 1, 2, 3)).isEqualTo("2.2 m/s, 1.7 m/s, 1.2 m/s, 1 m/s");
    assertThat(airspeed.steps()).isEqualTo(3);
    assertThat(at(airspeed, 2)).isEqualTo(SmallShop.flying(text.formatted(1.2, 1.2), ""));
    assertThat(shown(wind, 0, 1, 2, 3)).isEqualTo("1.2 m/s, 0.7 m/s, 0.2 m/s, 0 m/s");
    assertThat(wind.steps()).isEqualTo(3);
    assertThat(at(wind, 1)).isEqualTo(SmallShop.flying(text.formatted(2.2, 0.7), ""));
  }

  /** The board sends 25, 100 and 200 mW, the transmitter of its own 25 and 50. */
  @Test
  void transmitterPowerGoesDownByTheSettingsOfAllSenders() {
    var ids = new ArrayList<>(SmallShop.ONE_BUILD);
    ids.add("rushlight-50-wire");
    var asked = Asking.asked(
        SmallShop.scenario(", \"transmitterMilliwatts\": 200"), SmallShop.catalog(ids));
    var dial = StepScales.transmitterPower(asked, 200);

    assertThat(dial.steps()).isEqualTo(3);
    assertThat(shown(dial, 0, 1, 2, 3)).isEqualTo("200 mW, 100 mW, 50 mW, 25 mW");
    assertThat(at(dial, 0)).isEqualTo(asked.scenario());
    assertThat(at(dial, 2)).isEqualTo(SmallShop.scenario(", \"transmitterMilliwatts\": 50"));
    assertThat(dial.first(BUILD)).isEqualTo(3);
    assertThat(StepScales.transmitterPower(asked, 25).steps()).isZero();
  }
}
