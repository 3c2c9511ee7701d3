package pappus.search.timefold;

import ai.timefold.solver.core.api.score.director.ScoreDirector;
import ai.timefold.solver.core.impl.heuristic.move.AbstractMove;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import pappus.part.Part;
import pappus.part.Role;

/** Changes several roles at once. */
final class CoherentMove extends AbstractMove<BuildChoice> {
  private final BuildPlan plan;
  private final Map<Role, Part> changes;

  CoherentMove(BuildPlan plan, Map<Role, Part> changes) {
    this.plan = plan;
    this.changes = changes;
  }

  @Override
  public boolean isMoveDoable(ScoreDirector<BuildChoice> director) {
    return changes.entrySet().stream()
        .anyMatch(change -> plan.get(change.getKey()) != change.getValue());
  }

  @Override
  protected void doMoveOnGenuineVariables(ScoreDirector<BuildChoice> director) {
    changes.forEach((role, part) -> {
      director.beforeVariableChanged(plan, variable(role));
      plan.set(role, part);
      director.afterVariableChanged(plan, variable(role));
    });
  }

  @Override
  public CoherentMove rebase(ScoreDirector<BuildChoice> director) {
    // Parts are facts and there is one plan: only the plan has another copy there.
    return new CoherentMove(director.lookUpWorkingObject(plan), changes);
  }

  @Override
  public Collection<?> getPlanningEntities() {
    return List.of(plan);
  }

  @Override
  public Collection<?> getPlanningValues() {
    return new ArrayList<>(changes.values());
  }

  @Override
  public String toString() {
    return new EnumMap<>(changes).toString();
  }

  /** Name of the planning variable of a role. */
  static String variable(Role role) {
    return switch (role) {
      case FRAME -> "frame";
      case MOTOR -> "motor";
      case PROPELLER -> "propeller";
      case BATTERY -> "battery";
      case BOARD -> "board";
      case TRANSMITTER -> "transmitter";
      case CAMERA -> "camera";
      case RECEIVER -> "receiver";
      case VIDEO_ANTENNA -> "videoAntenna";
      case RADIO_ANTENNA -> "radioAntenna";
      case GPS -> "gps";
      case BUZZER -> "buzzer";
      case PAYLOAD_CAMERA -> "payloadCamera";
      case CAPACITOR -> "capacitor";
      case LEAD -> "lead";
    };
  }
}
