package pappus.physics.flight;

import java.util.OptionalDouble;
import pappus.quantity.Require;

/**
 * A straight stretch over ground in steady wind.
 *
 * @param distanceM length over ground, m
 * @param tailwindMPerS wind along the track, m/s, negative if it blows against
 * @param crosswindMPerS wind across the track, m/s, either sign
 */
public record Leg(double distanceM, double tailwindMPerS, double crosswindMPerS) {

  public Leg {
    Require.notNegative("distanceM", distanceM);
    Require.inRange("tailwindMPerS", tailwindMPerS, -60, 60);
    Require.inRange("crosswindMPerS", crosswindMPerS, -60, 60);
  }

  /**
   * Speed over ground along the track at an airspeed, m/s; not above zero where the wind does not let it progress: what
   * is missing against a crosswind, or how fast it is driven back.
   */
  public double progressMPerS(double airspeedMPerS) {
    var across = Math.abs(crosswindMPerS);
    return airspeedMPerS < across
        ? airspeedMPerS - across
        : Math.sqrt(airspeedMPerS * airspeedMPerS - across * across) + tailwindMPerS;
  }

  /** Speed over ground along the track, m/s, above 0; empty if the wind does not let it progress. */
  public OptionalDouble groundSpeedMPerS(double airspeedMPerS) {
    var progress = progressMPerS(airspeedMPerS);
    return progress > 0 ? OptionalDouble.of(progress) : OptionalDouble.empty();
  }

  /** Seconds to fly it at an airspeed; empty if the wind does not let it progress. */
  public OptionalDouble seconds(double airspeedMPerS) {
    var ground = groundSpeedMPerS(airspeedMPerS);
    return ground.isPresent()
        ? OptionalDouble.of(distanceM / ground.getAsDouble())
        : OptionalDouble.empty();
  }
}
