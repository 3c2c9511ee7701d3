package pappus.part;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A field of a part's record that holds a value, by which parts can be told apart.
 *
 * @param path as in its file, such as {@code mass.grams}; {@code []} stands for every element of a list
 * @param type what it holds
 * @param words that it may be; empty unless it is one of some words
 */
public record Property(String path, Type type, List<String> words) {
  private static final String EACH = "[]";

  private static final Map<Role, Map<String, Property>> BY_ROLE = byRole();

  public Property {
    words = List.copyOf(words);
  }

  /** What a field holds. */
  public enum Type {
    NUMBER,
    WHOLE_NUMBER,
    TEXT,
    WORD,
    TRUTH
  }

  /**
   * What a part says in a field.
   *
   * @param values numbers as {@link BigDecimal}, texts and words as {@link String}, or {@link Boolean}: one, or of a
   *     list each
   * @param isComplete whether none of them is left out or assumed
   */
  public record Said(List<Object> values, boolean isComplete) {
    public Said {
      values = List.copyOf(values);
    }
  }

  /** The fields of parts that may be chosen for a role, by path, in the order of the file. */
  public static Map<String, Property> of(Role role) {
    return BY_ROLE.getOrDefault(role, Map.of());
  }

  /** The field that a path names, with {@code []} or without. */
  public static Optional<Property> of(Role role, String path) {
    return of(role).values().stream()
        .filter(property -> plain(property.path).equals(plain(path)))
        .findFirst();
  }

  private static String plain(String path) {
    return path.replace(EACH, "");
  }

  /** Whether it may be compared with a least and a most. */
  public boolean isNumber() {
    return type == Type.NUMBER || type == Type.WHOLE_NUMBER;
  }

  /**
   * What is known of this field of whatever fills a role. Of what is built into another part, that part's record says
   * it; the maker is that of the whole.
   *
   * @param part that fills the role, by itself or along with its own
   * @param role for which it is asked
   */
  public Said in(Part part, Role role) {
    var within = within(part, role);
    if (within.isEmpty() || path.equals("maker")) {
      return said(part, path);
    }
    return within.get().equals(".") ? new Said(List.of(), false) : said(part, within.get() + path);
  }

  /** Where a part's record tells of what is built into it for a role; a dot where it tells nothing; empty: of itself. */
  private static Optional<String> within(Part part, Role role) {
    if (part instanceof Antenna || part.fills().indexOf(role) == 0) {
      return Optional.empty();
    }
    return Optional.of(
        switch (role) {
          case RECEIVER -> "receiver.";
          case TRANSMITTER -> "transmitter.";
          case CAMERA -> "camera.";
          case RADIO_ANTENNA -> part instanceof Board ? "receiver.antenna." : "antenna.";
          case VIDEO_ANTENNA -> "antenna.";
          default -> ".";
        });
  }

  private static Said said(Part part, String path) {
    var values = new ArrayList<Object>();
    var isComplete = walk(part, List.of(plain(path).split("\\.")), "", part, values);
    return new Said(values, isComplete && !values.isEmpty());
  }

  /** @return whether all that was met is stated */
  private static boolean walk(
      Part part, List<String> names, String walked, Object at, List<Object> values) {
    if (part.assumed(walked).isPresent()) {
      return false;
    }
    if (at instanceof List<?> list) {
      var isComplete = true;
      for (var i = 0; i < list.size(); i++) {
        isComplete &= walk(part, names, walked + "[" + i + "]", list.get(i), values);
      }
      return isComplete;
    }
    if (names.isEmpty()) {
      values.add(value(at));
      return true;
    }
    for (var component : at.getClass().getRecordComponents()) {
      if (component.getName().equals(names.get(0))) {
        var inner = read(component, at);
        var path = walked.isEmpty() ? component.getName() : walked + "." + component.getName();
        return inner.isPresent()
            && walk(part, names.subList(1, names.size()), path, inner.get(), values);
      }
    }
    return false;
  }

  private static Optional<Object> read(RecordComponent component, Object record) {
    try {
      return Optional.ofNullable(component.getAccessor().invoke(record));
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("Every part is a public record.", e);
    }
  }

  private static Object value(Object at) {
    if (at instanceof Enum<?> constant) {
      return word(constant);
    }
    return at instanceof Number number ? new BigDecimal(number.toString()) : at;
  }

  private static String word(Enum<?> constant) {
    try {
      var written =
          constant.getDeclaringClass().getField(constant.name()).getAnnotation(JsonProperty.class);
      return written == null ? constant.name() : written.value();
    } catch (NoSuchFieldException e) {
      throw new IllegalStateException("Every constant has its field.", e);
    }
  }

  private static Map<Role, Map<String, Property>> byRole() {
    var byRole = new EnumMap<Role, Map<String, Property>>(Role.class);
    for (var role : Role.values()) {
      var kind =
          Role.ANTENNAS.contains(role) ? Kind.ANTENNA : Kind.ofKey(role.key()).orElseThrow();
      var properties = new LinkedHashMap<String, Property>();
      addFields(kind.recordClass(), "", properties);
      byRole.put(role, Collections.unmodifiableMap(properties));
    }
    return byRole;
  }

  private static void addFields(Class<?> record, String before, Map<String, Property> properties) {
    for (var component : record.getRecordComponents()) {
      if (!component.getAccessor().isAnnotationPresent(JsonIgnore.class)) {
        add(component.getGenericType(), before + component.getName(), properties);
      }
    }
  }

  private static void add(
      java.lang.reflect.Type type, String path, Map<String, Property> properties) {
    if (type instanceof ParameterizedType list) {
      var element = (Class<?>) list.getActualTypeArguments()[0];
      add(element, element.isRecord() ? path + EACH : path, properties);
    } else if (type instanceof Class<?> plain && plain.isRecord()) {
      addFields(plain, path + ".", properties);
    } else if (type instanceof Class<?> plain) {
      properties.put(path, new Property(path, type(plain), words(plain)));
    }
  }

  private static Type type(Class<?> plain) {
    if (plain.isEnum()) {
      return Type.WORD;
    } else if (plain == boolean.class || plain == Boolean.class) {
      return Type.TRUTH;
    } else if (plain == int.class || plain == Integer.class) {
      return Type.WHOLE_NUMBER;
    }
    return plain == String.class ? Type.TEXT : Type.NUMBER;
  }

  private static List<String> words(Class<?> plain) {
    return plain.isEnum()
        ? Stream.of(plain.getEnumConstants()).map(each -> word((Enum<?>) each)).toList()
        : List.of();
  }
}
