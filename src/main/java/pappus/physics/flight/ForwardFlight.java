package pappus.physics.flight;

import java.util.function.DoubleUnaryOperator;
import pappus.quantity.Require;
import pappus.quantity.Root;

/**
 * Level forward flight: induced power by Glauert's formula, drag of the airframe, profile power growing with
 * the speed.
 *
 * <p>The electrical side is that of a hover with the same shaft power a rotor, an engineering estimate: the
 * inflow's effect on the propeller is in the power only. Profile and induced factors are engineering estimates
 * without a published source; pure theory promises more than has been flown, so power is never below
 * {@link #LEAST_OF_HOVER} of hover unless the user's own flights say so.
 *
 * <p>Why: src/site/markdown/decisions.md#wind-never-helps
 */
public final class ForwardFlight {
  /** Real over ideal induced power: an engineering estimate. */
  public static final double INDUCED_FACTOR = 1.15;

  /**
   * Best-endurance power over hover power in fits over many multirotors: L. Bauersfeld and D. Scaramuzza,
   * IEEE RA-L 7(2), 2022.
   */
  public static final double LEAST_OF_HOVER = 0.914;

  /** Best-range power over hover power in the same fits. */
  public static final double BEST_RANGE_OF_HOVER = 1.092;

  /** Profile power goes with 1 + 15 μ²: an engineering estimate. */
  public static final double PROFILE_GROWTH = 15;

  /** Power of a thrust that comes and goes over that of its mean: an engineering estimate. */
  private static final double UNSTEADY = 1.03;

  private static final double[] GUST_AT = {
    -2.856970013872806, -1.355626179974266, 0, 1.355626179974266, 2.856970013872806
  };
  private static final double[] GUST_WEIGHT = {
    0.011257411327720691,
    0.2220759220056126,
    0.5333333333333333,
    0.2220759220056126,
    0.011257411327720691
  };

  private static final double FASTEST_M_PER_S = 80;
  private static final double FAST_OF_HOVER = 3;
  private static final double NARROW_M_PER_S = 1e-2;
  private static final double SLOPE_M_PER_S = 1e-2;

  private final Aircraft aircraft;
  private final Hover hover;
  private final double leastOfHover;
  private final double inducedFactor;
  private final double tipMPerS;

  /** With the least power that flights have shown. */
  public ForwardFlight(Aircraft aircraft, Hover hover) {
    this(aircraft, hover, LEAST_OF_HOVER);
  }

  /** With a least share of the hover power from the user's own flights; 0 trusts theory alone. */
  public ForwardFlight(Aircraft aircraft, Hover hover, double leastOfHover) {
    this.aircraft = aircraft;
    this.hover = hover;
    this.leastOfHover = Require.inRange("leastOfHover", leastOfHover, 0, 1);
    var idealW = hover.steady().rotorCount() * hover.thrustPerRotorN() * hover.inducedSpeedMPerS();
    this.inducedFactor = hover.inducedPowerW() / idealW;
    this.tipMPerS =
        hover.steady().point().speedRadPerS() * aircraft.rotor().propeller().diameterM() / 2;
  }

  /** Level flight at an airspeed. */
  public Cruise at(double airspeedMPerS) {
    Require.inRange("airspeedMPerS", airspeedMPerS, 0, FASTEST_M_PER_S);
    var theoryW = theoryPowerW(airspeedMPerS);
    return at(airspeedMPerS, Math.max(theoryW, leastPowerW()), theoryW < leastPowerW());
  }

  private Cruise at(double airspeedMPerS, double shaftPowerW, boolean isClamped) {
    var steady = SteadyFlight.ofShaftPower(aircraft, shaftPowerW);
    return new Cruise(
        airspeedMPerS,
        StrictMath.atan2(dragN(airspeedMPerS), aircraft.airframe().weightN()),
        thrustN(airspeedMPerS),
        steady,
        isClamped,
        aircraft.rotor().propeller().isBeyondTest(steady.point().speedRadPerS()));
  }

  private double leastPowerW() {
    return leastOfHover * hover.steady().shaftPowerW();
  }

  /**
   * Shaft power of all rotors in W at an airspeed that comes and goes, the mean over a normal distribution: five-point
   * Gauss–Hermite quadrature.
   *
   * @param deviationMPerS one standard deviation of the airspeed, m/s
   */
  public double meanPowerW(double airspeedMPerS, double deviationMPerS) {
    var mean = 0.0;
    for (var node = 0; node < GUST_AT.length; node++) {
      var airspeed = Math.abs(airspeedMPerS + deviationMPerS * GUST_AT[node]);
      mean += GUST_WEIGHT[node] * Math.max(theoryPowerW(airspeed), leastPowerW());
    }
    return mean;
  }

  /**
   * Power of standing in wind over that of hover in calm air. What slow wind saves is not counted, since nobody can
   * rely on it, and a little is added for what gusts cost beside their mean: at least 1.
   *
   * @param gusts one standard deviation of the wind over its mean
   */
  public double windFactor(double windMPerS, double gusts) {
    return windMPerS == 0
        ? 1
        : Math.max(
            1,
            UNSTEADY * meanPowerW(windMPerS, gusts * windMPerS) / hover.steady().shaftPowerW());
  }

  /**
   * A cruise in gusts about its airspeed, which never cost less than none.
   *
   * @param deviationMPerS one standard deviation of the airspeed, m/s
   */
  public Cruise inGusts(Cruise calm, double deviationMPerS) {
    if (deviationMPerS == 0) {
      return calm;
    }
    var calmW = calm.steady().shaftPowerW();
    return at(
        calm.airspeedMPerS(),
        Math.max(calmW, UNSTEADY * meanPowerW(calm.airspeedMPerS(), deviationMPerS)),
        calm.isClamped());
  }

