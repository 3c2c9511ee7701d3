package pappus.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static pappus.part.Parts.battery;
import static pappus.part.Parts.build;
import static pappus.part.Parts.with;

import java.util.List;
import org.junit.jupiter.api.Test;
import pappus.compatibility.Rules;
import pappus.fitting.Stock;
import pappus.part.Build;
import pappus.part.Parts;
import pappus.quantity.Money;
import pappus.scenario.Scenario;
import pappus.scenario.Scenarios;

class MarginsTest {
  private static List<Limit> of(Build build, Scenario scenario) {
    var assessor = new Assessor(scenario, Stock.of(Parts.hardware()), Rules.ALL);
    return Margins.of(assessor.assess(build), assessor);
  }

  private static List<Limit> of(Build build) {
    return of(build, Scenarios.plain());
  }

  private static Limit one(List<Limit> margins, String id) {
    return margins.stream()
        .filter(margin -> margin.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no " + id + " in " + margins));
  }

  private static List<String> ids(List<Limit> margins) {
    return margins.stream().map(Limit::id).toList();
  }

  @Test
  void tellsLimitsThenTheFlightThenTheRoomOfTheParts() {
    assertThat(ids(of(build())))
        .containsExactly(
            "mass-cap",
            "thrust-to-weight",
            "motor-current",
            "controller-current",
            "pack-current",
            "plug-current",
            "lead-current",
            "hover-throttle",
            "hover-efficiency",
            "thrust",
            "landing-volts",
            "floor-volts",
            "tip-to-tip",
            "screw-depth",
            "plate-height",
            "pack-width",
            "pack-overhang",
            "pack-to-discs",
            "centre-of-mass",
            "strap-length",
            "board-full-volts",
            "board-low-volts",
            "rail-load",
            "rail-load",
            "serial-ports");
  }

  @Test
  void tellsTheBudgetWhereThereIsOne() {
    var rich = Parts.with(Scenarios.plain(), "budget", Money.ofCents(100_000, "EUR"));
    var cents = Desk.assess(build()).cost().cents();

    assertThat(one(of(build(), rich), "budget").margin())
        .isCloseTo(1000 - cents / 100.0, within(1e-9));
  }

  @Test
  void weighsThrustInGramsOfForce() {
    var assessment = Desk.assess(build());
    var thrust = one(of(build()), "thrust");

    assertThat(thrust.label()).isEqualTo("full thrust, mid-flight");
    assertThat(thrust.unit()).isEqualTo("gf");
    // A gram of force is 9.80665 mN; arms of 8 to 6 mm under 4 inches take 2.714 %.
    assertThat(thrust.value())
        .isCloseTo(
            (1 - 0.0271394) * assessment.flight().orElseThrow().full().thrustN() / 9.80665e-3,
            within(0.01));
    assertThat(thrust.bound()).isCloseTo(2 * assessment.mass().grams(), within(1e-9));
    assertThat(thrust.most()).isFalse();
  }

  /** Four cells: 3.5 V each to land, 3 V each under full throttle, unless the scenario says otherwise. */
  @Test
  void tellsVoltsOfThePackAgainstWhatItsCellsKeep() {
    var discharge = Desk.assess(build()).flight().orElseThrow().endurance().discharge();
    var landing = one(of(build()), "landing-volts");
    var floor = one(of(build()), "floor-volts");

    assertThat(landing.label()).isEqualTo("pack voltage at landing");
    assertThat(landing.unit()).isEqualTo("V");
    assertThat(landing.value()).isEqualTo(discharge.endVolts());
    assertThat(landing.bound()).isEqualTo(14);
    assertThat(landing.most()).isFalse();
    assertThat(floor.label()).isEqualTo("pack voltage at full throttle, mid-flight");
    assertThat(floor.value())
        .isEqualTo(Desk.assess(build()).flight().orElseThrow().full().busVolts());
    assertThat(floor.bound()).isEqualTo(12);
    assertThat(floor.most()).isFalse();

    var flight = with(
        with(Scenarios.plain().flight(), "landingVoltsPerCell", 3.4), "floorVoltsPerCell", 2.9);
    var asked = with(Scenarios.plain(), "flight", flight);
    assertThat(one(of(build(), asked), "landing-volts").bound()).isCloseTo(13.6, within(1e-9));
    assertThat(one(of(build(), asked), "floor-volts").bound()).isCloseTo(11.6, within(1e-9));
  }

  /** That it flies at all is told only where it does not. */
  @Test
  void tellsTheTimeInTheAirOnlyWhereThereIsNone() {
    var weak = build(with(battery(), "labelRating", 1.0));

    assertThat(Desk.limit(Desk.assess(build()), "flight-time").met()).isTrue();
    assertThat(ids(of(build()))).doesNotContain("flight-time");
    assertThat(Desk.limit(Desk.assess(weak), "flight-time").met()).isFalse();
    assertThat(ids(of(weak))).contains("flight-time");
  }

  @Test
  void tellsOnlyTheRoomOfThePartsWhereNothingFlies() {
    assertThat(ids(of(Parts.of(Parts.frame(), Parts.propeller())))).containsExactly("tip-to-tip");
    assertThat(of(Build.empty())).isEmpty();
  }

  @Test
  void aMarginBelowZeroIsNotMet() {
    var wide = build(with(battery(), "widthMillimetres", 44.0));
    var width = one(of(wide), "pack-width");

    assertThat(width.met()).isFalse();
    assertThat(width.margin()).isEqualTo(-4);
    assertThat(one(of(build()), "pack-width").met()).isTrue();
    assertThat(one(of(build()), "pack-width").margin()).isEqualTo(10);
  }
}
