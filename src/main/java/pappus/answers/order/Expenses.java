package pappus.answers.order;

import pappus.order.Till;
import pappus.order.plan.Plan;

/**
 * Where the money of an order goes, cents.
 *
 * @param flying parts that fly, as whole units
 * @param spares what is bought beyond that
 * @param postage of all shops
 * @param extra what is no part, such as lumps
 */
record Expenses(Till.Bill bill, long flying, long spares, long postage, long extra) {
  static Expenses of(Plan plan) {
    var ledger = plan.ledger();
    var bill = plan.bill();
    var wares = plan.inputs().wares().all();
    var units = new int[wares.size()];
    wares.forEach(ware -> units[ware.index()] = ware.unitsFor(ledger.pieces(ware)));
    var without = plan.inputs().till().bill(units);
    var flying = without.cents() - without.postageCents();
    var goods = bill.cents() - bill.postageCents();
    return new Expenses(
        bill, flying, goods - flying, bill.postageCents(), ledger.cents() - bill.cents());
  }
}
