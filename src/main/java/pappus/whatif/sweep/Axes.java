package pappus.whatif.sweep;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import pappus.assessment.LimitKind;
import pappus.change.Asked;
import pappus.files.Closest;
import pappus.files.Shown;
import pappus.part.Battery;
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

  private static final Map<String, Maker> MAKERS = makers();

  private static Map<String, Maker> makers() {
    var makers = new TreeMap<String, Maker>(Map.of(
        "altitude",
        (id, values, asked) -> new Axis(
            id,
            "m",
            values,
            Tightens.NEITHER,
            Optional.of(asked.scenario().air().altitudeMetres()),
            field("air.altitudeMetres")),
        "temperature",
        (id, values, asked) -> open(id, "°C", values, field("air.temperatureCelsius")),
        "transmitter-power",
        (id, values, asked) -> open(id, "mW", values, field("transmitterMilliwatts")),
        "payload",
        (id, values, asked) -> open(id, "g", values, Axes::payload),
        "cells",
        (id, values, asked) -> open(id, "", values, Axes::cells),
        "packs",
        (id, values, asked) -> open(id, "", values, field("alsoBuy.packs"))));
    LimitKind.stated()
        .forEach(limit -> makers.put(
            limit.id(),
            (id, values, asked) -> new Axis(
                id,
                limit.unit(asked.currency()),
                values,
                tightens(limit, asked),
                limit.bound(asked.scenario()),
                (from, value) -> from.with(limit, new BigDecimal(value)))));
    return makers;
  }

  /** Where the power of video follows from the reach, builds fly less long the farther it is. */
  private static Tightens tightens(LimitKind limit, Asked asked) {
    return limit == LimitKind.REACH && asked.scenario().transmitterMilliwatts() == null
        ? Tightens.NEITHER
        : limit.isAtMost() ? Tightens.DOWNWARD : Tightens.UPWARD;
  }

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
    if (WhereAxes.isOne(id)) {
      return WhereAxes.of(id, values, asked);
    }
    var maker = MAKERS.get(id);
    if (maker == null) {
      throw new IllegalArgumentException(
          "must be over %s, a frame.PROPERTY or a where.ROLE.FIELD, but is over %s.%s"
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

  /** Of what a scenario need not say. */
  private static Axis open(String id, String unit, List<String> values, Axis.Change change) {
    return new Axis(id, unit, values, Tightens.NEITHER, Optional.empty(), change);
  }

  private static Axis.Change field(String path) {
    return (from, value) -> from.with(Map.of(path, new BigDecimal(value)));
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
