package pappus.answers.swap;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pappus.assessment.Assessment;
import pappus.assessment.Limit;
import pappus.catalog.Catalog;
import pappus.change.Alternative;
import pappus.change.Alternative.Grade;
import pappus.change.Changed;
import pappus.change.HardwareChange;
import pappus.change.Swap;
import pappus.part.Connector;
import pappus.part.Parts;
import pappus.part.Role;
import pappus.shop.SmallShop;

class AlternativeWordsTest {
  private static final Catalog FEW = SmallShop.few();
  private static final Assessment BASE = SmallShop.assessor(FEW, "").assess(SmallShop.oneBuild());
  private static final HardwareChange STRAP = new HardwareChange(
      "battery strap", Optional.empty(), Optional.of(Parts.strap("strap", 15, 200, 4)));
  private static final HardwareChange NO_RINGS =
      new HardwareChange("reducing rings", Optional.of(Parts.reducingRings()), Optional.empty());
  private static final Changed LEAD =
      new Changed(Role.LEAD, Optional.empty(), Optional.of(Parts.lead(null, Connector.XT30)));
  private static final Changed NO_BUZZER =
      new Changed(Role.BUZZER, Optional.of(Parts.buzzer()), Optional.empty());

  private static Alternative one(
      Assessment after,
      List<Changed> alongside,
      List<HardwareChange> hardware,
      OptionalDouble moved,
      boolean inStock) {
    var part = FEW.part("tidewell-2s-3400").orElseThrow();
    return new Alternative(
        new Swap(Role.BATTERY, part, BASE, after, alongside), hardware, moved, 100, inStock);
  }

  private static String moved(double millimetres) {
    return AlternativeWords.what(
        one(BASE, List.of(), List.of(), OptionalDouble.of(millimetres), true));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(delimiter = '|', textBlock = """
      DROP_IN        | Drop in: nothing else changes but where the pack sits
      OTHER_HARDWARE | With other screws, strap or small things
      OTHER_PARTS    | With another part too
      BREAKS_LIMIT   | Fit, but the quad then breaks a limit
      DOES_NOT_FIT   | Do not fit
      """)
  void everyGradeHasItsHeading(Grade grade, String heading) {
    assertThat(AlternativeWords.heading(grade)).isEqualTo(heading);
  }

  @Test
  void saysNothingWhereNothingChanges() {
    assertThat(AlternativeWords.what(one(BASE, List.of(), List.of(), OptionalDouble.empty(), true)))
        .isEmpty();
    assertThat(moved(0.9)).isEmpty();
    assertThat(moved(-0.9)).isEmpty();
  }

  @Test
  void saysWhereThePackGoes() {
    assertThat(moved(1)).isEqualTo("pack 1 mm forward");
    assertThat(moved(-12.4)).isEqualTo("pack 12 mm backward");
  }

  @Test
  void saysWhatChangesPartsFirst() {
    var all =
        one(BASE, List.of(LEAD, NO_BUZZER), List.of(STRAP, NO_RINGS), OptionalDouble.of(3), false);

    assertThat(all.grade()).isEqualTo(Grade.OTHER_PARTS);
    assertThat(AlternativeWords.what(all))
        .isEqualTo(
            "not in stock, battery lead Lead, no buzzer, battery strap Strap, no reducing rings, pack 3 mm forward");
    var strap = one(BASE, List.of(), List.of(STRAP), OptionalDouble.empty(), true);
    assertThat(strap.grade()).isEqualTo(Grade.OTHER_HARDWARE);
    assertThat(AlternativeWords.what(strap)).isEqualTo("battery strap Strap");
  }

  @Test
  void saysWhatIsInTheWayInsteadOfWhatChanges() {
    var heavy = pappus.search.Changed.limits(
        BASE, List.of(new Limit("mass-cap", "all-up mass", "g", 260, 249.999, true, false)));
    var one = one(heavy, List.of(LEAD), List.of(STRAP), OptionalDouble.of(30), false);

    assertThat(one.grade()).isEqualTo(Grade.BREAKS_LIMIT);
    assertThat(AlternativeWords.what(one))
        .isEqualTo("not in stock, a limit (all-up mass is 260.0 g, but must be at most 250.0 g)");
  }
}
