package pappus.scenario;

import java.util.List;
import pappus.part.Polarisation;

/** Scenarios for tests; a test changes what it is about with {@code Parts.with}. */
public final class Scenarios {
  private Scenarios() {}

  /** Sea level, hover, 250 g and not more, twice its weight in thrust, nothing else asked for. */
  public static Scenario plain() {
    return new Scenario(
        "plain",
        "An example.",
        new MassCap(250, false, "an example", null),
        2,
        null,
        new Air(0, null, null, null, null),
        Flight.HOVERING,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null);
  }

  /** What a pilot of analogue video has. */
  public static Pilot pilot() {
    return new Pilot(Families.of("analogue"), Families.of("link-a"), Polarisation.RIGHT);
  }

  /** A waiver for one part. */
  public static Waiver waiver(String rule, String part) {
    return new Waiver(rule, List.of(part), "tried on the bench");
  }
}
