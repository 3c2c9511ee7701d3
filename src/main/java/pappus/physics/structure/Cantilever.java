package pappus.physics.structure;

/**
 * An arm as a beam held at one end, of one thickness and a width that goes straight from its root to its tip, bent out
 * of its plane by a load at the tip (beam theory, textbook).
 *
 * <p>The tip gives way by 12 L³ J/(E h³ b) for each newton, with J from the taper, 1/3 without one. The first bending
 * frequency is Rayleigh's, by the shape in which that load bends it: the exact one is no higher, and near where the
 * load weighs many times what swings of the arm. How an arm is clamped makes it softer than held fast: {@link #CLAMPED} on the
 * frequency, ± 15 %, an engineering estimate.
 *
 * <p>Why: src/site/markdown/decisions.md#a-frame-weighs-what-its-drawing-says
 *
 * @param lengthMm free length, from where it is held to the load, mm, above 0
 * @param rootMm width where it is held, mm, above 0
 * @param tipMm width at the load, mm, above 0
 * @param thicknessMm mm, above 0
 * @param modulusGPa Young's modulus lengthwise, GPa, above 0
 * @param gramsPerCm3 density, g/cm³
 * @param shareLeft what is not cut out of it, above 0 to 1: it bears and weighs so much less, as if evenly cut
 *     (engineering estimate)
 */
public record Cantilever(
    double lengthMm,
    double rootMm,
    double tipMm,
    double thicknessMm,
    double modulusGPa,
    double gramsPerCm3,
    double shareLeft) {
  /** Frequency as clamped over that of one held fast: an engineering estimate. */
  public static final double CLAMPED = 0.8;

  /** One standard deviation of a frequency so found, share of it: an engineering estimate. */
  public static final double DOUBT = 0.15;

  /** Steps of Simpson's rule; an even number. Shapes are smooth: what is left out is below 1e-9. */
  private static final int STEPS = 200;

  /** Below so much taper closed forms lose digits, and a series serves. */
  private static final double FAINT_TAPER = 0.1;

  private static final int TERMS = 16;

  /** Taper: 0 for one width, −0.4 for a tip of 0.6 of the root. */
  private double taper() {
    return tipMm / rootMm - 1;
  }

  /** Its own mass between both ends, g. */
  public double grams() {
    return gramsPerCm3 / 1000 * shareLeft * lengthMm * (rootMm + tipMm) / 2 * thicknessMm;
  }

  /** From its root to its own centre of mass, mm. */
  public double centreMm() {
    return lengthMm * (rootMm + 2 * tipMm) / (3 * (rootMm + tipMm));
  }

  /** How far the tip of one held fast goes for each newton, mm. */
  public double millimetresPerNewton() {
    return 12
        * lengthMm
        * lengthMm
        * lengthMm
        * deflection(1, taper())
        / (1000 * modulusGPa * shareLeft * thicknessMm * thicknessMm * thicknessMm * rootMm);
  }

  /** How far the tip of one clamped as usual goes for each newton, mm. */
  public double clampedMillimetresPerNewton() {
    return millimetresPerNewton() / (CLAMPED * CLAMPED);
  }

  /** What of its own mass swings with the tip, g: 33/140 of it without a taper. */
  public double swingingGrams() {
    var k = taper();
    var end = deflection(1, k);
    var sum = 0.0;
    for (var i = 0; i <= STEPS; i++) {
      var at = (double) i / STEPS;
      var shape = deflection(at, k) / end;
      var weight = i == 0 || i == STEPS ? 1 : i % 2 == 1 ? 4 : 2;
      sum += weight * (1 + k * at) * shape * shape;
    }
    return gramsPerCm3 / 1000 * shareLeft * lengthMm * rootMm * thicknessMm * sum / (3 * STEPS);
  }

  /**
   * First bending frequency of one held fast, Hz.
   *
   * @param tipGrams what it carries at its tip, g
   */
  public double hertz(double tipGrams) {
    var newtonsPerMetre = 1000 / millimetresPerNewton();
    return Math.sqrt(newtonsPerMetre * 1000 / (tipGrams + swingingGrams())) / (2 * Math.PI);
  }

  /** First bending frequency of one clamped as usual, Hz. */
  public double clampedHertz(double tipGrams) {
    return CLAMPED * hertz(tipGrams);
  }

  /** Bending stress at the root for each newton at the tip, N/mm²: 6 L/(b h²). */
  public double rootStressPerNewton() {
    return 6 * lengthMm / (shareLeft * rootMm * thicknessMm * thicknessMm);
  }

  /** Where it goes under a load at its tip, over P L³ 12/(E h³ b): ∫∫ (1 − s)/(1 + k s). */
  private static double deflection(double at, double k) {
    if (Math.abs(k) < FAINT_TAPER) {
      var sum = 0.0;
      var power = at * at;
      var sign = 1.0;
      for (var n = 0; n < TERMS; n++) {
        sum += sign * power * (1.0 / ((n + 1) * (n + 2)) - at / ((n + 2) * (n + 3)));
        power *= at;
        sign *= -k;
      }
      return sum;
    }
    var grown = 1 + k * at;
    return (1 + k) / (k * k * k) * (grown * StrictMath.log(grown) - k * at) - at * at / (2 * k);
  }
}
