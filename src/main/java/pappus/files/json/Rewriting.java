package pappus.files.json;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import pappus.files.Problems;
import pappus.files.Source;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;

/**
 * A JSON file with some of its values put otherwise before it is read. Whatever stood in the file keeps its letters and
 * its place, and what is put in is told of where it came from, so that nothing is read less strictly.
 */
public final class Rewriting {
  private static final Pattern STEP = Pattern.compile("\\.?([A-Za-z0-9_$-]+)|\\[([0-9]{1,4})\\]");

  private final Source source;
  private final ObjectNode root;
  private boolean isChanged;

  private Rewriting(Source source, ObjectNode root) {
    this.source = source;
    this.root = root;
  }

  /** A value was not put; the message is a predicate of its path: "must be …, but is …". */
  public static final class Refused extends Exception {
    private static final long serialVersionUID = 1L;

    Refused(String sentence) {
      super(sentence, null, false, false);
    }
  }

  private sealed interface Node permits ObjectNode, ListNode, Leaf {
    Source.Origin from();
  }

  private record ObjectNode(Source.Origin from, Map<String, Field> fields) implements Node {}

  /** @param from where its name stands */
  private record Field(Source.Origin from, Node value) {}

  private record ListNode(Source.Origin from, List<Node> elements) implements Node {}

  /** @param raw as it stands in JSON */
  private record Leaf(Source.Origin from, String raw, boolean isNumber, Optional<String> text)
      implements Node {}

  /** A file that is one JSON object without a name twice; of others reading tells what is wrong. */
  public static Optional<Rewriting> of(Source source) {
    if (!source.isText(new Problems())) {
      return Optional.empty();
    }
    var columns = source.columns();
    return parsed(source, parser -> {
          var place = parser.currentTokenLocation();
          var offset = (int) place.getByteOffset();
          return new Source.Origin(source.name(), place.getLineNr(), columns.at(offset));
        })
        .filter(ObjectNode.class::isInstance)
        .map(node -> new Rewriting(source, (ObjectNode) node));
  }

  private interface Places {
    Source.Origin at(JsonParser parser);
  }

  private static Optional<Node> parsed(Source source, Places places) {
    var bytes = source.bytes();
    try (var parser = StrictMapper.parser(bytes, 0, bytes.length)) {
      if (parser.nextToken() == null) {
        return Optional.empty();
      }
      var node = node(parser, places);
      return parser.nextToken() == null ? Optional.of(node) : Optional.empty();
    } catch (JacksonException noJson) {
      return Optional.empty();
    }
  }

  private static Node node(JsonParser parser, Places places) {
    var from = places.at(parser);
    var token = parser.currentToken();
    if (token == JsonToken.START_OBJECT) {
      var fields = new LinkedHashMap<String, Field>();
      while (parser.nextToken() == JsonToken.PROPERTY_NAME) {
        var name = parser.currentName();
        var at = places.at(parser);
        parser.nextToken();
        fields.put(name, new Field(at, node(parser, places)));
      }
      return new ObjectNode(from, fields);
    }
    if (token == JsonToken.START_ARRAY) {
      var elements = new ArrayList<Node>();
      while (parser.nextToken() != JsonToken.END_ARRAY) {
        elements.add(node(parser, places));
      }
      return new ListNode(from, elements);
    }
    return new Leaf(
        from,
        token == JsonToken.VALUE_STRING ? quoted(parser.getString()) : parser.getString(),
        token.isNumeric(),
        token == JsonToken.VALUE_STRING ? Optional.of(parser.getString()) : Optional.empty());
  }

  /** A text as it stands in JSON. */
  public static String quoted(String text) {
    return JsonText.of(text).strip();
  }

  /** Where the whole file begins. */
  public Source.Origin start() {
    return root.from();
  }

  /** Whether a field of the file itself is there. */
  public boolean has(String name) {
    return root.fields().containsKey(name);
  }

  /**
   * Whether something is at a path.
   *
   * @param path such as {@code draftFrame.drawing.plates[0]}
   */
  public boolean isThere(String path) {
    Node at = root;
    for (var step : steps(path)) {
      var name = step.name();
      if (at instanceof ObjectNode object && name != null && object.fields().containsKey(name)) {
        at = object.fields().get(name).value();
      } else if (at instanceof ListNode list
          && name == null
          && step.index() < list.elements().size()) {
        at = list.elements().get(step.index());
      } else {
        return false;
      }
    }
    return true;
  }

  /** A number in a field of the file itself, as it is written; empty if there is none. */
  public Optional<String> number(String name) {
    return field(name).filter(Leaf::isNumber).map(Leaf::raw);
  }

  /** A text in a field of the file itself; empty if there is none. */
  public Optional<String> text(String name) {
    return field(name).flatMap(Leaf::text);
  }

  private Optional<Leaf> field(String name) {
    var field = root.fields().get(name);
    return field != null && field.value() instanceof Leaf leaf
        ? Optional.of(leaf)
        : Optional.empty();
  }

