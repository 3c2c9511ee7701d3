package pappus.answers.build;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import pappus.assessment.Assessor;
import pappus.catalog.BuildText;
import pappus.catalog.Catalog;
import pappus.compatibility.Rules;
import pappus.fitting.Stock;
import pappus.part.Known;
import pappus.part.Mass;
import pappus.part.Parts;
import pappus.scenario.Flight;
import pappus.scenario.Scenarios;
import pappus.shop.SmallShop;

class CautionsTest {
  private static final Catalog FEW = SmallShop.few();

  @Test
  void standWhereTheWorkCanHurt() {
    assertThat(Cautions.of(
            SmallShop.assessor(FEW, "").assess(SmallShop.oneBuild()), SmallShop.scenario("")))
        .containsExactly(
            "Estimates: nothing of this build was measured. Weigh it, fly it gently and plan with the lower figure.",
            "Bench: propellers off until the last step; check polarity with a meter; first power through a current limiter.",
            "Pack: choose Li-ion, energy cells on the charger, stay with it, charge at 1 C at most unless its maker says more; never charge a puffed, dented or over-drained pack.",
            "Video: never power a transmitter without its antenna; local rules set its power and channel.",
            "Flight: first hover in the open, low, for one minute; check the failsafe with propellers off. A mass below a cap (Below 250 g at take-off) is neither harmless nor exempt from airspace, privacy and registration rules: those are yours to check.");
  }

  @Test
  void warnOfHotWindingsWithBothTemperatures() {
    var scenario =
        Parts.with(Scenarios.plain(), "flight", Parts.with(Flight.HOVERING, "burstSeconds", 60.0));
    var assessor = new Assessor(scenario, Stock.of(Parts.hardware()), Rules.ALL);

    var hot = Parts.with(
        Parts.with(Parts.motor(), "resistanceMilliohms", 400), "mass", Mass.of(5, Known.MAKER));

    assertThat(Cautions.of(assessor.assess(Parts.build(hot)), scenario))
        .anySatisfy(
            caution -> assertThat(caution)
                .matches(
                    "Motors: windings are estimated to reach [0-9]+ °C in steady flight and [0-9]+ °C( or more)? after 60 s of full throttle, to a factor of two; above 100 °C keep bursts short and feel the motors after a few minutes \\(common practice\\)\\."));
  }

  @Test
  void sayNothingOfAPackThatThereIsNot() {
    assertThat(Cautions.of(
            SmallShop.assessor(FEW, "").assess(BuildText.parse("cottongrass-4", FEW)),
            SmallShop.scenario("")))
        .hasSize(4)
        .noneMatch(caution -> caution.startsWith("Pack"));
  }
}
