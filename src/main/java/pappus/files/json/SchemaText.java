package pappus.files.json;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The JSON Schema (2020-12) of each file format, as it travels in the jar. */
public final class SchemaText {
  private SchemaText() {}

  /**
   * The schema of a file format.
   *
   * @param name of the format: that of the list in a catalogue file, or "scenario"
   * @throws IllegalArgumentException if there is none of that name
   */
  public static String of(String name) {
    try (var stream =
        SchemaText.class.getResourceAsStream("/pappus/schema/" + name + ".schema.json")) {
      if (stream == null) {
        throw new IllegalArgumentException("name must be that of a schema, but is " + name + ".");
      }
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
