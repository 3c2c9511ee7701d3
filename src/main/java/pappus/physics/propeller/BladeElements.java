package pappus.physics.propeller;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import pappus.quantity.Require;
import pappus.quantity.Root;

/**
 * A propeller of which only the geometry is known: blade elements and momentum, standing still.
 *
 * <p>Planform and polar are engineering estimates fitted to eight measured 5-inch propellers of 2 to 4 blades
 * (P. Cao and J. Strawson, "motor_propeller_testing", 2018): figure of merit within 3.0 % rms, thrust 6.2 %.
 * Leaving one propeller out: 4.5 and 10.7 %. Two pairs of them share their nominal geometry and differ by 8 to
 * 10 % in thrust, so geometry alone cannot do much better. Below 2.5 inch it is useless (2-inch four-blades
 * measure twice the thrust) and refused.
 *
 * <p>Why: src/site/markdown/decisions.md#a-propeller-known-by-its-size-alone-is-flown
 */
public final class BladeElements {
  private static final double INCH_M = 0.0254;
  private static final double SMALLEST_INCH = 2.5;
  private static final double LARGEST_M = 0.4;
  private static final double LEAST_PITCH = 0.2;
  private static final double MOST_PITCH = 1.5;
  private static final int LEAST_BLADES = 2;
  private static final int MOST_BLADES = 6;
  private static final double TEST_DENSITY_KG_PER_M3 = 1.2;
  private static final double TEST_VISCOSITY_PA_S = 1.81e-5;

  /** Speed for a diameter at which the plastic is at its end: common practice, no published source. */
  private static final double FASTEST_RPM_INCH = 225_000;

  private static final double TYPICAL_RPM_INCH = 70_000;

  private static final int SPEEDS = 45;
  private static final int ANNULI = 40;
  private static final double ROOT = 0.15;

  private static final int MOST_SECANTS = 8;

  /** Where a secant's step is so short, the error left is of rounding. */
  private static final double SETTLED = 1e-6;

  private static final double BESIDE = 1e-4;

  private static final double SLOWEST_INFLOW = 1e-6;

  private static final double LIFT_SLOPE = 5.5;
  private static final double REFERENCE_REYNOLDS = 50_000;

  /** Lift goes with the Reynolds number to powers of which this is the common root. */
  private static final double REYNOLDS_ROOT = 0.05;

  private static final double ROOT_OF_LEAST_SLOPE = StrictMath.pow(0.2, REYNOLDS_ROOT);
  private static final double ROOT_OF_LEAST_LIFT = StrictMath.pow(0.3, REYNOLDS_ROOT);
  private static final double ROOT_OF_MOST = StrictMath.pow(3, REYNOLDS_ROOT);

  /** Up to here seven terms of the series leave less than 1e-10. */
  private static final double SERIES_UP_TO = 0.1;

  private static final double[] CHORD_AT = {0.15, 0.25, 0.40, 0.55, 0.70, 0.85, 0.95, 1.0};
  private static final double[] CHORD_SHAPE = {0.70, 0.90, 1.0, 0.98, 0.90, 0.74, 0.55, 0.30};

  /**
   * The numbers fitted to the eight propellers.
   *
   * @param chord c/R at three blades where the planform is widest
   * @param bladeExponent how chords narrow with the number of blades
   * @param zeroLiftRad angle between pitch and zero lift, rad
   * @param drag at the reference Reynolds number
   */
  record Fitted(double chord, double bladeExponent, double zeroLiftRad, double drag) {
    static final Fitted TO_EIGHT = new Fitted(0.1795, 0.426, 0.0501, 0.0382);
  }

  private final Fitted fitted;
  private final double radiusM;
  private final double pitchM;
  private final int blades;
  private final double chordScaleM;

