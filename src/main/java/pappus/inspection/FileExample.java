package pappus.inspection;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import pappus.catalog.Catalog;
import pappus.files.json.Altered;
import pappus.files.json.JsonText;
import pappus.part.Kind;
import pappus.part.Part;

/** A small file of each format, complete, to begin one's own with. */
public final class FileExample {
  private FileExample() {}

  /**
   * A file of one record of a kind under a name of its own: of those of a catalogue that leave out least, the shortest.
   *
   * @throws IllegalArgumentException if the catalogue has none of the kind
   */
  public static String of(Kind kind, Catalog catalog) {
    var shortest = catalog.parts().stream()
        .filter(part -> part.kind() == kind)
        .min(Comparator.comparingInt((Part part) -> MissingFact.of(part).size())
            .thenComparingInt(part -> JsonText.of(part).length())
            .thenComparing(Part::id))
        .orElseThrow(() -> new IllegalArgumentException("There is no " + kind.key() + "."));
    var own = own(kind.recordClass(), shortest, kind);
    return JsonText.of(Map.of(kind.listName(), List.of(own)));
  }

  private static <P extends Part> Part own(Class<P> record, Part part, Kind kind) {
    return Altered.record(
        record,
        record.cast(part),
        Map.of(
            "id",
            "my-" + kind.key(),
            "maker",
            "Maker",
            "name",
            "My " + kind.key(),
            "source",
            "An example, as " + part.id() + "."));
  }

  /**
   * A file of another format: shelf, flown, lumps, scenario, shop or order.
   *
   * @throws IllegalArgumentException if there is none of that name
   */
  public static String of(String format) {
    try (var stream =
        FileExample.class.getResourceAsStream("/pappus/example/" + format + ".json")) {
      if (stream == null) {
        throw new IllegalArgumentException(
            "format must be that of a file one writes, but is " + format + ".");
      }
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
