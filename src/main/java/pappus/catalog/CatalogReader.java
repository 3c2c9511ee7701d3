package pappus.catalog;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import pappus.evidence.filling.Filling;
import pappus.files.Closest;
import pappus.files.Fingerprint;
import pappus.files.Problem;
import pappus.files.Problems;
import pappus.files.Shown;
import pappus.files.Source;
import pappus.files.json.JsonPlaces;
import pappus.files.json.JsonReader;
import pappus.files.json.Listed;
import pappus.part.Flown;
import pappus.part.Frame;
import pappus.part.Kind;
import pappus.part.Lump;
import pappus.part.OrderedFrames;
import pappus.part.Part;

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
  private final Map<String, OnShelf> shelf = new TreeMap<>();
  private final Map<String, Flown> flown = new TreeMap<>();
  private final Map<String, String> flownAt = new TreeMap<>();
  private final LumpFiles lumps = new LumpFiles();

  /** A part and where it came from. */
  private record Entry(Source source, Listed<? extends Part> listed) {
    Part part() {
      return listed.value();
    }

    String place() {
      return source.name() + ":" + listed.line();
    }
  }

  /** A file by itself. */
  private record ReadFile(
      Source source, List<? extends Listed<? extends Part>> listed, Problems problems) {
    static ReadFile of(Kind kind, Source source) {
      var problems = new Problems();
      var listed = Filling.read(source, kind, kind.recordClass(), problems);
      return new ReadFile(source, listed, problems);
    }
  }

  /** An entry on the shelf and where it came from. */
  private record OnShelf(Source source, Listed<ShelfEntry> listed) {
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

  /**
   * The parts as their records have them, whatever a shelf says of prices: for those who write records.
   *
   * @throws pappus.files.InputException with all that is wrong in all folders
   */
  public static ReadCatalog records(List<CatalogFolder> folders) {
    var problems = new Problems();
    var reader = new CatalogReader(problems);
    folders.forEach(reader::readFolder);
    problems.throwIfAny();
    return reader.result(entry -> List.of(entry.part()));
  }

  /** As {@link #read(List)}, but adds to the problems; the catalogue then lacks what is wrong. */
  public static ReadCatalog read(List<CatalogFolder> folders, Problems problems) {
    var reader = new CatalogReader(problems);
    folders.forEach(reader::readFolder);
    return reader.result(reader::ordered);
  }

  /** The names of lumps in the folders, whatever is wrong in them. */
  public static Set<String> lumpNames(List<CatalogFolder> folders) {
    var lumps = new LumpFiles();
    var untold = new Problems();
    folders.forEach(folder ->
        folder.other(Lump.FILE_NAME, untold).ifPresent(source -> lumps.read(source, untold)));
    return lumps.values().keySet();
  }

  /** What was read, with parts as they are wanted. */
  private ReadCatalog result(Function<Entry, List<? extends Part>> wanted) {
    var places = new TreeMap<String, ReadCatalog.Place>();
    var parts = new ArrayList<Part>();
    var stocked = new TreeMap<String, ShelfEntry>();
    shelf.forEach((id, each) -> stocked.put(id, each.listed().value()));
    byId.forEach((id, entry) -> {
      for (var part : wanted.apply(entry)) {
        var isListed = part.id().equals(id);
        if (!isListed && byId.containsKey(part.id())) {
          refuse(
              entry,
              "make ids that no other part has with its options, but makes %s."
                  .formatted(part.id()));
          continue;
        }
        parts.add(part);
        places.put(
            part.id(),
            new ReadCatalog.Place(entry.source().name(), entry.listed().line()));
        var counted = shelf.get(id);
        if (!isListed && counted != null && counted.listed().value().stock() != null) {
          // A shop counts frames, however they are ordered; what is at hand is as it was listed.
          stocked.putIfAbsent(
              part.id(),
              new ShelfEntry(part.id(), null, counted.listed().value().stock(), null, null));
        }
      }
    });
    return new ReadCatalog(
        Catalog.of(parts),
        Shelf.of(stocked.values()),
        Collections.unmodifiableMap(flown),
        lumps.values(),
        List.copyOf(inputs),
        List.copyOf(replacements),
        Collections.unmodifiableMap(places),
        strangers(places.keySet()));
  }

  /** A frame in every way that it can be ordered. */
  private List<? extends Part> ordered(Entry entry) {
    var part = atItsPrice(entry);
    return part instanceof Frame frame ? OrderedFrames.of(frame) : List.of(part);
  }

  private Part atItsPrice(Entry entry) {
    var onShelf = shelf.get(entry.part().id());
    var price = onShelf == null ? null : onShelf.listed().value().price();
    return price == null ? entry.part() : Repriced.of(entry.part(), price);
  }

  /** Entries on the shelf for parts that are in no catalogue: a shop's list is longer than ours. */
  private List<Problem> strangers(Set<String> known) {
    return shelf.values().stream()
        .filter(each -> !known.contains(each.listed().value().id()))
        .map(each -> {
          var id = each.listed().value().id();
          return new Problem(
              each.source().name(),
              each.listed().line(),
              "%s is in no catalogue: its entry on the shelf counts for nothing.%s"
                  .formatted(Shown.text(id), Closest.advice(id, byId.keySet())));
        })
        .sorted()
        .toList();
  }

  private void readFolder(CatalogFolder folder) {
    var inFolder = new HashMap<String, Entry>();
    // To find out how each kind of record is read takes longer than to read it: on all cores at
    // once.
    var files = folder.sources(problems).entrySet().stream().toList().parallelStream()
        .map(file -> ReadFile.of(file.getKey(), file.getValue()))
        .toList();
    files.forEach(file -> {
      inputs.add(file.source.fingerprint());
      problems.addAll(file.problems);
      for (var listed : file.listed) {
        var entry = new Entry(file.source, listed);
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
    folder.other(Shelf.FILE_NAME, problems).ifPresent(this::readShelf);
    folder.other(Flown.FILE_NAME, problems).ifPresent(this::readFlown);
    folder.other(Lump.FILE_NAME, problems).ifPresent(source -> {
      inputs.add(source.fingerprint());
      replacements.addAll(lumps.read(source, problems));
    });
  }

  /** One factor a way of flying; those of earlier folders give way, which is told. */
  private void readFlown(Source source) {
    inputs.add(source.fingerprint());
    var inFile = new TreeMap<String, Integer>();
    for (var listed : JsonReader.readList(source, Flown.NAME, Flown.NAME, Flown.class, problems)) {
      var style = listed.value().style();
      var twin = inFile.putIfAbsent(style, listed.line());
      var place = source.name() + ":" + listed.line();
      if (twin != null) {
        var record = Flown.NAME + "[" + listed.index() + "]";
        problems.add(JsonPlaces.of(source, listed, record)
            .problem(
                record + ".style",
                "must be there once, but %s is in line %s too.".formatted(style, twin)));
        continue;
      }
      var earlier = flown.put(style, listed.value());
      var before = flownAt.put(style, place);
      if (earlier != null && before != null) {
        replacements.add(new Replacement("The power factor of a " + style, before, place));
      }
    }
  }

  /** Entries of one folder; those of earlier ones give way, which is told. */
  private void readShelf(Source source) {
    inputs.add(source.fingerprint());
    var inFile = new HashMap<String, OnShelf>();
    for (var listed :
        JsonReader.readList(source, Shelf.NAME, Shelf.NAME, ShelfEntry.class, problems)) {
      var entry = new OnShelf(source, listed);
      var id = listed.value().id();
      var twin = inFile.putIfAbsent(id, entry);
      if (twin != null) {
        refuse(
            source,
            listed,
            Shelf.NAME,
            "be there once, but %s is at %s too.".formatted(id, twin.place()));
        continue;
      }
      var earlier = shelf.put(id, entry);
      if (earlier != null) {
        replacements.add(
            new Replacement("The shelf entry of " + id, earlier.place(), entry.place()));
      }
    }
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
    refuse(entry.source(), entry.listed(), entry.part().kind().listName(), expected);
  }

  private void refuse(Source source, Listed<?> listed, String list, String expected) {
    var record = list + "[" + listed.index() + "]";
    problems.add(JsonPlaces.of(source, listed, record).problem(record + ".id", "must " + expected));
  }
}
