package pappus.physics.battery;

import pappus.quantity.Require;

/**
 * What ends a discharge, whichever comes first.
 *
 * @param reserve state of charge that is kept back, 0 to 1
 * @param leastVolts volts at the pack's terminals; 0 for no such limit
 * @param longestSeconds seconds; infinity for no such limit
 */
public record Until(double reserve, double leastVolts, double longestSeconds) {

  public Until {
    Require.inRange("reserve", reserve, 0, 1);
    Require.notNegative("leastVolts", leastVolts);
    if (longestSeconds != Double.POSITIVE_INFINITY) {
      Require.notNegative("longestSeconds", longestSeconds);
    }
  }

  /** A reserve and volts, however long it takes. */
  public static Until drained(double reserve, double leastVolts) {
    return new Until(reserve, leastVolts, Double.POSITIVE_INFINITY);
  }
}
