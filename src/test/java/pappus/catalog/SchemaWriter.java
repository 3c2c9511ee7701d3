package pappus.catalog;

import com.fasterxml.classmate.ResolvedType;
import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import com.fasterxml.jackson.annotation.OptBoolean;
import com.github.victools.jsonschema.generator.CustomDefinition;
import com.github.victools.jsonschema.generator.FieldScope;
import com.github.victools.jsonschema.generator.MemberScope;
import com.github.victools.jsonschema.generator.Option;
import com.github.victools.jsonschema.generator.OptionPreset;
import com.github.victools.jsonschema.generator.SchemaGenerationContext;
import com.github.victools.jsonschema.generator.SchemaGenerator;
import com.github.victools.jsonschema.generator.SchemaGeneratorConfigBuilder;
import com.github.victools.jsonschema.generator.SchemaVersion;
import com.github.victools.jsonschema.module.jackson.JacksonOption;
import com.github.victools.jsonschema.module.jackson.JacksonSchemaModule;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import pappus.files.json.JsonText;
import pappus.part.AlsoSaid;
import pappus.part.ByClass;
import pappus.part.Kind;
import pappus.part.Motor;
import pappus.part.Part;
import pappus.quantity.Money;
import pappus.scenario.Condition;
import pappus.scenario.Families;
import pappus.scenario.Shortened;
import pappus.scenario.Where;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Makes the JSON Schema of each file format from its record. */
public final class SchemaWriter {
  private static final String DIALECT = "https://json-schema.org/draft/2020-12/schema";
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private final SchemaGenerator generator = generator(SchemaWriter::isRequired, false);

  /** Of records in a catalogue, which may lack what their class can fill. */
  private final SchemaGenerator ofCatalogue = generator(
      field -> isRequired(field) && !field.getRawMember().isAnnotationPresent(ByClass.class), true);

  /** The schema of a file that holds one list of records. */
  public String ofList(String list, Class<?> record) {
    var element = ofCatalogue.generateSchema(record);
    element.remove("$schema");
    var definitions = NODES.objectNode();
    definitions.set(record.getSimpleName(), element);
    if (element.remove("$defs") instanceof ObjectNode nested) {
      definitions.setAll(nested);
    }

    var properties = NODES.objectNode();
    properties.set("$schema", schemaName());
    properties
        .putObject(list)
        .put("type", "array")
        .putObject("items")
        .put("$ref", "#/$defs/" + record.getSimpleName());
    var file = file(list + ".json").put("type", "object");
    file.set("properties", properties);
    file.putArray("required").add(list);
    file.put("additionalProperties", false);
    file.set("$defs", definitions);
    return JsonText.of(file);
  }

  /** The schema of a file that holds one record. */
  public String ofRecord(String title, Class<?> record) {
    var element = generator.generateSchema(record);
    element.remove("$schema");
    var definitions = element.remove("$defs");
    var properties = NODES.objectNode();
    properties.set("$schema", schemaName());
    properties.setAll((ObjectNode) element.get("properties"));
    element.set("properties", properties);
    for (var component : record.getRecordComponents()) {
      var shortened = component.getAnnotation(Shortened.class);
      if (shortened != null && shortened.value() == Shortened.Way.NUMBER) {
        orShort("number", (ObjectNode) properties.get(component.getName()));
      } else if (shortened != null && shortened.value() == Shortened.Way.NAME) {
        orShort("string", (ObjectNode) properties.get(component.getName()));
      } else if (shortened != null) {
        element.withArray("required").removeIf(name -> name.asString().equals(component.getName()));
      }
    }
    var file = file(title);
    file.setAll(element);
    file.set("$defs", definitions);
    return JsonText.of(file);
  }

  /** An object in whose place a plain value may stand. */
  private static void orShort(String type, ObjectNode field) {
    var whole = field.remove("$ref");
    var ways = field.putArray("anyOf");
    ways.addObject().put("type", type);
    ways.addObject().set("$ref", whole);
  }

