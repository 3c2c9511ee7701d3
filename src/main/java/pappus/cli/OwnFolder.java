package pappus.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import pappus.catalog.Catalog;
import pappus.catalog.CatalogFolder;
import pappus.catalog.CatalogReader;
import pappus.catalog.Part;
import pappus.files.JsonText;
import pappus.files.OutputFolder;

/** A builder's own catalogue folder, to which records are added. */
final class OwnFolder {
  private final Path folder;
  private final Catalog before;

  private OwnFolder(Path folder, Catalog before) {
    this.folder = folder;
    this.before = before;
  }

  /**
   * Reads what it holds; it need not exist.
   *
   * @throws pappus.files.InputException if what it holds is wrong
   */
  static OwnFolder at(Path folder) {
    return new OwnFolder(
        folder,
        CatalogFolder.isCatalogue(folder)
            ? CatalogReader.read(List.of(CatalogFolder.of(folder))).catalog()
            : Catalog.of(List.of()));
  }

  /** Parts it held before. */
  Catalog before() {
    return before;
  }

  /** Where a part of it is, for messages. */
  Path file(Part part) {
    return folder.resolve(part.kind().fileName());
  }

  /**
   * Adds parts to those it holds; one of the same id is replaced.
   *
   * @param force whether files that were written by others, or edited, are replaced too
   * @throws pappus.files.CannotCreateException if one of the files is not to be replaced; then none is
   */
  void add(List<Part> parts, boolean force) {
    var texts = new TreeMap<String, String>();
    for (var kind : parts.stream().map(Part::kind).distinct().toList()) {
      var byId = new TreeMap<String, Part>();
      before.ofKind(kind).forEach(part -> byId.put(part.id(), part));
      parts.stream().filter(part -> part.kind() == kind).forEach(part -> byId.put(part.id(), part));
      texts.put(
          kind.fileName(), JsonText.of(Map.of(kind.listName(), new ArrayList<>(byId.values()))));
    }
    new OutputFolder(folder, force).write(texts);
  }
}
