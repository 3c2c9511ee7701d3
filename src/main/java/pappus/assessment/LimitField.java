package pappus.assessment;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import pappus.quantity.Money;
import pappus.quantity.Require;
import pappus.scenario.MassCap;
import pappus.scenario.Scenario;

/**
 * The field of a scenario that states a limit, by which it can be swept, loosened and given up.
 *
 * @param path of it, such as {@code massCap.grams}
 * @param kind what it takes
 * @param step by which it is loosened, in its unit, and to which it is told
 * @param loosest bound that it takes, which excludes nothing
 * @param stated its bound as it stands, in its unit; empty where a scenario goes without
 * @param allowing the bound to state, in its unit, so that a value is just allowed
 * @param text what it asks for, in words, where it stands
 */
public record LimitField(
    String path,
    Kind kind,
    BigDecimal step,
    double loosest,
    Function<Scenario, Optional<Double>> stated,
    BiFunction<Scenario, Double, Double> allowing,
    Function<Scenario, String> text) {
  private static final double MILLIGRAM = 0.001;

  /** What a field takes. */
  public enum Kind {
    /** A plain number, which may not be left out once others ask for it. */
    NUMBER,
    /** An amount with its currency, which may be left out. */
    MONEY
  }

  static final LimitField MASS_CAP = new LimitField(
      "massCap.grams",
      Kind.NUMBER,
      new BigDecimal("0.1"),
      MassCap.MOST_GRAMS,
      scenario -> Optional.of(scenario.massCap().grams()),
      (scenario, grams) -> scenario.massCap().strict() ? grams + MILLIGRAM : grams,
      scenario -> (scenario.massCap().strict() ? "below " : "at most ")
          + Require.plain(scenario.massCap().grams()) + " g");

  static final LimitField LEAST_THRUST_TO_WEIGHT = new LimitField(
      "leastThrustToWeight",
      Kind.NUMBER,
      new BigDecimal("0.01"),
      1,
      scenario -> Optional.of(scenario.leastThrustToWeight()),
      (scenario, ratio) -> ratio,
      scenario -> "thrust-to-weight of " + Require.plain(scenario.leastThrustToWeight()));

  static final LimitField LEAST_MINUTES =
      leastFlight("leastMinutes", "0.1", Scenario::leastMinutes, "min");

  static final LimitField LEAST_KILOMETRES =
      leastFlight("leastKilometres", "0.01", Scenario::leastKilometres, "km");

  static final LimitField REACH = new LimitField(
      "reachMetres",
      Kind.NUMBER,
      BigDecimal.TEN,
      1,
      scenario -> Optional.ofNullable(scenario.reachMetres()),
      (scenario, metres) -> metres,
      scenario -> "picture and control out to %s m"
          .formatted(
              Optional.ofNullable(scenario.reachMetres()).map(Require::plain).orElse("")));

  static final LimitField CLEAR_VIEW = new LimitField(
      "clearViewDegrees",
      Kind.NUMBER,
      new BigDecimal("0.1"),
      1,
      scenario -> Optional.ofNullable(scenario.clearViewDegrees()),
      (scenario, degrees) -> degrees,
      scenario -> Optional.ofNullable(scenario.clearViewDegrees())
          .map(degrees -> "a view ahead clear of discs over " + Require.plain(degrees) + "°")
          .orElse(""));

  static final LimitField BUDGET = new LimitField(
      "budget",
      Kind.MONEY,
      BigDecimal.ONE,
      Money.MOST.doubleValue(),
      scenario -> Optional.ofNullable(scenario.budget()).map(LimitField::amount),
      (scenario, amount) -> amount,
      scenario -> Optional.ofNullable(scenario.budget())
          .map(budget -> "a budget of " + budget.currency() + " " + Require.plain(amount(budget)))
          .orElse(""));

  private static LimitField leastFlight(
      String path, String step, Function<Scenario, @Nullable Double> stated, String unit) {
    return new LimitField(
        path,
        Kind.NUMBER,
        new BigDecimal(step),
        Double.parseDouble(step),
        scenario -> Optional.ofNullable(stated.apply(scenario)),
        (scenario, least) -> least,
        scenario -> "at least %s %s to plan with"
            .formatted(
                Optional.ofNullable(stated.apply(scenario)).map(Require::plain).orElse(""), unit));
  }

  private static double amount(Money money) {
    return money.amount().doubleValue();
  }

  /** Whether it is an amount of money. */
  public boolean isMoney() {
    return kind == Kind.MONEY;
  }

  /** A bound as the field takes it: money in whole cents. */
  public BigDecimal rounded(double bound) {
    var exact = BigDecimal.valueOf(bound);
    return isMoney() ? exact.setScale(2, RoundingMode.HALF_UP) : exact;
  }

  /**
   * What to change in a scenario to state a bound, by path.
   *
   * @param currency of money
   * @throws IllegalArgumentException if it is no amount of money where it has to be
   */
  public Map<String, Object> stating(BigDecimal bound, String currency) {
    return Map.of(path, isMoney() ? new Money(bound, currency) : bound);
  }

  /** What to change in a scenario to give the limit up, by path; null leaves a field out. */
  public Map<String, Object> givenUp() {
    var changes = new HashMap<String, Object>();
    changes.put(path, isMoney() ? null : loosest);
    return changes;
  }
}
