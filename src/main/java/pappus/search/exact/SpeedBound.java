package pappus.search.exact;

import org.jspecify.annotations.Nullable;
import pappus.physics.flight.ForwardFlight;
import pappus.scenario.Flight;
import pappus.scenario.Goal;
import pappus.scenario.Scenario;

/**
 * How much of the time that the least power allows is left at the speeds of a cruise, and how far it leads.
 *
 * <p>In level flight the shaft power is that of {@link ForwardFlight}: the hover's, less what induced power falls by,
 * more what profile power grows by and the power of drag. It rises with mass and with drag, so that the least of both
 * count; of several propellers those that induce most in hover gain most. The pack then lasts at most in proportion,
 * since a watt at the shafts takes a watt or more from it.
 *
 * <p>Why: src/site/markdown/decisions.md#what-cannot-be-bounded-is-said
 */
final class SpeedBound {
  /** Electrical watts at the battery that a watt at the shafts takes at least: motors lose some, controllers gain. */
  private static final double LEAST_WATTS = 0.95;

  private static final double SLOWEST = 1;
  private static final double FASTEST = 80;

  /** Spans of speeds are halved until each ends so much faster than it begins. */
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
   * @param thrustN least thrust of hover, all rotors, N
   * @param inducedMPerS most induced speed of hover, m/s
   * @param leastInducedMPerS the least, m/s
   * @param tipMPerS fastest tips in hover, m/s
   * @param weightN least weight, N
   * @param leastW least shaft power in any level flight, W
   * @param busW most power from the battery at that, W
   * @param dragArea least, m²
   */
  record Costs(
      double hoverW,
      double thrustN,
      double inducedMPerS,
      double leastInducedMPerS,
      double tipMPerS,
      double weightN,
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
    return airspeed != null
        ? Math.max(0, airspeed + tailwind) * share(airspeed, airspeed, costs)
        : metresASecond(tailwind, costs, 0, FASTEST, Double.POSITIVE_INFINITY, 0);
  }

  /**
   * The most between two speeds.
   *
   * @param corner no speed between them leads farther
   * @param found what some speed elsewhere may lead to
   */
  private double metresASecond(
      double tailwind, Costs costs, double slow, double fast, double corner, double found) {
    if (corner <= found || (slow > 0 && fast <= slow * STEP) || fast <= SLOWEST) {
      return Math.max(corner, found);
    }
    var middle = slow == 0 ? Math.max(SLOWEST, fast / 4) : Math.sqrt(slow * fast);
    var slower = (middle + tailwind) * share(slow, middle, costs);
    var faster = (fast + tailwind) * share(middle, fast, costs);
    return slower >= faster
        ? metresASecond(
            tailwind,
            costs,
            middle,
            fast,
            faster,
            metresASecond(tailwind, costs, slow, middle, slower, found))
        : metresASecond(
            tailwind,
            costs,
            slow,
            middle,
            slower,
            metresASecond(tailwind, costs, middle, fast, faster, found));
  }

  /** Share of the time at the least power that is left at speeds between two. */
  private double share(double slow, double fast, Costs costs) {
    var mostDragN = dragN(fast, costs);
    var tilt = mostDragN / Math.sqrt(costs.weightN * costs.weightN + mostDragN * mostDragN);
    var induced = inducedOfHover(fast / costs.leastInducedMPerS, tilt);
    var idealW = ForwardFlight.INDUCED_FACTOR * costs.thrustN * costs.inducedMPerS;
    var advance = slow / costs.tipMPerS;
    var watts = costs.hoverW
        - idealW * (1 - induced)
        + Math.max(0, costs.hoverW - idealW) * ForwardFlight.PROFILE_GROWTH * advance * advance
        + costs.thrustN
            / costs.weightN
            * dragN(slow, costs)
            * slow; // arms stand in the way of it too
    var more = Math.max(0, watts - costs.leastW);
    return 1 / (1 + LEAST_WATTS * more / costs.busW);
  }

  private double dragN(double airspeedMPerS, Costs costs) {
    return 0.5 * density * costs.dragArea * airspeedMPerS * airspeedMPerS;
  }

  /**
   * Induced speed over that of hover at least, by Glauert's formula: what goes in level sends too much through, so that
   * what comes out is too little.
   *
   * @param by airspeed over the induced speed of hover
   * @param tiltSine sine of the discs' tilt forward
   */
  private static double inducedOfHover(double by, double tiltSine) {
    var half = 0.5 * by * by;
    var level = 1 / Math.sqrt(half + Math.sqrt(half * half + 1));
    var through = by * tiltSine + level;
    return 1 / Math.sqrt(by * by * (1 - tiltSine * tiltSine) + through * through);
  }
}
