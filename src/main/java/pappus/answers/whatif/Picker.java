package pappus.answers.whatif;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import pappus.answers.build.Against;
import pappus.answers.build.BuildLines;
import pappus.answers.build.Journey;
import pappus.assessment.Assessment;
import pappus.assessment.flight.FlightEstimate;
import pappus.document.Chart;
import pappus.part.Part;
import pappus.part.Role;
import pappus.quantity.Require;
import pappus.ranking.ParetoFront;
import pappus.scenario.Scenario;

/**
 * Two dials, mass cap and budget, and what the best build is wherever they stand: the longest flight on the front that
 * keeps both. The page looks it up; nothing is computed anew.
 *
 * <p>Why: src/site/markdown/decisions.md#a-page-looks-mass-cap-and-budget-up-on-the-pareto-front
 */
public final class Picker {
  private final Scenario scenario;
  private final ParetoFront front;
  private final double deviations;

  /**
   * @param front of the scenario
   * @param deviations of mass kept below the cap
   */
  public Picker(Scenario scenario, ParetoFront front, double deviations) {
    this.scenario = scenario;
    this.front = front;
    this.deviations = deviations;
  }

  /** A dial; at first it stands at its high end: what the scenario asks, or all that anything needs. */
  public record Dial(double low, double high, String unit) {
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
  public Dial mass() {
    var least = front.builds().stream().mapToDouble(this::grams).min().orElseThrow();
    var cap = scenario.massCap().grams();
    return new Dial(cap - Math.ceil(cap - least + 1), cap, "g");
  }

  /** Whole units of the currency, down to less than the cheapest build of the front costs. */
  public Dial budget() {
    var cheapest =
        front.builds().stream().mapToLong(build -> build.cost().cents()).min().orElseThrow();
    var dearest =
        front.builds().stream().mapToLong(build -> build.cost().cents()).max().orElseThrow();
    var budget = scenario.budget();
    var high = budget == null ? Math.ceil(dearest / 100.0) : budget.cents() / 100.0;
    return new Dial(
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

  /** For the page's script: parts by number, then the builds, longest or farthest first. */
  public Map<String, Object> content() {
    var parts = new LinkedHashMap<String, Integer>();
    var names = new ArrayList<Object>();
    var builds = new ArrayList<Object>();
    for (var build : front.builds()) {
      var chosen = new ArrayList<Integer>();
      build
          .build()
          .parts()
          .forEach((role, part) -> chosen.add(number(role, part, build, parts, names)));
      var cells = new ArrayList<Object>();
      cells.add(build.mass().neededMilligrams(deviations));
      cells.add(build.cost().cents());
      cells.add(Journey.figure(isForRange(), Assessment.figure(build.flown())));
      cells.add(Chart.rounded(Assessment.figure(build.flown()) / (isForRange() ? 1000 : 60)));
      cells.add(Chart.rounded(build.mass().grams()));
      cells.add(Chart.rounded(build.flight().map(FlightEstimate::thrustToWeight).orElse(0.0)));
      cells.add(Chart.rounded(build.flight().map(FlightEstimate::flownW).orElse(0.0)));
      cells.add(chosen);
      builds.add(cells);
    }
    var content = new LinkedHashMap<String, Object>();
    content.put("strict", scenario.massCap().strict());
    content.put("hasBudget", scenario.budget() != null);
    content.put("currency", budget().unit());
    var downTo = downTo();
    content.put(
        "downTo",
        downTo.isPresent()
            ? "proven down to a flight of " + Journey.figure(isForRange(), downTo.getAsDouble())
            : "not proven");
    downTo.ifPresent(
        figure -> content.put("downToValue", Chart.rounded(figure / (isForRange() ? 1000 : 60))));
    content.put("parts", names);
    content.put("builds", builds);
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

  /** Role, name, id and count of a part, by its number among all that occur. */
  private static int number(
      Role role, Part part, Assessment build, Map<String, Integer> parts, List<Object> names) {
    var count = build.build().count(role);
    return parts.computeIfAbsent("%s %s %s".formatted(role.key(), part.id(), count), key -> {
      names.add(List.of(role.label(), part.name(), part.id(), count));
      return names.size() - 1;
    });
  }
}
