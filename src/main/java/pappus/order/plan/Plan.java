package pappus.order.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import pappus.order.OrderInputs;
import pappus.order.Till;
import pappus.order.choice.Choice;
import pappus.order.choice.Ledger;
import pappus.order.choice.Standing;
import pappus.order.column.Asker;
import pappus.order.column.Column;
import pappus.order.column.Generator.Worth;

/**
 * An order as it is to be bought.
 *
 * @param askers groups with their best builds alone
 * @param columns everybody's builds, by learner
 * @param standing how good that is
 * @param inTurn how good it would be if each took what those before left
 * @param bounds what no order surpasses
 * @param worth what more of something is worth
 */
public record Plan(
    OrderInputs inputs,
    List<Asker> askers,
    Choice choice,
    List<Column> columns,
    Standing standing,
    Standing inTurn,
    Bounds bounds,
    Optional<Worth> worth) {
  public Plan {
    askers = List.copyOf(askers);
    columns = List.copyOf(columns);
  }

  /**
   * What no order surpasses.
   *
   * @param worst share, whole thousandths; empty where none was looked for
   * @param sum of shares, millionths, of orders whose worst share is no less; empty where none was looked for
   * @param questions to the exact search
   */
  public record Bounds(OptionalLong worst, OptionalLong sum, int questions) {}

  /** Its books. */
  public Ledger ledger() {
    return Ledger.of(choice, columns);
  }

  /** What is bought where. */
  public Till.Bill bill() {
    return inputs.till().bill(ledger().units());
  }

  /** Whether it can be bought. */
  public boolean isFeasible() {
    return standing.broken() == 0;
  }
}
