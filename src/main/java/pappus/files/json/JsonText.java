package pappus.files.json;

import com.fasterxml.jackson.annotation.JsonInclude;
import pappus.files.Shown;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.core.util.Separators;
import tools.jackson.databind.DatabindException;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.ObjectWriter;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.ValueSerializer;
import tools.jackson.databind.cfg.DateTimeFeature;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.module.SimpleModule;

/**
 * Writes JSON that is the same bytes for the same values: fields in the order of the record or map,
 * two spaces, line feeds, the shortest decimal that gives the double again, money in full.
 *
 * <p>Why: src/site/markdown/decisions.md#same-input-same-bytes
 */
public final class JsonText {
  private static final ObjectWriter COMPACT = writer();
  private static final ObjectWriter WRITER = COMPACT.with(printer());

  private JsonText() {}

  /**
   * The JSON of records, ordered maps, lists, enums, texts, numbers, booleans and JSON nodes, and a
   * line feed. What is null or an empty Optional in a record is left out.
   *
   * @throws IllegalArgumentException if a number is not finite, which JSON cannot say
   */
  public static String of(Object value) {
    return written(WRITER, value) + "\n";
  }

  /** The JSON on one line and without a line feed, for a machine alone. */
  public static String compact(Object value) {
    return written(COMPACT, value);
  }

  private static String written(ObjectWriter writer, Object value) {
    try {
      // Beside line feeds such signs stand within texts only, where they may be written by their
      // numbers.
      return Shown.seen(writer.writeValueAsString(value));
    } catch (DatabindException e) {
      throw new IllegalArgumentException(e.getOriginalMessage(), e);
    }
  }

  private static ObjectWriter writer() {
    // The digits of Double.toString differ between Java 17 and later ones.
    var factory = JsonFactory.builder()
        .enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER)
        .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
        .build();
    return JsonMapper.builder(factory)
        .disable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
        .enable(MapperFeature.INFER_RECORD_GETTERS_FROM_COMPONENTS_ONLY)
        .disable(SerializationFeature.ORDER_MAP_ENTRIES_BY_KEYS)
        .disable(DateTimeFeature.WRITE_DATES_AS_TIMESTAMPS)
        .changeDefaultPropertyInclusion(
            inclusion -> inclusion.withValueInclusion(JsonInclude.Include.NON_ABSENT))
        .addModule(new SimpleModule("finite")
            .addSerializer(double.class, new FiniteDouble())
            .addSerializer(Double.class, new FiniteDouble()))
        .build()
        .writer();
  }

  private static DefaultPrettyPrinter printer() {
    var indenter = new DefaultIndenter("  ", "\n");
    var separators = Separators.createDefaultInstance()
        .withObjectNameValueSpacing(Separators.Spacing.AFTER)
        .withObjectEmptySeparator("")
        .withArrayEmptySeparator("");
    return new DefaultPrettyPrinter(separators)
        .withObjectIndenter(indenter)
        .withArrayIndenter(indenter);
  }

  private static final class FiniteDouble extends ValueSerializer<Double> {
    @Override
    public void serialize(Double value, JsonGenerator generator, SerializationContext context) {
      if (!Double.isFinite(value)) {
        throw new IllegalArgumentException("value must be finite, but is %s.".formatted(value));
      }
      generator.writeNumber(value.doubleValue());
    }
  }
}
