package pappus.search.exact;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import pappus.part.Part;

/**
 * Parts of one role, each with the least of what must follow it, as a tree that halves them again and again; each
 * branch holds the least that any of its parts adds, so that one bound serves many parts and a single one alike.
 *
 * @param adds the least of each
 * @param part the part, where it is one
 * @param low one half, where it is more
 * @param high the other
 * @param loss of boards of whose ripple something is known, the least over that of the law
 * @param mostWatts the most that any of its parts draws by itself, as long as it hangs on the pack
 */
record Branch(
    Adds adds,
    @Nullable Part part,
    @Nullable Branch low,
    @Nullable Branch high,
    OptionalDouble loss,
    double mostWatts) {
  /** About how many watts weigh on a flight as much as a gram: only where to halve depends on it. */
  private static final double USUAL_WATTS_PER_GRAM = 0.15;

  /** About how many watts weigh on a flight as much as all of the law's ripple: for the same. */
  private static final double USUAL_WATTS = 15;

  /**
   * A part and what it adds.
   *
   * @param loss ripple of a board over that of the law, if something is known of it
   * @param watts what it draws by itself as long as it hangs on the pack
   */
  record Leaf(Part part, Adds adds, OptionalDouble loss, double watts) {
    private double dearness() {
      return adds.support().traded(USUAL_WATTS_PER_GRAM) + USUAL_WATTS * loss.orElse(0);
    }
  }

  /** Any of its parts. */
  Part sample() {
    return part != null ? part : Objects.requireNonNull(low).sample();
  }

  /** Of at least one part; either all have a loss of their own or none. */
  static Branch of(List<Leaf> leaves) {
    if (leaves.size() == 1) {
      var leaf = leaves.get(0);
      return new Branch(leaf.adds, leaf.part, null, null, leaf.loss, leaf.watts);
    }
    var sorted = leaves.stream()
        .sorted(Comparator.comparingDouble(Leaf::dearness).thenComparing(leaf -> leaf.part.id()))
        .toList();
    var low = of(sorted.subList(0, sorted.size() / 2));
    var high = of(sorted.subList(sorted.size() / 2, sorted.size()));
    var loss = low.loss.isEmpty()
        ? low.loss
        : OptionalDouble.of(Math.min(low.loss.getAsDouble(), high.loss.orElseThrow()));
    return new Branch(
        low.adds.least(high.adds), null, low, high, loss, Math.max(low.mostWatts, high.mostWatts));
  }
}
