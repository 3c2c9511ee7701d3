package pappus.search.exact;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Where every node ends that is not branched: a proof is the list of these. Safe for several threads; what it counts does
 * not depend on how many there are.
 */
final class Closings {
  /** Why a node is closed. */
  enum Reason {
    /** A rule that its parts break already, or no frame or accessory that goes with them. */
    RULE,
    /** A limit on mass, price, thrust or current that no build of it keeps, or physics that refuses its parts. */
    LIMIT,
    /** Its bound is below what is told already. */
    BOUND,
    /** Too near to an earlier row. */
    NEAR,
    /** The same parts were met on another way. */
    MET,
    /** Its best build is told. */
    TOLD
  }

  private final Map<Reason, Long> counts = new ConcurrentHashMap<>();

  /** Closes a node; the one place where that is done. */
  <N> Optional<N> close(Reason reason) {
    close(reason, 1);
    return Optional.empty();
  }

  /** Closes so many nodes at once. */
  void close(Reason reason, long nodes) {
    counts.merge(reason, nodes, Long::sum);
  }

  /** The node, unless no build of it keeps the limits. */
  <N extends Node> Optional<N> unlessHopeless(N node) {
    return node.bound() < 0 ? close(Reason.LIMIT) : Optional.of(node);
  }

  /** How many nodes were closed for each reason. */
  Map<Reason, Long> counts() {
    return Map.copyOf(counts);
  }
}
