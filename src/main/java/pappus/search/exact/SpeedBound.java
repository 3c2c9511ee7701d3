package pappus.search.exact;

import org.jspecify.annotations.Nullable;
import pappus.physics.flight.ForwardFlight;
import pappus.scenario.Flight;
import pappus.scenario.Goal;
import pappus.scenario.Scenario;

/**
 * How much of the time that the least power allows is left at the speeds of a cruise, and how far it leads.
 *
 * <p>In level flight the shaft power is at least the hover's, less what induced power can fall by theory, more the
 * power of drag; the pack then lasts at most in proportion, since a watt at the shafts takes a watt or more from it.
 *
 * <p>Why: src/site/markdown/decisions.md#what-cannot-be-bounded-is-said
 */
final class SpeedBound {
  /** Electrical watts at the battery that a watt at the shafts takes at least: motors lose some, controllers gain. */
  private static final double LEAST_WATTS = 0.95;

  private static final double SLOWEST = 1;
  private static final double FASTEST = 80;

  /** Each span of speeds ends so much faster than it begins. */
  private static final double STEP = 1.015;

  private final boolean cruises;
  private final boolean forRange;
  private final double wind;
  private final @Nullable Double airspeed;
  private final double density;

  /**
   * What a speed costs.
   *
   * @param hoverW least shaft power of hover, all rotors, W
   * @param idealW most ideal power of hover, all rotors, W
   * @param inducedMPerS most induced speed of hover, m/s
   * @param leastW least shaft power in any level flight, W
   * @param busW most power from the battery at that, W
   * @param dragArea least, m²
   */
  record Costs(
      double hoverW,
      double idealW,
      double inducedMPerS,
      double leastW,
      double busW,
      double dragArea) {}

  SpeedBound(Scenario scenario, double density) {
    var flight = scenario.flight();
    this.cruises = flight.style() == Flight.Style.CRUISE;
    this.forRange = scenario.goalOrEndurance() == Goal.RANGE;
    this.wind = cruises ? flight.windOrCalm() : 0;
    this.airspeed = flight.airspeedMetresPerSecond();
    this.density = density;
  }

  /** Whether speeds matter at all beside the least power of any level flight. */
  boolean asks() {
    return cruises && (forRange || airspeed != null);
  }

  /**
   * The most seconds or metres, by the goal.
   *
   * @param seconds at the least power
   */
  double most(double seconds, Costs costs) {
    if (!forRange) {
      return airspeed == null ? seconds : seconds * share(airspeed, airspeed, costs);
    }
    var out = metresASecond(-wind, costs);
    return wind == 0 ? seconds * out : seconds * 2 / (1 / out + 1 / metresASecond(wind, costs));
  }

  /** Most metres over ground for each second that the least power would allow. */
  private double metresASecond(double tailwind, Costs costs) {
    if (airspeed != null) {
      return Math.max(0, airspeed + tailwind) * share(airspeed, airspeed, costs);
    }
    var most = 0.0;
    for (var slow = SLOWEST; slow < FASTEST; slow *= STEP) {
      var fast = slow * STEP;
      most = Math.max(most, (fast + tailwind) * share(slow == SLOWEST ? 0 : slow, fast, costs));
    }
    return most;
  }

  /** Share of the time at the least power that is left at speeds between two. */
  private double share(double slow, double fast, Costs costs) {
    var by = fast / costs.inducedMPerS;
    // Climbing along its axis, a rotor's induced speed falls most.
    var induced = 0.5 * (Math.sqrt(by * by + 4) - by);
    var watts = costs.hoverW
        - ForwardFlight.INDUCED_FACTOR * costs.idealW * (1 - induced)
        + 0.5 * density * costs.dragArea * slow * slow * slow;
    var more = Math.max(0, watts - costs.leastW);
    return 1 / (1 + LEAST_WATTS * more / costs.busW);
  }
}
