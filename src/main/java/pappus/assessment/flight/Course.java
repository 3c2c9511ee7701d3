package pappus.assessment.flight;

import java.util.List;
import java.util.OptionalInt;
import pappus.physics.flight.ForwardFlight;
import pappus.scenario.Flight;
import pappus.scenario.Goal;

/**
 * A way of flying other than hover, as one aircraft flies it.
 *
 * @param style which
 * @param goal what builds are ranked by
 * @param forward the aircraft in forward flight
 * @param stretches its parts: the ways out and back, or what is flown in turn over and over until the flight ends
 * @param endsOn the stretch, from 0, whose limit ends the flight; empty if it ends at the charge kept back
 * @param rangeMetres over ground until landing; 0 if it goes nowhere
 * @param topSpeedMPerS fastest level flight through the air at the charge at which thrust is judged, an upper
 *     bound
 * @param mostMotorA the greatest steady current of a motor, hover included
 * @param mostBusA the greatest steady current of the pack at take-off and at half charge, hover included
 */
public record Course(
    Flight.Style style,
    Goal goal,
    ForwardFlight forward,
    List<Stretch> stretches,
    OptionalInt endsOn,
    double rangeMetres,
    double topSpeedMPerS,
    double mostMotorA,
    double mostBusA) {
  public Course {
    stretches = List.copyOf(stretches);
  }

  /** Whether any stretch leads from one place to another. */
  public boolean coversGround() {
    return stretches.stream().anyMatch(Stretch::coversGround);
  }

  /** All stretches once, s. */
  public double roundSeconds() {
    return stretches.stream().mapToDouble(Stretch::seconds).sum();
  }
}
