package pappus.order;

import pappus.assessment.Assessor;
import pappus.assessment.Supply;
import pappus.catalog.Catalog;
import pappus.change.Asked;
import pappus.scenario.Scenario;

/**
 * A group of learners and what each of them is asked to be given.
 *
 * @param index place in the order
 * @param file of the scenario, as it is named in answers
 * @param scenario without what it buys beside a build and without its budget, which are the order's
 * @param supply parts that are in stock or on the shelf, at the price of their cheapest lot
 * @param assessor who judges builds from all that is in stock or on the shelf, whatever they cost
 * @param alone what one learner asks who buys alone from full stock, within that learner's budget
 * @param capCents the most that each may cost; {@link Long#MAX_VALUE} where there is no bound
 */
public record AskedGroup(
    int index,
    Order.Group group,
    String file,
    Scenario scenario,
    Supply supply,
    Assessor assessor,
    Asked alone,
    long capCents) {
  /** Parts that can be had. */
  public Catalog catalog() {
    return supply.catalog();
  }

  /** What it is called. */
  public String name() {
    return group.name();
  }

  /** How many learners. */
  public int pieces() {
    return group.pieces();
  }

  /** Whether each has a budget of its own. */
  public boolean isCapped() {
    return capCents < Long.MAX_VALUE;
  }
}
