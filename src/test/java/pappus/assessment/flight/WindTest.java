package pappus.assessment.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static pappus.part.Parts.build;
import static pappus.part.Parts.with;

import org.junit.jupiter.api.Test;
import pappus.answers.build.Heading;
import pappus.assessment.Desk;
import pappus.part.Frame;
import pappus.part.Role;
import pappus.scenario.Air;
import pappus.scenario.Flight;
import pappus.scenario.Scenario;
import pappus.scenario.Scenarios;

/** Wind of the place, on the four-inch quad of the tests. */
class WindTest {
  private static Scenario windy(double metresPerSecond, double gusts) {
    return with(Scenarios.plain(), "air", new Air(0, null, null, metresPerSecond, gusts));
  }

  private static double seconds(Scenario scenario) {
    return Desk.assess(build(), scenario).flight().orElseThrow().endurance().seconds();
  }

  private static Scenario styled(Scenario scenario, Flight.Style style) {
    return with(scenario, "flight", with(Flight.HOVERING, "style", style));
  }

  @Test
  void slowWindDoesNotHelpAndStrongWindCosts() {
    var calm = seconds(Scenarios.plain());

    assertThat(seconds(windy(0, 0.2))).isEqualTo(calm);
    assertThat(seconds(windy(3, 0.2))).isEqualTo(calm);
    assertThat(seconds(windy(10, 0.2))).isLessThan(calm);
    assertThat(seconds(windy(12, 0.2))).isLessThan(seconds(windy(10, 0.2)));
    assertThat(seconds(windy(12, 0.4))).isLessThan(seconds(windy(12, 0.2)));
  }

  @Test
  void theHeadingNamesTheWind() {
    assertThat(Heading.unusual(windy(9, 0.2))).containsExactly("wind 9.0 m/s, give or take 20 %");
    assertThat(Heading.unusual(Scenarios.plain())).isEmpty();
  }

  @Test
  void gustsAboutALoiterCost() {
    var calm = seconds(styled(Scenarios.plain(), Flight.Style.LOITER));

    assertThat(seconds(styled(windy(12, 0.4), Flight.Style.LOITER))).isLessThan(calm);
    assertThat(seconds(styled(windy(12, 0), Flight.Style.LOITER))).isEqualTo(calm);
  }

  @Test
  void aFrameWithMoreDragLosesMore() {
    var slim = with(build().frame().orElseThrow(), "dragAreaSquareMetres", 0.004);
    var wide = with(slim, "dragAreaSquareMetres", 0.012);

    assertThat(of(wide)).isLessThan(of(slim));
  }

  private static double of(Frame frame) {
    return Desk.assess(build().with(Role.FRAME, frame), windy(12, 0.2))
        .flight()
        .orElseThrow()
        .endurance()
        .seconds();
  }

  @Test
  void aCruiseHasAWindOfItsOwn() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> styled(windy(4, 0.2), Flight.Style.CRUISE))
        .withMessageEndingWith(
            "air.windMetresPerSecond must be left out where the flight has a wind of its own, but is 4 with the style cruise.");
  }

  @Test
  void gustsComeWithWindAndPoldersMayBeFlown() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Air(0, null, null, null, 0.2))
        .withMessage("gusts must come with windMetresPerSecond, but that is left out.");
    assertThat(seconds(with(Scenarios.plain(), "air", new Air(-430, null, null, null, null))))
        .isGreaterThan(seconds(Scenarios.plain()));
  }
}
