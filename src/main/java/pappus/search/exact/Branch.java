package pappus.search.exact;

import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import pappus.catalog.Part;

/**
 * Parts of one role, each with the least of what must follow it, as a tree that halves them again and again; each
 * branch holds the least that any of its parts adds, so that one bound serves many parts and a single one alike.
 *
 * @param adds the least of each
 * @param part the part, where it is one
 * @param low one half, where it is more
 * @param high the other
 */
record Branch(
    Adds adds,
    @Nullable Part part,
    @Nullable Branch low,
    @Nullable Branch high) {
  /** About how many grams weigh on a flight as much as a watt: only where to halve depends on it. */
  private static final double GRAMS_PER_WATT = 8;

  /** A part and what it adds. */
  record Leaf(Part part, Adds adds) {}

  /** Of at least one part. */
  static Branch of(List<Leaf> leaves) {
    if (leaves.size() == 1) {
      var leaf = leaves.get(0);
      return new Branch(leaf.adds, leaf.part, null, null);
    }
    ToDoubleFunction<Leaf> grams = leaf -> leaf.adds.grams();
    ToDoubleFunction<Leaf> watts = leaf -> leaf.adds.watts();
    var byMass = spread(leaves, grams) >= GRAMS_PER_WATT * spread(leaves, watts);
    var sorted = leaves.stream()
        .sorted(Comparator.comparingDouble(byMass ? grams : watts)
            .thenComparing(leaf -> leaf.part.id()))
        .toList();
    var low = of(sorted.subList(0, sorted.size() / 2));
    var high = of(sorted.subList(sorted.size() / 2, sorted.size()));
    return new Branch(low.adds.least(high.adds), null, low, high);
  }

  private static double spread(List<Leaf> leaves, ToDoubleFunction<Leaf> of) {
    var all = leaves.stream().mapToDouble(of).summaryStatistics();
    return all.getMax() - all.getMin();
  }
}
