package pappus.files;

import java.lang.reflect.ParameterizedType;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Finds all that is wrong with a file that was refused.
 *
 * <p>The schema finds fields that are missing, unknown or of the wrong kind; then every object that
 * has no such fault is made into its record on its own, innermost first, to hear what the record has
 * to say.
 */
final class JsonDiagnosis {
  /** How the records' own messages begin: with the name of the field, or the path to it. */
  private static final Pattern OWN_MESSAGE = Pattern.compile(
      "([A-Za-z][A-Za-z0-9]*(?:[.\\[][A-Za-z0-9.\\[\\]]*)?) (must|is missing).*", Pattern.DOTALL);

  private final Source source;
  private final String schema;
  private final Problems all;
  private final JsonPlaces places;

  JsonDiagnosis(Source source, String schema, Problems problems) {
    this.source = source;
    this.schema = schema;
    this.all = problems;
    this.places = new JsonPlaces(source);
  }

  void readRecord(Class<?> record) {
    if (!isJson()) {
      return;
    }
    var bytes = source.bytes();
    try (var parser = StrictMapper.lenientParser(bytes, 0, bytes.length)) {
      parser.nextToken();
      var node = places.add(parser, "", JsonPlaces.Before.NOTHING);
      checkSchema(node, List.of());
      if (node.isObject()) {
        checkRecord(record, "");
      }
    }
    finish();
  }

  <T> List<Listed<T>> readList(String list, Class<T> record) {
    if (!isJson()) {
      return List.of();
    }
    var good = new ArrayList<Listed<T>>();
    var wrong = new LinkedHashMap<Integer, String>();
    var outline = JsonNodeFactory.instance.objectNode();
    var bytes = source.bytes();
    try (var parser = StrictMapper.lenientParser(bytes, 0, bytes.length)) {
      if (parser.nextToken() == JsonToken.START_OBJECT) {
        readFields(parser, list, record, good, wrong, outline);
        checkSchema(outline, List.copyOf(wrong.keySet()));
        wrong.values().forEach(path -> checkRecord(record, path));
      } else {
        checkSchema(places.add(parser, "", JsonPlaces.Before.NOTHING), List.of());
      }
    }
    finish();
    return good;
  }

  private <T> void readFields(
      JsonParser parser,
      String list,
      Class<T> record,
      List<Listed<T>> good,
      Map<Integer, String> wrong,
      ObjectNode outline) {
    while (parser.nextToken() == JsonToken.PROPERTY_NAME) {
      var name = parser.currentName();
      var line = parser.currentTokenLocation().getLineNr();
      parser.nextToken();
      if (outline.has(name)) {
        places.refuseTwice(JsonPlaces.field("", name), line);
        parser.skipChildren();
      } else if (name.equals(list) && parser.hasToken(JsonToken.START_ARRAY)) {
        places.addUnindexed(parser, name, line);
        outline.set(name, readElements(parser, list, record, good, wrong));
      } else {
        outline.set(
            name, places.add(parser, JsonPlaces.field("", name), line, JsonPlaces.Before.NOTHING));
      }
    }
  }

  /** Sorts the elements into good records and others, which are indexed. */
  private <T> JsonNode readElements(
      JsonParser parser,
      String list,
      Class<T> record,
      List<Listed<T>> good,
      Map<Integer, String> wrong) {
    var reader = StrictMapper.readerFor(record);
    var elements = JsonNodeFactory.instance.arrayNode();
    for (var index = 0; parser.nextToken() != JsonToken.END_ARRAY; index++) {
      var line = parser.currentTokenLocation().getLineNr();
      if (!parser.hasToken(JsonToken.START_OBJECT)) {
        var path = JsonPlaces.element(list, index);
        elements.add(places.add(parser, path, JsonPlaces.Before.NOTHING));
        wrong.put(index, path);
        continue;
      }
      var from = (int) parser.currentTokenLocation().getByteOffset();
      parser.skipChildren();
      var length = (int) parser.currentLocation().getByteOffset() - from;
      try {
        T value = StrictMapper.bind(reader, record, source.bytes(), from, length);
        good.add(new Listed<>(value, index, line));
      } catch (JacksonException e) {
        var path = JsonPlaces.element(list, index);
        try (var slice = StrictMapper.lenientParser(source.bytes(), from, length)) {
          slice.nextToken();
          elements.add(places.add(slice, path, new JsonPlaces.Before(from, line - 1)));
        }
        wrong.put(index, path);
      }
    }
    return elements;
  }