  BladeElements(Fitted fitted, double diameterM, double pitchM, int blades) {
    this.fitted = fitted;
    this.radiusM = diameterM / 2;
    this.pitchM = pitchM;
    this.blades = blades;
    this.chordScaleM =
        fitted.chord() * StrictMath.pow(3.0 / blades, fitted.bladeExponent()) * radiusM;
  }

  /**
   * The static table of a propeller.
   *
   * @param diameterM diameter, m, 0.0635 (2.5 inch) to 0.4
   * @param pitchM nominal pitch, m
   * @param blades number of blades, 2 to 6
   */
  public static PropellerModel propeller(double diameterM, double pitchM, int blades) {
    return propeller(diameterM, pitchM, blades, 0, 0);
  }

  /**
   * The same, without most of the rows between two speeds: what is known there otherwise need not be worked out.
   *
   * @param fromRadPerS no row is left out below the next to this one
   * @param toRadPerS nor above the last before this one
   */
  static PropellerModel propeller(
      double diameterM, double pitchM, int blades, double fromRadPerS, double toRadPerS) {
    var elements = checked(diameterM, pitchM, blades);
    var fastestRadPerS = FASTEST_RPM_INCH / (diameterM / INCH_M) * Math.PI / 30;
    var points = new ArrayList<StaticPoint>();
    var annuli = elements.annuli();
    var stepRadPerS = fastestRadPerS / SPEEDS;
    for (var row = 1; row <= SPEEDS; row++) {
      var speedRadPerS = fastestRadPerS * row / SPEEDS;
      if (speedRadPerS <= fromRadPerS + stepRadPerS || speedRadPerS >= toRadPerS - stepRadPerS) {
        points.add(elements.at(speedRadPerS, annuli));
      }
    }
    return PropellerModel.ofTable(diameterM, TEST_DENSITY_KG_PER_M3 / TEST_VISCOSITY_PA_S, points);
  }

  /** Whether the model holds for a geometry. */
  public static boolean holdFor(double diameterM, double pitchM, int blades) {
    return diameterM >= SMALLEST_INCH * INCH_M
        && diameterM <= LARGEST_M
        && pitchM >= LEAST_PITCH * diameterM
        && pitchM <= MOST_PITCH * diameterM
        && blades >= LEAST_BLADES
        && blades <= MOST_BLADES;
  }

  private static BladeElements checked(double diameterM, double pitchM, int blades) {
    Require.inRange(
        "diameterM",
        diameterM,
        SMALLEST_INCH * INCH_M,
        LARGEST_M,
        "Maybe give measured coefficients: geometry alone says nothing below 2.5 inch.");
    Require.inRange("pitchM", pitchM, LEAST_PITCH * diameterM, MOST_PITCH * diameterM);
    Require.inRange("blades", blades, LEAST_BLADES, MOST_BLADES);
    return new BladeElements(Fitted.TO_EIGHT, diameterM, pitchM, blades);
  }

  /**
   * Coefficients at the speed the model was fitted at, 14 000 rpm at 5 inches and as fast at the tips of others.
   *
   * @throws IllegalArgumentException as {@link #propeller(double, double, int)}
   */
  public static StaticPoint typical(double diameterM, double pitchM, int blades) {
    return at(diameterM, pitchM, blades, TYPICAL_RPM_INCH / (diameterM / INCH_M) * Math.PI / 30);
  }

  /**
   * Coefficients at a speed.
   *
   * @throws IllegalArgumentException as {@link #propeller(double, double, int)}
   */
  public static StaticPoint at(double diameterM, double pitchM, int blades, double speedRadPerS) {
    return checked(diameterM, pitchM, blades).at(Require.positive("speedRadPerS", speedRadPerS));
  }

  /** One standard deviation of ln C_T; errors of C_T and C_P correlate by 0.95, those of ln FM do not. */
  public static double doubtLnThrust(double diameterM) {
    return 0.10 * outsideFitFactor(diameterM);
  }

