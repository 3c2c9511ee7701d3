package pappus.order.timefold;

import ai.timefold.solver.core.api.domain.solution.PlanningEntityCollectionProperty;
import ai.timefold.solver.core.api.domain.solution.PlanningScore;
import ai.timefold.solver.core.api.domain.solution.PlanningSolution;
import ai.timefold.solver.core.api.domain.solution.ProblemFactCollectionProperty;
import ai.timefold.solver.core.api.domain.solution.ProblemFactProperty;
import ai.timefold.solver.core.api.score.buildin.bendablelong.BendableLongScore;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A planning solution: an order as it may be. */
@PlanningSolution
@SuppressWarnings("NullAway") // the solver fills the fields by reflection
class Draft {
  @ProblemFactProperty
  private Asked asked;

  @ProblemFactCollectionProperty
  private List<Asked.Rule> rules;

  @PlanningEntityCollectionProperty
  private List<Learner> learners;

  @PlanningScore(bendableHardLevelsSize = OrderScore.HARD, bendableSoftLevelsSize = OrderScore.SOFT)
  private @Nullable BendableLongScore score;

  Draft() {}

  Draft(Asked asked, List<Asked.Rule> rules, List<Learner> learners) {
    this.asked = asked;
    this.rules = rules;
    this.learners = learners;
  }

  Asked asked() {
    return asked;
  }

  List<Asked.Rule> rules() {
    return rules;
  }

  List<Learner> learners() {
    return learners;
  }

  @Nullable
  BendableLongScore score() {
    return score;
  }
}
