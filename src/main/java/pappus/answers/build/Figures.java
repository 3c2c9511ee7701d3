package pappus.answers.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pappus.assessment.Assessment;
import pappus.assessment.flight.FlightEstimate;
import pappus.document.Spoken;
import pappus.document.Table;

/**
 * The numbers of a build, the same wherever it is told: what to plan on, rounded down, what to expect, mass, thrust over
 * weight and price. What one flight has more than another is the difference of what is told of both.
 *
 * @param isForRange whether flights are told in kilometres; else in minutes
 */
public record Figures(boolean isForRange) {
  /** What marks a build that flies better than such aircraft are known to. */
  public static final String DOUBTED = "?";

  /** What the mark says. */
  public static final String DOUBTED_MEANS =
      "? too good to be true: better than such aircraft are known to fly; distrust it until measured.";

  private static final double THOUSANDTHS = 1000;
  private static final String NONE = "-";

  /** Unit of the flights. */
  public String unit() {
    return isForRange ? "km" : "min";
  }

  /** What stands above the numbers. */
  public String heading() {
    return heading("price");
  }

  /**
   * The same above another price.
   *
   * @param price what it is called
   */
  public String heading(String price) {
    return line("plan on", "expect", "g", "T/W", price);
  }

  /** Numbers of a build, in columns of their own width. */
  public String of(Assessment build) {
    return of(build, Spoken.price(build.cost().cents(), BuildLines.currency(build)));
  }

  /**
   * The same with another price.
   *
   * @param price a text of at most eight letters
   */
  public String of(Assessment build, String price) {
    return line(
        build.flight().isEmpty() ? NONE : planned(build),
        build.flight().isEmpty() ? NONE : expected(build),
        Spoken.number(build.mass().grams(), 0),
        build.flight().map(flight -> Spoken.number(flight.thrustToWeight(), 1)).orElse(NONE),
        price);
  }

  private static String line(
      String plan, String expect, String grams, String thrust, String price) {
    return String.format(Locale.ROOT, "%7s %6s %4s %4s %8s", plan, expect, grams, thrust, price);
  }

  /** Columns of the numbers, for tables with a row a build. */
  public List<Table.Column> columns(String currency) {
    return columns(currency, ", " + unit());
  }

  /** The same where the unit of the flights is said beside the table. */
  public List<Table.Column> brief(String currency) {
    return columns(currency, "");
  }

  private List<Table.Column> columns(String currency, String unit) {
    return List.of(
        Table.Column.number(
            "plan on" + unit, isForRange ? "plan_km" : "plan_min", this::plannedUnits),
        Table.Column.number(
            "expect" + unit, isForRange ? "range_km" : "flight_min", this::expectedUnits),
        Table.Column.number("g", "all_up_g", 0),
        Table.Column.number("T/W", "thrust_over_weight", 1),
        Table.Column.number(currency, "price_" + currency.toLowerCase(Locale.ROOT), 0));
  }

  /** Cells for {@link #columns}, with every digit; empty texts where there is no build, or no flight. */
  public List<Object> cells(Optional<Assessment> build) {
    var flight = build.flatMap(Assessment::flight);
    var cells = new ArrayList<Object>();
    cells.add(
        flight.isEmpty() ? "" : build.orElseThrow().planned() / THOUSANDTHS / secondsOrMetres());
    cells.add(
        flight.isEmpty() ? "" : Assessment.figure(build.orElseThrow().flown()) / secondsOrMetres());
    cells.add(build.<Object>map(found -> found.mass().grams()).orElse(""));
    cells.add(flight.<Object>map(FlightEstimate::thrustToWeight).orElse(""));
    cells.add(build.<Object>map(found -> found.cost().cents() / 100.0).orElse(""));
    return cells;
  }

  /** The mark of a build that is not to be believed; empty for any other. */
  public static String mark(Assessment build) {
    return build.isBeyondBelief() ? DOUBTED : "";
  }

  private double secondsOrMetres() {
    return isForRange ? 1000 : 60;
  }

  private String plannedUnits(double units) {
    // What was divided comes back a hair below what it was.
    return planned(units * secondsOrMetres() + 1e-9);
  }

  private String expectedUnits(double units) {
    return expected(units * secondsOrMetres());
  }

  /** A flight that somebody relies on, rounded down, from seconds or metres. */
  public String planned(double figure) {
    return isForRange ? Journey.atMost(figure) : Spoken.atMostMinutes(figure);
  }

  /** What to plan on with a build. */
  public String planned(Assessment build) {
    return planned(build.planned() / THOUSANDTHS);
  }

  /** A flight by estimate, from seconds or metres. */
  public String expected(double figure) {
    return isForRange ? Journey.kilometres(figure) : Spoken.minutes(figure);
  }

  /** What to expect of a build. */
  public String expected(Assessment build) {
    return expected(Assessment.figure(build.flown()));
  }

  /** What to plan on and what to expect of a build that flies, with the unit. */
  public String sentence(Assessment build) {
    return "plan on %s %s, expect %s".formatted(planned(build), unit(), expected(build));
  }

  /** By how much one flight is planned shorter than another, in words. */
  public String lost(double from, double to) {
    return amount(told(planned(from)) - told(planned(to)));
  }

  /** How a build's flight by estimate stands to another's, in words. */
  public String against(Assessment from, Assessment to) {
    var difference = told(expected(to)) - told(expected(from));
    var exact = to.flown() - from.flown();
    if (exact == 0) {
      return isForRange ? "as far" : "as long";
    }
    var isMore = exact > 0;
    return amount(Math.abs(difference))
        + (isForRange ? (isMore ? " farther" : " less far") : isMore ? " longer" : " shorter");
  }

  /** How much longer or farther a build flies by estimate, in words without a direction. */
  public String between(Assessment one, Assessment other) {
    return amount(Math.abs(told(expected(one)) - told(expected(other))));
  }

  private String amount(double difference) {
    if (isForRange) {
      return difference < 0.01
          ? "less than 100 m"
          : Spoken.number(difference, Math.round(100 * difference) % 10 == 0 ? 1 : 2) + " km";
    }
    var halves = Math.round(difference * 2);
    return switch ((int) halves) {
      case 0 -> "less than half a minute";
      case 1 -> "half a minute";
      default -> Spoken.number(halves / 2.0, halves % 2 == 0 ? 0 : 1) + " min";
    };
  }

  /** The difference of what is planned of two flights, with its sign. */
  public String change(double from, double to) {
    return Spoken.change(told(planned(to)) - told(planned(from)), 1);
  }

  /** A flight to plan with as it is told, as a number in minutes or kilometres, from seconds or metres. */
  public double told(double figure) {
    return told(planned(figure));
  }

  /** The least difference that is told of two flights. */
  public double step() {
    return isForRange ? 0.1 : 0.5;
  }

  private static double told(String figure) {
    return Double.parseDouble(figure);
  }
}
