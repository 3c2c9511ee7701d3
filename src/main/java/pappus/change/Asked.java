package pappus.change;

import java.math.BigDecimal;
import java.util.Map;
import pappus.assessment.LimitKind;
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

  /** What is asked with another bound of a limit, in its unit. */
  public Asked with(LimitKind limit, BigDecimal bound) {
    return with(limit.field().stating(bound, currency()));
  }

  /** The currency of its money; without any price to tell it, EUR. */
  public String currency() {
    var budget = scenario.budget();
    if (budget != null) {
      return budget.currency();
    }
    var ofPrices = supply.catalog().currency();
    return ofPrices.isEmpty() ? "EUR" : ofPrices;
  }

  /** What a search is asked. */
  public Question question() {
    return Question.of(supply.catalog(), supply.assessor(scenario));
  }
}