  /** Whether the bytes are one JSON value; a syntax error hides all that comes after it. */
  private boolean isJson() {
    var bytes = source.bytes();
    try (var parser = StrictMapper.lenientParser(bytes, 0, bytes.length)) {
      try {
        var isEmpty = true;
        while (parser.nextToken() != null) {
          var isBegin = parser.currentToken().isStructStart();
          var context = parser.streamReadContext();
          var isAtTop = isBegin ? context.getParent().inRoot() : context.inRoot();
          if (isAtTop && !isEmpty && !parser.currentToken().isStructEnd()) {
            all.add(new Problem(
                source.name(),
                parser.currentTokenLocation().getLineNr(),
                "The file must be one JSON value, but has %s after its end."
                    .formatted(StrictScalars.shown(parser))));
            return false;
          }
          isEmpty = false;
          parser.finishToken();
        }
        if (isEmpty) {
          all.add(new Problem(source.name(), 1, "The file must be JSON, but is empty."));
        }
        return !isEmpty;
      } catch (JacksonException e) {
        all.add(SyntaxProblem.of(source, parser, e));
        return false;
      }
    }
  }

  private void checkSchema(JsonNode document, List<Integer> indexes) {
    SchemaCheck.check(schema, document, indexes, places);
  }

  /** Makes every object without a fault into its record. Returns whether all of it is well. */
  private boolean checkRecord(Class<?> record, String path) {
    var place = places.place(path);
    if (place.isEmpty() || !place.get().shown().equals("an object")) {
      return !places.isFaulty(path);
    }
    var isWell = true;
    for (var component : record.getRecordComponents()) {
      isWell &= checkValue(component.getGenericType(), JsonPlaces.field(path, component.getName()));
    }
    if (!isWell || places.isFaulty(path)) {
      return false;
    }
    var at = place.get();
    try {
      var reader =
          path.isEmpty() ? StrictMapper.readerForFile(record) : StrictMapper.readerFor(record);
      StrictMapper.bind(reader, record, source.bytes(), at.from(), at.to() - at.from());
      return true;
    } catch (JacksonException e) {
      refuse(path, e);
      return false;
    }
  }

  private boolean checkValue(java.lang.reflect.Type type, String path) {
    if (type instanceof Class<?> record && record.isRecord()) {
      return checkRecord(record, path);
    }
    if (type instanceof ParameterizedType list
        && list.getRawType() == List.class
        && list.getActualTypeArguments()[0] instanceof Class<?> record
        && record.isRecord()) {
      var isWell = true;
      for (var i = 0; places.place(JsonPlaces.element(path, i)).isPresent(); i++) {
        isWell &= checkRecord(record, JsonPlaces.element(path, i));
      }
      return isWell;
    }
    return true;
  }

  private void refuse(String path, JacksonException e) {
    var cause = e.getCause();
    if (cause instanceof IllegalArgumentException && cause.getMessage() != null) {
      var own = OWN_MESSAGE.matcher(cause.getMessage());
      if (own.matches()) {
        var name = own.group(1);
        var field = path.isEmpty() ? name : path + "." + name;
        places.refuse(field, cause.getMessage().substring(name.length() + 1));
        return;
      }
    }
    if (cause instanceof RuntimeException && !(cause instanceof JacksonException)) {
      throw new IllegalStateException("A record failed on the data at " + path + ".", cause);
    }
    var at = path;
    for (var step : e.getPath()) {
      at = step.getPropertyName() == null
          ? JsonPlaces.element(at, step.getIndex())
          : JsonPlaces.field(at, step.getPropertyName());
    }
    places.refuse(
        at,
        e instanceof StrictScalars.Refusal
            ? e.getOriginalMessage()
            : "must be as its schema says, but is not.");
  }

  private void finish() {
    all.addAll(places.problems().sorted());
    if (places.problems().isEmpty()) {
      all.add(new Problem(source.name(), 1, "The file must be as its schema says, but is not."));
    }
  }
}