  /** Where a field of the file itself stands; where the file begins, if it does not. */
  public Source.Origin origin(String name) {
    var field = root.fields().get(name);
    return field == null ? start() : field.from();
  }

  /**
   * Puts a value, in place of one that is there if any is; what is missing around it is put too.
   *
   * @param path such as {@code flight.legs[0].seconds}
   * @param json the value; absent: the field or element is taken out
   * @param from what is told of it
   * @throws Refused naming the path if there is no such place, or the value is no JSON
   */
  public void put(String path, @Nullable String json, Source.Origin from) throws Refused {
    var value = json == null ? null : value(path, json, from);
    var steps = steps(path);
    Node at = root;
    var told = "";
    for (var i = 0; i < steps.size(); i++) {
      var step = steps.get(i);
      var isLast = i == steps.size() - 1;
      var inner = isLast ? value : null;
      if (!isLast) {
        inner = steps.get(i + 1).name() == null
            ? new ListNode(from, new ArrayList<>())
            : new ObjectNode(from, new LinkedHashMap<>());
      }
      at = step.name() == null
          ? inList(at, told, step.index(), inner, isLast)
          : inObject(at, told, step.name(), inner, isLast, from);
      if (at == null) {
        break;
      }
      told += step.told(told);
    }
    isChanged = true;
  }

  /** @return what stands there then; null where nothing does */
  private static @Nullable Node inObject(
      Node around,
      String path,
      String name,
      @Nullable Node value,
      boolean isLast,
      Source.Origin from)
      throws Refused {
    if (!(around instanceof ObjectNode object)) {
      throw new Refused("%s must be an object to have %s, but is none.".formatted(path, name));
    }
    var there = object.fields().get(name);
    if (there != null && !isLast) {
      return there.value();
    }
    if (value == null) {
      object.fields().remove(name);
    } else {
      object.fields().put(name, new Field(from, value));
    }
    return value;
  }

  private static @Nullable Node inList(
      Node around, String path, int index, @Nullable Node value, boolean isLast) throws Refused {
    if (!(around instanceof ListNode list)) {
      throw new Refused("%s must be a list to have [%s], but is none.".formatted(path, index));
    }
    var elements = list.elements();
    if (index < elements.size() && !isLast) {
      return elements.get(index);
    }
    if (index > elements.size() || (value == null && index == elements.size())) {
      throw new Refused(
          "%s[%s] must be in the list, but that has %s.".formatted(path, index, elements.size()));
    }
    if (value == null) {
      elements.remove(index);
    } else if (index < elements.size()) {
      elements.set(index, value);
    } else {
      elements.add(value);
    }
    return value;
  }

  private static Node value(String path, String json, Source.Origin from) throws Refused {
    return parsed(Source.of("", json.getBytes(UTF_8)), parser -> from)
        .orElseThrow(() -> new Refused(
            "%s must be one value in JSON, without a name twice, but is none.".formatted(path)));
  }

  /** @param name of a field; absent: it is an element of a list */
  private record Step(@Nullable String name, int index) {
    String told(String before) {
      return name == null ? "[" + index + "]" : before.isEmpty() ? name : "." + name;
    }
  }

  /** Whether a text is a path as messages print it. */
  public static boolean isPath(String path) {
    return path.matches("[A-Za-z_$][A-Za-z0-9_$-]*(\\.[A-Za-z0-9_$-]+|\\[[0-9]{1,4}\\])*");
  }

  private static List<Step> steps(String path) {
    var steps = new ArrayList<Step>();
    var found = STEP.matcher(path);
    while (found.find()) {
      steps.add(
          found.group(1) == null
              ? new Step(null, Integer.parseInt(found.group(2)))
              : new Step(found.group(1), 0));
    }
    return steps;
  }

  /** The file with all that was put; the file itself, if nothing was. */
  public Source source() {
    if (!isChanged) {
      return source;
    }
    var lines = new Lines();
    lines.write("", root, root.from(), "");
    return source.rewritten(String.join("\n", lines.texts) + "\n", lines.origins);
  }

  /** Each field and element begins a line of its own, so that a line tells where it came from. */
  private static final class Lines {
    private final List<String> texts = new ArrayList<>();
    private final List<Source.Origin> origins = new ArrayList<>();

    void write(String before, Node node, Source.Origin from, String after) {
      if (node instanceof Leaf leaf) {
        add(before + leaf.raw() + after, from);
      } else if (node instanceof ListNode list) {
        add(before + "[", from);
        for (var i = 0; i < list.elements().size(); i++) {
          var element = list.elements().get(i);
          write("", element, element.from(), i < list.elements().size() - 1 ? "," : "");
        }
        add("]" + after, from);
      } else if (node instanceof ObjectNode object) {
        add(before + "{", from);
        var left = object.fields().size();
        for (var field : object.fields().entrySet()) {
          left--;
          write(
              quoted(field.getKey()) + ": ",
              field.getValue().value(),
              field.getValue().from(),
              left > 0 ? "," : "");
        }
        add("}" + after, from);
      }
    }

    private void add(String text, Source.Origin from) {
      texts.add(text);
      origins.add(from);
    }
  }
}
