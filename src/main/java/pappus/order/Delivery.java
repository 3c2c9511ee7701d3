package pappus.order;

import java.util.ArrayList;
import java.util.List;
import pappus.part.Build;

/**
 * An order of which some came, read and sound.
 *
 * @param before the order as its files are now: what shares are shares of
 * @param now the same with what came on the shelf, with what shops can deliver, and with the money that is left
 * @param bags who was to get what, by group
 * @param came what came, and what it cost
 * @param spentCents what is spent: for that, and for sending it
 */
public record Delivery(
    OrderInputs before,
    OrderInputs now,
    List<Bag> bags,
    List<Earlier.Bought> came,
    long spentCents) {
  public Delivery {
    bags = List.copyOf(bags);
    came = List.copyOf(came);
  }

  /**
   * Learners of a group who were to get the same build.
   *
   * @param group its place in the order
   * @param name what the build was called
   */
  public record Bag(int group, String name, int learners, Build build) {
    /** Whether a build has the main parts of this one. */
    public boolean isKeptBy(Build other) {
      return Earlier.isKept(build, other);
    }
  }

  /** The order with a group for each bag, no own budgets and no least shares: what was ordered may stay. */
  public OrderInputs byBag() {
    var groups = new ArrayList<AskedGroup>();
    for (var bag : bags) {
      var of = now.groups().get(bag.group);
      var group = new Order.Group(of.name(), of.group().scenario(), bag.learners, null, null);
      groups.add(new AskedGroup(
          groups.size(),
          group,
          of.file(),
          of.scenario(),
          of.supply(),
          of.assessor(),
          of.alone(),
          Long.MAX_VALUE));
    }
    return new OrderInputs(
        now.order(), groups, now.wares(), now.till(), now.currency(), now.files(), now.remarks());
  }
}
