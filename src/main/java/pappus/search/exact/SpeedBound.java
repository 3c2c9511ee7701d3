package pappus.search.exact;

import java.util.List;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import pappus.assessment.flight.PlannedStretch;
import pappus.physics.flight.ForwardFlight;
import pappus.scenario.Flight;
import pappus.scenario.Scenario;

/**
 * How much of the time that the least power allows is left at the speeds of a course, and how far it leads.
 *
 * <p>In level flight the shaft power is that of {@link ForwardFlight}: the hover's, less what induced power falls by,
 * more what profile power grows by and the power of drag. It rises with mass and with drag, so that the least of both
 * count; of several propellers those that induce most in hover gain most. A stretch that takes p times the least power
 * at the battery takes p times the charge in each second, since a watt at the shafts takes a watt or more from it.
 *
 * <p>A round of stretches that last t seconds at p times the least power each thus lasts Σt/Σtp of the time at the
 * least power, whatever the order. Where an aircraft chooses its speed, the best of all speeds counts: for range that
 * with the least t p, for time the largest quotient λ for which Σ t (1 − λp) can be as much as none.
 *
 * <p>A stay gets what the other stretches leave: those take Σtp of the time at the least power, what is kept back for
 * the way home no less than its own, and what is left lasts 1/p of it, p being that of the stay.
 *
 * <p>Why: src/site/markdown/decisions.md#a-round-takes-its-share-of-the-time-at-the-least-power
 */
final class SpeedBound {
  /** Electrical watts at the battery that a watt at the shafts takes at least: motors lose some, controllers gain. */
  private static final double LEAST_WATTS = 0.95;

  private static final double SLOWEST = 1;
  private static final double FASTEST = 80;

  /** Spans of speeds are halved until each ends so much faster than it begins. */
  private static final double STEP = 1.015;

  /** Ends of the spans that are looked at where time counts. */
  private static final double[] ENDS = ends();

  /** Quotients are halved so often. */
  private static final int HALVINGS = 12;

