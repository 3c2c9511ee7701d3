package pappus.physics.propeller;

import java.util.ArrayList;
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

  /** From speed to speed the inflow over rotation changes by less than this. */
  private static final double NEARBY = 0.02;

  private static final double SLOWEST_INFLOW = 1e-6;

  private static final double LIFT_SLOPE = 5.5;
  private static final double REFERENCE_REYNOLDS = 50_000;
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
    var elements = checked(diameterM, pitchM, blades);
    var fastestRadPerS = FASTEST_RPM_INCH / (diameterM / INCH_M) * Math.PI / 30;
    var points = new ArrayList<StaticPoint>();
    var inflows = new double[ANNULI];
    for (var row = 1; row <= SPEEDS; row++) {
      points.add(elements.at(fastestRadPerS * row / SPEEDS, inflows));
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
    return at(speedRadPerS, new double[ANNULI]);
  }

  /**
   * In the air of the test, at a speed.
   *
   * @param inflows of each annulus over its rotation at a speed nearby, 0 if not known; replaced by those of this one
   */
  private StaticPoint at(double speedRadPerS, double[] inflows) {
    var thrustN = 0.0;
    var torqueNm = 0.0;
    var widthM = (1 - ROOT) * radiusM / ANNULI;
    for (var annulus = 0; annulus < ANNULI; annulus++) {
      var element = new Element(ROOT * radiusM + (annulus + 0.5) * widthM, widthM, speedRadPerS);
      var inflowMPerS = element.inflowMPerS(inflows[annulus]);
      inflows[annulus] = inflowMPerS / element.rotationMPerS;
      thrustN += element.thrustN(inflowMPerS);
      torqueNm += element.torqueNm(inflowMPerS);
    }
    var n = speedRadPerS / (2 * Math.PI);
    var d = 2 * radiusM;
    var force = TEST_DENSITY_KG_PER_M3 * n * n * d * d * d * d;
    return new StaticPoint(
        speedRadPerS, thrustN / force, torqueNm * speedRadPerS / (force * n * d));
  }

  /** All blades' part in one annulus. */
  private final class Element {
    private final double rM;
    private final double widthM;
    private final double rotationMPerS;
    private final double chordM;
    private final double pitchRad;

    Element(double rM, double widthM, double speedRadPerS) {
      this.rM = rM;
      this.widthM = widthM;
      this.rotationMPerS = speedRadPerS * rM;
      this.chordM = chordScaleM * chordShape(rM / radiusM);
      this.pitchRad = StrictMath.atan(pitchM / (2 * Math.PI * rM));
    }

    /**
     * Inflow at which blade force and momentum agree; the difference falls with it. Swirl is neglected.
     *
     * @param known inflow over rotation at a speed nearby; 0 if not known
     */
    double inflowMPerS(double known) {
      var low = Math.max(known * (1 - NEARBY), SLOWEST_INFLOW) * rotationMPerS;
      if (known == 0 || excessN(low) <= 0) {
        low = SLOWEST_INFLOW * rotationMPerS;
      }
      if (excessN(low) <= 0) {
        return low;
      }
      var high = known * (1 + NEARBY) * rotationMPerS;
      if (known == 0 || excessN(high) >= 0) {
        high = rotationMPerS;
      }
      return Root.ofFalling(
          this::excessN, low, high, known == 0 ? 0.5 * (low + high) : known * rotationMPerS);
    }

    private double excessN(double inflowMPerS) {
      return thrustN(inflowMPerS) - momentumN(inflowMPerS);
    }

    double thrustN(double inflowMPerS) {
      var polar = new Polar(inflowMPerS);
      return polar.forceN * (polar.lift * polar.cosine - polar.drag * polar.sine);
    }

    double torqueNm(double inflowMPerS) {
      var polar = new Polar(inflowMPerS);
      return rM * polar.forceN * (polar.lift * polar.sine + polar.drag * polar.cosine);
    }

    /** With Prandtl's tip factor, from memory. */
    private double momentumN(double inflowMPerS) {
      var sine = inflowMPerS / Math.sqrt(inflowMPerS * inflowMPerS + rotationMPerS * rotationMPerS);
      var f = blades / 2.0 * (radiusM - rM) / (rM * sine);
      var tip = 2 / Math.PI * StrictMath.acos(StrictMath.exp(-f));
      return 4 * Math.PI * rM * TEST_DENSITY_KG_PER_M3 * tip * inflowMPerS * inflowMPerS * widthM;
    }

    /** Lift and drag of the section; the clamps keep the Reynolds laws where they were fitted. */
    private final class Polar {
      private final double forceN; // dynamic pressure times blade area
      private final double lift;
      private final double drag;
      private final double sine; // of the flow's angle to the disc
      private final double cosine;

      Polar(double inflowMPerS) {
        var squared = rotationMPerS * rotationMPerS + inflowMPerS * inflowMPerS;
        var flowMPerS = Math.sqrt(squared);
        var phi = StrictMath.atan(inflowMPerS / rotationMPerS);
        this.sine = inflowMPerS / flowMPerS;
        this.cosine = rotationMPerS / flowMPerS;
        var reynolds = TEST_DENSITY_KG_PER_M3 * flowMPerS * chordM / TEST_VISCOSITY_PA_S;
        var ratio = reynolds / REFERENCE_REYNOLDS;
        var alpha = pitchRad - phi + fitted.zeroLiftRad();
        var slope = LIFT_SLOPE * StrictMath.pow(clamp(ratio, 0.2, 3), 0.15);
        var most = 1.2 * StrictMath.pow(clamp(ratio, 0.3, 3), 0.1);
        var stalled = Math.max(Math.abs(alpha) - 0.25, 0);
        this.lift = most * StrictMath.tanh(slope * alpha / most);
        this.drag = fitted.drag() / Math.sqrt(clamp(ratio, 0.2, 4))
            + 0.025 * lift * lift
            + 1.2 * stalled * stalled;
        this.forceN = 0.5 * TEST_DENSITY_KG_PER_M3 * squared * chordM * blades * widthM;
      }
    }
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
