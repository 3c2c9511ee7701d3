package pappus.change;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pappus.assessment.Assessor;
import pappus.assessment.flight.Factors;
import pappus.catalog.BuildText;
import pappus.part.Build;
import pappus.part.Parts;
import pappus.part.Role;
import pappus.shop.SmallShop;

/** Against scenarios that carry more or less, or feed more or less: nothing of how the rates are found. */
class RatesTest {
  private static final String CRUISE = "{\"style\": \"cruise\", \"windMetresPerSecond\": 3}";

  private static Assessor assessor(String flight, double grams, double watts, String more) {
    return SmallShop.assessor(
        Quads.WORKSHOP,
        SmallShop.flying(
            flight,
            String.format(
                Locale.ROOT,
                ", \"payload\": {\"name\": \"lamp\", \"massGrams\": %s, \"watts\": %s, \"xMillimetres\": 0}%s",
                grams,
                watts,
                more)));
  }

  private static double flown(String flight, double grams, double watts, String more) {
    var assessor = assessor(flight, grams, watts, more);
    return assessor.assess(build()).flight().orElseThrow().figure();
  }

  private static Build build() {
    return BuildText.parse(String.join(",", SmallShop.ONE_BUILD), Quads.WORKSHOP);
  }

  private static void assertRates(String flight, String more) {
    var assessor = assessor(flight, 5, 2, more);
    var rates = Rates.of(assessor.assess(build()), assessor).orElseThrow();

    assertThat(rates.perGram())
        .isPositive()
        .isCloseTo(
            (flown(flight, 4.5, 2, more) - flown(flight, 5.5, 2, more)), withinPercentage(0.5));
    assertThat(rates.perWatt())
        .isPositive()
        .isCloseTo(
            (flown(flight, 5, 1.9, more) - flown(flight, 5, 2.1, more)) / 0.2,
            withinPercentage(0.5));
  }

  @ParameterizedTest
  @ValueSource(strings = {"{\"style\": \"hover\"}", "{\"style\": \"loiter\"}", CRUISE})
  void aGramAndAWattAreWorthWhatCarryingAndFeedingThemCosts(String flight) {
    assertRates(flight, "");
  }

  @Test
  void theyAreInMetresWhereTheGoalIsRange() {
    assertRates(CRUISE, ", \"goal\": \"range\"");
  }

  /** A quarter of a watt less than its board draws is none that anything draws: the step up alone tells. */
  @Test
  void whatCannotBeLessIsToldByTheStepUp() {
    var assessor = assessor("{\"style\": \"hover\"}", 5, 0, "");
    var board = Parts.with(build().board().orElseThrow(), "watts", 0.1);
    var blind = Parts.with(Parts.with(board, "transmitter", null), "receiver", null);
    var frugal = build().with(Role.BOARD, blind).without(Role.CAMERA);
    var assessment = assessor.assess(frugal);
    assertThatThrownBy(
            () -> assessor.likeliest().whatIf(assessment).applyAsDouble(Factors.added(0, -0.25)))
        .isInstanceOf(IllegalArgumentException.class);
    assertThat(Rates.of(assessment, assessor)).isPresent();
  }
}
