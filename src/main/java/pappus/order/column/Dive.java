package pappus.order.column;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import pappus.order.OrderInputs;

/**
 * Rounds the program to an order: it is solved again and again, each time with what most of a learner takes given to one.
 */
final class Dive {
  /** Numbers of learners are told from whole ones by as much. */
  private static final double NEARLY_WHOLE = 1e-4;

  private final OrderInputs inputs;
  private final Charges charges;
  private final List<Asker> askers;
  private final List<List<Column>> columns;
  private final BooleanSupplier stopped;

  /**
   * @param columns builds by group
   * @param stopped asked whether to end soon
   */
  Dive(
      OrderInputs inputs,
      Charges charges,
      List<Asker> askers,
      List<List<Column>> columns,
      BooleanSupplier stopped) {
    this.inputs = inputs;
    this.charges = charges;
    this.askers = askers;
    this.columns = columns;
    this.stopped = stopped;
  }

  /**
   * Everybody's builds, by group; none at all where a group has no build to take.
   *
   * @param heldBack cents of the budget that are left for what fractions do not tell
   * @param gain of a build
   * @param saved gain of the whole budget
   */
  List<Column> given(long heldBack, ToDoubleFunction<Column> gain, double saved) {
    if (columns.stream().anyMatch(List::isEmpty)) {
      return List.of();
    }
    var kept = new LinkedHashMap<Column, Integer>();
    var left = inputs.learners();
    while (left > 0 && !stopped.getAsBoolean()) {
      var solved =
          new Program(inputs, charges, askers, columns, kept, heldBack).maximise(gain, saved);
      var more = keep(solved.taken(), kept);
      left -= more;
      if (more == 0) {
        break;
      }
    }
    return given(kept);
  }

  /** Keeps all whole learners of a solution, or else one more of what has most of one; how many more that are. */
  private int keep(Map<Column, Double> taken, Map<Column, Integer> kept) {
    var more = 0;
    @Nullable Column most = null;
    var mostOf = 0.0;
    for (var one : taken.entrySet()) {
      var before = kept.getOrDefault(one.getKey(), 0);
      var whole = (int) Math.floor(one.getValue() + NEARLY_WHOLE);
      if (whole > before) {
        kept.put(one.getKey(), whole);
        more += whole - before;
      } else if (one.getValue() - before > mostOf && isOpen(one.getKey(), kept)) {
        mostOf = one.getValue() - before;
        most = one.getKey();
      }
    }
    if (more == 0 && most != null && mostOf > NEARLY_WHOLE) {
      kept.merge(most, 1, Integer::sum);
      return 1;
    }
    return more;
  }

  private boolean isOpen(Column column, Map<Column, Integer> kept) {
    var served = kept.entrySet().stream()
        .filter(one -> one.getKey().group() == column.group())
        .mapToInt(Map.Entry::getValue)
        .sum();
    return served < askers.get(column.group()).pieces();
  }

  /** Whom the program does not serve gets what costs least. */
  private List<Column> given(Map<Column, Integer> kept) {
    var given = new ArrayList<Column>();
    for (var g = 0; g < askers.size(); g++) {
      var its = new ArrayList<Column>();
      for (var one : kept.entrySet()) {
        for (var i = 0; i < one.getValue() && one.getKey().group() == g; i++) {
          its.add(one.getKey());
        }
      }
      var cheapest = columns.get(g).stream()
          .min(Comparator.comparingLong(Column::ownCents).thenComparingInt(Column::number))
          .orElseThrow();
      while (its.size() < askers.get(g).pieces()) {
        its.add(cheapest);
      }
      given.addAll(its.subList(0, askers.get(g).pieces()));
    }
    return given;
  }
}