  private final List<PlannedStretch> stretches;
  private final OptionalInt stay;
  private final boolean asks;
  private final boolean forRange;
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
    var style = scenario.flight().style();
    this.stretches = PlannedStretch.of(scenario.flight());
    this.stay = scenario.flight().stay();
    this.asks = style == Flight.Style.CRUISE || style == Flight.Style.PROFILE;
    this.forRange = scenario.isForRange();
    this.density = density;
  }

  private static double[] ends() {
    var spans = 64;
    var ends = new double[spans + 1];
    for (var end = 1; end <= spans; end++) {
      ends[end] = SLOWEST * StrictMath.pow(FASTEST / SLOWEST, (end - 1.0) / (spans - 1));
    }
    return ends;
  }

  /** Whether speeds matter at all beside the least power of any level flight. */
  boolean asks() {
    return asks;
  }

  /**
   * The most seconds or metres, by the goal.
   *
   * @param seconds at the least power
   */
  double most(double seconds, Costs costs) {
    return stay.isPresent()
        ? stayed(seconds, stretches.get(stay.getAsInt()), costs)
        : seconds * (forRange ? metresASecond(costs) : quotient(costs));
  }

  /** The most seconds of a stay, or metres on it. */
  private double stayed(double seconds, PlannedStretch staying, Costs costs) {
    var left = seconds;
    for (var stretch : stretches) {
      if (stretch.equals(staying)) {
        continue;
      }
      if (stretch.choosesSpeed()) {
        var each = metresASecond(stretch, costs, 0, FASTEST, Double.POSITIVE_INFINITY, 0);
        left -= of(stretch.metres()) / each;
      } else {
        left -= seconds(stretch) * dearness(stretch, costs);
      }
    }
    return Math.max(0, left)
        / dearness(staying, costs)
        * (forRange ? Math.max(0, ground(staying)) : 1);
  }

  /** Most metres over ground in a round for each second that the least power would allow. */
  private double metresASecond(Costs costs) {
    var metres = 0.0;
    var leastSeconds = 0.0;
    for (var stretch : stretches) {
      if (stretch.choosesSpeed()) {
        var each = metresASecond(stretch, costs, 0, FASTEST, Double.POSITIVE_INFINITY, 0);
        if (each <= 0) {
          return 0;
        }
        metres += of(stretch.metres());
        leastSeconds += of(stretch.metres()) / each;
      } else {
        var lasts = seconds(stretch);
        if (lasts == Double.POSITIVE_INFINITY) {
          return 0;
        }
        metres += stretch.coversGround() ? lasts * ground(stretch) : 0;
        leastSeconds += lasts * dearness(stretch, costs);
      }
    }
    return metres / leastSeconds;
  }

  private static double of(@Nullable Double metres) {
    return metres == null ? 0 : metres;
  }

  /** Speed over ground of a stretch whose airspeed is asked for, m/s; not above 0 where the wind is too strong. */
  private static double ground(PlannedStretch stretch) {
    return stretch.leg().progressMPerS(of(stretch.airspeedMPerS()));
  }

  /** How long a stretch lasts that does not choose its speed, s; infinite where the wind is too strong. */
  private static double seconds(PlannedStretch stretch) {
    return stretch.metres() == null
        ? stretch.seconds()
        : ground(stretch) > 0 ? stretch.metres() / ground(stretch) : Double.POSITIVE_INFINITY;
  }

  /** Times the least power that a stretch takes at least which does not choose its speed. */
  private double dearness(PlannedStretch stretch, Costs costs) {
    var asked = stretch.airspeedMPerS();
    if (asked == null) {
      return 1;
    }
    var airspeed = stretch.coversGround() ? asked : Math.max(asked, stretch.standstillMPerS());
    return 1 / share(airspeed, airspeed, costs);
  }

  /** The largest share of the time at the least power that a round may take. */
  private double quotient(Costs costs) {
    var fixedSeconds = 0.0;
    var fixedCharge = 0.0;
    var chooses = false;
    for (var stretch : stretches) {
      chooses |= stretch.choosesSpeed();
      if (!stretch.choosesSpeed()) {
        var lasts = seconds(stretch);
        fixedSeconds += lasts;
        fixedCharge += lasts * dearness(stretch, costs);
      }
    }
    if (fixedSeconds == Double.POSITIVE_INFINITY) {
      return 0;
    }
    if (!chooses) {
      return fixedSeconds / fixedCharge;
    }
    var dear = new double[ENDS.length - 1];
    for (var span = 0; span < dear.length; span++) {
      dear[span] = 1 / share(ENDS[span], ENDS[span + 1], costs);
    }
    var low = 0.0;
    var high = 1.0;
    for (var step = 0; step < HALVINGS; step++) {
      var middle = 0.5 * (low + high);
      var left = fixedSeconds - middle * fixedCharge;
      for (var stretch : stretches) {
        left += stretch.choosesSpeed() ? left(stretch, middle, dear) : 0;
      }
      if (left > 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high;
  }

  /** The most that t (1 − λp) can be of a stretch, over all speeds, s. */
  private static double left(PlannedStretch stretch, double quotient, double[] dear) {
    var most = Double.NEGATIVE_INFINITY;
    for (var span = 0; span < dear.length; span++) {
      var fast = stretch.leg().progressMPerS(ENDS[span + 1]);
      if (fast > 0) {
        var gain = 1 - quotient * dear[span];
        var ground = gain < 0 ? fast : stretch.leg().progressMPerS(ENDS[span]);
        most = Math.max(
            most, ground > 0 ? of(stretch.metres()) / ground * gain : Double.POSITIVE_INFINITY);
      }
    }
    return most;
  }

  /**
   * The most metres over ground between two speeds for each second that the least power would allow.
   *
   * @param corner no speed between them leads farther
   * @param found what some speed elsewhere may lead to
   */
  private double metresASecond(
      PlannedStretch stretch, Costs costs, double slow, double fast, double corner, double found) {
    if (corner <= found || (slow > 0 && fast <= slow * STEP) || fast <= SLOWEST) {
      return Math.max(corner, found);
    }
    var middle = slow == 0 ? Math.max(SLOWEST, fast / 4) : Math.sqrt(slow * fast);
    var slower = stretch.leg().progressMPerS(middle) * share(slow, middle, costs);
    var faster = stretch.leg().progressMPerS(fast) * share(middle, fast, costs);
    return slower >= faster
        ? metresASecond(
            stretch,
            costs,
            middle,
            fast,
            faster,
            metresASecond(stretch, costs, slow, middle, slower, found))
        : metresASecond(
            stretch,
            costs,
            slow,
            middle,
            slower,
            metresASecond(stretch, costs, middle, fast, faster, found));
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
