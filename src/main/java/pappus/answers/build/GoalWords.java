package pappus.answers.build;

import java.util.Comparator;
import pappus.assessment.Assessment;
import pappus.assessment.Purpose.Measure;
import pappus.document.Spoken;
import pappus.scenario.Scenario;

/** What builds are ranked by, in words: a flight, or else a price, a mass, a thrust-to-weight or pieces to buy. */
public final class GoalWords {
  private static final Comparator<Assessment> FEWEST_FIRST = Comparator.<Assessment>comparingInt(
          build -> build.cost().piecesToBuy())
      .thenComparing(build -> build.cost().cents())
      .thenComparing(Comparator.comparing(Assessment::flown).reversed());

  private final Measure measure;
  private final Figures figures;

  public GoalWords(Scenario scenario) {
    this.measure = Measure.ordering(scenario);
    this.figures = new Figures(scenario.isForRange());
  }

  /** Whether it is more of a flight. */
  public boolean isOfFlight() {
    return measure.isOfFlight();
  }

  /** What ranks builds, where it is no flight: "price". */
  public String ranked() {
    return switch (measure) {
      case FLIGHT, PLAN_WITH -> figures.isForRange() ? "range over ground" : "time in the air";
      case PRICE -> "price, the cheapest first";
      case MASS -> "mass, the lightest first";
      case THRUST -> "T/W, the highest first";
      case PIECES -> "pieces to buy, the fewest first, of those that plan with 95 % of the best";
    };
  }

  /** By how much one is before another, to what they are ranked by: "EUR 0.45", "1.203 g". */
  String margin(Assessment one, Assessment than) {
    return switch (measure) {
      case FLIGHT, PLAN_WITH -> better(one, than);
      case PRICE -> cents(one, than);
      case MASS -> Spoken.number(grams(than) - grams(one), 3) + " g";
      case THRUST -> Spoken.number(thrust(one) - thrust(than), 4) + " thrust-to-weight";
      case PIECES -> {
        var pieces = than.cost().piecesToBuy() - one.cost().piecesToBuy();
        yield pieces == 0 ? cents(one, than) : pieces + (pieces == 1 ? " piece" : " pieces");
      }
    };
  }

  /** What a build has of it: "reaches 44.0 min", "costs EUR 214". */
  public String has(Assessment build) {
    return switch (measure) {
      case FLIGHT, PLAN_WITH -> "reaches " + figures.expected(build) + " " + figures.unit();
      case PRICE -> "costs " + price(build);
      case MASS -> "weighs " + Spoken.number(grams(build), 1) + " g";
      case THRUST -> "has thrust-to-weight " + Spoken.number(thrust(build), 2);
      case PIECES -> "leaves " + build.cost().piecesToBuy() + " to buy for " + price(build);
    };
  }

  /** How much better one is than another, as a person subtracts what is told of both: "2 min more", "EUR 20 less". */
  public String better(Assessment one, Assessment than) {
    return switch (measure) {
      case FLIGHT, PLAN_WITH -> figures.between(one, than) + " more";
      case PRICE -> cheaper(one, than);
      case MASS -> Spoken.number(grams(than) - grams(one), 1) + " g less";
      case THRUST -> Spoken.number(thrust(one) - thrust(than), 2) + " more";
      case PIECES -> {
        var pieces = than.cost().piecesToBuy() - one.cost().piecesToBuy();
        yield pieces == 0
            ? cheaper(one, than)
            : pieces + (pieces == 1 ? " piece" : " pieces") + " fewer";
      }
    };
  }

  /** Whether one build comes before another, as far as both have what is demanded. */
  boolean isAhead(Assessment one, Assessment than) {
    return measure == Measure.PIECES
        ? FEWEST_FIRST.compare(one, than) < 0
        : one.objective() > than.objective();
  }

  private static String cents(Assessment one, Assessment than) {
    return BuildLines.currency(one)
        + " "
        + Spoken.number((than.cost().cents() - one.cost().cents()) / 100.0, 2);
  }

  private static String cheaper(Assessment one, Assessment than) {
    var units = Math.round(than.cost().cents() / 100.0) - Math.round(one.cost().cents() / 100.0);
    return units == 0
        ? "less than one " + BuildLines.currency(one) + " less"
        : BuildLines.currency(one) + " " + units + " less";
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
