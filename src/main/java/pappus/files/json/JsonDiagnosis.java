package pappus.files.json;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import pappus.files.Problem;
import pappus.files.Problems;
import pappus.files.Source;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Finds all that is wrong with a file that was refused.
 *
 * <p>The schema finds fields that are missing, unknown or of the wrong kind; then every object that
 * has no such fault is made into its record on its own, to hear what the record has to say.
 */
final class JsonDiagnosis {
  /** Wrong records indexed at a time, which bounds the memory. */
  private static final int MOST_AT_A_TIME = 200;

  private final Source source;
  private final String schemaName;
  private final Problems problems;
  private @Nullable SchemaCheck schema;
  private boolean foundNothing = true;

  JsonDiagnosis(Source source, String schema, Problems problems) {
    this.source = source;
    this.schemaName = schema;
    this.problems = problems;
  }

  void readRecord(Class<?> record) {
    if (!isJson()) {
      return;
    }
    var places = new JsonPlaces(source);
    try (var parser = parser()) {
      parser.nextToken();
      var node = places.add(parser, "", JsonPlaces.Before.NOTHING);
      schema().check(node, List.of(), places);
    }
    new RecordCheck(source, places).check(record, "");
    report(places);
    reportSomething();
  }

  /** Returns the records that are right. */
  <T> List<Listed<T>> readList(String list, Class<T> record) {
    if (!isJson()) {
      return List.of();
    }
    var right = new ArrayList<Listed<T>>();
    var places = new JsonPlaces(source);
    try (var parser = parser()) {
      if (parser.nextToken() == JsonToken.START_OBJECT) {
        var fields = JsonNodeFactory.instance.objectNode();
        while (parser.nextToken() == JsonToken.PROPERTY_NAME) {
          readField(parser, places, fields, new Elements<>(list, record, right));
        }
        schema().check(fields, List.of(), places);
      } else {
        schema().check(places.add(parser, "", JsonPlaces.Before.NOTHING), List.of(), places);
      }
    }
    report(places);
    reportSomething();
    return right;
  }

  private void readField(
      JsonParser parser, JsonPlaces places, ObjectNode fields, Elements<?> elements) {
    var name = parser.currentName();
    var path = JsonPlaces.field("", name);
    var start = JsonPlaces.Start.of(parser, JsonPlaces.Before.NOTHING);
    parser.nextToken();
    if (fields.has(name)) {
      places.refuseTwice(path, start);
      parser.skipChildren();
    } else if (name.equals(elements.list) && parser.hasToken(JsonToken.START_ARRAY)) {
      places.addUnindexed(parser, path, start);
      fields.putArray(name);
      elements.read(parser);
    } else {
      fields.set(name, places.add(parser, path, start, JsonPlaces.Before.NOTHING));
    }
  }

  /** The one list of a file: its right records are kept, the others diagnosed some at a time. */
  private final class Elements<T> {
    private final String list;
    private final Class<T> record;
    private final List<Listed<T>> right;
    private final List<Integer> wrong = new ArrayList<>();
    private ArrayNode wrongNodes = JsonNodeFactory.instance.arrayNode();
    private JsonPlaces places = new JsonPlaces(source);

    Elements(String list, Class<T> record, List<Listed<T>> right) {
      this.list = list;
      this.record = record;
      this.right = right;
    }

    void read(JsonParser parser) {
      for (var index = 0; parser.nextToken() != JsonToken.END_ARRAY; index++) {
        if (parser.hasToken(JsonToken.START_OBJECT)) {
          readObject(parser, index);
        } else if (problems.isFull(source.name())) {
          countOnly(parser);
        } else {
          wrong.add(index);
          wrongNodes.add(
              places.add(parser, JsonPlaces.element(list, index), JsonPlaces.Before.NOTHING));
        }
        if (wrong.size() == MOST_AT_A_TIME) {
          diagnose();
        }
      }
      diagnose();
    }

    private void readObject(JsonParser parser, int index) {
      var line = parser.currentTokenLocation().getLineNr();
      var from = (int) parser.currentTokenLocation().getByteOffset();
      parser.skipChildren();
      var length = (int) parser.currentLocation().getByteOffset() - from;
      try {
        var reader = StrictMapper.readerFor(record);
        T value = StrictMapper.bind(reader, record, source.bytes(), from, length);
        right.add(new Listed<>(value, index, line, from));
      } catch (JacksonException e) {
        if (problems.isFull(source.name())) {
          countOnly(parser);
          return;
        }
        wrong.add(index);
        try (var slice = StrictMapper.lenientParser(source.bytes(), from, length)) {
          slice.nextToken();
          var before = new JsonPlaces.Before(from, line - 1);
          wrongNodes.add(places.add(slice, JsonPlaces.element(list, index), before));
        }
      }
    }

    /** Who has read a hundred has seen what is the matter, and to find each takes long. */
    private void countOnly(JsonParser parser) {
      parser.skipChildren();
      problems.count(source.name());
      foundNothing = false;
    }

    private void diagnose() {
      if (wrong.isEmpty()) {
        return;
      }
      var document = JsonNodeFactory.instance.objectNode();
      document.set(list, wrongNodes);
      schema().check(document, wrong, places);
      var check = new RecordCheck(source, places);
      wrong.forEach(index -> check.check(record, JsonPlaces.element(list, index)));
      report(places);
      wrong.clear();
      wrongNodes = JsonNodeFactory.instance.arrayNode();
      places = new JsonPlaces(source);
    }
  }

  /** Loaded when the first fault is to be told. */
  private SchemaCheck schema() {
    if (schema == null) {
      schema = new SchemaCheck(schemaName);
    }
    return schema;
  }

  private void report(JsonPlaces places) {
    foundNothing &= places.problems().isEmpty();
    problems.addAll(places.problems());
  }

  /** A file that was refused must not pass in silence, whatever the reason was. */
  private void reportSomething() {
    if (foundNothing) {
      problems.add(source.home(
          new Problem(source.name(), 1, "The file must be as its schema says, but is not.")));
    }
  }

  /** Whether the bytes are one JSON value; a syntax error hides all that comes after it. */
  private boolean isJson() {
    try (var parser = parser()) {
      try {
        var isEmpty = true;
        while (parser.nextToken() != null) {
          if (!isEmpty && beginsAtTop(parser)) {
            problems.add(new Problem(
                source.name(),
                parser.currentTokenLocation().getLineNr(),
                "The file must be one JSON value, but has %s after its end."
                    .formatted(StrictScalars.shown(parser))));
            return false;
          }
          isEmpty = false;
          readToken(parser);
        }
        if (isEmpty) {
          problems.add(new Problem(source.name(), 1, "The file must be JSON, but is empty."));
        }
        return !isEmpty;
      } catch (JacksonException e) {
        problems.add(SyntaxProblem.of(source, parser, e));
        return false;
      }
    }
  }

  /** To its end: only then is it known to be no longer than it may be. */
  private static void readToken(JsonParser parser) {
    if (parser.currentToken().isNumeric()) {
      parser.getNumberValue();
    } else {
      parser.getString();
    }
  }

  private static boolean beginsAtTop(JsonParser parser) {
    var token = parser.currentToken();
    var context = parser.streamReadContext();
    return token.isStructStart()
        ? context.getParent().inRoot()
        : context.inRoot() && !token.isStructEnd();
  }

  private JsonParser parser() {
    return StrictMapper.lenientParser(source.bytes(), 0, source.bytes().length);
  }
}
