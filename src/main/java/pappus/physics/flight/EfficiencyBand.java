package pappus.physics.flight;

/**
 * Where the hover efficiency of a whole aircraft, momentum power over battery power, is to be expected.
 * Common practice, no published source, except 0.14 for a 27 g research quad with coreless motors (its open
 * firmware documentation, bench table) and 0.405, figure of merit 0.54 by 0.75 of motor and controller, for four
 * multirotors of 0.9 to 15 kg (L. Bauersfeld and D. Scaramuzza, IEEE RA-L 7(2), 2022, table III).
 *
 * @param lowest below it something is wrong
 * @param highest above it something is wrong
 */
public record EfficiencyBand(double lowest, double highest) {
  private static final double SMALL_KG = 0.050;
  private static final double LIGHT_KG = 0.250;
  private static final double LARGE_KG = 0.900;

  /** Of aircraft between light and large; beyond, propellers hardly get better. */
  private static final double LIGHT_HIGHEST = 0.30;

  private static final double LARGE_HIGHEST = 0.42;

  /** Above what is to be expected by so much, the numbers cannot be right. */
  private static final double HARD = 0.10;

  public boolean contains(double efficiency) {
    return efficiency >= lowest && efficiency <= highest;
  }

  /** Outside it, warn. */
  public static EfficiencyBand warning(double massKg) {
    if (massKg < SMALL_KG) {
      return new EfficiencyBand(0.12, 0.20);
    }
    var share = Math.min(1, Math.max(0, (massKg - LIGHT_KG) / (LARGE_KG - LIGHT_KG)));
    return new EfficiencyBand(0.13, LIGHT_HIGHEST + share * (LARGE_HIGHEST - LIGHT_HIGHEST));
  }

  /** Above it, the numbers cannot be right. */
  public static double hard(double massKg) {
    return massKg < SMALL_KG ? 0.24 : warning(massKg).highest() + HARD;
  }
}
