package pappus.scenario;

import static pappus.part.Parts.with;

import java.util.List;
import pappus.part.Polarisation;

/** Scenarios for tests; a test changes what it is about with {@code Parts.with}. */
public final class Scenarios {
  private Scenarios() {}

  /** Sea level, hover, 250 g and not more, twice its weight in thrust, nothing else asked for. */
  public static Scenario plain() {
    var light = with(Scenario.anything(), "massCap", new MassCap(250, false, "an example", null));
    var strong = with(light, "leastThrustToWeight", 2.0);
    return with(with(strong, "name", "plain"), "note", "An example.");
  }

  /** What a pilot of analogue video has. */
  public static Pilot pilot() {
    return new Pilot(
        Families.of("analogue"),
        Families.of("link-a"),
        Polarisation.RIGHT,
        null,
        null,
        null,
        null,
        null);
  }

  /** A waiver for one part. */
  public static Waiver waiver(String rule, String part) {
    return new Waiver(rule, List.of(part), "tried on the bench");
  }

  /** Legs flown in calm air. */
  public static Flight legs(Leg... legs) {
    return new Flight(
        Flight.Style.PROFILE,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        List.of(legs),
        null,
        null,
        null,
        null,
        null);
  }
}
