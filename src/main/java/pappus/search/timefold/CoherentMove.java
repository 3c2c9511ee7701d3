package pappus.search.timefold;

import ai.timefold.solver.core.api.score.director.ScoreDirector;
import ai.timefold.solver.core.impl.heuristic.move.AbstractMove;
import java.util.Map;
import pappus.part.Part;
import pappus.part.Role;

/** Changes several roles at once. */
final class CoherentMove extends AbstractMove<BuildChoice> {
  private final Map<Role, Part> changes;

  CoherentMove(Map<Role, Part> changes) {
    this.changes = changes;
  }

  @Override
  public boolean isMoveDoable(ScoreDirector<BuildChoice> director) {
    var build = director.getWorkingSolution();
    return changes.entrySet().stream()
        .anyMatch(change -> build.of(change.getKey()).part() != change.getValue());
  }

  @Override
  protected void doMoveOnGenuineVariables(ScoreDirector<BuildChoice> director) {
    var build = director.getWorkingSolution();
    changes.forEach((role, part) -> {
      var choice = build.of(role);
      director.beforeVariableChanged(choice, RoleChoice.PART);
      choice.take(part);
      director.afterVariableChanged(choice, RoleChoice.PART);
    });
  }

  @Override
  public CoherentMove rebase(ScoreDirector<BuildChoice> director) {
    // Roles and parts are facts: they are the same in every copy of the solution.
    return this;
  }

  @Override
  public String toString() {
    return changes.toString();
  }
}
