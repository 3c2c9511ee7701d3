package pappus.answers.order;

import java.util.ArrayList;
import java.util.List;
import pappus.order.Ware;
import pappus.order.plan.Plan;

/**
 * Pieces of a ware that go into the box of spares: what nobody's bag takes.
 *
 * @param spares as the order asks for
 * @param over what begun units and lower prices for more bring beyond that
 */
record Boxed(Ware ware, int spares, int over) {
  /** All that is in the box. */
  int pieces() {
    return spares + over;
  }

  /** By ware; what stays on the shelf is not in it. */
  static List<Boxed> of(Plan plan, Expenses expenses) {
    var ledger = plan.ledger();
    var wares = plan.inputs().wares();
    var bought = new int[wares.all().size()];
    for (var buy : expenses.bill().buys()) {
      var part = buy.lot().part();
      bought[wares.of(part).index()] += buy.units() * part.sold().pieces();
    }
    var boxed = new ArrayList<Boxed>();
    for (var ware : wares.all()) {
      var wanted = ledger.pieces(ware) + ledger.spares(ware);
      var there = bought[ware.index()] + Math.min(ware.leftover(), wanted);
      var box = new Boxed(ware, ledger.spares(ware), there - wanted);
      if (box.pieces() > 0) {
        boxed.add(box);
      }
    }
    return boxed;
  }
}
