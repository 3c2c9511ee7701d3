package pappus.search.timefold;

import ai.timefold.solver.core.api.domain.solution.PlanningEntityProperty;
import ai.timefold.solver.core.api.domain.solution.PlanningScore;
import ai.timefold.solver.core.api.domain.solution.PlanningSolution;
import ai.timefold.solver.core.api.score.buildin.hardsoftlong.HardSoftLongScore;
import org.jspecify.annotations.Nullable;
import pappus.search.Incumbents;
import pappus.search.Pairs;
import pappus.search.Question;

/** The planning problem: one plan, and what judges and remembers it. */
@PlanningSolution
@SuppressWarnings({"unused", "NullAway"}) // the solver reads and fills the fields by reflection
class BuildChoice {
  @PlanningEntityProperty
  private BuildPlan plan;

  @PlanningScore
  private @Nullable HardSoftLongScore score;

  private Question question;
  private Incumbents pool;
  private Pairs pairs;

  BuildChoice() {}

  BuildChoice(BuildPlan plan, Question question, Incumbents pool, Pairs pairs) {
    this.plan = plan;
    this.question = question;
    this.pool = pool;
    this.pairs = pairs;
  }

  BuildPlan plan() {
    return plan;
  }

  Question question() {
    return question;
  }

  Incumbents pool() {
    return pool;
  }

  Pairs pairs() {
    return pairs;
  }
}
