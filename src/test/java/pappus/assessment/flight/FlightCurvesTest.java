package pappus.assessment.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static pappus.part.Parts.build;
import static pappus.part.Parts.with;

import java.util.List;
import org.junit.jupiter.api.Test;
import pappus.assessment.Assessor;
import pappus.compatibility.Rules;
import pappus.fitting.Stock;
import pappus.part.Parts;
import pappus.physics.battery.Discharge;
import pappus.scenario.Flight;
import pappus.scenario.Scenario;
import pappus.scenario.Scenarios;

/** Curves of the four-inch quad of the tests agree with what the assessment says of the same flight. */
final class FlightCurvesTest {
  private static Scenario flying(Flight.Style style) {
    return with(Scenarios.plain(), "flight", with(Flight.HOVERING, "style", style));
  }

  private static Assessor assessor(Scenario scenario) {
    return new Assessor(scenario, Stock.of(Parts.hardware()), Rules.ALL);
  }

  private static FlightEstimate flight(Scenario scenario) {
    return assessor(scenario).assess(build()).flight().orElseThrow();
  }

  private static FlightCurves curves(Scenario scenario) {
    var assessor = assessor(scenario);
    return assessor.curves(assessor.assess(build())).orElseThrow();
  }

  @Test
  void voltsRunFromTakeOffToTheEndOfTheFlight() {
    for (var style : List.of(Flight.Style.HOVER, Flight.Style.LOITER, Flight.Style.CRUISE)) {
      var discharge = flight(flying(style)).endurance().discharge();
      var curve = curves(flying(style)).flight();

      var end = curve.get(curve.size() - 1);
      assertThat(curve.get(0).volts()).isCloseTo(discharge.startVolts(), within(1e-6));
      assertThat(end.seconds()).isCloseTo(discharge.seconds(), withinPercentage(1e-4));
      assertThat(end.volts()).isCloseTo(discharge.endVolts(), within(1e-6));
      assertThat(end.usedCoulomb()).isCloseTo(discharge.usedCoulomb(), withinPercentage(1e-4));
      assertThat(curve)
          .isSortedAccordingTo((one, other) -> Double.compare(one.seconds(), other.seconds()));
      assertThat(curve)
          .extracting(Discharge.Moment::volts)
          .isSortedAccordingTo((one, other) -> Double.compare(other, one));
    }
  }

  @Test
  void thrustRisesWithTheThrottleUpToWhatItsPartsAllow() {
    var full = flight(Scenarios.plain()).full();
    var curve = curves(Scenarios.plain()).throttle();

    assertThat(curve.get(curve.size() - 1)).isEqualTo(full);
    for (var i = 1; i < curve.size(); i++) {
      assertThat(curve.get(i).duty()).isGreaterThan(curve.get(i - 1).duty());
      assertThat(curve.get(i).thrustN()).isGreaterThan(curve.get(i - 1).thrustN());
      assertThat(curve.get(i).busVolts()).isLessThan(curve.get(i - 1).busVolts());
    }
  }

  @Test
  void standingStillInTheAirIsAHover() {
    var flight = flight(Scenarios.plain());
    var curves = curves(Scenarios.plain());

    assertThat(curves.power().get(0).airspeedMPerS()).isZero();
    assertThat(curves.power().get(0).watts())
        .isCloseTo(flight.split().totalW(), withinPercentage(0.5));
    assertThat(curves.halfEmpty().orElseThrow().volts()).isEqualTo(flight.volts());
    assertThat(curves.halfEmpty().orElseThrow().amps()).isEqualTo(flight.amps());
    assertThat(curves.halfEmpty().orElseThrow().duty()).isEqualTo(flight.duty());
    assertThat(curves.fresh().orElseThrow().duty()).isLessThan(flight.duty());
    assertThat(curves.fresh().orElseThrow().amps()).isLessThan(flight.amps());
  }

  @Test
  void aHoverTurnsBackWithAFifthOfThePlannedTimeLeft() {
    var discharge = flight(Scenarios.plain()).endurance().discharge();
    var curves = curves(Scenarios.plain());

    var home = curves.turnBack(flight(Scenarios.plain()).course(), 0.9).orElseThrow();
    var land = curves.land().orElseThrow();

    assertThat(home.seconds()).isCloseTo(0.8 * 0.9 * discharge.seconds(), within(0.1));
    assertThat(home.volts()).isBetween(discharge.endVolts(), discharge.startVolts());
    assertThat(home.milliampHours())
        .isCloseTo(0.72 * discharge.usedCoulomb() / 3.6, withinPercentage(5));
    assertThat(land.volts()).isCloseTo(discharge.endVolts(), within(1e-6));
    assertThat(land.milliampHours())
        .isCloseTo(discharge.usedCoulomb() / 3.6, withinPercentage(1e-4));
  }

  @Test
  void aCruiseTurnsBackWhereTheWayOutIsOver() {
    var calm = flying(Flight.Style.CRUISE);
    var windy = with(calm, "flight", with(calm.flight(), "windMetresPerSecond", 5.0));
    var stretches = flight(windy).course().orElseThrow().stretches();
    var out = stretches.get(0).seconds()
        / (stretches.get(0).seconds() + stretches.get(1).seconds());

    assertThat(turnsBack(calm, 1)).isCloseTo(0.5, within(1e-6));
    assertThat(turnsBack(calm, 0.9)).isCloseTo(0.45, within(1e-6));
    assertThat(turnsBack(windy, 1)).isCloseTo(out, within(1e-5)).isGreaterThan(0.5);
  }

  /** Share of the whole flight. */
  private static double turnsBack(Scenario scenario, double planWith) {
    var flight = flight(scenario);
    return curves(scenario).turnBack(flight.course(), planWith).orElseThrow().seconds()
        / flight.endurance().seconds();
  }
}
