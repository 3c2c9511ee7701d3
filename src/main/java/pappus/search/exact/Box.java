package pappus.search.exact;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.function.BinaryOperator;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * Parts of one role as a tree that halves them again and again, each box with a relaxation: numbers that are at least as
 * good as those of any part in it, so that one bound serves many parts and a single one alike.
 *
 * @param relaxation of all parts in it
 * @param part its index, where it is one
 * @param low one half, where it is more
 * @param high the other
 * @param size parts in it
 * @param best least dearness of a part in it
 * @param slack by how much the relaxation is less dear than that: what may be gained by halving
 */
record Box<F>(
    F relaxation,
    int part,
    @Nullable Box<F> low,
    @Nullable Box<F> high,
    int size,
    double best,
    double slack) {

  /**
   * One part.
   *
   * @param sort parts of equal sorts stay together
   * @param at where to halve: by what is spread most
   */
  record Leaf<F>(int part, F relaxation, Object sort, List<Double> at) {}

  /**
   * Of at least one part.
   *
   * @param least numbers at least as good as those of either
   * @param dear what a relaxation costs a flight, in any unit: only the order of halving depends on it
   */
  static <F> Box<F> of(List<Leaf<F>> leaves, BinaryOperator<F> least, ToDoubleFunction<F> dear) {
    var sorts = new LinkedHashMap<Object, List<Leaf<F>>>();
    for (var leaf : leaves) {
      sorts.computeIfAbsent(leaf.sort, fresh -> new ArrayList<>()).add(leaf);
    }
    var boxes = sorts.values().stream()
        .map(sort -> halved(sort, least, dear))
        .sorted(Comparator.comparingDouble(Box<F>::best).thenComparingInt(Box::part))
        .toList();
    return joined(boxes, least, dear);
  }

  private static <F> Box<F> joined(
      List<Box<F>> boxes, BinaryOperator<F> least, ToDoubleFunction<F> dear) {
    if (boxes.size() == 1) {
      return boxes.get(0);
    }
    var middle = boxes.size() / 2;
    return joined(
        joined(boxes.subList(0, middle), least, dear),
        joined(boxes.subList(middle, boxes.size()), least, dear),
        least,
        dear);
  }

  private static <F> Box<F> joined(
      Box<F> low, Box<F> high, BinaryOperator<F> least, ToDoubleFunction<F> dear) {
    var relaxation = least.apply(low.relaxation, high.relaxation);
    var best = Math.min(low.best, high.best);
    return new Box<>(
        relaxation,
        Math.min(low.part, high.part),
        low,
        high,
        low.size + high.size,
        best,
        best - dear.applyAsDouble(relaxation));
  }

  private static <F> Box<F> halved(
      List<Leaf<F>> leaves, BinaryOperator<F> least, ToDoubleFunction<F> dear) {
    if (leaves.size() == 1) {
      var leaf = leaves.get(0);
      return new Box<>(
          leaf.relaxation, leaf.part, null, null, 1, dear.applyAsDouble(leaf.relaxation), 0);
    }
    var axis = widest(leaves);
    var sorted = leaves.stream()
        .sorted(Comparator.<Leaf<F>>comparingDouble(leaf -> leaf.at.get(axis))
            .thenComparingInt(Leaf::part))
        .toList();
    return joined(
        halved(sorted.subList(0, sorted.size() / 2), least, dear),
        halved(sorted.subList(sorted.size() / 2, sorted.size()), least, dear),
        least,
        dear);
  }

  private static <F> int widest(List<Leaf<F>> leaves) {
    var widest = 0;
    var most = -1.0;
    for (var axis = 0; axis < leaves.get(0).at.size(); axis++) {
      var place = axis;
      var all = leaves.stream().mapToDouble(leaf -> leaf.at.get(place)).summaryStatistics();
      if (all.getMax() - all.getMin() > most) {
        most = all.getMax() - all.getMin();
        widest = axis;
      }
    }
    return widest;
  }

  boolean isOne() {
    return low == null;
  }

  /** Its halves; none of a single part. */
  List<Box<F>> halves() {
    return low == null || high == null ? List.of() : List.of(low, high);
  }
}
