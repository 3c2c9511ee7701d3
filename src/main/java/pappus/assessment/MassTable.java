package pappus.assessment;

import java.util.List;
import pappus.physics.airframe.MassChance;
import pappus.scenario.MassCap;

/**
 * What the aircraft weighs at take-off.
 *
 * @param lines everything that leaves the ground
 * @param grams sum, g
 * @param doubtGrams one standard deviation of the sum, g
 */
public record MassTable(List<MassLine> lines, double grams, double doubtGrams) {
  public MassTable {
    lines = List.copyOf(lines);
  }

  static MassTable of(List<MassLine> lines) {
    var grams = 0.0;
    var variance = 0.0;
    for (var line : lines) {
      grams += line.grams();
      variance += line.doubtGrams() * line.doubtGrams();
    }
    return new MassTable(lines, grams, Math.sqrt(variance));
  }

  /** Mass that is not passed at so many standard deviations, whole milligrams, rounded up. */
  public long neededMilligrams(double deviations) {
    return (long) Math.ceil((grams + deviations * doubtGrams) * 1000 - 1e-6);
  }

  /** Probability of staying under a cap. */
  public double chanceUnder(MassCap cap) {
    return MassChance.under(cap.grams(), grams, doubtGrams);
  }
}
