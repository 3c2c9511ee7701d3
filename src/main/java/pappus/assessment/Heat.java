package pappus.assessment;

import pappus.assessment.flight.Course;
import pappus.assessment.flight.FlightModels;
import pappus.evidence.Evidence;
import pappus.evidence.Weighing;
import pappus.physics.motor.WindingHeat;
import pappus.scenario.Scenario;

/**
 * How warm the motors' windings get, by {@link WindingHeat}: an engineering estimate to a factor of two in the rise,
 * which cautions and never ranks.
 *
 * <p>Why: src/site/markdown/decisions.md#heat-cautions-and-does-not-rank
 *
 * @param steadyCelsius in hover, or on the stretch of a course that asks most, °C, at most 150
 * @param burstCelsius after full throttle for some seconds from there, °C, at most 150
 * @param burstSeconds how long
 */
public record Heat(double steadyCelsius, double burstCelsius, double burstSeconds) {
  /** What the temperatures rest on, for readers. */
  public static final String ASSUMPTION =
      "one thermal resistance from winding to air, 2.9 K/W at 34 g and by mass to the power of 2/3 at others, and for bursts half the motor's mass at 420 J/(kg K): engineering estimates, to a factor of two";

  private static final double CELSIUS = 273.15;

  /** Of a build that flies. */
  public static Heat of(Scenario scenario, Assessment assessment) {
    var flight = assessment.flight().orElseThrow();
    var motor = flight.rotor().motor();
    var airK = airCelsius(scenario) + CELSIUS;
    var massKg = assessment.build().motor().orElseThrow().mass().grams() / 1000;
    var steadyA = flight
        .course()
        .map(Course::mostMotorA)
        .orElseGet(() -> flight.hover().steady().point().currentA());
    var steadyK =
        WindingHeat.windingK(motor, steadyA, WindingHeat.thermalResistanceKPerW(massKg), airK);
    var seconds = scenario.flight().burstSecondsOrUsual();
    var burstK = WindingHeat.afterBurstK(
        motor, flight.full().point().currentA(), massKg, steadyK, airK, seconds);
    return new Heat(steadyK - CELSIUS, burstK - CELSIUS, seconds);
  }

  /** Temperature of the air of a scenario, °C. */
  public static double airCelsius(Scenario scenario) {
    return new FlightModels(scenario, Weighing.EXPECTED, 1, Evidence.NONE).air().temperatureK()
        - CELSIUS;
  }

  /** Whether it is worth a word. */
  public boolean isHigh() {
    return Math.max(steadyCelsius, burstCelsius) > WindingHeat.CAUTION_K - CELSIUS;
  }

  /** Whether a temperature is where the model stops. */
  public static boolean isAtLimit(double celsius) {
    return celsius >= WindingHeat.LIMIT_K - CELSIUS - 1e-9;
  }
}
