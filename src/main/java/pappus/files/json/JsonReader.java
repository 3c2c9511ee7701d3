package pappus.files.json;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import pappus.files.Problems;
import pappus.files.Source;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonToken;

/**
 * Reads records from JSON, strictly.
 *
 * <p>Good files are read in one pass. Only a file that is refused is read again, slowly, to tell all
 * that is wrong with it and where.
 */
public final class JsonReader {
  private JsonReader() {}

  /**
   * Reads a file that holds one list of records. What is wrong is added to the problems; the records
   * that are right are returned all the same, so that they can be checked further.
   *
   * @param schema name of the schema of the file, for what is wrong
   * @param list name of the list
   */
  public static <T> List<Listed<T>> readList(
      Source source, String schema, String list, Class<T> record, Problems problems) {
    if (!source.isText(problems)) {
      return List.of();
    }
    try {
      return readListQuickly(source, list, record);
    } catch (JacksonException e) {
      return new JsonDiagnosis(source, schema, problems).readList(list, record);
    }
  }

  /**
   * As above, of a file whose records may lack what can be put in.
   *
   * @param completed the file with that put in and every line where it was; asked only of a file that is refused
   */
  public static <T> List<Listed<T>> readList(
      Source source,
      String list,
      Class<T> record,
      UnaryOperator<Source> completed,
      Problems problems) {
    if (!source.isText(problems)) {
      return List.of();
    }
    try {
      return readListQuickly(source, list, record);
    } catch (JacksonException e) {
      return readList(completed.apply(source), list, list, record, problems);
    }
  }

  /**
   * Reads a file that holds one record.
   *
   * @param schema name of the schema of the file, for what is wrong
   */
  public static <T> Optional<T> readRecord(
      Source source, String schema, Class<T> record, Problems problems) {
    if (!source.isText(problems)) {
      return Optional.empty();
    }
    try {
      return Optional.of(readRecordQuickly(source, record));
    } catch (JacksonException e) {
      new JsonDiagnosis(source, schema, problems).readRecord(record);
      return Optional.empty();
    }
  }

  private static <T> T readRecordQuickly(Source source, Class<T> record) {
    var bytes = source.bytes();
    StrictMapper.refuseNull(bytes, 0, bytes.length);
    try (var parser = StrictMapper.parser(bytes, 0, bytes.length)) {
      if (parser.nextToken() != JsonToken.START_OBJECT) {
        throw new StrictScalars.Refusal(parser, "must be an object.");
      }
      T value = StrictMapper.readerForFile(record).readValue(parser);
      if (parser.nextToken() != null) {
        throw new StrictScalars.Refusal(parser, "must end.");
      }
      return value;
    }
  }

  private static <T> List<Listed<T>> readListQuickly(Source source, String list, Class<T> record) {
    var bytes = source.bytes();
    StrictMapper.refuseNull(bytes, 0, bytes.length);
    var reader = StrictMapper.readerFor(record);
    var records = new ArrayList<Listed<T>>();
    var isThere = false;
    try (var parser = StrictMapper.parser(bytes, 0, bytes.length)) {
      parser.nextToken();
      if (!parser.hasToken(JsonToken.START_OBJECT)) {
        throw new StrictScalars.Refusal(parser, "must be an object.");
      }
      while (parser.nextToken() == JsonToken.PROPERTY_NAME) {
        var name = parser.currentName();
        var token = parser.nextToken();
        if (name.equals(list) && token == JsonToken.START_ARRAY) {
          isThere = true;
          while (parser.nextToken() == JsonToken.START_OBJECT) {
            var place = parser.currentTokenLocation();
            T value = reader.readValue(parser);
            records.add(new Listed<>(
                value, records.size(), place.getLineNr(), (int) place.getByteOffset()));
          }
          if (!parser.hasToken(JsonToken.END_ARRAY)) {
            throw new StrictScalars.Refusal(parser, "must be an object.");
          }
        } else if (!name.equals("$schema") || token != JsonToken.VALUE_STRING) {
          throw new StrictScalars.Refusal(parser, "is not a field.");
        }
      }
      if (!isThere || parser.nextToken() != null) {
        throw new StrictScalars.Refusal(parser, "must hold one list and end.");
      }
    }
    return records;
  }
}
