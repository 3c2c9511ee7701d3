package pappus.catalog;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import pappus.evidence.filling.Filling;
import pappus.files.json.JsonText;
import pappus.files.output.OutputFolder;
import pappus.part.Flown;
import pappus.part.Part;

/** A builder's own catalogue folder, to which records are added. */
public final class OwnFolder {
  private final Path folder;
  private final Catalog parts;
  private final Shelf shelf;
  private final Map<String, Flown> flown;

  private OwnFolder(Path folder, Catalog parts, Shelf shelf, Map<String, Flown> flown) {
    this.folder = folder;
    this.parts = parts;
    this.shelf = shelf;
    this.flown = flown;
  }

  /**
   * Reads what it holds; it need not exist.
   *
   * @throws pappus.files.InputException if what it holds is wrong
   */
  public static OwnFolder at(Path folder) {
    if (!CatalogFolder.isCatalogue(folder)) {
      return new OwnFolder(folder, Catalog.of(List.of()), Shelf.EMPTY, Map.of());
    }
    var read = CatalogReader.records(List.of(CatalogFolder.of(folder)));
    return new OwnFolder(folder, read.catalog(), read.shelf(), read.flown());
  }

  /** Parts it held before. */
  public Catalog parts() {
    return parts;
  }

  /** What was counted before. */
  public Shelf shelf() {
    return shelf;
  }

  /** Where a file of it is. */
  public Path file(String name) {
    return folder.resolve(name);
  }

  /**
   * Adds parts to those it holds; one of the same id is replaced.
   *
   * @param force whether files that were written by others, or edited, are replaced too
   * @throws pappus.files.output.CannotCreateException if one of the files is not to be replaced; then none is
   */
  public void add(List<? extends Part> added, boolean force) {
    new OutputFolder(folder, force).write(texts(added));
  }

  /** Files with the parts it holds and those that are added. */
  private Map<String, String> texts(List<? extends Part> added) {
    var texts = new TreeMap<String, String>();
    for (var kind : added.stream().map(Part::kind).distinct().toList()) {
      var byId = new TreeMap<String, Part>();
      parts.ofKind(kind).forEach(part -> byId.put(part.id(), part));
      added.stream().filter(part -> part.kind() == kind).forEach(part -> byId.put(part.id(), part));
      texts.put(
          kind.fileName(),
          JsonText.of(Map.of(
              kind.listName(), byId.values().stream().map(Filling::asRead).toList())));
    }
    return texts;
  }

  /**
   * Adds weighed parts and power factors, all of them or nothing.
   *
   * @return names of the files written
   */
  public List<String> add(List<? extends Part> added, List<Flown> factors, boolean force) {
    var texts = texts(added);
    if (!factors.isEmpty()) {
      var byStyle = new TreeMap<>(flown);
      factors.forEach(factor -> byStyle.put(factor.style(), factor));
      texts.put(
          Flown.FILE_NAME, JsonText.of(Map.of(Flown.NAME, new ArrayList<>(byStyle.values()))));
    }
    if (!texts.isEmpty()) {
      new OutputFolder(folder, force).write(texts);
    }
    return texts.keySet().stream().map(name -> file(name).toString()).toList();
  }

  /** As {@link #add}, for what was counted. */
  public void addToShelf(List<ShelfEntry> added, boolean force) {
    var entries = new ArrayList<>(shelf.entries());
    entries.addAll(added);
    var all = Map.of(Shelf.NAME, new ArrayList<>(Shelf.of(entries).entries()));
    new OutputFolder(folder, force).write(Map.of(Shelf.FILE_NAME, JsonText.of(all)));
  }
}
