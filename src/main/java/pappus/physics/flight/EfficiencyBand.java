package pappus.physics.flight;

import java.util.Optional;

/**
 * Where the hover efficiency of a whole aircraft, momentum power over battery power, is to be expected.
 * Common practice, no published source, except 0.14 for a 27 g research quad with coreless motors (its open
 * firmware documentation, bench table).
 *
 * @param lowest below it something is wrong
 * @param highest above it something is wrong
 */
public record EfficiencyBand(double lowest, double highest) {
  private static final double SMALL_KG = 0.050;
  private static final double MIDDLE_KG = 0.250;
  private static final double LARGEST_KG = 0.700;

  public boolean contains(double efficiency) {
    return efficiency >= lowest && efficiency <= highest;
  }

  /**
   * Outside it, warn.
   *
   * @param hasOwnControllerLoss true if the board carries its own part-load loss, as sine-wave drives may
   * @return empty above 0.250 kg
   */
  public static Optional<EfficiencyBand> warning(double massKg, boolean hasOwnControllerLoss) {
    if (massKg < SMALL_KG) {
      return Optional.of(new EfficiencyBand(0.12, 0.20));
    }
    if (massKg <= MIDDLE_KG) {
      return Optional.of(new EfficiencyBand(0.13, hasOwnControllerLoss ? 0.38 : 0.30));
    }
    return Optional.empty();
  }

  /**
   * Outside it, the numbers cannot be right.
   *
   * @return empty above 0.700 kg
   */
  public static Optional<EfficiencyBand> hard(double massKg) {
    if (massKg < SMALL_KG) {
      return Optional.of(new EfficiencyBand(0.10, 0.24));
    }
    if (massKg <= LARGEST_KG) {
      return Optional.of(new EfficiencyBand(0.12, 0.40));
    }
    return Optional.empty();
  }
}