  /** One standard deviation of ln FM. */
  public static double doubtLnFigureOfMerit(double diameterM) {
    return 0.05 * outsideFitFactor(diameterM);
  }

  private static double outsideFitFactor(double diameterM) {
    var inch = diameterM / INCH_M;
    return inch >= 4 - 1e-9 && inch <= 5.5 + 1e-9 ? 1 : 2;
  }

  /** In the air of the test, at a speed. */
  StaticPoint at(double speedRadPerS) {
    return at(speedRadPerS, annuli());
  }

  private List<Annulus> annuli() {
    var widthM = (1 - ROOT) * radiusM / ANNULI;
    return IntStream.range(0, ANNULI)
        .mapToObj(annulus -> new Annulus(ROOT * radiusM + (annulus + 0.5) * widthM, widthM))
        .toList();
  }

  /** @param annuli that may know their inflow at a speed nearby */
  private StaticPoint at(double speedRadPerS, List<Annulus> annuli) {
    var thrustN = 0.0;
    var torqueNm = 0.0;
    var speedRoot = StrictMath.pow(speedRadPerS, REYNOLDS_ROOT);
    for (var annulus : annuli) {
      annulus.settle(speedRadPerS * annulus.rM, speedRoot * annulus.rootAtOne);
      thrustN += annulus.thrustN;
      torqueNm += annulus.torqueNm;
    }
    var n = speedRadPerS / (2 * Math.PI);
    var d = 2 * radiusM;
    var force = TEST_DENSITY_KG_PER_M3 * n * n * d * d * d * d;
    return new StaticPoint(
        speedRadPerS, thrustN / force, torqueNm * speedRadPerS / (force * n * d));
  }

  /**
   * All blades' part in one annulus. Inflow is taken over the speed of rotation: so taken it changes with speed only by
   * the Reynolds number, and that of a speed nearby is almost that of this one.
   */
  private final class Annulus {
    private final double rM;
    private final double widthM;
    private final double chordM;
    private final double incidenceRad; // of a blade that nothing flows through, from zero lift

    private final double
        rootAtOne; // root of the Reynolds number's ratio at 1 rad/s, as far as blades turn

    private double rotationMPerS;
    private double rotationRoot; // the same at that speed
    private double thrustN;
    private double torqueNm;

    private double inflow; // over rotation, the latest; 0 if not known
    private double before; // the one before
    private double slope; // of the excess of thrust against it, the latest; 0 if not known

    Annulus(double rM, double widthM) {
      this.rM = rM;
      this.widthM = widthM;
      this.chordM = chordScaleM * chordShape(rM / radiusM);
      this.incidenceRad = StrictMath.atan(pitchM / (2 * Math.PI * rM)) + fitted.zeroLiftRad();
      this.rootAtOne = StrictMath.pow(reynoldsRatio(rM), REYNOLDS_ROOT);
    }

    private double reynoldsRatio(double flowMPerS) {
      return TEST_DENSITY_KG_PER_M3 * flowMPerS * chordM / TEST_VISCOSITY_PA_S / REFERENCE_REYNOLDS;
    }

    /** Finds where blade force and momentum agree at a speed of rotation. Swirl is neglected. */
    void settle(double atMPerS, double reynoldsRoot) {
      rotationMPerS = atMPerS;
      rotationRoot = reynoldsRoot;
      var found = slope < 0 ? nearby() : Double.NaN;
      before = inflow;
      inflow = Double.isNaN(found) ? anywhere() : found;
      excess(inflow);
    }

    /** By secants from where the last two point to; not a number if they lead nowhere. */
    private double nearby() {
      var a = before > 0 ? 2 * inflow - before : inflow;
      var atA = excess(a);
      var b = a - atA / slope;
      for (var step = 0; step < MOST_SECANTS && b > SLOWEST_INFLOW && b < 1; step++) {
        if (Math.abs(b - a) <= SETTLED * b) {
          return b;
        }
        var atB = excess(b);
        if (atB == atA) {
          return Double.NaN;
        }
        slope = (atB - atA) / (b - a);
        a = b;
        atA = atB;
        b -= atB / slope;
      }
      return Double.NaN;
    }

