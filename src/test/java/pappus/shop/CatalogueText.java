package pappus.shop;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.ArrayList;
import java.util.List;
import pappus.part.Kind;
import pappus.part.Part;
import pappus.quantity.Require;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Reads a catalogue file, and writes one as a person would keep it: short things on one line. */
final class CatalogueText {
  static final JsonMapper MAPPER = JsonMapper.builder()
      .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
      .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
      .changeDefaultPropertyInclusion(
          usual -> usual.withValueInclusion(JsonInclude.Include.NON_NULL))
      .build();

  /** From a catalogue file to the schemas, so that editors complete and check it. */
  private static final String SCHEMAS = "../src/main/resources/pappus/schema/";

  private static final int WIDTH = 100;

  private CatalogueText() {}

  static String write(Kind kind, List<? extends Part> parts) {
    var records = new ArrayList<String>();
    for (var part : parts) {
      records.add("    " + block(MAPPER.valueToTree(part), 4));
    }
    return "{\n  \"$schema\": \"" + SCHEMAS + kind.listName() + ".schema.json\",\n  \""
        + kind.listName() + "\": [\n" + String.join(",\n", records) + "\n  ]\n}\n";
  }

  static List<Part> read(Kind kind, String text) {
    var parts = new ArrayList<Part>();
    for (var node : MAPPER.readTree(text).get(kind.listName())) {
      parts.add(MAPPER.treeToValue(node, kind.recordClass()));
    }
    return parts;
  }

  private static String block(JsonNode node, int indent) {
    var inner = " ".repeat(indent + 2);
    var lines = new ArrayList<String>();
    if (node.isArray()) {
      node.forEach(child -> lines.add(inner + value(child, indent + 2, 0)));
    } else {
      node.properties().forEach(entry -> {
        var name = quoted(entry.getKey()) + ": ";
        lines.add(inner + name + value(entry.getValue(), indent + 2, name.length()));
      });
    }
    var marks = node.isArray() ? "[]" : "{}";
    return marks.charAt(0) + "\n" + String.join(",\n", lines) + "\n" + " ".repeat(indent)
        + marks.charAt(1);
  }

  private static String value(JsonNode node, int indent, int before) {
    var inline = inline(node);
    return !node.isContainer() || indent + before + inline.length() < WIDTH
        ? inline
        : block(node, indent);
  }

  private static String inline(JsonNode node) {
    if (node.isArray()) {
      var children = new ArrayList<String>();
      node.forEach(child -> children.add(inline(child)));
      return "[" + String.join(", ", children) + "]";
    }
    if (node.isObject()) {
      var children = new ArrayList<String>();
      node.properties()
          .forEach(entry -> children.add(quoted(entry.getKey()) + ": " + inline(entry.getValue())));
      return "{" + String.join(", ", children) + "}";
    }
    if (node.isBigDecimal()) {
      return node.decimalValue().setScale(2).toPlainString();
    }
    return node.isNumber() ? Require.plain(node.doubleValue()) : node.toString();
  }

  private static String quoted(String name) {
    return '"' + name + '"';
  }
}
