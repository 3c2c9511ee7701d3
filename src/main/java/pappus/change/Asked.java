package pappus.change;

import java.util.Map;
import pappus.assessment.Supply;
import pappus.files.json.Altered;
import pappus.scenario.Scenario;
import pappus.search.Question;

/**
 * A scenario, and what there is to build from.
 */
public record Asked(Scenario scenario, Supply supply) {

  /** This question with some fields of the scenario changed; null leaves a field out. */
  public Asked with(Map<String, ?> changes) {
    return new Asked(Altered.record(Scenario.class, scenario, changes), supply);
  }

  /** What a search is asked. */
  public Question question() {
    return Question.of(supply.catalog(), supply.assessor(scenario));
  }
}
