package pappus.assessment;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import pappus.assessment.flight.FlightEstimate;
import pappus.part.Build;
import pappus.physics.flight.EfficiencyBand;
import pappus.physics.flight.ForwardFlight;

/** A number of a flight beyond which a practitioner would laugh (common practice, no published source). */
public enum Disbelief {
  EFFICIENCY,
  LONG_HOVER,
  LONG_FLIGHT,
  THRUST;

  private static final double LIGHT_GRAMS = 250;
  private static final double LONGEST_LIGHT_SECONDS = 48 * 60;
  private static final double MOST_LIGHT_THRUST = 10;

  /** What of a flight is not to be believed, in the order of these. */
  static Set<Disbelief> of(Build build, double grams, FlightEstimate flight) {
    var disbelief = EnumSet.noneOf(Disbelief.class);
    if (flight.volts() > 0 && !EfficiencyBand.warning(grams / 1000).contains(flight.efficiency())) {
      disbelief.add(EFFICIENCY);
    }
    if (grams < LIGHT_GRAMS) {
      var seconds = flight.endurance().seconds();
      if (flight.course().isEmpty() && seconds > LONGEST_LIGHT_SECONDS) {
        disbelief.add(LONG_HOVER);
      }
      if (flight.course().isPresent()
          && seconds > LONGEST_LIGHT_SECONDS / ForwardFlight.LEAST_OF_HOVER) {
        disbelief.add(LONG_FLIGHT);
      }
      if (flight.thrustToWeight() > MOST_LIGHT_THRUST) {
        disbelief.add(THRUST);
      }
    }
    return Collections.unmodifiableSet(disbelief);
  }
}
