package pappus.search.exact;

import java.util.Arrays;

/**
 * Masses and prices of builds that fly at least as long as all that are not known yet: what weighs and costs as much as
 * one of them is of no use. Read by several threads, added to by one between their work.
 *
 * <p>Why: src/site/markdown/decisions.md#the-front-comes-out-of-the-same-search
 */
final class Front {
  private static final int FEW = 16;

  /** Rising masses, g, and the least price up to each of them, falling. */
  private volatile Steps steps = new Steps(new double[FEW], new long[FEW], 0);

  private final boolean weighs;

  /** Of mass and price. */
  Front() {
    this(true);
  }

  /**
   * @param weighs whether mass matters beside price
   */
  Front(boolean weighs) {
    this.weighs = weighs;
  }

  private static final class Steps {
    private final double[] grams;
    private final long[] cents;
    private final int count;

    Steps(double[] grams, long[] cents, int count) {
      this.grams = grams;
      this.cents = cents;
      this.count = count;
    }

    /** The last step that is no heavier; −1 if all are. */
    int upTo(double mass) {
      var at = Arrays.binarySearch(grams, 0, count, mass);
      return at >= 0 ? at : -at - 2;
    }
  }

  /** Whether a build that is known weighs and costs no more. */
  boolean surpasses(double grams, long cents) {
    var now = steps;
    var at = now.upTo(weighs ? grams : 0);
    return at >= 0 && now.cents[at] <= cents;
  }

  /** Adds a build that none surpasses. */
  void add(double mass, long cents) {
    var grams = weighs ? mass : 0;
    var before = steps;
    var masses = new double[before.count + FEW];
    var prices = new long[masses.length];
    var from = before.upTo(grams) + 1;
    // Of equal mass, the new one is cheaper.
    if (from > 0 && before.grams[from - 1] == grams) {
      from--;
    }
    System.arraycopy(before.grams, 0, masses, 0, from);
    System.arraycopy(before.cents, 0, prices, 0, from);
    masses[from] = grams;
    prices[from] = cents;
    var count = from + 1;
    for (var i = from; i < before.count; i++) {
      if (before.cents[i] < cents && before.grams[i] > grams) {
        masses[count] = before.grams[i];
        prices[count] = before.cents[i];
        count++;
      }
    }
    steps = new Steps(masses, prices, count);
  }
}
