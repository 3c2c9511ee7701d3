package pappus.assessment;

import java.util.List;
import pappus.physics.flight.Endurance;
import pappus.physics.flight.FullThrottle;
import pappus.physics.flight.Hover;
import pappus.physics.flight.Limits;

/**
 * How a build flies.
 *
 * @param hover the hover itself
 * @param volts of the pack in hover at half charge, V; 0 if it cannot hover there
 * @param amps from the pack there, A
 * @param duty how far the controllers are open there, 0 to 1
 * @param split where the power goes there
 * @param efficiency momentum power over battery power there
 * @param draws consumers beside the motors
 * @param endurance how long, and what ends it
 * @param thrustToWeight at the charge the scenario names
 * @param freshThrustToWeight on a full pack
 * @param full full throttle at the charge the scenario names
 * @param continuous currents the parts stand without end, A
 * @param burst currents they stand for some seconds, A
 * @param hints what the reader should know about the numbers
 * @param beyondBelief whether they are outside what such aircraft are known to reach
 */
public record FlightEstimate(
    Hover hover,
    double volts,
    double amps,
    double duty,
    PowerSplit split,
    double efficiency,
    List<Draw> draws,
    Endurance endurance,
    double thrustToWeight,
    double freshThrustToWeight,
    FullThrottle full,
    Limits continuous,
    Limits burst,
    List<String> hints,
    boolean beyondBelief) {
  public FlightEstimate {
    draws = List.copyOf(draws);
    hints = List.copyOf(hints);
  }

  /** Whole milliseconds of flight, rounded down. */
  public long milliseconds() {
    return (long) Math.floor(endurance.seconds() * 1000);
  }
}
