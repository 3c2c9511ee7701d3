package pappus.assessment.flight;

import pappus.physics.flight.Cruise;

/**
 * One part of a course, flown steadily.
 *
 * @param where in words that follow what is said of it, such as "on leg 2"
 * @param seconds how long it lasts, of a course flown over and over in each round; 0 if it gets nowhere
 * @param cruise the flight itself
 * @param groundSpeedMPerS speed over ground along the track, m/s, below 0 if the wind drives it back; 0 over a spot
 * @param coversGround whether it leads from one place to another
 */
public record Stretch(
    String where, double seconds, Cruise cruise, double groundSpeedMPerS, boolean coversGround) {
  /** This stretch for another time. */
  Stretch lasting(double otherSeconds) {
    return new Stretch(where, otherSeconds, cruise, groundSpeedMPerS, coversGround);
  }

  /** Over ground in each round, m. */
  public double metres() {
    return seconds * groundSpeedMPerS;
  }
}