  /** The flight of the least shaft power in theory; the least share of hover changes its power only. */
  public Cruise bestEndurance() {
    return at(lowest(this::theoryPowerW, 0, fastestMPerS()));
  }

  /**
   * The flight of the least shaft energy in theory per metre over ground along a leg.
   *
   * <p>Battery energy per metre would be least at higher speeds, since the part-load law makes motors the better the
   * more they do: at 1.27 of the hover power for a five-inch quad, where multirotors were seen at 1.092 (Bauersfeld
   * and Scaramuzza 2022) and shaft energy gives 1.17.
   *
   * @throws IllegalArgumentException if the wind is too strong for this aircraft to progress
   */
  public Cruise bestRange(Leg leg) {
    var fastest = fastestMPerS();
    var slowest = StrictMath.hypot(Math.max(-leg.tailwindMPerS(), 0), leg.crosswindMPerS());
    Require.inRange("wind in m/s that must be overcome", slowest, 0, fastest);
    return at(lowest(
        airspeed -> {
          var ground = leg.groundSpeedMPerS(airspeed);
          return ground.isPresent()
              ? theoryPowerW(airspeed) / ground.getAsDouble()
              : Double.MAX_VALUE;
        },
        slowest,
        fastest));
  }

  /**
   * The fastest level flight that full throttle's shaft power and thrust allow, m/s; 0 if it cannot hover. An
   * upper bound: propellers lose thrust as they near their pitch speed, which static data do not show.
   */
  public double topSpeedMPerS(FullThrottle full) {
    // Power falls from hover to best endurance, the thrust needed rises all the way: what cannot
    // fly
    // there may still hover and creep.
    var best = bestEndurance().airspeedMPerS();
    var canFlyWell = reaches(best, full, 1);
    var slow = canFlyWell ? best : 0;
    var fast = canFlyWell ? FASTEST_M_PER_S : best;
    if (!canFlyWell && !reaches(0, full, 1)) {
      return 0;
    }
    for (var step = 0; step < 30; step++) {
      var middle = 0.5 * (slow + fast);
      if (reaches(middle, full, 1)) {
        slow = middle;
      } else {
        fast = middle;
      }
    }
    return slow;
  }

  /**
   * Whether full throttle's shaft power and thrust allow level flight at an airspeed.
   *
   * @param share of both that it may take
   */
  public boolean reaches(double airspeedMPerS, FullThrottle full, double share) {
    return theoryPowerW(airspeedMPerS)
            <= share * aircraft.rotorCount() * full.point().shaftPowerW()
        && thrustN(airspeedMPerS) <= share * full.thrustN();
  }

  /** Shaft power of all rotors in W at an airspeed, by theory alone. */
  public double theoryPowerW(double airspeedMPerS) {
    var air = aircraft.rotor().propeller().densityKgPerM3();
    var thrustN = thrustN(airspeedMPerS);
    var hoverInduced = Momentum.hoverInducedMPerS(thrustN, air, aircraft.discAreaM2());
    var tiltSine = dragN(airspeedMPerS) * (1 / (1 - aircraft.airframe().thrustLost())) / thrustN;
    var induced = Momentum.inducedMPerS(hoverInduced, airspeedMPerS, tiltSine);
    var advance = airspeedMPerS / tipMPerS;
    return inducedFactor * thrustN * induced
        + thrustN * airspeedMPerS * tiltSine
        + hover.profilePowerW() * (1 + PROFILE_GROWTH * advance * advance);
  }

  private double thrustN(double airspeedMPerS) {
    var weightN = aircraft.airframe().weightN();
    var dragN = dragN(airspeedMPerS);
    return Math.sqrt(weightN * weightN + dragN * dragN)
        / (1 - aircraft.airframe().thrustLost());
  }

  private double dragN(double airspeedMPerS) {
    return aircraft.airframe().dragN(airspeedMPerS, aircraft.rotor().propeller().densityKgPerM3());
  }

  /**
   * A speed beyond every best one, at three times the power of hover, m/s: winds that ask for more are not
   * flown against.
   */
  public double fastestMPerS() {
    var fast = 4.0;
    while (fast < FASTEST_M_PER_S
        && theoryPowerW(fast) < FAST_OF_HOVER * hover.steady().shaftPowerW()) {
      fast *= 1.25;
    }
    return Math.min(fast, FASTEST_M_PER_S);
  }

  /**
   * The lowest point of a function with one valley: golden section, then where the slope across a little way is none,
   * since a valley's floor is too flat to see its lowest point from heights.
   */
  private static double lowest(DoubleUnaryOperator f, double low, double high) {
    var golden = (Math.sqrt(5) - 1) / 2;
    var a = low;
    var b = high;
    var c = b - golden * (b - a);
    var d = a + golden * (b - a);
    var atC = f.applyAsDouble(c);
    var atD = f.applyAsDouble(d);
    while (b - a > NARROW_M_PER_S) {
      if (atC <= atD) {
        b = d;
        d = c;
        atD = atC;
        c = b - golden * (b - a);
        atC = f.applyAsDouble(c);
      } else {
        a = c;
        c = d;
        atC = atD;
        d = a + golden * (b - a);
        atD = f.applyAsDouble(d);
      }
    }
    DoubleUnaryOperator downhill = at -> f.applyAsDouble(Math.max(at - SLOPE_M_PER_S, low))
        - f.applyAsDouble(Math.min(at + SLOPE_M_PER_S, high));
    if (downhill.applyAsDouble(a) <= 0) {
      return a;
    }
    return downhill.applyAsDouble(b) >= 0 ? b : Root.ofFalling(downhill, a, b, 0.5 * (a + b));
  }
}
