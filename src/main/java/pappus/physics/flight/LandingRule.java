package pappus.physics.flight;

import pappus.quantity.Require;

/**
 * When a pilot lands.
 *
 * @param reserve state of charge that is kept back
 * @param voltsPerCell volts a cell under load at which the flight ends
 */
public record LandingRule(double reserve, double voltsPerCell) {

  public LandingRule {
    Require.inRange("reserve", reserve, 0, 1);
    Require.notNegative("voltsPerCell", voltsPerCell);
  }
}
