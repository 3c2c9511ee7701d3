package pappus.answers.whatif;

import java.util.Collections;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pappus.answers.build.BuildLines;
import pappus.answers.build.Journey;
import pappus.assessment.Assessment;
import pappus.part.Part;
import pappus.part.Role;
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
   * @param front of the scenario, by what to plan with
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
    var above = front.wholeAbove();
    return above.isEmpty()
        ? "Not proven: these were found along the way."
        : "Proven: none is missing down to %s to plan with."
            .formatted(Journey.figure(isForRange(), above.getAsDouble()));
  }

  /** Builds to choose from. */
  public int size() {
    return front.builds().size();
  }

  /**
   * Builds of the front of which the page shows something, in the order of the front: each that is best wherever both
   * sliders stand, the longest flight with its main parts, and each step of the lines against price and mass.
   */
  public List<Assessment> shown() {
    var shown = Collections.<Assessment>newSetFromMap(new IdentityHashMap<>());
    shown.addAll(front.againstPrice());
    shown.addAll(front.againstMass(deviations));
    var mains = new HashSet<List<Optional<Part>>>();
    for (var build : front.builds()) {
      if (mains.add(Role.MAIN.stream().map(build.build()::part).toList())) {
        shown.add(build);
      }
    }
    for (var grams = mass().high; grams >= mass().low; grams--) {
      addBest(Math.round(1000 * grams) - (scenario.massCap().strict() ? 1 : 0), shown);
    }
    return front.builds().stream().filter(shown::contains).toList();
  }

  /** Adds what is best under a mass, wherever the budget stands. */
  private void addBest(long milligrams, Set<Assessment> shown) {
    var highest = Math.round(100 * budget().high);
    // The least budget of the slider under which all that was before is too dear.
    var left = highest;
    for (var build : front.builds()) {
      var cents = build.cost().cents();
      if (cents <= left && build.mass().neededMilligrams(deviations) <= milligrams) {
        shown.add(build);
        // The next stands one whole step or more below this one's price.
        left = highest - 100 * ((highest - cents) / 100 + 1);
      }
    }
  }

  /** For the page's script: both sliders, and how far the front goes. */
  public Map<String, Object> content() {
    var content = new LinkedHashMap<String, Object>();
    content.put("strict", scenario.massCap().strict());
    content.put("hasBudget", scenario.budget() != null);
    var downTo = front.wholeAbove();
    content.put(
        "downTo",
        downTo.isPresent()
            ? "proven down to %s to plan with"
                .formatted(Journey.figure(isForRange(), downTo.getAsDouble()))
            : "not proven");
    downTo.ifPresent(figure -> content.put("downToFigure", Math.floor(figure * 1000)));
    return content;
  }

  private boolean isForRange() {
    return scenario.isForRange();
  }
}
