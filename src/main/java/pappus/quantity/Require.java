package pappus.quantity;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Range checks that say what was expected and what was found.
 *
 * <p>Every message reads "NAME must be …, but is …."; advice follows on the same line and starts
 * with "Maybe". NaN and the infinities fail every numeric check.
 */
public final class Require {
  /** More than any list within a record needs. */
  public static final int LONGEST_LIST = 10_000;

  private static final int LONGEST_NAME = 120;
  private static final int LONGEST_ID = 64;
  private static final Pattern ID = Pattern.compile("[a-z0-9.-]*");

  /** Messages of the checks that failed on this thread, while somebody collects them. */
  private static final ThreadLocal<List<String>> COLLECTED = new ThreadLocal<>();

  private Require() {}

  /**
   * The message of every range check that fails while a record is made, so that a person hears of
   * all of them and not of the first alone. What comes of the action must not be used.
   *
   * @throws RuntimeException what the action throws, if no check failed before
   */
  public static List<String> failuresOf(Runnable action) {
    var messages = new ArrayList<String>();
    COLLECTED.set(messages);
    try {
      action.run();
    } catch (RuntimeException e) {
      if (messages.isEmpty()) {
        throw e;
      }
      // What a record does after a check may rely on it.
    } finally {
      COLLECTED.remove();
    }
    return messages;
  }

  /**
   * Refuses a value by a check of the caller's own.
   *
   * @param message "NAME must be …, but is …."
   * @throws IllegalArgumentException with the message, unless failures are being collected
   */
  public static void refuse(String message) {
    var messages = COLLECTED.get();
    if (messages == null) {
      throw new IllegalArgumentException(message);
    }
    messages.add(message);
  }

  /**
   * Returns the value if it is finite and from low to high, both included.
   *
   * @throws IllegalArgumentException otherwise
   */
  public static double inRange(String name, double value, double low, double high) {
    return inRange(name, value, low, high, "");
  }

  /** As {@link #inRange(String, double, double, double)}, with advice for a likely slip. */
  public static double inRange(String name, double value, double low, double high, String advice) {
    if (value >= low && value <= high) {
      return value;
    }
    if (low > high && COLLECTED.get() != null) {
      // A bound taken from a field that was refused itself.
      return value;
    }
    // The advice is on units, and no unit makes a number negative.
    var isSlip = !advice.isEmpty() && (value >= 0 || low < 0);
    refuse("%s must be from %s to %s, but is %s.%s"
        .formatted(name, plain(low), plain(high), plain(value), isSlip ? " " + advice : ""));
    return value;
  }

  /**
   * Returns the value if it is finite and above zero.
   *
   * @throws IllegalArgumentException otherwise
   */
  public static double positive(String name, double value) {
    if (value > 0 && value < Double.POSITIVE_INFINITY) {
      return value;
    }
    refuse("%s must be a positive number, but is %s.".formatted(name, plain(value)));
    return value;
  }

  /**
   * Returns the value if it is finite and not below zero.
   *
   * @throws IllegalArgumentException otherwise
   */
  public static double notNegative(String name, double value) {
    if (value >= 0 && value < Double.POSITIVE_INFINITY) {
      return value;
    }
    refuse("%s must be zero or a positive number, but is %s.".formatted(name, plain(value)));
    return value;
  }

  /**
   * Returns the text if it holds something besides white space.
   *
   * @throws IllegalArgumentException otherwise
   */
  public static String text(String name, @Nullable String value) {
    if (value == null) {
      throw new IllegalArgumentException("%s is missing.".formatted(name));
    }
    if (value.isBlank()) {
      refuse("%s must hold text, but is empty.".formatted(name));
    }
    return value;
  }

  /**
   * Returns the text if it is what a thing is called: not blank, at most 120 characters.
   *
   * @throws IllegalArgumentException otherwise
   */
  public static String name(String name, @Nullable String value) {
    var text = text(name, value);
    var length = text.codePointCount(0, text.length());
    if (length > LONGEST_NAME) {
      refuse(
          "%s must have at most %s characters, but has %s.".formatted(name, LONGEST_NAME, length));
    }
    return text;
  }

  /**
   * Returns the text if it is a key: 1 to 64 small letters, digits, hyphens and dots, the first a letter or digit, and
   * no two dots in a row, which would lead out of a folder.
   *
   * @throws IllegalArgumentException otherwise
   */
  public static String id(String name, @Nullable String value) {
    var text = text(name, value);
    if (!ID.matcher(text).matches()) {
      refuse(
          "%s must be small letters, digits, hyphens and dots, but is %s.".formatted(name, text));
    } else if (text.length() > LONGEST_ID) {
      refuse("%s must have at most %s characters, but has %s."
          .formatted(name, LONGEST_ID, text.length()));
    } else if (text.startsWith("-") || text.startsWith(".") || text.contains("..")) {
      refuse("%s must begin with a letter or digit and have no two dots in a row, but is %s."
          .formatted(name, text));
    }
    return text;
  }

  /**
   * Returns the value if it is there.
   *
   * @throws IllegalArgumentException if it is null
   */
  public static <T> T present(String name, @Nullable T value) {
    if (value == null) {
      throw new IllegalArgumentException("%s is missing.".formatted(name));
    }
    return value;
  }

  /**
   * Returns the collection if it holds at least one element.
   *
   * @throws IllegalArgumentException otherwise
   */
  public static <C extends Collection<?>> C notEmpty(String name, C values) {
    if (values.isEmpty()) {
      refuse("%s must list at least one, but is empty.".formatted(name));
    }
    return values;
  }

  /**
   * A copy of the list that cannot change.
   *
   * @throws IllegalArgumentException if the list or one of its elements is null
   */
  public static <T> List<T> list(String name, @Nullable List<T> values) {
    if (values == null) {
      throw new IllegalArgumentException("%s is missing.".formatted(name));
    }
    if (values.size() > LONGEST_LIST) {
      refuse("%s must list at most %s, but lists %s.".formatted(name, LONGEST_LIST, values.size()));
    }
    for (var i = 0; i < values.size(); i++) {
      if (values.get(i) == null) {
        throw new IllegalArgumentException(name + "[" + i + "] must not be null.");
      }
    }
    return List.copyOf(values);
  }

  /** A number as a person writes it: no trailing zeros, no locale. */
  public static String plain(double value) {
    if (value == StrictMath.rint(value) && Math.abs(value) < 1e15) {
      return String.format(Locale.ROOT, "%d", (long) value);
    }
    return Double.toString(value);
  }
}
