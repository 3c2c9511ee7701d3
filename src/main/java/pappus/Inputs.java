package pappus;

import java.util.List;
import pappus.assessment.Assessor;
import pappus.assessment.Supply;
import pappus.catalog.Catalog;
import pappus.change.Asked;
import pappus.files.Fingerprint;
import pappus.scenario.Scenario;
import pappus.search.Question;

/**
 * What an answer is made from: a scenario and the parts there are, both read and sound.
 *
 * @param supply the catalogue, and how much there is of it
 * @param assessor who judges for the scenario
 * @param files every file that was read
 */
public record Inputs(Scenario scenario, Supply supply, Assessor assessor, List<Fingerprint> files) {
  public Inputs {
    files = List.copyOf(files);
  }

  /** The parts that builds are made of. */
  public Catalog catalog() {
    return supply.catalog();
  }

  /** What a search is asked. */
  public Question question() {
    return Question.of(supply.catalog(), assessor);
  }

  /** The scenario with what there is, to be asked otherwise. */
  public Asked asked() {
    return new Asked(scenario, supply);
  }

  /** With other files as what it was made from. */
  public Inputs from(List<Fingerprint> other) {
    return new Inputs(scenario, supply, assessor, other);
  }
}
