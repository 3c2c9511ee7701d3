package pappus.order.timefold;

import java.util.List;
import pappus.order.choice.Choice;
import pappus.order.column.Column;

/** A build that a learner may get, with what it takes. Equal to itself alone. */
final class Option {
  private final Column column;
  private final List<Slot.Use> uses;
  private final List<String> keys;
  private List<Option> near = List.of();

  Option(Choice choice, Column column, List<Slot.Use> uses) {
    this.column = column;
    this.uses = List.copyOf(uses);
    this.keys = choice.same().stream().map(rule -> choice.key(rule, column)).toList();
  }

  Column column() {
    return column;
  }

  List<Slot.Use> uses() {
    return uses;
  }

  /** Kinds of what is to be the same, by rule; empty text where a rule does not ask. */
  String key(int rule) {
    return keys.get(rule);
  }

  /** Others of the group that differ from it in the fewest parts. */
  List<Option> near() {
    return near;
  }

  void isNear(List<Option> others) {
    near = List.copyOf(others);
  }

  @Override
  public String toString() {
    return column.toString();
  }
}
