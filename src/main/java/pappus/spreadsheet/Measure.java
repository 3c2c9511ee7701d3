package pappus.spreadsheet;

import java.math.BigDecimal;
import java.math.MathContext;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A unit that the name of a field holds, and the units that may stand in a spreadsheet in its place.
 *
 * @param words of the unit in the field's name, in small letters
 * @param quantity what is measured, for a field that is named by its unit alone
 * @param symbol of the field's unit
 * @param others by symbol, each as a fraction of the field's unit
 */
record Measure(List<String> words, String quantity, String symbol, Map<String, Ratio> others) {
  private static final Ratio SAME = Ratio.of("1", "1");
  private static final Ratio THOUSAND = Ratio.of("1000", "1");
  private static final Ratio THOUSANDTH = Ratio.of("1", "1000");

  /** Longer names first: milliamp hours are no amps. */
  private static final List<Measure> ALL = List.of(
      of("kg per cubic metre", "density", "kg/m³", Map.of("kg/m3", SAME)),
      of("rpm per volt", "speed constant", "rpm/V", Map.of()),
      of("milliamp hours", "capacity", "mAh", Map.of("Ah", THOUSAND)),
      of("square metres", "area", "m²", Map.of("m2", SAME, "cm²", Ratio.of("1", "10000"))),
      of(
          "millimetres",
          "length",
          "mm",
          Map.of("cm", Ratio.of("10", "1"), "in", Ratio.of("25.4", "1"))),
      of(
          "inches",
          "length",
          "in",
          Map.of("mm", Ratio.of("1", "25.4"), "cm", Ratio.of("10", "25.4"))),
      of(
          "grams",
          "mass",
          "g",
          Map.of("oz", Ratio.of("28.349523125", "1"), "kg", THOUSAND, "mg", THOUSANDTH)),
      of("milliohms", "resistance", "mΩ", Map.of("mohm", SAME, "Ω", THOUSAND, "ohm", THOUSAND)),
      of("microfarads", "capacitance", "µF", Map.of("uF", SAME)),
      of("milliwatts", "output", "mW", Map.of("W", THOUSAND)),
      of("watts", "power", "W", Map.of("mW", THOUSANDTH)),
      of("amps", "current", "A", Map.of("mA", THOUSANDTH)),
      of("volts", "voltage", "V", Map.of("mV", THOUSANDTH)),
      of("celsius", "temperature", "°C", Map.of("C", SAME)));

  /** Exact: an inch is 25.4 mm, an avoirdupois ounce 28.349523125 g, by international agreement of 1959. */
  record Ratio(BigDecimal times, BigDecimal over) {
    static Ratio of(String times, String over) {
      return new Ratio(new BigDecimal(times), new BigDecimal(over));
    }

    BigDecimal of(BigDecimal value) {
      return equals(SAME) ? value : value.multiply(times).divide(over, MathContext.DECIMAL64);
    }
  }

  Measure {
    words = List.copyOf(words);
    others = Map.copyOf(others);
  }

  private static Measure of(
      String words, String quantity, String symbol, Map<String, Ratio> others) {
    return new Measure(List.of(words.split(" ")), quantity, symbol, others);
  }

  /** The measure in the words of a field's name, if there is one. */
  static Optional<Measure> in(List<String> words) {
    return ALL.stream()
        .filter(measure -> Collections.indexOfSubList(words, measure.words) >= 0)
        .findFirst();
  }

  /** The words of a field's name without those of the unit. */
  List<String> without(List<String> all) {
    var rest = new ArrayList<>(all);
    var at = Collections.indexOfSubList(rest, words);
    rest.subList(at, at + words.size()).clear();
    return rest;
  }

  /** How many of the field's unit one of a unit is, whichever way its symbol is typed. */
  Optional<Ratio> ratio(String typed) {
    var symbols = new LinkedHashMap<String, Ratio>();
    others.forEach((name, ratio) -> symbols.put(same(name), ratio));
    symbols.put(same(symbol), SAME);
    return Optional.ofNullable(symbols.get(same(typed)));
  }

  /** Every symbol, the field's own first. */
  List<String> symbols() {
    var symbols = new ArrayList<>(others.keySet().stream().sorted().toList());
    symbols.add(0, symbol);
    return symbols;
  }

  /** Micro and ohm have two characters each, and raised digits are digits. */
  private static String same(String text) {
    return Normalizer.normalize(text, Normalizer.Form.NFKC);
  }
}