  /** The schema of a document that the tool writes. */
  public String ofDocument(String title, Type document, Type... of) {
    var file = file(title);
    file.setAll(generator.generateSchema(document, of));
    return JsonText.of(file);
  }

  private static ObjectNode file(String title) {
    return NODES.objectNode().put("$schema", DIALECT).put("title", title);
  }

  private static ObjectNode schemaName() {
    return NODES
        .objectNode()
        .put("type", "string")
        .put("description", "Name of this schema, for editors.");
  }

  private static SchemaGenerator generator(Predicate<FieldScope> isRequired, boolean isTyped) {
    var config =
        new SchemaGeneratorConfigBuilder(SchemaVersion.DRAFT_2020_12, OptionPreset.PLAIN_JSON);
    // Before the module, which knows no way to forbid other fields beside unwrapped ones.
    config.forTypesInGeneral().withCustomDefinitionProvider(SchemaWriter::unwrapped);
    config.forTypesInGeneral().withCustomDefinitionProvider(SchemaWriter::written);
    config
        .with(new JacksonSchemaModule(JacksonOption.FLATTENED_ENUMS_FROM_JSONPROPERTY))
        .with(
            Option.DEFINITIONS_FOR_ALL_OBJECTS,
            Option.FORBIDDEN_ADDITIONAL_PROPERTIES_BY_DEFAULT,
            Option.MAP_VALUES_AS_ADDITIONAL_PROPERTIES)
        // They are left out where they are empty, never null.
        .without(Option.SCHEMA_VERSION_INDICATOR, Option.FLATTENED_OPTIONALS);
    config
        .forFields()
        .withTargetTypeOverridesResolver(SchemaWriter::held)
        .withRequiredCheck(isRequired)
        .withIgnoreCheck(SchemaWriter::isIgnored)
        .withDescriptionResolver(SchemaWriter::ofMoney);
    if (isTyped) {
      config.forFields().withInstanceAttributeOverride((node, field, context) -> {
        var also = field.getRawMember().getAnnotation(AlsoSaid.class);
        if (also != null) {
          node.put(
              "description",
              node.path("description").asString("") + " In a spreadsheet also " + also.value()
                  + ".");
        }
      });
    }
    // As declared, which is the order a person would write them in.
    config.forTypesInGeneral().withPropertySorter(Comparator.comparingInt(SchemaWriter::position));
    return new SchemaGenerator(config.build());
  }

  /** What a person may write in more than one way. */
  private static @Nullable CustomDefinition written(
      ResolvedType type, SchemaGenerationContext context) {
    if (type.getErasedType() == Families.class) {
      return new CustomDefinition(oneOrMany("string"));
    }
    if (type.getErasedType() == Condition.class) {
      var condition = oneOrMany("string", "number", "boolean");
      condition.withArray("type").add("object");
      var bounds = condition.putObject("properties");
      bounds.putObject("atLeast").put("type", "number").put("description", "The least, included.");
      bounds.putObject("atMost").put("type", "number").put("description", "The most, included.");
      var none = bounds.putObject("noneOf");
      none.put("type", "array").put("description", "What it must not be.");
      none.set("items", types("string", "number", "boolean"));
      return new CustomDefinition(condition.put("additionalProperties", false));
    }
    if (type.getErasedType() == Where.class) {
      var fields = NODES.objectNode().put("type", "object");
      fields.set(
          "additionalProperties",
          context.createDefinitionReference(context.getTypeContext().resolve(Condition.class)));
      var roles = NODES.objectNode().put("type", "object");
      roles.set("additionalProperties", fields);
      return new CustomDefinition(roles);
    }
    return null;
  }

  private static ObjectNode oneOrMany(String... types) {
    var written = NODES.objectNode();
    var all = written.putArray("type");
    Stream.of(types).forEach(all::add);
    all.add("array");
    written.set("items", types(types));
    return written;
  }

  private static ObjectNode types(String... types) {
    var node = NODES.objectNode();
    if (types.length == 1) {
      return node.put("type", types[0]);
    }
    Stream.of(types).forEach(node.putArray("type")::add);
    return node;
  }

