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

  /** Speed over ground along the track at an airspeed, m/s; empty if the wind does not let it progress. */
  public OptionalDouble groundSpeedMPerS(double airspeedMPerS) {
    var alongSquared = airspeedMPerS * airspeedMPerS - crosswindMPerS * crosswindMPerS;
    if (alongSquared < 0) {
      return OptionalDouble.empty();
    }
    var groundMPerS = Math.sqrt(alongSquared) + tailwindMPerS;
    return groundMPerS > 0 ? OptionalDouble.of(groundMPerS) : OptionalDouble.empty();
  }

  /** Seconds to fly it at an airspeed; empty if the wind does not let it progress. */
  public OptionalDouble seconds(double airspeedMPerS) {
    var ground = groundSpeedMPerS(airspeedMPerS);
    return ground.isPresent()
        ? OptionalDouble.of(distanceM / ground.getAsDouble())
        : OptionalDouble.empty();
  }
}
