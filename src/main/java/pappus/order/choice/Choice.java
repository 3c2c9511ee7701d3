package pappus.order.choice;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.Predicate;
import pappus.order.Order;
import pappus.order.OrderInputs;
import pappus.order.Sameness;
import pappus.order.Ware;
import pappus.order.column.Column;

/**
 * What there is to choose: for each learner one of the group's builds.
 */
public final class Choice {
  private final OrderInputs inputs;
  private final List<List<Column>> columns;
  private final List<Integer> learners;
  private final Predicate<Column> changes;
  private final Books books;

  private Choice(
      OrderInputs inputs,
      List<List<Column>> columns,
      List<Integer> learners,
      Predicate<Column> changes) {
    this.inputs = inputs;
    this.changes = changes;
    this.columns = List.copyOf(columns);
    this.learners = List.copyOf(learners);
    this.books = new Books(this);
  }

  /**
   * Of an order's groups.
   *
   * @param columns builds by group, none empty
   */
  public static Choice of(OrderInputs inputs, List<List<Column>> columns) {
    return of(inputs, columns, column -> false);
  }

  /**
   * Of an order that was told before.
   *
   * @param columns builds by group, none empty
   * @param changes whether a learner with a build does not get what was told
   */
  public static Choice of(
      OrderInputs inputs, List<List<Column>> columns, Predicate<Column> changes) {
    var learners = new ArrayList<Integer>();
    for (var group : inputs.groups()) {
      for (var i = 0; i < group.pieces(); i++) {
        learners.add(group.index());
      }
    }
    return new Choice(inputs, columns, learners, changes);
  }

  /** The order. */
  public OrderInputs inputs() {
    return inputs;
  }

  /** Builds by group, none empty. */
  public List<List<Column>> columns() {
    return columns;
  }

  /** The group of each learner. */
  public List<Integer> learners() {
    return learners;
  }

  /** Whether a learner with a build does not get what was told before. */
  boolean changes(Column column) {
    return changes.test(column);
  }

  Books books() {
    return books;
  }

  /** Builds that a learner may get. */
  public List<Column> of(int learner) {
    return columns.get(learners.get(learner));
  }

  /** Pieces to have beyond what flies of a ware that so many builds have for one thing. */
  public int spares(String label, Ware ware, int builds) {
    return inputs.spares(label, ware, builds);
  }

  /** Rules of sameness. */
  public List<Sameness> same() {
    return inputs.order().sameOrNone();
  }

  /** Kinds that are to be one, of a build by a rule; empty where it is not asked. */
  public String key(Sameness rule, Column column) {
    var group = inputs.groups().get(column.group()).name();
    var of = rule.what().of(column.build());
    return !rule.isAskedOf(group) || of.isEmpty()
        ? ""
        : (rule.isWithinGroups() ? group + " " : "") + of;
  }

  /** Kinds beyond those allowed by a rule, of the kinds that are there. */
  public static int excess(Sameness rule, Iterable<String> keys) {
    if (!rule.isWithinGroups()) {
      var kinds = 0;
      for (var key : keys) {
        kinds += key.isEmpty() ? 0 : 1;
      }
      return Math.max(0, kinds - rule.most());
    }
    var excess = 0;
    var groups = new TreeSet<String>();
    var all = new ArrayList<String>();
    keys.forEach(all::add);
    all.stream().filter(key -> !key.isEmpty()).forEach(key -> groups.add(group(key)));
    for (var group : groups) {
      var kinds =
          all.stream().filter(key -> !key.isEmpty() && group(key).equals(group)).count();
      excess += (int) Math.max(0, kinds - rule.most());
    }
    return excess;
  }

  private static String group(String key) {
    return key.substring(0, key.indexOf(' '));
  }

  /** What comes first. */
  public Order.Aim aim() {
    return inputs.order().aimOrWorst();
  }
}
