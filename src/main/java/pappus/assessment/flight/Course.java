package pappus.assessment.flight;

import java.util.List;
import java.util.Optional;
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
 * @param stretches its parts: the ways out and back, or what is flown in turn over and over until the flight ends, or
 *     once where one of them lasts as long as possible
 * @param stay that one; empty where there is none
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
    Optional<Stay> stay,
    OptionalInt endsOn,
    double rangeMetres,
    double topSpeedMPerS,
    double mostMotorA,
    double mostBusA) {
  /**
   * A stretch that lasts as long as possible.
   *
   * @param stretch which, from 0
   * @param leavesAtCharge state of charge that is kept back for what follows, the reserve included
   * @param planWith share of its estimate that what follows is planned with: charge is kept back as if it lasted so much
   *     longer
   */
  public record Stay(int stretch, double leavesAtCharge, double planWith) {}

  public Course {
    stretches = List.copyOf(stretches);
  }

  /** Whether any stretch leads from one place to another. */
  public boolean coversGround() {
    return stretches.stream().anyMatch(Stretch::coversGround);
  }

  /** The stretch that lasts as long as possible. */
  public Optional<Stretch> stayed() {
    return stay.map(known -> stretches.get(known.stretch));
  }

  /** All stretches before the stay or after it, s. */
  public double secondsAbout(Stay known, boolean after) {
    return (after
            ? stretches.subList(known.stretch + 1, stretches.size())
            : stretches.subList(0, known.stretch))
        .stream().mapToDouble(Stretch::seconds).sum();
  }

  /**
   * How often all stretches are flown.
   *
   * @param seconds in the air
   */
  public double rounds(double seconds) {
    return seconds > 0 ? seconds / roundSeconds() : 0;
  }

  /** All stretches once, s. */
  public double roundSeconds() {
    return stretches.stream().mapToDouble(Stretch::seconds).sum();
  }
}
