package pappus.files.json;

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
import pappus.files.Closest;
import pappus.files.Shown;
import tools.jackson.databind.JsonNode;

/**
 * Says in words of ours what a schema finds wrong with a document. Loaded only once a file has been
 * refused.
 */
final class SchemaCheck {
  /** Letters by which a name is known again. */
  private static final int BEGINS = 4;

  private final Schema schema;

  SchemaCheck(String name) {
    this.schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
        .getSchema(SchemaText.of(name), InputFormat.JSON);
  }

  /**
   * Adds what is wrong to the places.
   *
   * @param indexes of the elements of the one list at the top, where only some of them are in the
   *     document; empty if all are
   */
  void check(JsonNode document, List<Integer> indexes, JsonPlaces places) {
    new Explanation(indexes, places).explain(schema.validate(document));
  }

  private final class Explanation {
    private final List<Integer> indexes;
    private final JsonPlaces places;
    private final Set<String> explained = new HashSet<>();

    Explanation(List<Integer> indexes, JsonPlaces places) {
      this.indexes = indexes;
      this.places = places;
    }

    void explain(List<Error> all) {
      // Of a short form and the object it stands for, the object says what is wrong.
      var errors = all.stream().filter(error -> !isOfShortForm(error)).toList();
      // A misspelt field is also a missing one; one line is enough.
      for (var error : errors) {
        if (isAbout(error, "additionalProperties")) {
          unknown(error);
        }
      }
      for (var error : errors) {
        switch (error.getKeyword()) {
          case "required" -> missing(error);
          case "type" -> wrongType(error);
          default -> {}
        }
      }
      // After the types, so that a number for a word is told once.
      for (var error : errors) {
        if (isAbout(error, "enum") || isAbout(error, "const")) {
          wrongWord(error);
        }
      }
    }

    private void unknown(Error error) {
      var all = List.copyOf(around(error).path("properties").propertyNames());
      var names = new ArrayList<>(all);
      var typed = error.getProperty();
      var path = path(error.getInstanceLocation());
      names.removeIf(name -> places.place(JsonPlaces.field(path, name)).isPresent());
      if (Closest.to(typed, names).isEmpty()) {
        // One that is there may have been filled in for it: then it begins like it.
        all.stream()
            .filter(name -> typed.length() > BEGINS && name.startsWith(typed.substring(0, BEGINS)))
            .forEach(names::add);
      }
      Closest.to(typed, names).ifPresent(name -> explained.add(JsonPlaces.field(path, name)));
      places.refuse(
          JsonPlaces.field(path, typed), "is not a field." + Closest.advice(typed, names));
    }

    private void missing(Error error) {
      var path = JsonPlaces.field(path(error.getInstanceLocation()), error.getProperty());
      if (!explained.contains(path)) {
        places.refuse(path, "is missing.");
      }
    }

    private void wrongType(Error error) {
      var schemas = schemasOnTheWay(error.getEvaluationPath());
      var around = schemas.get(schemas.size() - 1);
      refuse(
          path(error.getInstanceLocation()),
          around.has("enum") ? words(around) : orShort(error) + types(around.path("type")),
          error.getInstanceNode().isNull() && isOptional(error, schemas)
              ? " Maybe leave it out."
              : "");
    }

    private void wrongWord(Error error) {
      var path = path(error.getInstanceLocation());
      if (!places.isFaulty(path)) {
        refuse(path, words(around(error)), "");
      }
    }

    private void refuse(String path, String expected, String advice) {
      var shown = places.place(path).map(JsonPlaces.Place::shown).orElse("something else");
      places.refuse(path, "must be %s, but is %s.%s".formatted(expected, shown, advice));
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
  }

  private static boolean isOfShortForm(Error error) {
    var path = error.getEvaluationPath();
    for (var i = 0; i < path.getNameCount() - 1; i++) {
      if (path.getName(i).equals("anyOf") && path.getName(i + 1).equals("0")) {
        return true;
      }
    }
    return false;
  }

  /** What an object may be written as in its place. */
  private String orShort(Error error) {
    var schemas = schemasOnTheWay(error.getEvaluationPath());
    // The field, its ways, the way, what that refers to, and there the type.
    var field = schemas.size() < 4 ? null : schemas.get(schemas.size() - 4);
    return field != null && field.has("anyOf")
        ? inWords(field.path("anyOf").path(0).path("type").asString()) + " or "
        : "";
  }

  private static boolean isAbout(Error error, String keyword) {
    return error.getKeyword().equals(keyword);
  }

  /** The schema that holds the keyword. */
  private JsonNode around(Error error) {
    var schemas = schemasOnTheWay(error.getEvaluationPath());
    return schemas.get(schemas.size() - 1);
  }

  /** The schemas from the top to that around the last keyword of a path, references followed. */
  private List<JsonNode> schemasOnTheWay(NodePath path) {
    var top = schema.getSchemaNode();
    var schemas = new ArrayList<JsonNode>();
    var at = top;
    for (var i = 0; i < path.getNameCount(); i++) {
      schemas.add(at);
      var name = path.getName(i);
      if (name.equals("$ref")) {
        at = top.at(at.path(name).asString().substring(1));
      } else {
        at = at.isArray() ? at.path(Integer.parseInt(name)) : at.path(name);
      }
    }
    return schemas;
  }

  /** Whether the value is that of a field that may be left out. */
  private static boolean isOptional(Error error, List<JsonNode> schemas) {
    var place = error.getInstanceLocation();
    var last = place.getElement(place.getNameCount() - 1);
    if (!(last instanceof String name)) {
      return false;
    }
    for (var i = schemas.size() - 1; i >= 0; i--) {
      if (schemas.get(i).path("properties").has(name)) {
        return schemas
            .get(i)
            .path("required")
            .valueStream()
            .noneMatch(r -> r.asString().equals(name));
      }
    }
    return false;
  }

  private static String words(JsonNode schema) {
    var words = new ArrayList<String>();
    schema.path("enum").forEach(word -> words.add(word.asString()));
    return words.isEmpty() ? schema.path("const").asString() : Shown.choice(words);
  }

  private static String types(JsonNode type) {
    return type.isArray()
        ? Shown.choice(type.valueStream().map(one -> inWords(one.asString())).toList())
        : inWords(type.asString());
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
