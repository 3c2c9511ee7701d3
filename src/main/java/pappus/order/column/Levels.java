package pappus.order.column;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import pappus.order.OrderInputs;
import pappus.order.column.Oracle.Priced;

/** What no order surpasses, at some prices and with the builds that are worth most at them. */
final class Levels {
  /** What is not served is worth so much less than the whole of a share: more than any share, so that all are served. */
  static final double SERVED = 2;

  /** Sums of some thousand products are as near as this. */
  private static final double ROUNDING = 1e-9;

  private final OrderInputs inputs;
  private final Charges charges;
  private final List<Asker> askers;

  Levels(OrderInputs inputs, Charges charges, List<Asker> askers) {
    this.inputs = inputs;
    this.charges = charges;
    this.askers = askers;
  }

  /** The objective that a build of a group needs for a share, millionths of its best. */
  static long objective(Asker asker, long share) {
    var asked = Math.max(share, asker.asked().group().leastMillionths());
    // One less: what is rounded up here must not hide a build that has the share.
    return Math.max(
        0, (long) Math.floor((double) asked * asker.best().atMost() / Column.WHOLE) - 1);
  }

  /**
   * The sum of shares, of one each, that no order surpasses in which each has a least share.
   *
   * @param priced by group, looked for from that share on
   */
  double sum(Prices prices, List<Priced> priced, long share) {
    var most = prices.fixed(inputs, charges, askers);
    var learners = 0;
    for (var g = 0; g < askers.size(); g++) {
      var asker = askers.get(g);
      var from = objective(asker, share);
      var worth = priced.get(g).points().stream()
          .filter(point -> point.objective() >= from)
          .mapToDouble(point -> SERVED
              + point.objective() / (double) asker.best().atMost()
              - point.dues() / Prices.SCALE)
          .max()
          .orElse(0);
      most += asker.pieces() * Math.max(0, worth);
      learners += asker.pieces();
    }
    return most - SERVED * learners + ROUNDING * (1 + Math.abs(most));
  }

  /**
   * The least share, millionths, that is proven to be more than any order can give to everybody.
   *
   * @param priced by group, looked for from a share on
   * @param from that share
   * @param than nothing above this is of interest
   */
  long tooMuch(Prices prices, List<Priced> priced, long from, long than) {
    var fixed = prices.fixed(inputs, charges, askers);
    // Between two flights of a front nothing changes.
    var steps = new TreeSet<Long>(List.of(from));
    for (var g = 0; g < askers.size(); g++) {
      var asker = askers.get(g);
      for (var point : priced.get(g).points()) {
        steps.add(Column.share(point.objective(), asker.best().atMost()) + 2);
      }
    }
    for (var step : new ArrayList<>(steps.tailSet(from))) {
      if (step < than && isTooMuch(fixed, priced, step)) {
        return step;
      }
    }
    return than;
  }

  private boolean isTooMuch(double fixed, List<Priced> priced, long share) {
    var most = fixed;
    var learners = 0;
    for (var g = 0; g < askers.size(); g++) {
      var asker = askers.get(g);
      var dues = priced.get(g).least(objective(asker, share));
      most +=
          dues.isEmpty() ? 0 : asker.pieces() * Math.max(0, 1 - dues.getAsLong() / Prices.SCALE);
      learners += asker.pieces();
    }
    return most + ROUNDING * (1 + Math.abs(fixed)) < learners;
  }
}
