package pappus.order.column;

import java.util.Arrays;
import java.util.List;
import pappus.order.Lot;
import pappus.order.OrderInputs;
import pappus.order.Ware;

/**
 * Prices of all that an order is short of, none below zero, in shares. Whatever they are, no order can reach more than
 * {@link #fixed} and, for each learner, the largest of a share less what its build has to pay at them: Lagrange's bound.
 */
final class Prices {
  /** Whole units of a price in a share of one. */
  static final double SCALE = 1e7;

  private final double[] stock;
  private final double[] bought;
  private final double cent;
  private final double[][] used;
  private final double[] own;

  /**
   * @param stock of a piece of each ware, for taking it out of stock
   * @param bought of a piece of each ware, for its money
   * @param cent of the budget
   * @param used by group and ware: of a piece, for what is bought once a ware is used at all
   * @param own by group: of a cent of the budgets of its learners
   */
  Prices(double[] stock, double[] bought, double cent, double[][] used, double[] own) {
    this.stock = stock;
    this.bought = bought;
    this.cent = cent;
    this.used = used;
    this.own = own;
  }

  /** What a piece of a ware more in stock is worth, shares. */
  double stock(Ware ware) {
    return stock[ware.index()];
  }

  /** What a cent more of the budget is worth, shares. */
  double cent() {
    return cent;
  }

  /**
   * With no unit that has no end sold below its price: else there would be no end of the bound either.
   */
  Prices held(List<Ware> wares) {
    var held = bought.clone();
    for (var ware : wares) {
      for (var lot : ware.lots()) {
        if (lot.units() >= Lot.NO_END) {
          held[ware.index()] = Math.min(held[ware.index()], cent * lot.leastCents() / ware.unit());
        }
      }
    }
    return new Prices(stock, held, cent, used, own);
  }

  /**
   * Prices part of the way to others: those of one program after another jump to and fro, and what lies between them bounds as
   * well.
   *
   * @param part 0 to 1
   */
  Prices towards(Prices other, double part) {
    var between = new double[used.length][];
    Arrays.setAll(between, group -> towards(used[group], other.used[group], part));
    return new Prices(
        towards(stock, other.stock, part),
        towards(bought, other.bought, part),
        cent + part * (other.cent - cent),
        between,
        towards(own, other.own, part));
  }

  private static double[] towards(double[] one, double[] other, double part) {
    var between = new double[one.length];
    Arrays.setAll(between, at -> one[at] + part * (other[at] - one[at]));
    return between;
  }

  /** Prices of a piece of each ware for a group, rounded down to whole units of a ten-millionth of a share. */
  long[] of(int group, OrderInputs inputs) {
    var prices = new long[stock.length];
    for (var ware : inputs.wares().all()) {
      var w = ware.index();
      var sum = stock[w]
          + bought[w] * (1 + Charges.perPiece(ware, inputs))
          + used[group][w]
          + own[group] * ware.leastCents() / ware.unit();
      prices[w] = (long) Math.min((double) Oracle.MOST, Math.floor(SCALE * sum));
    }
    return prices;
  }

  /** What all that is there is worth at these prices. */
  double fixed(OrderInputs inputs, Charges charges, List<Asker> askers) {
    var worth = cent * inputs.budgetCents();
    for (var asker : askers) {
      var group = asker.asked().index();
      worth -= cent * asker.pieces() * asker.extraCents();
      if (asker.asked().isCapped()) {
        worth += own[group] * asker.pieces() * (asker.asked().capCents() - asker.extraCents());
      }
    }
    for (var ware : inputs.wares().all()) {
      worth += ofWare(ware, charges, askers);
    }
    return worth;
  }

  private double ofWare(Ware ware, Charges charges, List<Asker> askers) {
    var w = ware.index();
    var worth = bought[w] * ware.leftover();
    var inStock = stock[w] > 0 ? stock[w] * charges.most(ware) : 0;
    var charge = charges.once(ware);
    if (charge > 0) {
      var uses = inStock;
      for (var asker : askers) {
        uses += used[asker.asked().index()][w] * charges.most(ware, asker.pieces());
      }
      worth += Math.max(0, uses - bought[w] * charge);
    } else {
      worth += inStock;
    }
    for (var lot : ware.lots()) {
      worth += Math.max(0, bought[w] * ware.unit() - cent * lot.leastCents())
          * Math.min(lot.units(), charges.mostUnits(ware));
    }
    return worth;
  }
}
