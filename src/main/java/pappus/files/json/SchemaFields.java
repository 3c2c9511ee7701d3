package pappus.files.json;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import pappus.files.Shown;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The fields of a file format, read from its schema. */
public final class SchemaFields {
  private static final String REFERENCE = "#/$defs/";

  private final JsonNode definitions;
  private final List<Field> fields = new ArrayList<>();

  /**
   * A field.
   *
   * @param path such as {@code mass.grams}; {@code []} stands for every element of a list, {@code *} for every name of
   *     a map
   * @param type in words: number, whole number, text, true or false, object, number or object, list, or the words allowed
   * @param required whether it must be there where the object around it is
   * @param description its meaning, unit and range, and what is assumed when absent
   */
  public record Field(String path, String type, boolean required, String description) {}

  private SchemaFields(JsonNode definitions) {
    this.definitions = definitions;
  }

  /**
   * The fields of one record of a format, as a person would write them, inner ones after their
   * object.
   *
   * @param name of the format: that of the list in a catalogue file, or "scenario"
   * @throws IllegalArgumentException if there is none of that name
   */
  public static List<Field> of(String name) {
    var schema = JsonMapper.shared().readTree(SchemaText.of(name));
    var reader = new SchemaFields(schema.path("$defs"));
    var list = schema.path("properties").path(name);
    reader.addObject(
        list.path("items").isMissingNode() ? schema : reader.resolved(list.path("items")),
        "",
        Set.of());
    return List.copyOf(reader.fields);
  }

  private void addObject(JsonNode object, String before, Set<String> around) {
    var required = new HashSet<String>();
    object.path("required").forEach(each -> required.add(each.asString()));
    object.path("properties").properties().forEach(entry -> {
      var name = entry.getKey();
      if (!name.startsWith("$")) {
        addField(before + name, entry.getValue(), required.contains(name), around);
      }
    });
  }

  private void addField(String path, JsonNode declared, boolean required, Set<String> around) {
    // A short form of an object comes first.
    var isShort = declared.has("anyOf");
    var whole = isShort ? declared.path("anyOf").path(1) : declared;
    var container = resolved(whole);
    var isList = container.path("type").asString("").equals("array");
    var isMap = container.path("additionalProperties").isObject();
    var inner =
        isList ? container.path("items") : isMap ? container.path("additionalProperties") : whole;
    var resolved = resolved(inner);
    var type = (isShort ? type(declared.path("anyOf").path(0)) + " or " : "") + type(resolved);
    fields.add(new Field(
        path,
        isList ? "list of " + type : isMap ? type + " by name" : type,
        required,
        declared.path("description").asString("")));
    var reference = inner.path("$ref").asString("");
    if (resolved.has("properties") && !around.contains(reference)) {
      var nowAround = new HashSet<>(around);
      nowAround.add(reference);
      addObject(resolved, path + (isList ? "[]." : isMap ? ".*." : "."), nowAround);
    }
  }

  private JsonNode resolved(JsonNode node) {
    var reference = node.path("$ref").asString("");
    return reference.startsWith(REFERENCE)
        ? definitions.path(reference.substring(REFERENCE.length()))
        : node;
  }

  private static String type(JsonNode node) {
    var words = new ArrayList<String>();
    node.path("enum").forEach(word -> words.add(word.asString()));
    if (!words.isEmpty()) {
      return Shown.choice(words);
    }
    if (node.path("type").isArray()) {
      return Shown.choice(
          node.path("type").valueStream().map(SchemaFields::plain).toList());
    }
    return plain(node.path("type"));
  }

  private static String plain(JsonNode type) {
    return switch (type.asString("")) {
      case "number" -> "number";
      case "integer" -> "whole number";
      case "string" -> "text";
      case "boolean" -> "true or false";
      case "array" -> "list";
      default -> "object";
    };
  }
}
