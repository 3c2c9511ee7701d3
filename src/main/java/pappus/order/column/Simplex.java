package pappus.order.column;

import java.util.Arrays;

/**
 * The simplex method for programs that nothing is a solution of: maximise gain · x where rows · x ≤ right and x ≥ 0, with no
 * right side below zero. It tells the price of each row, which is what orders ask for.
 *
 * <p>Right sides are raised a little, each by another bit, so that no program is degenerate and none goes round in circles.
 * What it tells is as near as that, 1e-6 of the largest right side; whoever proves something by its prices checks them.
 *
 * <p>Why: src/site/markdown/decisions.md#one-search-prices-every-order
 */
final class Simplex {
  private static final double NEARLY = 1e-9;
  private static final double RAISE = 1e-7;
  private static final int MOST_PIVOTS = 20_000;

  private final double value;
  private final double[] levels;
  private final double[] prices;

  private Simplex(double value, double[] levels, double[] prices) {
    this.value = value;
    this.levels = levels;
    this.prices = prices;
  }

  /** Value of the solution. */
  double value() {
    return value;
  }

  /** Level of a variable. */
  double level(int variable) {
    return levels[variable];
  }

  /** Price of a row, not below zero. */
  double price(int row) {
    return prices[row];
  }

  /**
   * Solves a program, or goes as far towards it as the most pivots allow.
   *
   * @param rows one a condition, as long as {@code gain}
   * @param right of each row, not below zero
   * @throws IllegalArgumentException if a right side is below zero
   * @throws ArithmeticException if there is no end of the value
   */
  static Simplex maximise(double[] gain, double[][] rows, double[] right) {
    var many = gain.length;
    var table = new double[rows.length + 1][];
    var largest = Math.max(1, Arrays.stream(right).max().orElse(1));
    for (var row = 0; row < rows.length; row++) {
      if (right[row] < 0) {
        throw new IllegalArgumentException("right must not be below zero, but is " + right[row]);
      }
      table[row] = Arrays.copyOf(rows[row], many + 1);
      // Bits in no simple proportion to each other.
      table[row][many] = right[row] + RAISE * largest * (1 + (row * 0.618033988749895) % 1);
    }
    table[rows.length] = new double[many + 1];
    for (var column = 0; column < many; column++) {
      table[rows.length][column] = -gain[column];
    }
    var basic = new int[rows.length];
    var free = new int[many];
    Arrays.setAll(basic, row -> many + row);
    Arrays.setAll(free, column -> column);
    for (var pivots = 0; pivots < MOST_PIVOTS; pivots++) {
      var column = entering(table[rows.length], many);
      if (column < 0) {
        break;
      }
      pivot(table, leaving(table, column, many), column, basic, free);
    }
    return told(table, basic, free, right.length);
  }

  private static Simplex told(double[][] table, int[] basic, int[] free, int rows) {
    var many = free.length;
    var levels = new double[many];
    for (var row = 0; row < rows; row++) {
      if (basic[row] < many) {
        levels[basic[row]] = Math.max(0, table[row][many]);
      }
    }
    var prices = new double[rows];
    for (var column = 0; column < many; column++) {
      if (free[column] >= many) {
        prices[free[column] - many] = Math.max(0, table[rows][column]);
      }
    }
    return new Simplex(table[rows][many], levels, prices);
  }

  private static int entering(double[] costs, int many) {
    var entering = -1;
    var least = -NEARLY;
    for (var column = 0; column < many; column++) {
      if (costs[column] < least) {
        least = costs[column];
        entering = column;
      }
    }
    return entering;
  }

  private static int leaving(double[][] table, int column, int many) {
    var leaving = -1;
    var least = Double.POSITIVE_INFINITY;
    for (var row = 0; row < table.length - 1; row++) {
      if (table[row][column] > NEARLY) {
        var ratio = table[row][many] / table[row][column];
        if (ratio < least) {
          least = ratio;
          leaving = row;
        }
      }
    }
    if (leaving < 0) {
      throw new ArithmeticException("There is no end of the value.");
    }
    return leaving;
  }

  private static void pivot(double[][] table, int at, int column, int[] basic, int[] free) {
    var pivotRow = table[at];
    var inverse = 1 / pivotRow[column];
    for (var place = 0; place < pivotRow.length; place++) {
      pivotRow[place] *= inverse;
    }
    pivotRow[column] = inverse;
    for (var row = 0; row < table.length; row++) {
      var factor = table[row][column];
      if (row == at || factor == 0) {
        continue;
      }
      var one = table[row];
      for (var place = 0; place < one.length; place++) {
        one[place] -= factor * pivotRow[place];
      }
      one[column] = -factor * inverse;
    }
    var left = basic[at];
    basic[at] = free[column];
    free[column] = left;
  }
}
