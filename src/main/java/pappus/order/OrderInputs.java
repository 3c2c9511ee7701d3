package pappus.order;

import java.util.List;
import pappus.files.Fingerprint;

/**
 * An order with all that it names, read and sound.
 *
 * @param files every file that was read, the order's first
 * @param remarks what a user is to know before any answer
 */
public record OrderInputs(
    Order order,
    List<AskedGroup> groups,
    Wares wares,
    Till till,
    String currency,
    List<Fingerprint> files,
    List<String> remarks) {
  public OrderInputs {
    groups = List.copyOf(groups);
    files = List.copyOf(files);
    remarks = List.copyOf(remarks);
  }

  /** The most that all may cost, cents. */
  public long budgetCents() {
    return Amount.cents(order.budget());
  }

  /** Learners in all. */
  public int learners() {
    return order.learners();
  }

  /** Pieces to have beyond what flies of a part that so many builds have for one thing. */
  public int spares(String label, Ware ware, int builds) {
    var pieces = 0;
    for (var spare : order.sparesOrNone()) {
      if (spare.label().equals(label)) {
        pieces += spare.times(builds) * spare.each(ware.part());
      }
    }
    return pieces;
  }
}
