package pappus.answers.whatif;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import pappus.answers.build.Against;
import pappus.answers.build.BuildLines;
import pappus.answers.build.Journey;
import pappus.assessment.Assessment;
import pappus.quantity.Require;
import pappus.ranking.ParetoFront;
import pappus.scenario.Scenario;

/**
 * Two sliders, mass cap and budget, and how far the front goes on which the page looks the best build up wherever they
 * stand: the longest flight that keeps both. Nothing is computed anew.
 *
 * <p>Why: src/site/markdown/decisions.md#a-page-looks-mass-cap-and-budget-up-on-the-pareto-front
 */
public final class Sliders {
  private final Scenario scenario;
  private final ParetoFront front;
  private final double deviations;

  /**
   * @param front of the scenario
   * @param deviations of mass kept below the cap
   */
  public Sliders(Scenario scenario, ParetoFront front, double deviations) {
    this.scenario = scenario;
    this.front = front;
    this.deviations = deviations;
  }

  /** A slider; at first it stands at its high end: what the scenario asks, or all that anything needs. */
  public record Slider(double low, double high, String unit) {
    /** As the page has it. */
    public String lowText() {
      return Require.plain(low);
    }

    /** As the page has it. */
    public String highText() {
      return Require.plain(high);
    }
  }

  /** Grams, in whole steps from the scenario's cap down to less than any build of the front needs. */
  public Slider mass() {
    var least = front.builds().stream().mapToDouble(this::grams).min().orElseThrow();
    var cap = scenario.massCap().grams();
    return new Slider(cap - Math.ceil(cap - least + 1), cap, "g");
  }

  /** Whole units of the currency, down to less than the cheapest build of the front costs. */
  public Slider budget() {
    var cheapest =
        front.builds().stream().mapToLong(build -> build.cost().cents()).min().orElseThrow();
    var dearest =
        front.builds().stream().mapToLong(build -> build.cost().cents()).max().orElseThrow();
    var budget = scenario.budget();
    var high = budget == null ? Math.ceil(dearest / 100.0) : budget.cents() / 100.0;
    return new Slider(
        high - Math.ceil(high - cheapest / 100.0 + 1),
        high,
        BuildLines.currency(front.builds().get(0)));
  }

  private double grams(Assessment build) {
    return build.mass().neededMilligrams(deviations) / 1000.0;
  }

  /** How far it can be trusted. */
  public String standing() {
    return SweepWords.standing(front, new Against(scenario));
  }

  /** Builds to choose from. */
  public int size() {
    return front.builds().size();
  }

  /** For the page's script: both sliders, and how far the front goes. */
  public Map<String, Object> content() {
    var content = new LinkedHashMap<String, Object>();
    content.put("strict", scenario.massCap().strict());
    content.put("hasBudget", scenario.budget() != null);
    var downTo = downTo();
    content.put(
        "downTo",
        downTo.isPresent()
            ? "proven down to a flight of " + Journey.figure(isForRange(), downTo.getAsDouble())
            : "not proven");
    downTo.ifPresent(figure -> content.put("downToFigure", Math.floor(figure * 1000)));
    return content;
  }

  private boolean isForRange() {
    return scenario.isForRange();
  }

  /** The flight down to which none is missing, seconds or metres; absent where nothing is proven. */
  private OptionalDouble downTo() {
    var best = Assessment.figure(front.builds().get(0).flown());
    if (front.isProof()) {
      return OptionalDouble.of(front.share() * best);
    }
    var atMost = front.proof().atMost();
    return atMost.isPresent()
        ? OptionalDouble.of(Assessment.figure(atMost.getAsLong()))
        : OptionalDouble.empty();
  }
}
