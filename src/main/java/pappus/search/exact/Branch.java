package pappus.search.exact;

import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.function.ToLongFunction;
import org.jspecify.annotations.Nullable;
import pappus.catalog.Part;

/**
 * Parts of one role, each with the least of what must follow it, as a tree that halves them again and again; each branch holds the least that any of its parts
 * adds, so that one bound serves many parts and a single one alike.
 *
 * @param grams least mass, g
 * @param variance least variance of it, g²
 * @param watts least draw at the battery, W
 * @param cents least price
 * @param part the part, where it is one
 * @param low one half, where it is more
 * @param high the other
 */
record Branch(
    double grams,
    double variance,
    double watts,
    long cents,
    @Nullable Part part,
    @Nullable Branch low,
    @Nullable Branch high) {
  /** About how many grams weigh on a flight as much as a watt: only where to halve depends on it. */
  private static final double GRAMS_PER_WATT = 8;

  /** What a part adds to a build. */
  record Adds(
      ToDoubleFunction<Part> grams,
      ToDoubleFunction<Part> variance,
      ToDoubleFunction<Part> watts,
      ToLongFunction<Part> cents) {}

  /** Of at least one part. */
  static Branch of(List<Part> parts, Adds adds) {
    if (parts.size() == 1) {
      var part = parts.get(0);
      return new Branch(
          adds.grams.applyAsDouble(part),
          adds.variance.applyAsDouble(part),
          adds.watts.applyAsDouble(part),
          adds.cents.applyAsLong(part),
          part,
          null,
          null);
    }
    var byMass = spread(parts, adds.grams) >= GRAMS_PER_WATT * spread(parts, adds.watts);
    var sorted = parts.stream()
        .sorted(
            Comparator.comparingDouble(byMass ? adds.grams : adds.watts).thenComparing(Part::id))
        .toList();
    var low = of(sorted.subList(0, sorted.size() / 2), adds);
    var high = of(sorted.subList(sorted.size() / 2, sorted.size()), adds);
    return new Branch(
        Math.min(low.grams, high.grams),
        Math.min(low.variance, high.variance),
        Math.min(low.watts, high.watts),
        Math.min(low.cents, high.cents),
        null,
        low,
        high);
  }

  private static double spread(List<Part> parts, ToDoubleFunction<Part> of) {
    var all = parts.stream().mapToDouble(of).summaryStatistics();
    return all.getMax() - all.getMin();
  }
}
