package pappus.assessment.flight;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pappus.evidence.BuildFigures;
import pappus.physics.flight.Endurance;
import pappus.physics.flight.FullThrottle;
import pappus.physics.flight.Hover;
import pappus.physics.flight.Limits;
import pappus.physics.flight.Rotor;
import pappus.physics.flight.ThrottleLimit;
import pappus.quantity.Units;
import pappus.scenario.Goal;

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
 * @param endurance how long from take-off to landing, and what ends it
 * @param course where it is not hover: what is flown, over which {@code endurance} holds
 * @param thrustToWeight at the charge the scenario names
 * @param freshThrustToWeight on a full pack
 * @param full full throttle at the charge the scenario names
 * @param fresh full throttle on a full pack
 * @param continuous currents the parts stand without end, A
 * @param burst currents they stand for some seconds, A
 * @param rotor one motor with its propeller and controller, as flown
 * @param thrustLost share of the thrust that arms and body take away
 * @param powerFactor by which flights of the builder's own correct the propellers' power; 1 without any
 * @param figures what counts of its parts' figures
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
    Optional<Course> course,
    double thrustToWeight,
    double freshThrustToWeight,
    FullThrottle full,
    FullThrottle fresh,
    Limits continuous,
    Limits burst,
    Rotor rotor,
    double thrustLost,
    double powerFactor,
    BuildFigures figures) {
  public FlightEstimate {
    draws = List.copyOf(draws);
  }

  /** Speed of the propellers in hover, rpm. */
  public double hoverRpm() {
    return Units.radPerSToRpm(hover.steady().point().speedRadPerS());
  }

  /**
   * Full throttle, on a full pack or at the charge the scenario names, where some part keeps it from all that the
   * controllers could open; of two the one that allows less. Empty where the parts stand all of it.
   */
  public Optional<FullThrottle> capped() {
    return Stream.of(fresh, full)
        .filter(throttle -> throttle.limit() != ThrottleLimit.FULL_DUTY)
        .min(Comparator.comparingDouble(FullThrottle::duty));
  }

  /** To how much of full opening motor output has to be limited, so that no part is overtaxed, whole %, 0 to 100. */
  public int motorOutputPercent() {
    return capped().map(throttle -> (int) (100 * throttle.duty())).orElse(100);
  }

  /** Share of full opening that pack, plug, leads and floor volts stand, whatever motors and controllers do, 0 to 1. */
  public double packThrottle() {
    return Stream.of(fresh, full)
        .filter(throttle -> throttle.limit().isOfPack())
        .mapToDouble(FullThrottle::duty)
        .min()
        .orElse(1);
  }

  /** Seconds in the air, of a course with a stay those of the stay alone. */
  public double seconds() {
    return course.flatMap(Course::stayed).map(Stretch::seconds).orElseGet(endurance::seconds);
  }

  /** Whole milliseconds of that, rounded down. */
  public long milliseconds() {
    return (long) Math.floor(seconds() * 1000);
  }

  /** Whether builds are ranked by range, and so {@link #figure} is in metres. */
  public boolean isForRange() {
    return course.filter(flown -> flown.goal() == Goal.RANGE).isPresent();
  }

  /** What builds are ranked by: {@link #seconds}, or {@link #rangeMetres} for the goal of range. */
  public double figure() {
    return isForRange() ? rangeMetres() : seconds();
  }

  /** Over ground until landing, of a course with a stay on that alone, m; 0 where the flight goes nowhere. */
  public double rangeMetres() {
    return course
        .map(flown -> flown.stayed().map(Stretch::metres).orElse(flown.rangeMetres()))
        .orElse(0.0);
  }

  /** Power from the battery as it is flown, W: in hover at half charge, else the mean of the flight. */
  public double flownW() {
    return course.isPresent() ? endurance.meanPowerW() : split.totalW();
  }

  /** Airspeeds that matter, where it is not hover. */
  public Optional<Speeds> speeds() {
    return course.filter(flown -> volts > 0).map(flown -> Speeds.of(flown, hover, volts));
  }
}
