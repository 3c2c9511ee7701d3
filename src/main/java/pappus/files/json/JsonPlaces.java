package pappus.files.json;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import pappus.files.Problem;
import pappus.files.Problems;
import pappus.files.Shown;
import pappus.files.Source;
import pappus.quantity.Require;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;

/**
 * Where everything stands in a file, by paths such as {@code motors[3].mass.grams}.
 *
 * <p>Costs much memory, so that a large list is indexed one wrong record at a time.
 */
public final class JsonPlaces {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private static final Pattern PLAIN_NAME = Pattern.compile("[A-Za-z0-9_$-]+");

  private final Source source;
  private final Source.Columns columns;
  private final Map<String, Place> places = new HashMap<>();
  private final Problems problems = new Problems();
  private final Set<String> faulty = new HashSet<>();

  /**
   * @param start of the value, or of the name before it
   * @param from first byte of the value
   * @param to byte after an object or list
   * @param shown the value in words
   */
  record Place(Start start, int from, int to, String shown) {}

  /**
   * Where something begins.
   *
   * @param line from 1
   * @param offset bytes from the beginning of the file
   */
  record Start(int line, int offset) {
    static Start of(JsonParser parser, Before before) {
      var location = parser.currentTokenLocation();
      return new Start(
          before.lines() + location.getLineNr(), before.bytes() + (int) location.getByteOffset());
    }
  }

  /** What comes before the first byte that a parser knows. */
  record Before(int bytes, int lines) {
    static final Before NOTHING = new Before(0, 0);
  }

  JsonPlaces(Source source) {
    this.source = source;
    this.columns = source.columns();
  }

  /** Indexes a whole file that was read before. */
  public static JsonPlaces of(Source source) {
    var places = new JsonPlaces(source);
    var bytes = source.bytes();
    try (var parser = StrictMapper.lenientParser(bytes, 0, bytes.length)) {
      parser.nextToken();
      places.add(parser, "", Before.NOTHING);
    }
    return places;
  }

  /** Indexes one record of a list that was read before, whose path is given. */
  public static JsonPlaces of(Source source, Listed<?> listed, String path) {
    var places = new JsonPlaces(source);
    var from = listed.offset();
    var length = source.bytes().length - from;
    try (var parser = StrictMapper.lenientParser(source.bytes(), from, length)) {
      parser.nextToken();
      places.add(parser, path, new Before(from, listed.line() - 1));
    }
    return places;
  }

  /** Line of a path, else of the nearest object or list around it that exists, else 1. */
  public int line(String path) {
    return start(path).line();
  }

  private Start start(String path) {
    for (var at = path; ; at = parent(at)) {
      var place = places.get(at);
      if (place != null) {
        return place.start();
      }
      if (at.isEmpty()) {
        return new Start(1, 0);
      }
    }
  }

  /** A problem of the value at a path; the predicate goes on after the path. */
  public Problem problem(String path, String predicate) {
    return problem(start(path), path, predicate);
  }

  private Problem problem(Start start, String path, String predicate) {
    return source.home(new Problem(
        source.name(), start.line(), columns.at(start.offset()), sentence(path, predicate)));
  }

  private static String sentence(String path, String predicate) {
    return Shown.sentence((path.isEmpty() ? "The file" : path) + " " + predicate);
  }

  /** Notes a problem of the value at a path, and that all around it is wrong too. */
  void refuse(String path, String predicate) {
    refuse(path, start(path), predicate);
  }

  /** Notes that a field stands again at a place. */
  void refuseTwice(String path, Start again) {
    refuse(path, again, "must stand once, but stands on line %s too.".formatted(line(path)));
  }

  private void refuse(String path, Start start, String predicate) {
    problems.add(problem(start, path, predicate));
    for (var at = path; ; at = parent(at)) {
      faulty.add(at);
      if (at.isEmpty()) {
        return;
      }
    }
  }

  /** Whether something at a path or in it is known to be wrong. */
  boolean isFaulty(String path) {
    return faulty.contains(path);
  }

