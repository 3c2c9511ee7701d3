package pappus.files.json;

import java.util.List;
import pappus.files.InputException;
import pappus.files.Source;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.databind.DatabindException;
import tools.jackson.databind.DeserializationFeature;

/**
 * Reads what this tool wrote, of this release or another: fields that a record does not have are passed over, those it
 * has must be there.
 */
public final class ReadBack {
  private ReadBack() {}

  /**
   * Reads one record.
   *
   * @throws InputException with the first thing that is not as the record says, and its place
   * @throws JacksonException if it is not JSON
   */
  public static <T> T read(Source source, Class<T> record) {
    try {
      return StrictMapper.readerFor(record)
          .without(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
          .with(DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES)
          .without(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .readValue(source.bytes());
    } catch (DatabindException refused) {
      var places = JsonPlaces.of(source);
      var path = JsonPlaces.path("", refused);
      var predicate = places
          .place(path)
          .map(place -> refused instanceof StrictScalars.Refusal
              ? refused.getOriginalMessage()
              : "must be as this tool writes it, but is %s.".formatted(place.shown()))
          .orElse("is missing.");
      throw new InputException(
          InputException.Kind.BAD_DATA, List.of(places.problem(path, predicate)));
    }
  }
}
