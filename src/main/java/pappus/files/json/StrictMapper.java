package pappus.files.json;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.OptBoolean;
import java.math.BigDecimal;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.databind.BeanDescription;
import tools.jackson.databind.DeserializationConfig;
import tools.jackson.databind.DeserializationContext;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JavaType;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.ObjectReader;
import tools.jackson.databind.ValueDeserializer;
import tools.jackson.databind.cfg.CoercionAction;
import tools.jackson.databind.cfg.CoercionInputShape;
import tools.jackson.databind.cfg.MapperConfig;
import tools.jackson.databind.deser.DeserializationProblemHandler;
import tools.jackson.databind.deser.ValueDeserializerModifier;
import tools.jackson.databind.introspect.AnnotatedMember;
import tools.jackson.databind.introspect.AnnotatedParameter;
import tools.jackson.databind.introspect.JacksonAnnotationIntrospector;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.module.SimpleModule;

/**
 * Binds JSON to records and refuses whatever is not written as the record says: nothing is guessed,
 * converted, left out or filled in.
 */
public final class StrictMapper {
  static final int DEEPEST = 32;
  static final int LONGEST_TEXT = 20_000;
  static final int LONGEST_NAME = 200;
  static final int LONGEST_NUMBER = 60;

  private static final int PIECE_BYTES = 1 << 16;

  private static final StreamReadConstraints LIMITS = StreamReadConstraints.builder()
      .maxNestingDepth(DEEPEST)
      .maxStringLength(LONGEST_TEXT)
      .maxNameLength(LONGEST_NAME)
      .maxNumberLength(LONGEST_NUMBER)
      .build();

  private static final JsonMapper MAPPER = mapper();

  private StrictMapper() {}

  /** Binds one record. */
  public static ObjectReader readerFor(Class<?> record) {
    return MAPPER.readerFor(record);
  }

  /** Binds the record that is a whole file, which may name its schema. */
  static ObjectReader readerForFile(Class<?> record) {
    return MAPPER.readerFor(record).withHandler(new SchemaNameAllowed());
  }

  /** Tokens; a name that stands twice in an object is refused. */
  static JsonParser parser(byte[] bytes, int from, int length) {
    return MAPPER.createParser(bytes, from, length);
  }

  /** Tokens; a name may stand twice, for those who want to say so themselves. */
  static JsonParser lenientParser(byte[] bytes, int from, int length) {
    return MAPPER
        .reader()
        .without(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
        .createParser(bytes, from, length);
  }

  /**
   * Binds a slice that holds one object.
   *
   * @throws JacksonException if it is not what the record says
   */
  public static <T> T bind(
      ObjectReader reader, Class<T> record, byte[] bytes, int from, int length) {
    refuseNull(bytes, from, length);
    return record.cast(reader.readValue(bytes, from, length));
  }

  /**
   * Refuses null anywhere: a field without a value is left out. Jackson cannot tell a null from a
   * field left out once a record is made, and looking for the letters costs next to nothing.
   */
  static void refuseNull(byte[] bytes, int from, int length) {
    if (!holdsTheLettersOfNull(bytes, from, length)) {
      return;
    }
    try (var parser = lenientParser(bytes, from, length)) {
      for (var token = parser.nextToken(); token != null; token = parser.nextToken()) {
        if (token == JsonToken.VALUE_NULL) {
          throw new StrictScalars.Refusal(parser, "must have a value, but is null.");
        }
      }
    }
  }

  /** By pieces that overlap by three letters; the virtual machine searches texts fast. */
  private static boolean holdsTheLettersOfNull(byte[] bytes, int from, int length) {
    var end = from + length;
    for (var i = from; i < end; i += PIECE_BYTES) {
      var piece = new String(bytes, i, Math.min(PIECE_BYTES + 3, end - i), ISO_8859_1);
      if (piece.contains("null")) {
        return true;
      }
    }
    return false;
  }

  private static JsonMapper mapper() {
    var factory = JsonFactory.builder()
        .streamReadConstraints(LIMITS)
        .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
        .disable(StreamReadFeature.INCLUDE_SOURCE_IN_LOCATION)
        .build();
    return JsonMapper.builder(factory)
        .disable(MapperFeature.ALLOW_COERCION_OF_SCALARS)
        .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
        .enable(DeserializationFeature.FAIL_ON_IGNORED_PROPERTIES)
        .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
        .disable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
        .withCoercionConfigDefaults(coercion -> Arrays.stream(CoercionInputShape.values())
            .forEach(shape -> coercion.setCoercion(shape, CoercionAction.Fail)))
        .annotationIntrospector(new RequiredUnlessNullable())
        .addModule(new SimpleModule("strict")
            .addDeserializer(double.class, new StrictScalars.OfDouble())
            .addDeserializer(Double.class, new StrictScalars.OfDouble())
            .addDeserializer(int.class, new StrictScalars.OfInt())
            .addDeserializer(Integer.class, new StrictScalars.OfInt())
            .addDeserializer(boolean.class, new StrictScalars.OfBoolean())
            .addDeserializer(Boolean.class, new StrictScalars.OfBoolean())
            .addDeserializer(String.class, new StrictScalars.OfText())
            .addDeserializer(BigDecimal.class, new StrictScalars.OfDecimal())
            .setDeserializerModifier(new StrictEnums()))
        .build();
  }

  /** A component may be left out only if its type says so, or the record itself tells that it is missing. */
  private static final class RequiredUnlessNullable extends JacksonAnnotationIntrospector {
    private static final long serialVersionUID = 1L;

    @Override
    public Boolean hasRequiredMarker(MapperConfig<?> config, AnnotatedMember member) {
      if (member instanceof AnnotatedParameter parameter
          && parameter.getDeclaringClass().isRecord()) {
        var component = parameter.getDeclaringClass().getRecordComponents()[parameter.getIndex()];
        var written = component.getAccessor().getAnnotation(JsonProperty.class);
        return !component.getAnnotatedType().isAnnotationPresent(Nullable.class)
            && (written == null || written.isRequired() != OptBoolean.FALSE)
            && !component.getAccessor().isAnnotationPresent(JsonIgnore.class);
      }
      return super.hasRequiredMarker(config, member);
    }
  }

  /** Words of enums are taken letter by letter. */
  private static final class StrictEnums extends ValueDeserializerModifier {
    private static final long serialVersionUID = 1L;

    @Override
    public ValueDeserializer<?> modifyEnumDeserializer(
        DeserializationConfig config,
        JavaType type,
        BeanDescription.Supplier description,
        ValueDeserializer<?> deserializer) {
      return new StrictScalars.OfEnum(type.getRawClass());
    }
  }

  /** Takes a text called $schema at the top of a file, for editors. */
  private static final class SchemaNameAllowed extends DeserializationProblemHandler {
    @Override
    public boolean handleUnknownProperty(
        DeserializationContext context,
        JsonParser parser,
        ValueDeserializer<?> deserializer,
        Object bean,
        String name) {
      var isAtTop = parser.streamReadContext().getParent().inRoot();
      return isAtTop && name.equals("$schema") && parser.hasToken(JsonToken.VALUE_STRING);
    }
  }
}
