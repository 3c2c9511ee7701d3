package pappus.order.timefold;

import ai.timefold.solver.core.api.domain.entity.PlanningEntity;
import ai.timefold.solver.core.api.domain.lookup.PlanningId;
import ai.timefold.solver.core.api.domain.valuerange.ValueRangeProvider;
import ai.timefold.solver.core.api.domain.variable.PlanningVariable;
import java.util.List;

/** A planning entity: who gets a build. Mutable, because the solver wants it so; it never leaves this package. */
@PlanningEntity
@SuppressWarnings("NullAway") // the solver fills the fields by reflection
class Learner {
  /** Name of the planning variable. */
  static final String OPTION = "option";

  @PlanningId
  private int id;

  @ValueRangeProvider
  private List<Option> options;

  @PlanningVariable
  private Option option;

  Learner() {}

  Learner(int id, List<Option> options, Option option) {
    this.id = id;
    this.options = options;
    this.option = option;
  }

  int id() {
    return id;
  }

  List<Option> options() {
    return options;
  }

  Option option() {
    return option;
  }

  void take(Option other) {
    option = other;
  }

  long share() {
    return option.column().share();
  }

  long thousandths() {
    return option.column().thousandths();
  }

  @Override
  public String toString() {
    return id + "=" + option;
  }
}
