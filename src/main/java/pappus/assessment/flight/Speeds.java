package pappus.assessment.flight;

import java.util.ArrayList;
import java.util.List;
import pappus.physics.flight.ForwardFlight;
import pappus.physics.flight.Hover;
import pappus.physics.flight.Leg;

/**
 * Airspeeds of an aircraft that matter in calm air, with the power from the battery at them, at the volts it has in
 * hover at half charge.
 *
 * <p>Why: src/site/markdown/decisions.md#best-range-is-that-of-shaft-energy
 *
 * @param bestEnduranceMPerS at which it stays up longest, m/s
 * @param bestEnduranceW power there
 * @param bestRangeMPerS at which it gets farthest, m/s
 * @param bestRangeW power there
 * @param bestRangeOfHover shaft power there over that of hover
 * @param topMPerS fastest level flight, an upper bound, m/s
 * @param curve power against airspeed from standing to the last whole step below the top speed
 */
public record Speeds(
    double bestEnduranceMPerS,
    double bestEnduranceW,
    double bestRangeMPerS,
    double bestRangeW,
    double bestRangeOfHover,
    double topMPerS,
    List<Step> curve) {
  private static final int STEP_M_PER_S = 2;

  /**
   * One point of the curve.
   *
   * @param airspeedMPerS m/s
   * @param watts from the battery, W
   */
  public record Step(double airspeedMPerS, double watts) {}

  public Speeds {
    curve = List.copyOf(curve);
  }

  private static final Leg CALM = new Leg(1, 0, 0);

  static Speeds of(Course course, Hover hover, double volts) {
    var endurance = course.forward().bestEndurance();
    var range = course.forward().bestRange(CALM);
    return new Speeds(
        endurance.airspeedMPerS(),
        endurance.steady().busPowerW(volts),
        range.airspeedMPerS(),
        range.steady().busPowerW(volts),
        range.steady().shaftPowerW() / hover.steady().shaftPowerW(),
        course.topSpeedMPerS(),
        curve(course, volts));
  }

  private static List<Step> curve(Course course, double volts) {
    var curve = new ArrayList<Step>();
    for (var airspeed = 0; airspeed <= course.topSpeedMPerS(); airspeed += STEP_M_PER_S) {
      curve.add(new Step(airspeed, course.forward().at(airspeed).steady().busPowerW(volts)));
    }
    return curve;
  }

  /** Whether less power is promised at best range than multirotors were seen to need. */
  public boolean isRangeFlattered() {
    return bestRangeOfHover < ForwardFlight.BEST_RANGE_OF_HOVER;
  }
}
