package pappus.files;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import com.networknt.schema.path.NodePath;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import tools.jackson.core.JsonPointer;
import tools.jackson.databind.JsonNode;

/**
 * Says in words of ours what a schema finds wrong with a document. Loaded only once a file has been
 * refused.
 */
final class SchemaCheck {
  private final Schema schema;
  private final List<Integer> indexes;
  private final JsonPlaces places;
  private final Set<String> explained = new HashSet<>();

  private SchemaCheck(Schema schema, List<Integer> indexes, JsonPlaces places) {
    this.schema = schema;
    this.indexes = indexes;
    this.places = places;
  }

  /**
   * Adds what is wrong to the places.
   *
   * @param indexes of the elements of the one list at the top, where only some of them are in the
   *     document; empty if all are
   */
  static void check(String name, JsonNode document, List<Integer> indexes, JsonPlaces places) {
    var schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
        .getSchema(SchemaText.of(name), InputFormat.JSON);
    new SchemaCheck(schema, indexes, places).explain(schema.validate(document));
  }

  private void explain(List<Error> errors) {
    // A misspelt field is also a missing one; one line is enough.
    errors.stream().filter(error -> isAbout(error, "additionalProperties")).forEach(this::unknown);
    errors.stream().filter(error -> isAbout(error, "required")).forEach(this::missing);
    errors.stream().filter(error -> isAbout(error, "type")).forEach(this::wrongType);
    errors.stream().filter(error -> isAbout(error, "enum")).forEach(this::wrongWord);
    errors.stream().filter(error -> isAbout(error, "const")).forEach(this::wrongWord);
  }

  private static boolean isAbout(Error error, String keyword) {
    return error.getKeyword().equals(keyword);
  }

  private void unknown(Error error) {
    var names = new ArrayList<>(around(error).path("properties").propertyNames());
    var typed = error.getProperty();
    var path = path(error.getInstanceLocation());
    names.removeIf(name -> places.place(JsonPlaces.field(path, name)).isPresent());
    Closest.to(typed, names).ifPresent(name -> explained.add(JsonPlaces.field(path, name)));
    places.refuse(JsonPlaces.field(path, typed), "is not a field." + Closest.advice(typed, names));
  }

  private void missing(Error error) {
    var path = JsonPlaces.field(path(error.getInstanceLocation()), error.getProperty());
    if (!explained.contains(path)) {
      places.refuse(path, "is missing.");
    }
  }

  private void wrongType(Error error) {
    var path = path(error.getInstanceLocation());
    var type = error.getSchemaNode().asString();
    var expected =
        type.equals("string") && around(error).has("enum") ? words(error) : inWords(type);
    refuse(path, expected);
  }

  private void wrongWord(Error error) {
    var path = path(error.getInstanceLocation());
    if (!places.isFaulty(path)) {
      refuse(path, words(error));
    }
  }

  private void refuse(String path, String expected) {
    places.refuse(
        path,
        "must be %s, but is %s."
            .formatted(expected, places.place(path).map(JsonPlaces.Place::shown).orElse("not")));
  }

  private String words(Error error) {
    var words = new ArrayList<String>();
    around(error).path("enum").forEach(word -> words.add(word.asString()));
    if (around(error).has("const")) {
      words.add(around(error).path("const").asString());
    }
    return Shown.choice(words);
  }

  /** The schema that holds the keyword. */
  private JsonNode around(Error error) {
    var pointer = error.getSchemaLocation().getFragment().toString();
    return schema
        .getSchemaNode()
        .at(JsonPointer.compile(pointer.substring(0, pointer.lastIndexOf('/'))));
  }

  private String path(NodePath location) {
    var path = "";
    for (var i = 0; i < location.getNameCount(); i++) {
      if (location.getElement(i) instanceof Integer index) {
        var real = i == 1 && !indexes.isEmpty() ? indexes.get(index) : index;
        path = JsonPlaces.element(path, real);
      } else {
        path = JsonPlaces.field(path, location.getName(i));
      }
    }
    return path;
  }

  private static String inWords(String type) {
    return switch (type) {
      case "number" -> "a number";
      case "integer" -> "a whole number";
      case "string" -> "text";
      case "boolean" -> "true or false";
      case "array" -> "a list";
      case "object" -> "an object";
      default -> type;
    };
  }
}
