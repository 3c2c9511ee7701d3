package pappus.answers.order;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import pappus.order.Ware;
import pappus.order.plan.Plan;

/**
 * What an order is short of, and what one unit more would be worth by the linear program: near the truth for a little more,
 * not for much.
 *
 * @param units of it that are bought
 * @param share of a best flight that one unit more adds in all, 1 for a whole one
 */
record Scarcity(Ware ware, int units, double share) {
  /** Less is nothing to speak of. */
  private static final double LEAST = 0.002;

  /** The most first. */
  static List<Scarcity> of(Plan plan) {
    var scarce = new ArrayList<Scarcity>();
    var worth = plan.worth();
    if (worth.isEmpty()) {
      return scarce;
    }
    var units = plan.ledger().units();
    for (var ware : plan.inputs().wares().all()) {
      var share = worth.get().piece().get(ware.index()) * ware.unit();
      var bought = units[ware.index()];
      // The program's prices are not of this order alone: what is left over binds nobody.
      if (share >= LEAST && bought >= ware.stock()) {
        scarce.add(new Scarcity(ware, bought, share));
      }
    }
    scarce.sort(Comparator.comparingDouble(Scarcity::share)
        .reversed()
        .thenComparing(one -> one.ware().part().id()));
    return scarce;
  }
}
