package pappus.shop;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;

/**
 * Repeatable chance. Every record draws from its own stream, seeded by its name, so that a record
 * added or taken away leaves all others as they are.
 */
final class Draw {
  private static final double CUT = 2;

  private final Random random;

  private Draw(long seed) {
    random = new Random(seed);
  }

  /** The stream of a name. */
  static Draw of(String name) {
    var hash = 0xcbf29ce484222325L;
    for (var octet : name.getBytes(StandardCharsets.UTF_8)) {
      hash = (hash ^ octet) * 0x100000001b3L;
    }
    return new Draw(hash ^ (hash >>> 29));
  }

  /** Standard normal, drawn again until it lies within two deviations. */
  double normal() {
    while (true) {
      var drawn = random.nextGaussian();
      if (Math.abs(drawn) <= CUT) {
        return drawn;
      }
    }
  }

  /** A factor of median one whose logarithm has the given deviation. */
  double scatter(double sigma) {
    return StrictMath.exp(sigma * normal());
  }

  double between(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  boolean chance(double probability) {
    return random.nextDouble() < probability;
  }

  <T> T pick(List<T> choices) {
    return choices.get(random.nextInt(choices.size()));
  }

  /** The nearest multiple of a step, without binary dust behind it. */
  static double round(double value, double step) {
    return BigDecimal.valueOf(StrictMath.rint(value / step))
        .multiply(BigDecimal.valueOf(step))
        .doubleValue();
  }

  static double clamp(double value, double low, double high) {
    return Math.min(high, Math.max(low, value));
  }
}
