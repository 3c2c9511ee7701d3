package pappus.search.timefold;

import ai.timefold.solver.core.api.score.buildin.hardsoftlong.HardSoftLongScore;
import ai.timefold.solver.core.api.score.calculator.EasyScoreCalculator;

/**
 * Lets the solver ask the one assessment: hard is the shortfall, soft the objective.
 * Public because the solver makes it by reflection.
 *
 * <p>Why: src/site/markdown/decisions.md#an-easy-score-calculator
 */
public final class BuildScore implements EasyScoreCalculator<BuildChoice, HardSoftLongScore> {
  @Override
  public HardSoftLongScore calculateScore(BuildChoice build) {
    var assessment = build.question().assessor().assess(build.toBuild());
    build.incumbents().offer(assessment);
    return HardSoftLongScore.of(-assessment.shortfall(), assessment.objective());
  }
}
