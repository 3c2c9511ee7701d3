package pappus.weighing;

import java.util.Optional;
import pappus.part.Part;

/**
 * An estimate beside what the scale says, both of all pieces that fly.
 *
 * @param what part, dry or ready
 * @param part absent for the whole aircraft
 * @param estimatedGrams by the records
 * @param estimatedDoubt one standard deviation
 * @param measuredGrams by the scale
 * @param measuredDoubt one standard deviation
 * @param isDerived whether it was not on the scale, but is the difference of two readings
 */
public record Weighed(
    String what,
    Optional<Part> part,
    double estimatedGrams,
    double estimatedDoubt,
    double measuredGrams,
    double measuredDoubt,
    boolean isDerived) {
  /** Measured less estimated, g. */
  public double differenceGrams() {
    return measuredGrams - estimatedGrams;
  }

  /** Whether the two agree within two standard deviations. */
  public boolean agrees() {
    return Math.abs(differenceGrams()) <= 2 * Math.hypot(estimatedDoubt, measuredDoubt);
  }
}
