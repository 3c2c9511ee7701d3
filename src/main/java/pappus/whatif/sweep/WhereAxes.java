package pappus.whatif.sweep;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import pappus.change.Asked;
import pappus.files.Closest;
import pappus.files.Shown;
import pappus.part.Property;
import pappus.part.Role;
import pappus.scenario.Condition;
import pappus.scenario.Where;
import pappus.whatif.sweep.Axis.Tightens;

/**
 * Wishes by property that can be swept: {@code where.battery.cellsInSeries=2,3,4} for each value by itself,
 * {@code where.propeller.diameterInches.atMost=3:5:0.5} for a bound.
 */
final class WhereAxes {
  private static final String PREFIX = "where.";

  private WhereAxes() {}

  static boolean isOne(String id) {
    return id.startsWith(PREFIX);
  }

  /**
   * An axis of values.
   *
   * @throws IllegalArgumentException naming what cannot be read
   */
  static Axis of(String id, String values, Asked asked) {
    var words = id.substring(PREFIX.length()).split("\\.", 2);
    var role = role(words[0]);
    var field = words.length > 1 ? words[1] : "";
    var bound = bound(field);
    var name = bound.isEmpty() ? field : field.substring(0, field.length() - bound.length() - 1);
    var property = property(role, name);
    var aircraft = asked.scenario().aircraft();
    if (aircraft != null && !aircraft.mayChange(role)) {
      throw new IllegalArgumentException(
          "must be over a role that may change, but %s may not.".formatted(role.key()));
    }
    var listed = property.isNumber() ? Axes.numbers(values) : words(values, role, property, asked);
    return new Axis(
        id,
        "",
        listed,
        switch (bound) {
          case Condition.AT_LEAST -> Tightens.UPWARD;
          case Condition.AT_MOST -> Tightens.DOWNWARD;
          default -> Tightens.NEITHER;
        },
        Optional.empty(),
        (from, value) -> at(from, role, property.path(), bound, typed(value, property)));
  }

  /** A text that no part has is a slip. */
  private static List<String> words(String values, Role role, Property property, Asked asked) {
    var words = List.of(values.split(",", -1));
    if (property.type() == Property.Type.TEXT) {
      var known = Where.texts(role, property, asked.supply().catalog());
      for (var word : words) {
        if (!known.contains(word)) {
          throw new IllegalArgumentException(
              "must have texts that a part of the catalogue has, but has %s.%s"
                  .formatted(Shown.text(word), Closest.advice(word, known)));
        }
      }
    }
    return words;
  }

  private static Role role(String typed) {
    return Stream.of(Role.values())
        .filter(role -> role.key().equals(typed))
        .findFirst()
        .orElseThrow(() ->
            new IllegalArgumentException("must be over a where.ROLE.FIELD, but has no role %s.%s"
                .formatted(
                    Shown.text(typed),
                    Closest.advice(
                        typed, Stream.of(Role.values()).map(Role::key).toList()))));
  }

  private static Property property(Role role, String name) {
    return Property.of(role, name)
        .orElseThrow(() -> new IllegalArgumentException(
            "must be over a field of a %s that holds a value, but is over %s.%s"
                .formatted(
                    role.label(),
                    Shown.text(name),
                    Closest.advice(name, Property.of(role).keySet()))));
  }

  private static String bound(String field) {
    return Stream.of(Condition.AT_LEAST, Condition.AT_MOST)
        .filter(bound -> field.endsWith("." + bound))
        .findFirst()
        .orElse("");
  }

  private static Object typed(String value, Property property) {
    return switch (property.type()) {
      case NUMBER, WHOLE_NUMBER -> new BigDecimal(value);
      case TRUTH -> value.equals("true") || value.equals("false") ? Boolean.valueOf(value) : value;
      case TEXT, WORD -> value;
    };
  }

  private static Asked at(Asked asked, Role role, String field, String bound, Object value) {
    var where = asked.scenario().whereOrAny();
    if (bound.isEmpty()) {
      return asked.with(Map.of("where", where.with(role, field, new Condition(value))));
    }
    var bounds = new HashMap<String, Object>();
    where.on(role, field).ifPresent(condition -> bounds.putAll(condition.bounds()));
    bounds.put(bound, value);
    return asked.with(Map.of("where", where.with(role, field, new Condition(bounds))));
  }
}
