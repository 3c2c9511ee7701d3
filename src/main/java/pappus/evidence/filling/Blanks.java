package pappus.evidence.filling;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import pappus.part.Assumed;
import pappus.quantity.Require;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** One object of a record, with what it lacks. A fact that is there is never touched. */
final class Blanks {
  /** Which way a larger figure goes. */
  enum Harm {
    IF_MORE(1),
    IF_LESS(-1),
    /** It depends, or a rule asks for it alone. */
    EITHER(0);

    private final int sign;

    Harm(int sign) {
      this.sign = sign;
    }
  }

  private static final MathContext DIGITS = new MathContext(3);

  private final ObjectNode object;
  private final String prefix;
  private final List<Assumed> assumed;

  private Blanks(ObjectNode object, String prefix, List<Assumed> assumed) {
    this.object = object;
    this.prefix = prefix;
    this.assumed = assumed;
  }

  static Blanks of(ObjectNode record) {
    return new Blanks(record, "", new ArrayList<>());
  }

  /** What was filled, in its order. */
  List<Assumed> assumed() {
    return List.copyOf(assumed);
  }

  /** A number that is there. */
  OptionalDouble number(String name) {
    var node = object.path(name);
    return node.isNumber() ? OptionalDouble.of(node.doubleValue()) : OptionalDouble.empty();
  }

  /** A text that is there; empty if none is. */
  String text(String name) {
    return object.path(name).asString("");
  }

  /** Whether a yes is there. */
  boolean isTrue(String name) {
    return object.path(name).asBoolean(false);
  }

  /** Whether a field is there, whatever it holds. */
  boolean has(String name) {
    return object.has(name);
  }

  /** The numbers and texts of a list, as texts. */
  List<JsonNode> list(String name) {
    return object.path(name) instanceof ArrayNode list ? list.valueStream().toList() : List.of();
  }

  /** The object within, if it is there. */
  void within(String name, Consumer<Blanks> fill) {
    inner(name).ifPresent(fill);
  }

  /** The object within, if it is there. */
  Optional<Blanks> inner(String name) {
    return object.path(name) instanceof ObjectNode inner
        ? Optional.of(new Blanks(inner, prefix + name + ".", assumed))
        : Optional.empty();
  }

  /** Every object of a list, with its place from 0. */
  List<Blanks> each(String name) {
    var found = new ArrayList<Blanks>();
    var index = 0;
    for (var node : list(name)) {
      if (node instanceof ObjectNode inner) {
        found.add(new Blanks(inner, prefix + name + "[" + index + "].", assumed));
      }
      index++;
    }
    return found;
  }

  /**
   * Fills a number.
   *
   * @param words what it is
   * @param usual median of the class
   * @param unit in words, with a space before it
   * @param spread one standard deviation of ln within the class
   * @param low least that a record may hold
   * @param high most that a record may hold
   * @param from what it follows from
   */
  void fill(
      String name,
      String words,
      double usual,
      String unit,
      double spread,
      Harm harm,
      double low,
      double high,
      String from) {
    if (has(name)) {
      return;
    }
    var value = counted(usual, spread, harm, low, high);
    object.put(name, value);
    assumed.add(new Assumed(prefix + name, words, value.toPlainString() + unit, spread, from));
  }

  /** A figure of the class as it counts where a record has none: half a spread the harmful way, with three digits. */
  static BigDecimal counted(double usual, double spread, Harm harm, double low, double high) {
    var moved = usual * StrictMath.exp(0.5 * harm.sign * spread);
    var value = new BigDecimal(Math.max(low, Math.min(high, moved))).round(DIGITS);
    var plain = value.stripTrailingZeros();
    return plain.scale() < 0 ? plain.setScale(0) : plain;
  }

  /** Fills a whole number. */
  void count(String name, String words, int value, double spread, String from) {
    if (!has(name)) {
      object.put(name, value);
      assumed.add(new Assumed(prefix + name, words, Integer.toString(value), spread, from));
    }
  }

  /** Fills a word of an enum or a text. */
  void word(String name, String words, String value, String from) {
    if (!has(name)) {
      object.put(name, value);
      assumed.add(new Assumed(prefix + name, words, value, 0, from));
    }
  }

  /** Fills a yes or no. */
  void flag(String name, String words, boolean value, String from) {
    if (!has(name)) {
      object.put(name, value);
      assumed.add(new Assumed(prefix + name, words, value ? "yes" : "no", 0, from));
    }
  }

  /**
   * Fills an object or a list, written as JSON.
   *
   * @param shown its value in words
   */
  void json(String name, String words, String json, String shown, String from) {
    if (!has(name)) {
      object.set(name, Filling.tree(json));
      assumed.add(new Assumed(prefix + name, words, shown, 0, from));
    }
  }

  /** A number as JSON has it, with no more than three digits. */
  static String plain(double value) {
    return Require.plain(new BigDecimal(value).round(DIGITS).doubleValue());
  }

  static String lower(String text) {
    return text.toLowerCase(Locale.ROOT);
  }
}
