package pappus.files.json;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import pappus.files.Shown;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.databind.DatabindException;
import tools.jackson.databind.DeserializationContext;
import tools.jackson.databind.ValueDeserializer;

/**
 * Reads numbers, words and texts as they are written. The deserializers of Jackson take the text
 * "NaN" for a number, a spaced word for the word, and 1e999 for infinity.
 */
final class StrictScalars {
  private static final int MOST_DECIMALS = 20;

  private StrictScalars() {}

  /** A value was refused; the message goes on after the path: "must be …, but is ….". */
  static final class Refusal extends DatabindException {
    private static final long serialVersionUID = 1L;

    Refusal(JsonParser parser, String predicate) {
      super(parser, predicate);
    }

    /** It is told by its place in the file; where it was found out takes longest to note. */
    @Override
    public synchronized Throwable fillInStackTrace() {
      return this;
    }
  }

  static final class OfDouble extends ValueDeserializer<Double> {
    @Override
    public Double deserialize(JsonParser parser, DeserializationContext context) {
      if (!isNumber(parser)) {
        throw refusal(parser, "a number");
      }
      var value = parser.getDoubleValue();
      if (Double.isInfinite(value)) {
        throw refusal(parser, "a finite number");
      }
      return value;
    }
  }

  static final class OfInt extends ValueDeserializer<Integer> {
    @Override
    public Integer deserialize(JsonParser parser, DeserializationContext context) {
      if (!parser.hasToken(JsonToken.VALUE_NUMBER_INT)) {
        throw refusal(parser, "a whole number");
      }
      if (parser.getNumberType() != JsonParser.NumberType.INT) {
        throw refusal(parser, "from -2147483648 to 2147483647");
      }
      return parser.getIntValue();
    }
  }

  static final class OfBoolean extends ValueDeserializer<Boolean> {
    @Override
    public Boolean deserialize(JsonParser parser, DeserializationContext context) {
      if (parser.hasToken(JsonToken.VALUE_TRUE)) {
        return true;
      }
      if (parser.hasToken(JsonToken.VALUE_FALSE)) {
        return false;
      }
      throw refusal(parser, "true or false");
    }
  }

  static final class OfText extends ValueDeserializer<String> {
    @Override
    public String deserialize(JsonParser parser, DeserializationContext context) {
      if (!parser.hasToken(JsonToken.VALUE_STRING)) {
        throw refusal(parser, "text");
      }
      var text = parser.getString();
      if (Shown.hides(text)) {
        throw refusal(parser, "text without control or hidden characters");
      }
      return text;
    }
  }

  /** Exact, and of a size that can be written out in full. */
  static final class OfDecimal extends ValueDeserializer<BigDecimal> {
    @Override
    public BigDecimal deserialize(JsonParser parser, DeserializationContext context) {
      if (!isNumber(parser)) {
        throw refusal(parser, "a number");
      }
      var value = parser.getDecimalValue();
      if (Math.abs((long) value.scale()) > MOST_DECIMALS) {
        throw refusal(parser, "a number of at most 20 decimals or zeros");
      }
      return value;
    }
  }

  static final class OfEnum extends ValueDeserializer<Object> {
    private final Class<?> type;
    private final Map<String, Object> byWord = new LinkedHashMap<>();

    OfEnum(Class<?> type) {
      this.type = type;
      for (var constant : type.getEnumConstants()) {
        byWord.put(word((Enum<?>) constant), constant);
      }
    }

    @Override
    public Class<?> handledType() {
      return type;
    }

    @Override
    public Object deserialize(JsonParser parser, DeserializationContext context) {
      var constant =
          parser.hasToken(JsonToken.VALUE_STRING) ? byWord.get(parser.getString()) : null;
      if (constant == null) {
        throw refusal(parser, Shown.choice(byWord.keySet().stream().toList()));
      }
      return constant;
    }

    private static String word(Enum<?> constant) {
      try {
        var field = constant.getDeclaringClass().getField(constant.name());
        @Nullable JsonProperty property = field.getAnnotation(JsonProperty.class);
        return property == null ? constant.name() : property.value();
      } catch (NoSuchFieldException e) {
        throw new IllegalStateException("Every constant has its field.", e);
      }
    }
  }

  private static boolean isNumber(JsonParser parser) {
    return parser.hasToken(JsonToken.VALUE_NUMBER_FLOAT)
        || parser.hasToken(JsonToken.VALUE_NUMBER_INT);
  }

  private static Refusal refusal(JsonParser parser, String expected) {
    return new Refusal(parser, "must be %s, but is %s.".formatted(expected, shown(parser)));
  }

  /** What stands at a token, in words. */
  static String shown(JsonParser parser) {
    return switch (parser.currentToken()) {
      case START_OBJECT -> "an object";
      case START_ARRAY -> "a list";
      case VALUE_STRING -> "the text " + Shown.text(parser.getString());
      case VALUE_NULL -> "null";
      default -> parser.getString();
    };
  }
}