  /** Paths of what is known to be wrong so far, and of all around it. */
  Set<String> faulty() {
    return Set.copyOf(faulty);
  }

  /** What was refused so far. */
  Problems problems() {
    return problems;
  }

  /** Notes where a value is that is not indexed itself. */
  void addUnindexed(JsonParser parser, String path, Start start) {
    places.put(path, new Place(start, 0, 0, StrictScalars.shown(parser)));
  }

  Optional<Place> place(String path) {
    return Optional.ofNullable(places.get(path));
  }

  /** The path of what could not be bound, within what stands at a path. */
  static String path(String around, JacksonException refused) {
    var at = around;
    for (var step : refused.getPath()) {
      at = step.getPropertyName() == null
          ? element(at, step.getIndex())
          : field(at, step.getPropertyName());
    }
    return at;
  }

  /** Path of a field. */
  static String field(String path, String name) {
    if (!PLAIN_NAME.matcher(name).matches()) {
      return path + "[" + Shown.text(name) + "]";
    }
    return path.isEmpty() ? name : path + "." + name;
  }

  /** Path of an element. */
  static String element(String path, int index) {
    return path + "[" + index + "]";
  }

  private static String parent(String path) {
    var cut = Math.max(path.lastIndexOf('.'), path.lastIndexOf('['));
    return cut < 0 ? "" : path.substring(0, cut);
  }

  /**
   * Indexes the value at the current token and all in it.
   *
   * @return the value, for a check by schema; a number that no double can hold is zero in it
   */
  JsonNode add(JsonParser parser, String path, Before before) {
    return add(parser, path, Start.of(parser, before), before);
  }

  /** As above, where the start is that of the name before the value. */
  JsonNode add(JsonParser parser, String path, Start start, Before before) {
    var from = before.bytes() + (int) parser.currentTokenLocation().getByteOffset();
    var shown = StrictScalars.shown(parser);
    places.put(path, new Place(start, from, from, shown));
    JsonNode node = switch (parser.currentToken()) {
      case START_OBJECT -> addObject(parser, path, before);
      case START_ARRAY -> addList(parser, path, before);
      case VALUE_STRING -> NODES.stringNode(parser.getString());
      case VALUE_TRUE -> NODES.booleanNode(true);
      case VALUE_FALSE -> NODES.booleanNode(false);
      case VALUE_NULL -> NODES.nullNode();
      case VALUE_NUMBER_INT -> NODES.numberNode(parser.getBigIntegerValue());
      default -> NODES.numberNode(finite(parser, path));
    };
    if (node.isContainer()) {
      var to = before.bytes() + (int) parser.currentLocation().getByteOffset();
      places.put(path, new Place(start, from, to, shown));
    }
    return node;
  }

  private JsonNode addObject(JsonParser parser, String path, Before before) {
    var object = NODES.objectNode();
    while (parser.nextToken() == JsonToken.PROPERTY_NAME) {
      var name = parser.currentName();
      var child = field(path, name);
      var start = Start.of(parser, before);
      parser.nextToken();
      if (object.has(name)) {
        refuseTwice(child, start);
        parser.skipChildren();
      } else {
        object.set(name, add(parser, child, start, before));
      }
    }
    return object;
  }

  private JsonNode addList(JsonParser parser, String path, Before before) {
    var list = NODES.arrayNode();
    var size = 0;
    for (; parser.nextToken() != JsonToken.END_ARRAY; size++) {
      if (size < Require.LONGEST_LIST) {
        list.add(add(parser, element(path, size), before));
      } else {
        parser.skipChildren();
      }
    }
    if (size > Require.LONGEST_LIST) {
      refuse(path, "must list at most %s, but lists %s.".formatted(Require.LONGEST_LIST, size));
    }
    return list;
  }

  private double finite(JsonParser parser, String path) {
    var value = parser.getDoubleValue();
    if (Double.isInfinite(value)) {
      refuse(path, "must be a finite number, but is %s.".formatted(parser.getString()));
      return 0;
    }
    return value;
  }
}
