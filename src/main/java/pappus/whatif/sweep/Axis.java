package pappus.whatif.sweep;

import java.util.List;
import java.util.Optional;
import pappus.change.Asked;

/**
 * What a sweep changes, step by step.
 *
 * @param id its name on the command line
 * @param unit of its values; empty for a plain number or a word
 * @param values in the order asked for
 * @param tightens which way of it only ever takes builds away
 * @param asked where the scenario itself stands, for what it says in a number
 * @param change puts a value into what is asked
 */
public record Axis(
    String id,
    String unit,
    List<String> values,
    Tightens tightens,
    Optional<Double> asked,
    Change change) {
  public Axis {
    values = List.copyOf(values);
  }

  /** Puts a value into what is asked. */
  interface Change {
    Asked at(Asked asked, String value);
  }

  /** Which way of it takes builds away and changes nothing else. */
  public enum Tightens {
    /** The smaller the value, the fewer builds. */
    DOWNWARD,
    /** The larger the value, the fewer builds. */
    UPWARD,
    /** What a build reaches depends on it. */
    NEITHER
  }

  /** Whether what is feasible at a value is among what is at another. */
  boolean isWithin(String value, String looser) {
    if (value.equals(looser)) {
      return true;
    }
    return switch (tightens) {
      case DOWNWARD -> number(value) <= number(looser);
      case UPWARD -> number(value) >= number(looser);
      case NEITHER -> false;
    };
  }

  private static double number(String value) {
    return Double.parseDouble(value);
  }
}
