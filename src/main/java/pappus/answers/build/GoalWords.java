package pappus.answers.build;

import pappus.assessment.Assessment;
import pappus.document.Spoken;
import pappus.scenario.Goal;
import pappus.scenario.Scenario;

/** What builds are ranked by, in words: a flight, or else a price, a mass or a thrust-to-weight. */
public final class GoalWords {
  private final Goal goal;
  private final Figures figures;

  public GoalWords(Scenario scenario) {
    this.goal = scenario.goalOrEndurance();
    this.figures = new Figures(scenario.isForRange());
  }

  /** Whether it is more of a flight. */
  public boolean isOfFlight() {
    return goal.isOfFlight();
  }

  /** What ranks builds, where it is no flight: "price". */
  public String ranked() {
    return switch (goal) {
      case ENDURANCE -> "time in the air";
      case RANGE -> "range over ground";
      case PRICE -> "price, the cheapest first";
      case MASS -> "mass, the lightest first";
      case THRUST -> "T/W, the highest first";
    };
  }

  /** By how much one is before another, to what they are ranked by: "EUR 0.45", "1.203 g". */
  String margin(Assessment one, Assessment than) {
    return switch (goal) {
      case ENDURANCE, RANGE -> better(one, than);
      case PRICE ->
        BuildLines.currency(one)
            + " "
            + Spoken.number((than.cost().cents() - one.cost().cents()) / 100.0, 2);
      case MASS -> Spoken.number(grams(than) - grams(one), 3) + " g";
      case THRUST -> Spoken.number(thrust(one) - thrust(than), 4) + " thrust-to-weight";
    };
  }

  /** What a build has of it: "reaches 44.0 min", "costs EUR 214". */
  public String has(Assessment build) {
    return switch (goal) {
      case ENDURANCE, RANGE -> "reaches " + figures.expected(build) + " " + figures.unit();
      case PRICE -> "costs " + price(build);
      case MASS -> "weighs " + Spoken.number(grams(build), 1) + " g";
      case THRUST -> "has thrust-to-weight " + Spoken.number(thrust(build), 2);
    };
  }

  /** How much better one is than another, as a person subtracts what is told of both: "2 min more", "EUR 20 less". */
  public String better(Assessment one, Assessment than) {
    return switch (goal) {
      case ENDURANCE, RANGE -> figures.between(one, than) + " more";
      case PRICE -> {
        var units =
            Math.round(than.cost().cents() / 100.0) - Math.round(one.cost().cents() / 100.0);
        yield units == 0
            ? "less than one " + BuildLines.currency(one) + " less"
            : BuildLines.currency(one) + " " + units + " less";
      }
      case MASS -> Spoken.number(grams(than) - grams(one), 1) + " g less";
      case THRUST -> Spoken.number(thrust(one) - thrust(than), 2) + " more";
    };
  }

  private static String price(Assessment build) {
    return Spoken.price(build.cost().cents(), BuildLines.currency(build));
  }

  private static double grams(Assessment build) {
    return build.mass().grams();
  }

  private static double thrust(Assessment build) {
    return build.flight().orElseThrow().thrustToWeight();
  }
}
