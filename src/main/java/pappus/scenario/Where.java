package pappus.scenario;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import pappus.catalog.Catalog;
import pappus.files.Closest;
import pappus.files.Shown;
import pappus.part.Part;
import pappus.part.Property;
import pappus.part.Role;
import pappus.quantity.Require;

/**
 * Wishes by property: what the fields of whatever fills a role are to hold, a part of its own or one built into another.
 *
 * <p>Why: src/site/markdown/decisions.md#a-wish-by-property-takes-parts-away-before-the-search
 *
 * @param byRole conditions by field, by role
 */
public record Where(Map<Role, Map<String, Condition>> byRole) {
  /** No wish. */
  public static final Where ANY = new Where(Map.of());

  /** Names that stand plainly in a path. */
  private static final String PLAIN_NAME = "[A-Za-z0-9_$-]+";

  private static final Map<String, Role> ROLES =
      Stream.of(Role.values()).collect(Collectors.toMap(Role::key, role -> role));

  public Where {
    var copy = new EnumMap<Role, Map<String, Condition>>(Role.class);
    byRole.forEach(
        (role, fields) -> copy.put(role, Collections.unmodifiableMap(new LinkedHashMap<>(fields))));
    byRole = Collections.unmodifiableMap(copy);
    Wished.of(byRole).forEach(Wished::check);
  }

  /**
   * As it is read.
   *
   * @param byKey conditions by field, by the word of a role
   * @throws IllegalArgumentException naming a role or field that there is none, or what no such field can hold
   */
  @JsonCreator(mode = JsonCreator.Mode.DELEGATING)
  static Where read(Map<String, Map<String, Condition>> byKey) {
    var byRole = new EnumMap<Role, Map<String, Condition>>(Role.class);
    byKey.forEach((key, fields) -> {
      var role = ROLES.get(key);
      if (role == null) {
        Require.refuse("%s must be a role, but is none.%s"
            .formatted(place("", key), Closest.advice(key, ROLES.keySet())));
      } else {
        byRole.put(role, fields);
      }
    });
    return new Where(byRole);
  }

  /** As it is written. */
  @JsonValue
  Map<String, Map<String, Condition>> written() {
    var written = new LinkedHashMap<String, Map<String, Condition>>();
    byRole.forEach((role, fields) -> written.put(role.key(), fields));
    return written;
  }

  /** The path of a name within another, as files are told about. */
  private static String place(String around, String name) {
    if (!name.matches(PLAIN_NAME)) {
      return around + "[" + Shown.text(name) + "]";
    }
    return around.isEmpty() ? name : around + "." + name;
  }

  /**
   * One wish.
   *
   * @param field as it is written
   */
  public record Wished(Role role, String field, Condition condition) {
    private static List<Wished> of(Map<Role, Map<String, Condition>> byRole) {
      var all = new ArrayList<Wished>();
      byRole.forEach((role, fields) ->
          fields.forEach((field, condition) -> all.add(new Wished(role, field, condition))));
      return all;
    }

    /** Where it stands in a scenario. */
    public String path() {
      return "where." + place();
    }

    private String place() {
      return Where.place(role.key(), field);
    }

    /** What a person reads of it, as {@code battery.cellsInSeries 4}. */
    public String inWords() {
      return role.key() + "." + field + " " + condition.inWords();
    }

    private void check() {
      var property = Property.of(role, field);
      if (property.isPresent()) {
        condition.check(place(), property.get());
        return;
      }
      var fields = Property.of(role).keySet();
      var inner = fields.stream()
          .filter(path -> path.startsWith(field + ".") || path.startsWith(field + "[]."))
          .toList();
      Require.refuse("%s must be a field of a %s that holds a value, but is %s.%s"
          .formatted(
              place(),
              role.label(),
              inner.isEmpty() ? "none" : "an object",
              inner.isEmpty() ? advice(fields) : " Maybe " + inner.get(0) + " was meant."));
    }

    /** A short word such as Kv is sooner part of a name than a slip for another. */
    private String advice(Set<String> fields) {
      return fields.stream()
          .filter(path -> path.toLowerCase(Locale.ROOT).contains(field.toLowerCase(Locale.ROOT)))
          .findFirst()
          .map(path -> " Maybe " + path + " was meant.")
          .orElseGet(() -> Closest.advice(field, fields));
    }

    /** The field that it is about. */
    public Property property() {
      return Property.of(role, field).orElseThrow();
    }

    boolean isMetBy(Part part) {
      return condition.isMetBy(property().in(part, role));
    }

    /** What a part that fills the role has there, in words. */
    public String found(Part part) {
      var said = property().in(part, role);
      return said.isComplete()
          ? said.values().stream().map(Condition::word).collect(Collectors.joining(", "))
          : "not known";
    }
  }

  /** What parts of a catalogue that fill a role say in a field that holds text. */
  public static Set<String> texts(Role role, Property property, Catalog catalog) {
    var texts = new TreeSet<String>();
    for (var part : catalog.parts()) {
      if (part.fills().contains(role) || catalog.roles(part).contains(role)) {
        property.in(part, role).values().forEach(value -> texts.add(String.valueOf(value)));
      }
    }
    return texts;
  }

  /** Every wish, in the order of roles, then as written. */
  public List<Wished> wishes() {
    return Wished.of(byRole);
  }

  /** Wishes that a part does not meet if it is chosen for a role, those on what is built into it among them. */
  public List<Wished> unmet(Role role, Part part) {
    return byRole.isEmpty()
        ? List.of()
        : wishes().stream()
            .filter(one ->
                (one.role() == role || part.fills().contains(one.role())) && !one.isMetBy(part))
            .toList();
  }

  /** Whether a part may be chosen for a role. */
  public boolean admits(Role role, Part part) {
    return unmet(role, part).isEmpty();
  }

  /** These wishes without some of them; nothing if none is left. */
  public @Nullable Where without(List<Wished> some) {
    var left = new EnumMap<Role, Map<String, Condition>>(Role.class);
    for (var one : wishes()) {
      if (!some.contains(one)) {
        left.computeIfAbsent(one.role(), fresh -> new LinkedHashMap<>())
            .put(one.field(), one.condition());
      }
    }
    return left.isEmpty() ? null : new Where(left);
  }

  /** These wishes and one more, in the place of any on the same field, however that is written. */
  public Where with(Role role, String field, Condition condition) {
    var all = new EnumMap<Role, Map<String, Condition>>(Role.class);
    byRole.forEach((each, fields) -> all.put(each, new LinkedHashMap<>(fields)));
    var fields = all.computeIfAbsent(role, fresh -> new LinkedHashMap<>());
    fields.keySet().removeIf(other -> !other.equals(field) && isSame(role, other, field));
    fields.put(field, condition);
    return new Where(all);
  }

  /** The wish on a field of a role, if there is one. */
  public Optional<Condition> on(Role role, String field) {
    return wishes().stream()
        .filter(one -> one.role() == role && isSame(role, one.field(), field))
        .map(Wished::condition)
        .findFirst();
  }

  private static boolean isSame(Role role, String one, String other) {
    return Property.of(role, one).equals(Property.of(role, other));
  }
}
