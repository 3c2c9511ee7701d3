package pappus.answers.whatif;

import java.util.Collections;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import pappus.answers.build.BuildLines;
import pappus.answers.build.Journey;
import pappus.assessment.Assessment;
import pappus.part.Part;
import pappus.part.Role;
import pappus.quantity.Require;
import pappus.ranking.Lookup;
import pappus.ranking.ParetoFront;
import pappus.scenario.Scenario;

/**
 * Two sliders, mass cap and budget, and how far that goes in which the page looks the best build up wherever they stand:
 * the first that keeps both. Nothing is computed anew.
 *
 * <p>Why: src/site/markdown/decisions.md#a-page-looks-mass-cap-and-budget-up-on-the-pareto-front
 */
public final class Sliders {
  private final Scenario scenario;
  private final ParetoFront front;
  private final Lookup lookup;
  private final double deviations;

  /**
   * @param front of the scenario, by what to plan with
   * @param lookup by what is to be best; of the front where that is a flight
   * @param deviations of mass kept below the cap
   */
  public Sliders(Scenario scenario, ParetoFront front, Lookup lookup, double deviations) {
    this.scenario = scenario;
    this.front = front;
    this.lookup = lookup;
    this.deviations = deviations;
  }

  /** Whether anything can be looked up. */
  public boolean areThere() {
    return !lookup.builds().isEmpty();
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

  /** Grams, in whole steps from the scenario's cap down to less than any build needs. */
  public Slider mass() {
    var least = lookup.builds().stream().mapToDouble(this::grams).min().orElseThrow();
    var cap = scenario.massCap().grams();
    return new Slider(cap - Math.ceil(cap - least + 1), cap, "g");
  }

  /** Whole units of the currency, down to less than the cheapest build costs. */
  public Slider budget() {
    var cheapest =
        lookup.builds().stream().mapToLong(build -> build.cost().cents()).min().orElseThrow();
    var dearest = Stream.concat(lookup.builds().stream(), front.builds().stream())
        .mapToLong(build -> build.cost().cents())
        .max()
        .orElseThrow();
    var budget = scenario.budget();
    var high = budget == null ? Math.ceil(dearest / 100.0) : budget.cents() / 100.0;
    return new Slider(
        high - Math.ceil(high - cheapest / 100.0 + 1),
        high,
        BuildLines.currency(lookup.builds().get(0)));
  }

  private double grams(Assessment build) {
    return build.mass().neededMilligrams(deviations) / 1000.0;
  }

  /** What the sliders choose among, and how far it can be trusted. */
  public String standing() {
    if (!isOfFlight()) {
      return "The sliders choose among %s builds, %s first, each of less mass or price than all before it: what recommend picks first at the same limits. %s"
          .formatted(
              lookup.builds().size(),
              best(),
              lookup.isWhole()
                  ? "Proven: none is missing."
                  : "Not proven to the last: what comes after them was not looked for.");
    }
    return "The sliders choose among %s builds that no other surpasses in what to plan with, mass and price at once: %s at the same limits. %s"
        .formatted(
            lookup.builds().size(),
            scenario.prefer() == null
                ? "what recommend picks"
                : "what recommend calls %s, not what of it is owned,".formatted(best()),
            flightsStanding());
  }

  private String flightsStanding() {
    var above = front.wholeAbove();
    return above.isEmpty()
        ? "Not proven: these were found along the way."
        : "Proven: none is missing down to %s to plan with."
            .formatted(Journey.figure(isForRange(), above.getAsDouble()));
  }

  /** Whether a longer or farther flight is better. */
  public boolean isOfFlight() {
    return scenario.goalOrEndurance().isOfFlight();
  }

  /** What is called best. */
  private String best() {
    return switch (scenario.goalOrEndurance()) {
      case ENDURANCE -> "the longest";
      case RANGE -> "the farthest";
      case PRICE -> "the cheapest";
      case MASS -> "the lightest";
      case THRUST -> "the strongest";
    };
  }

  /**
   * Builds of the front of which the page shows something, in the order of the front: the longest flight with its main
   * parts, each step of the lines against price and mass, and what the sliders find among them.
   *
   * @param found by the sliders
   */
  public List<Assessment> shown(List<Assessment> found) {
    var shown = Collections.<Assessment>newSetFromMap(new IdentityHashMap<>());
    shown.addAll(front.againstPrice());
    shown.addAll(front.againstMass(deviations));
    var mains = new HashSet<List<Optional<Part>>>();
    for (var build : front.builds()) {
      if (mains.add(Role.MAIN.stream().map(build.build()::part).toList())) {
        shown.add(build);
      }
    }
    shown.addAll(found);
    return front.builds().stream().filter(shown::contains).toList();
  }

  /** Builds that are best wherever both sliders stand, the best first. */
  public List<Assessment> found() {
    var found = Collections.<Assessment>newSetFromMap(new IdentityHashMap<>());
    for (var grams = mass().high; grams >= mass().low; grams--) {
      addBest(Math.round(1000 * grams) - (scenario.massCap().strict() ? 1 : 0), found);
    }
    return lookup.builds().stream().filter(found::contains).toList();
  }

  /** Adds what is best under a mass, wherever the budget stands. */
  private void addBest(long milligrams, Set<Assessment> found) {
    var highest = Math.round(100 * budget().high);
    // The least budget of the slider under which all that was before is too dear.
    var left = highest;
    for (var build : lookup.builds()) {
      var cents = build.cost().cents();
      if (cents <= left && build.mass().neededMilligrams(deviations) <= milligrams) {
        found.add(build);
        // The next stands one whole step or more below this one's price.
        left = highest - 100 * ((highest - cents) / 100 + 1);
      }
    }
  }

  /** For the page's script: both sliders, and how far that goes in which it looks up. */
  public Map<String, Object> content() {
    var content = new LinkedHashMap<String, Object>();
    content.put("strict", scenario.massCap().strict());
    content.put("hasBudget", scenario.budget() != null);
    content.put("best", best());
    if (!isOfFlight()) {
      content.put("isWhole", lookup.isWhole());
      return content;
    }
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