  /** A record whose fields are in part those of records within it. */
  private static @Nullable CustomDefinition unwrapped(
      ResolvedType type, SchemaGenerationContext context) {
    var isAny = type.getErasedType().isRecord()
        && Stream.of(type.getErasedType().getDeclaredFields())
            .anyMatch(field -> field.isAnnotationPresent(JsonUnwrapped.class));
    return isAny ? new CustomDefinition(fields(type, context)) : null;
  }

  private static ObjectNode fields(ResolvedType type, SchemaGenerationContext context) {
    var object = NODES.objectNode().put("type", "object");
    var properties = object.putObject("properties");
    var required = object.putArray("required");
    var members = context.getTypeContext().resolveWithMembers(type);
    var declared = new MemberScope.DeclarationDetails(type, members);
    var fields = Stream.of(members.getMemberFields())
        .map(field -> context.getTypeContext().createFieldScope(field, declared))
        .filter(field -> !isIgnored(field))
        .sorted(Comparator.comparingInt(SchemaWriter::position))
        .toList();
    for (var field : fields) {
      if (field.getType().getErasedType() == Part.class) {
        var shared = anyPart(context);
        properties.setAll(shared);
        shared.propertyNames().forEach(required::add);
        var kinds = ((ObjectNode) properties.get("kind")).putArray("enum");
        Stream.of(Kind.values()).map(Kind::key).forEach(kinds::add);
        object.put("additionalProperties", true);
      } else if (field.getRawMember().isAnnotationPresent(JsonUnwrapped.class)) {
        var inner = fields(field.getType(), context);
        properties.setAll(inner.withObject("properties"));
        if (isRequired(field)) {
          required.addAll(inner.withArray("required"));
        }
      } else {
        var held = held(field);
        var shown = held == null ? field : field.withOverriddenType(held.get(0));
        properties.set(field.getName(), context.createStandardDefinitionReference(shown, null));
        if (isRequired(field)) {
          required.add(field.getName());
        }
      }
    }
    return object.has("additionalProperties") ? object : object.put("additionalProperties", false);
  }

  /** What every part has beside its id; the others are those of its kind. */
  private static ObjectNode anyPart(SchemaGenerationContext context) {
    var motor = fields(context.getTypeContext().resolve(Motor.class), context).get("properties");
    var shared = NODES.objectNode();
    motor.properties().forEach(field -> {
      if (Stream.of(Part.class.getMethods()).anyMatch(each -> each.getName().equals(field.getKey()))
          && !field.getKey().equals("id")) {
        shared.set(field.getKey(), field.getValue());
      }
    });
    return shared;
  }

  /** Money belongs to a package that knows no annotations of a library. */
  private static @Nullable String ofMoney(FieldScope field) {
    if (field.getDeclaringType().getErasedType() != Money.class) {
      return null;
    }
    return field.getDeclaredName().equals("amount")
        ? "From 0 to 1000000, at most two decimals."
        : "Three capital letters as in ISO 4217.";
  }

  /** What an Optional holds. */
  private static @Nullable List<ResolvedType> held(FieldScope field) {
    var type = field.getType();
    return type != null && type.getErasedType() == Optional.class ? type.getTypeParameters() : null;
  }

  private static boolean isIgnored(FieldScope field) {
    return field.getRawMember().isAnnotationPresent(JsonIgnore.class);
  }

  private static boolean isRequired(FieldScope field) {
    return !field.getRawMember().getAnnotatedType().isAnnotationPresent(Nullable.class)
        && !isFilledBeforeReading(field)
        && field.getRawMember().getType() != Optional.class;
  }

  private static boolean isFilledBeforeReading(FieldScope field) {
    var written = field.getRawMember().getAnnotation(JsonProperty.class);
    return written != null && written.isRequired() == OptBoolean.FALSE;
  }

  private static int position(MemberScope<?, ?> member) {
    var components = member.getDeclaringType().getErasedType().getRecordComponents();
    return Stream.of(components)
        .map(RecordComponent::getName)
        .toList()
        .indexOf(member.getDeclaredName());
  }
}
