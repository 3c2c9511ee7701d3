package pappus.physics.structure;

/**
 * Plates of fibres in resin, and how stiff they are lengthwise of an arm. Of a weave laid alike everywhere it depends on
 * how the arm lies to its fibres; one of layers laid all ways round is as stiff in each.
 *
 * <p>Carbon: from a lamina of 119 GPa along and 9.2 GPa across its fibres, 10 to 20 % less for being woven, an
 * engineering estimate.
 */
public final class Laminate {
  /** Of layers laid all ways round, GPa. */
  public static final double QUASI_ISOTROPIC_GPA = 45;

  private static final double ALONG_GPA = 52;
  private static final double BETWEEN_GPA = 15;

  /** Of a carbon plate, g/cm³; 1.43 to 1.60 by how much of it is fibre. */
  public static final double GRAMS_PER_CM3 = 1.55;

  private Laminate() {}

  /**
   * Young's modulus of a weave that is alike along and across, GPa: 52 along its fibres, 15 halfway between, and between
   * these as the compliance of such a plate turns (textbook).
   *
   * @param degrees between the arm and the fibres, any
   */
  public static double wovenGPa(double degrees) {
    var doubled = StrictMath.sin(StrictMath.toRadians(2 * degrees));
    return 1 / (1 / ALONG_GPA + doubled * doubled * (1 / BETWEEN_GPA - 1 / ALONG_GPA));
  }
}
