package pappus.whatif.sweep;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import pappus.change.Asked;
import pappus.files.Closest;
import pappus.files.Shown;
import pappus.part.Battery;
import pappus.quantity.Money;
import pappus.scenario.Payload;
import pappus.whatif.sweep.Axis.Tightens;

/** The limits that can be swept, as they are typed: {@code mass-cap=200:250:5} or {@code cells=2,3,4}. */
public final class Axes {
  /** Of one sweep. */
  public static final int MOST_STEPS = 400;

  private static final String NUMBER = "-?[0-9]{1,7}(\\.[0-9]{1,4})?";

  private Axes() {}

  /** Makes an axis of values. */
  private interface Maker {
    Axis of(String id, List<String> values, Asked asked);
  }

  private static final Map<String, Maker> MAKERS = new TreeMap<>(Map.of(
      "mass-cap",
      (id, values, asked) -> numbers(id, "g", values, Tightens.DOWNWARD, "massCap.grams"),
      "thrust-to-weight",
      (id, values, asked) -> numbers(id, "", values, Tightens.UPWARD, "leastThrustToWeight"),
      "budget",
      (id, values, asked) -> budget(id, values, asked),
      "altitude",
      (id, values, asked) -> numbers(id, "m", values, Tightens.NEITHER, "air.altitudeMetres"),
      "temperature",
      (id, values, asked) -> numbers(id, "°C", values, Tightens.NEITHER, "air.temperatureCelsius"),
      "transmitter-power",
      (id, values, asked) -> numbers(id, "mW", values, Tightens.NEITHER, "transmitterMilliwatts"),
      "payload",
      (id, values, asked) ->
          new Axis(id, "g", values, Tightens.NEITHER, (from, value) -> payload(from, value)),
      "cells",
      (id, values, asked) ->
          new Axis(id, "", values, Tightens.NEITHER, (from, value) -> cells(from, value))));

  /** Names of the limits. */
  public static List<String> names() {
    return List.copyOf(MAKERS.keySet());
  }

  /**
   * An axis as it is typed.
   *
   * @throws IllegalArgumentException naming what cannot be read
   */
  public static Axis of(String typed, Asked asked) {
    var equals = typed.indexOf('=');
    if (equals < 0) {
      throw new IllegalArgumentException(
          "must be LIMIT=FROM:TO:STEP or LIMIT=VALUE,VALUE, but is %s."
              .formatted(Shown.text(typed)));
    }
    var id = typed.substring(0, equals);
    var values = typed.substring(equals + 1);
    if (FrameAxes.isOne(id)) {
      return FrameAxes.of(id, values, asked);
    }
    var maker = MAKERS.get(id);
    if (maker == null) {
      throw new IllegalArgumentException("must be over %s or a frame.PROPERTY, but is over %s.%s"
          .formatted(
              String.join(", ", names()), Shown.text(id), Closest.advice(id, MAKERS.keySet())));
    }
    return maker.of(id, numbers(values), asked);
  }

  /**
   * Numbers of a range or a list.
   *
   * @throws IllegalArgumentException naming what cannot be read
   */
  static List<String> numbers(String typed) {
    if (typed.contains(":")) {
      return range(typed);
    }
    var values = List.of(typed.split(",", -1));
    for (var value : values) {
      if (!value.matches(NUMBER)) {
        throw new IllegalArgumentException(
            "must have plain numbers, but has %s.".formatted(Shown.text(value)));
      }
    }
    return values.stream().map(value -> plain(new BigDecimal(value))).distinct().toList();
  }

  private static List<String> range(String typed) {
    var ends = typed.split(":", -1);
    if (ends.length != 3
        || !ends[0].matches(NUMBER)
        || !ends[1].matches(NUMBER)
        || !ends[2].matches(NUMBER)) {
      throw new IllegalArgumentException(
          "must have FROM:TO:STEP in plain numbers, but has %s.".formatted(Shown.text(typed)));
    }
    var from = new BigDecimal(ends[0]);
    var to = new BigDecimal(ends[1]);
    var step = new BigDecimal(ends[2]).abs();
    if (step.signum() == 0) {
      throw new IllegalArgumentException(
          "must have a step above 0, but has %s.".formatted(ends[2]));
    }
    var signed = from.compareTo(to) <= 0 ? step : step.negate();
    var values = new ArrayList<String>();
    for (var value = from;
        signed.signum() > 0 ? value.compareTo(to) <= 0 : value.compareTo(to) >= 0;
        value = value.add(signed)) {
      if (values.size() == MOST_STEPS) {
        throw new IllegalArgumentException("must have at most %s steps, but %s has more."
            .formatted(MOST_STEPS, Shown.text(typed)));
      }
      values.add(plain(value));
    }
    return values;
  }

  private static String plain(BigDecimal value) {
    return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
  }

  private static Axis numbers(
      String id, String unit, List<String> values, Tightens tightens, String field) {
    return new Axis(
        id,
        unit,
        values,
        tightens,
        (from, value) -> from.with(Map.of(field, new BigDecimal(value))));
  }

  private static Axis budget(String id, List<String> values, Asked asked) {
    var currency = asked.supply().catalog().parts().stream()
        .map(part -> part.price().currency())
        .findFirst()
        .orElse("EUR");
    return new Axis(
        id,
        currency,
        values,
        Tightens.DOWNWARD,
        (from, value) -> from.with(Map.of("budget", new Money(new BigDecimal(value), currency))));
  }

  private static Asked payload(Asked from, String value) {
    var grams = Double.parseDouble(value);
    var carried = from.scenario().payload();
    if (grams == 0) {
      var nothing = new HashMap<String, Object>();
      nothing.put("payload", null);
      return from.with(nothing);
    }
    return carried == null
        ? from.with(Map.of("payload", new Payload("payload", grams, 0, 0, null, null)))
        : from.with(Map.of("payload.massGrams", new BigDecimal(value)));
  }

  /** Packs of other cells are not there; none is, where the one that the scenario fixes has others. */
  private static Asked cells(Asked from, String value) {
    if (!value.matches("[1-8]")) {
      throw new IllegalArgumentException(
          "cells must be from 1 to 8, but is %s.".formatted(Shown.text(value)));
    }
    var cells = Integer.parseInt(value);
    var catalog = from.supply().catalog();
    var isFixed = from.scenario().choice().fixedIds().stream()
        .flatMap(id -> catalog.part(id).stream())
        .anyMatch(part -> part instanceof Battery battery && battery.cellsInSeries() != cells);
    var left = catalog.parts().stream()
        .filter(part ->
            !(part instanceof Battery battery) || (battery.cellsInSeries() == cells && !isFixed))
        .toList();
    return new Asked(from.scenario(), from.supply().with(left));
  }
}
