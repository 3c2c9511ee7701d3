package pappus.spreadsheet;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A column as shops title it, whose cells hold one or several facts in the way of the trade. What could be read in two
 * ways is refused with both.
 *
 * @param title with which it is asked for, in small letters and without blanks
 * @param fields of a record that it fills, by name of the list; a field fills all below it
 * @param expected what a cell must be
 * @param reading list and cell to the values by path; empty where the cell cannot be read
 */
record TradeWord(
    String title,
    Map<String, List<String>> fields,
    String expected,
    BiFunction<String, String, Optional<Map<String, Object>>> reading) {
  private static final String NUMBER = "([0-9]{1,6}(?:\\.[0-9]{1,3})?)";
  private static final String BY = "\\s*[x×*]\\s*";
  private static final Pattern KV = Pattern.compile(NUMBER + "\\s*(?:kv|rpm/v)?");
  private static final Pattern STATOR = Pattern.compile("([0-9]{2})([0-9]{2}(?:\\.[0-9])?)");
  private static final Pattern PACK = Pattern.compile("([1-9])\\s*s?(?:\\s*([1-9])\\s*p)?");
  private static final Pattern CELLS =
      Pattern.compile("([1-9])\\s*(?:s?\\s*[-–]\\s*([1-9]))?\\s*s");
  private static final Pattern BLADES = Pattern.compile(NUMBER + BY + NUMBER + BY + "([2-8])");
  private static final Pattern MILLIMETRES =
      Pattern.compile(NUMBER + "\\s*mm\\s*[-–x×]\\s*([2-8])");
  private static final Pattern BOX =
      Pattern.compile(NUMBER + BY + NUMBER + BY + NUMBER + "\\s*(?:mm)?");
  private static final Pattern CIRCLE =
      Pattern.compile(NUMBER + "(?:" + BY + NUMBER + ")?\\s*(?:mm)?");
  private static final Pattern SQUARE = Pattern.compile(NUMBER + BY + NUMBER + "\\s*(?:mm)?");
  private static final Pattern GRAMS = Pattern.compile(
      NUMBER
          + "\\s*g?(?:\\s*(?:with|incl\\.?|including)\\s*([0-9]{1,3})\\s*mm\\s*(?:wires?|leads?)|\\s*/\\s*set\\s*of\\s*([0-9]{1,3})|\\s*(with|without)\\s*(?:wires?|leads?))?");
  private static final Pattern RATING =
      Pattern.compile(NUMBER + "\\s*c?(?:\\s*/\\s*" + NUMBER + "\\s*c?)?");

  private static final BigDecimal INCH = new BigDecimal("25.4");

  /** A LiPo cell from the volts at which full throttle must stop to full (common practice, no published source). */
  private static final BigDecimal LOW_VOLTS = new BigDecimal("3.0");

  private static final BigDecimal FULL_VOLTS = new BigDecimal("4.2");

  static final List<TradeWord> ALL = List.of(
      new TradeWord(
          "kv",
          Map.of("motors", List.of("speedConstantRpmPerVolt")),
          "as 3800 or 3800KV",
          (list, cell) -> matched(KV, cell)
              .map(found -> Map.of("speedConstantRpmPerVolt", number(found.group(1))))),
      new TradeWord(
          "stator",
          Map.of("motors", List.of("statorDiameterMillimetres", "statorHeightMillimetres")),
          "as 1404 (14 by 4 mm) or 1303.5 (13 by 3.5 mm); 13035 could be 13 by 3.5 or 130 by 35",
          (list, cell) -> matched(STATOR, cell)
              .map(found -> Map.of(
                  "statorDiameterMillimetres",
                  number(found.group(1)),
                  "statorHeightMillimetres",
                  number(found.group(2))))),
      new TradeWord(
          "cells",
          Map.of(
              "batteries",
              List.of("cellsInSeries", "cellsInParallel"),
              "motors",
              List.of("cells"),
              "boards",
              List.of("input")),
          "as 4S or 4S2P of a pack, 2-4S of a motor or board",
          TradeWord::cells),
      new TradeWord(
          "size",
          Map.of(
              "propellers",
              List.of("diameterInches", "pitchInches", "blades"),
              "batteries",
              List.of("lengthMillimetres", "widthMillimetres", "heightMillimetres")),
          "as 4x2.5x2 (diameter, pitch and blades) or 75mm-3 of a propeller, 75x35x18 of a pack; 5040 could be 5 by 4.0 or 50 by 40",
          TradeWord::size),
      new TradeWord(
          "boltpattern",
          Map.of(
              "motors",
              List.of("boltCirclesMillimetres", "boltCirclesNeeded"),
              "frames",
              List.of("motorBoltCirclesMillimetres")),
          "as 12x12 (one bolt circle), 16x19 (both of one pattern) or 9x9/12x12 (either); 9/12x12 could be two patterns or a slot",
          TradeWord::boltPattern),
      new TradeWord(
          "mounting",
          Map.of(
              "boards",
              List.of("mount.pattern"),
              "transmitters",
              List.of("mount.pattern"),
              "frames",
              List.of("positions")),
          "as 20x20 or 25.5x25.5, of a frame also 20x20/30.5x30.5",
          TradeWord::mounting),
      new TradeWord(
          "weight",
          Map.of(),
          "as 8.7 g, 8.7 g with 100 mm wire, 78 g without leads or 6.8 g / set of 8",
          TradeWord::weight),
      new TradeWord(
          "crating",
          Map.of("batteries", List.of("labelRating")),
          "as 75C or 75C/150C, of which the first is without end",
          (list, cell) ->
              matched(RATING, cell).map(found -> Map.of("labelRating", number(found.group(1))))),
      new TradeWord("note", Map.of(), "text", (list, cell) -> Optional.of(Map.of("source", cell))));

  /** The word of a title for records of a list, if it is one. */
  static Optional<TradeWord> of(String title, String list) {
    var key = title.toLowerCase(Locale.ROOT).replaceAll("[\\s_-]", "");
    return ALL.stream()
        .filter(word -> word.title.equals(key)
            && (word.fields.containsKey(list) || (word.fields.isEmpty() && !list.equals("shelf"))))
        .findFirst();
  }

  /** Fields of a record of a list that it fills. */
  List<String> fields(String list) {
    return switch (title) {
      case "weight" -> List.of("mass.grams");
      case "note" -> List.of("source");
      default -> fields.getOrDefault(list, List.of());
    };
  }

  /** The values of a cell, by path. */
  Optional<Map<String, Object>> read(String list, String cell) {
    return reading.apply(list, cell);
  }

  private static Optional<Map<String, Object>> cells(String list, String cell) {
    if (list.equals("batteries")) {
      return matched(PACK, cell).map(found -> {
        var values = new LinkedHashMap<String, Object>();
        values.put("cellsInSeries", number(found.group(1)));
        if (found.group(2) != null) {
          values.put("cellsInParallel", number(found.group(2)));
        }
        return values;
      });
    }
    return matched(CELLS, cell).map(found -> {
      var from = number(found.group(1));
      var to = found.group(2) == null ? from : number(found.group(2));
      return list.equals("motors")
          ? Map.<String, Object>of("cells.from", from, "cells.to", to)
          : Map.<String, Object>of(
              "input.lowVolts",
              from.multiply(LOW_VOLTS),
              "input.highVolts",
              to.multiply(FULL_VOLTS));
    });
  }

  private static Optional<Map<String, Object>> size(String list, String cell) {
    if (list.equals("batteries")) {
      return matched(BOX, cell).map(found -> {
        var sides = new ArrayList<>(
            List.of(number(found.group(1)), number(found.group(2)), number(found.group(3))));
        sides.sort((one, other) -> other.compareTo(one));
        return Map.<String, Object>of(
            "lengthMillimetres",
            sides.get(0),
            "widthMillimetres",
            sides.get(1),
            "heightMillimetres",
            sides.get(2));
      });
    }
    var inches = matched(BLADES, cell)
        .map(found -> Map.<String, Object>of(
            "diameterInches",
            number(found.group(1)),
            "pitchInches",
            number(found.group(2)),
            "blades",
            number(found.group(3))));
    return inches.isPresent()
        ? inches
        : matched(MILLIMETRES, cell)
            .map(found -> Map.of(
                "diameterInches",
                number(found.group(1)).divide(INCH, MathContext.DECIMAL32),
                "blades",
                number(found.group(2))));
  }

  private static Optional<Map<String, Object>> boltPattern(String list, String cell) {
    var circles = new ArrayList<Object>();
    var patterns = cell.split("/", -1);
    var isUneven = false;
    for (var pattern : patterns) {
      var found = matched(CIRCLE, pattern);
      if (found.isEmpty() || (patterns.length > 1 && found.get().group(2) == null)) {
        return Optional.empty();
      }
      var one = number(found.get().group(1));
      var other = found.get().group(2) == null ? one : number(found.get().group(2));
      circles.add(one);
      if (one.compareTo(other) != 0) {
        circles.add(other);
        isUneven = true;
      }
    }
    if (isUneven && patterns.length > 1) {
      return Optional.empty();
    }
    if (list.equals("frames")) {
      return Optional.of(Map.of(
          "motorBoltCirclesMillimetres",
          circles.stream()
              .map(circle -> Map.of("fromMillimetres", circle, "toMillimetres", circle))
              .toList()));
    }
    var values = new LinkedHashMap<String, Object>();
    values.put("boltCirclesMillimetres", circles);
    if (circles.size() > 1) {
      values.put("boltCirclesNeeded", isUneven ? "both" : "either");
    }
    return Optional.of(values);
  }

  private static Optional<Map<String, Object>> mounting(String list, String cell) {
    var patterns = new ArrayList<String>();
    for (var each : cell.split("/", -1)) {
      var found = matched(SQUARE, each);
      if (found.isEmpty() || !found.get().group(1).equals(found.get().group(2))) {
        return Optional.empty();
      }
      patterns.add(found.get().group(1) + "x" + found.get().group(2));
    }
    if (list.equals("frames")) {
      return Optional.of(Map.of(
          "positions",
          List.of(Map.of(
              "patterns",
              patterns.stream().map(pattern -> Map.of("pattern", pattern)).toList()))));
    }
    return patterns.size() == 1
        ? Optional.of(Map.of("mount.pattern", patterns.get(0)))
        : Optional.empty();
  }

  private static Optional<Map<String, Object>> weight(String list, String cell) {
    return matched(GRAMS, cell).flatMap(found -> {
      var values = new LinkedHashMap<String, Object>();
      var grams = number(found.group(1));
      var pieces = found.group(3);
      if (pieces != null && number(pieces).signum() > 0) {
        grams = grams.divide(number(pieces), MathContext.DECIMAL32);
      }
      values.put("mass.grams", grams);
      if (found.group(2) != null) {
        if (!list.equals("motors")) {
          return Optional.empty();
        }
        values.put("leadsIncludedMillimetres", number(found.group(2)));
      }
      if (found.group(4) != null) {
        if (!list.equals("batteries")) {
          return Optional.empty();
        }
        values.put("massIncludesLeads", found.group(4).equals("with"));
      }
      return Optional.of(values);
    });
  }

  private static Optional<Matcher> matched(Pattern pattern, String cell) {
    var found = pattern.matcher(cell.strip().toLowerCase(Locale.ROOT));
    return found.matches() ? Optional.of(found) : Optional.empty();
  }

  private static BigDecimal number(String text) {
    var value = new BigDecimal(text).stripTrailingZeros();
    return value.scale() < 0 ? value.setScale(0) : value;
  }
}
