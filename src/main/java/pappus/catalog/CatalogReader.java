package pappus.catalog;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import pappus.files.Fingerprint;
import pappus.files.JsonPlaces;
import pappus.files.JsonReader;
import pappus.files.Listed;
import pappus.files.Problems;
import pappus.files.Source;

/**
 * Reads catalogue folders, one after the other; a later one replaces parts of an earlier by id.
 *
 * <p>An error in one file does not stop the reading of the others.
 */
public final class CatalogReader {
  private final Problems problems;
  private final Map<String, Entry> byId = new TreeMap<>();
  private final List<Fingerprint> inputs = new ArrayList<>();
  private final List<Replacement> replacements = new ArrayList<>();

  /** A part and where it came from. */
  private record Entry(Source source, Listed<? extends Part> listed) {
    Part part() {
      return listed.value();
    }

    String place() {
      return source.name() + ":" + listed.line();
    }
  }

  private CatalogReader(Problems problems) {
    this.problems = problems;
  }

  /**
   * Reads the folders in their order.
   *
   * @throws pappus.files.InputException with all that is wrong in all of them
   */
  public static ReadCatalog read(List<CatalogFolder> folders) {
    var problems = new Problems();
    var read = read(folders, problems);
    problems.throwIfAny();
    return read;
  }

  /** As {@link #read(List)}, but adds to the problems; the catalogue then lacks what is wrong. */
  public static ReadCatalog read(List<CatalogFolder> folders, Problems problems) {
    var reader = new CatalogReader(problems);
    folders.forEach(reader::readFolder);
    var places = new TreeMap<String, ReadCatalog.Place>();
    reader.byId.forEach((id, entry) -> places.put(
        id, new ReadCatalog.Place(entry.source().name(), entry.listed().line())));
    return new ReadCatalog(
        Catalog.of(reader.byId.values().stream().map(Entry::part).toList()),
        List.copyOf(reader.inputs),
        List.copyOf(reader.replacements),
        Collections.unmodifiableMap(places));
  }

  private void readFolder(CatalogFolder folder) {
    var inFolder = new HashMap<String, Entry>();
    folder.sources(problems).forEach((kind, source) -> {
      inputs.add(source.fingerprint());
      for (var listed : JsonReader.readList(
          source, kind.listName(), kind.listName(), kind.recordClass(), problems)) {
        var entry = new Entry(source, listed);
        var other = inFolder.putIfAbsent(entry.part().id(), entry);
        if (other == null) {
          merge(entry);
        } else {
          refuse(
              entry,
              "be the only one of its folder, but %s is at %s too."
                  .formatted(entry.part().id(), other.place()));
        }
      }
    });
  }

  private void merge(Entry entry) {
    var id = entry.part().id();
    var earlier = byId.get(id);
    if (earlier == null) {
      byId.put(id, entry);
    } else if (earlier.part().kind() != entry.part().kind()) {
      refuse(
          entry,
          "be new or that of another %s, but %s is the %s at %s."
              .formatted(
                  entry.part().kind().key(), id, earlier.part().kind().key(), earlier.place()));
    } else {
      byId.put(id, entry);
      replacements.add(new Replacement(id, earlier.place(), entry.place()));
    }
  }

  private void refuse(Entry entry, String expected) {
    var record = entry.part().kind().listName() + "[" + entry.listed().index() + "]";
    problems.add(JsonPlaces.of(entry.source(), entry.listed(), record)
        .problem(record + ".id", "must " + expected));
  }
}
