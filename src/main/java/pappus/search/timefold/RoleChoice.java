package pappus.search.timefold;

import ai.timefold.solver.core.api.domain.entity.PlanningEntity;
import ai.timefold.solver.core.api.domain.lookup.PlanningId;
import ai.timefold.solver.core.api.domain.valuerange.ValueRangeProvider;
import ai.timefold.solver.core.api.domain.variable.PlanningVariable;
import java.util.List;
import org.jspecify.annotations.Nullable;
import pappus.part.Part;
import pappus.part.Role;

/** A planning entity: the part of one role. Mutable, because the solver wants it so; it never leaves this package. */
@PlanningEntity
@SuppressWarnings("NullAway") // the solver fills the fields by reflection
class RoleChoice {
  /** Name of the planning variable. */
  static final String PART = "part";

  @PlanningId
  private Role role;

  @ValueRangeProvider
  private List<Part> options;

  @PlanningVariable(allowsUnassigned = true)
  private @Nullable Part part;

  RoleChoice() {}

  RoleChoice(Role role, List<Part> options, @Nullable Part part) {
    this.role = role;
    this.options = options;
    this.part = part;
  }

  Role role() {
    return role;
  }

  List<Part> options() {
    return options;
  }

  @Nullable
  Part part() {
    return part;
  }

  void take(@Nullable Part other) {
    part = other;
  }

  @Override
  public String toString() {
    return role + "=" + part;
  }
}
