package pappus.assessment;

import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import pappus.scenario.Scenario;

/**
 * Every limit that a build can be held to, with all that is said of it wherever it is met. A limit that a scenario states has
 * a field, and so can be swept and loosened; the first of these is the last that one would give up.
 */
public enum LimitKind {
  MASS_CAP("mass-cap", "all-up mass with its doubt", "g", Way.AT_MOST, LimitField.MASS_CAP),
  THRUST_TO_WEIGHT(
      "thrust-to-weight", "thrust-to-weight", "", Way.AT_LEAST, LimitField.LEAST_THRUST_TO_WEIGHT),
  LEAST_MINUTES(
      "least-minutes", "time to plan with", "min", Way.AT_LEAST, LimitField.LEAST_MINUTES),
  LEAST_KILOMETRES(
      "least-kilometres", "range to plan with", "km", Way.AT_LEAST, LimitField.LEAST_KILOMETRES),
  REACH("reach", "reach of the %s link", "m", Way.AT_LEAST, LimitField.REACH),
  BUDGET("budget", "price to buy", "%s", Way.AT_MOST, LimitField.BUDGET),
  CLEAR_VIEW("clear-view", "view ahead clear of discs", "°", Way.AT_LEAST, LimitField.CLEAR_VIEW),
  IN_STOCK("in-stock", "%s in the build", Limit.PIECES, Way.AT_MOST, null),
  TOP_SPEED("top-speed", "airspeed %s", "m/s", Way.AT_MOST, null),
  GROUND_SPEED("ground-speed", "speed over ground %s", "m/s", Way.AT_LEAST, null),
  MOTOR_CURRENT("motor-current", "motor current %s", "A", Way.AT_MOST, null),
  CONTROLLER_CURRENT("controller-current", "controller current %s", "A", Way.AT_MOST, null),
  PACK_CURRENT("pack-current", "pack current %s", "A", Way.AT_MOST, null),
  PLUG_CURRENT("plug-current", "plug current %s", "A", Way.AT_MOST, null),
  LEAD_CURRENT("lead-current", "lead current %s", "A", Way.AT_MOST, null),
  /** Where a scenario asks that motor output needs no limit for the pack's sake. */
  PACK_THROTTLE(
      "pack-throttle", "throttle that pack, plug and leads stand", "", Way.AT_LEAST, null),
  HOVER_THROTTLE("hover-throttle", "throttle in hover at half charge", "", Way.AT_MOST, null),
  /** What is above it no aircraft of its mass reaches: a figure of some part must be wrong. */
  HOVER_EFFICIENCY("hover-efficiency", "efficiency in hover", "", Way.AT_MOST, null),
  /** That legs which are flown over and over come home once. */
  ROUNDS("rounds", "rounds of the legs", "", Way.AT_LEAST, null),
  /** That there is time for a leg that lasts as long as possible. */
  STAY_TIME("stay-time", "time %s", "s", Way.AT_LEAST, null),
  /** What is beyond it may be true, but is not to be relied on. */
  BELIEF("belief", "numbers beyond what such aircraft reach", "", Way.AT_MOST, null),
  /** That there is a flight. */
  FLIGHT_TIME("flight-time", "time in the air", "s", Way.AT_LEAST, null);

  private enum Way {
    AT_MOST,
    AT_LEAST
  }

  private final String id;
  private final String label;
  private final String unit;
  private final Way way;
  /** A record of functions without state. */
  @SuppressWarnings("ImmutableEnumChecker")
  private final @Nullable LimitField field;

  /**
   * @param label with a place for what depends on the build, where there is any: a part, a leg
   * @param unit with a place for the currency, where it is money
   */
  LimitKind(String id, String label, String unit, Way way, @Nullable LimitField field) {
    this.id = id;
    this.label = label;
    this.unit = unit;
    this.way = way;
    this.field = field;
  }

  /** Those that a scenario states, in order. */
  public static Stream<LimitKind> stated() {
    return Stream.of(values()).filter(kind -> kind.field != null);
  }

  /** Its name in results, on the command line and in the reference. */
  public String id() {
    return id;
  }

  /** Unit of value and bound; empty for a plain number. */
  public String unit(String currency) {
    return unit.formatted(currency);
  }

  /**
   * What is held to it.
   *
   * @param word what depends on the build, where anything does: a part, a leg
   */
  public String label(String word) {
    return label.formatted(word);
  }

  /** Whether a value must not be above the bound; else it must not be below. */
  public boolean isAtMost() {
    return way == Way.AT_MOST;
  }

  /**
   * What states it.
   *
   * @throws IllegalStateException if no scenario does
   */
  public LimitField field() {
    if (field == null) {
      throw new IllegalStateException("no scenario states " + id);
    }
    return field;
  }

  /** Its bound as a scenario states it, in its unit; empty where it goes without. */
  public Optional<Double> bound(Scenario scenario) {
    return field().stated().apply(scenario);
  }

  /** How a build stands to it. */
  Limit limit(double value, double bound) {
    return limit("", value, bound);
  }

  /**
   * How a build stands to it.
   *
   * @param word that label or unit leave open
   */
  Limit limit(String word, double value, double bound) {
    var told = label(word);
    return isAtMost()
        ? Limit.atMost(id, told, unit(word), value, bound)
        : Limit.atLeast(id, told, unit(word), value, bound);
  }
}