    private double anywhere() {
      if (excess(SLOWEST_INFLOW) <= 0) {
        return SLOWEST_INFLOW;
      }
      var root = Root.ofFalling(this::excess, SLOWEST_INFLOW, 1, 0.5);
      var beside = root * (1 + BESIDE);
      slope = excess(beside) / (beside - root);
      return root;
    }

    /**
     * By how much the blades push more than momentum changes at an inflow, over the square of rotation; falling. Leaves
     * behind what they push and brake.
     */
    private double excess(double at) {
      var squared = 1 + at * at;
      var flow = Math.sqrt(squared);
      var sine = at / flow;
      var cosine = 1 / flow;
      var ratio = reynoldsRatio(rotationMPerS * flow);
      var alpha = incidenceRad - StrictMath.atan(at);
      // The clamps keep the Reynolds laws where they were fitted.
      var root = Math.min(rotationRoot * rootOfFlow(at * at), ROOT_OF_MOST);
      var liftRoot = Math.max(root, ROOT_OF_LEAST_LIFT);
      var most = 1.2 * liftRoot * liftRoot;
      var slopeRoot = Math.max(root, ROOT_OF_LEAST_SLOPE);
      var liftSlope = LIFT_SLOPE * slopeRoot * slopeRoot * slopeRoot;
      var stalled = Math.max(Math.abs(alpha) - 0.25, 0);
      var lift = most * StrictMath.tanh(liftSlope * alpha / most);
      var drag = fitted.drag() / Math.sqrt(clamp(ratio, 0.2, 4))
          + 0.025 * lift * lift
          + 1.2 * stalled * stalled;
      var force = 0.5 * TEST_DENSITY_KG_PER_M3 * squared * chordM * blades * widthM;
      var thrust = force * (lift * cosine - drag * sine);
      var rotationSquared = rotationMPerS * rotationMPerS;
      thrustN = rotationSquared * thrust;
      torqueNm = rotationSquared * rM * force * (lift * sine + drag * cosine);
      return thrust - momentum(at, sine);
    }

    /** With Prandtl's tip factor, from memory. */
    private double momentum(double at, double sine) {
      var f = blades / 2.0 * (radiusM - rM) / (rM * sine);
      var tip = 2 / Math.PI * StrictMath.acos(StrictMath.exp(-f));
      return 4 * Math.PI * rM * TEST_DENSITY_KG_PER_M3 * tip * at * at * widthM;
    }
  }

  /** The root of √(1 + x): a few terms of its series where these are enough. */
  static double rootOfFlow(double x) {
    var a = REYNOLDS_ROOT / 2;
    return x > SERIES_UP_TO
        ? StrictMath.pow(1 + x, a)
        : 1
            + a
                * x
                * (1
                    - (1 - a)
                        / 2
                        * x
                        * (1
                            - (2 - a)
                                / 3
                                * x
                                * (1
                                    - (3 - a)
                                        / 4
                                        * x
                                        * (1
                                            - (4 - a)
                                                / 5
                                                * x
                                                * (1 - (5 - a) / 6 * x * (1 - (6 - a) / 7 * x))))));
  }

  private static double chordShape(double x) {
    var knot = 1;
    while (CHORD_AT[knot] < x) {
      knot++;
    }
    var share = (x - CHORD_AT[knot - 1]) / (CHORD_AT[knot] - CHORD_AT[knot - 1]);
    return CHORD_SHAPE[knot - 1] + share * (CHORD_SHAPE[knot] - CHORD_SHAPE[knot - 1]);
  }

  private static double clamp(double value, double low, double high) {
    return Math.min(Math.max(value, low), high);
  }
}
