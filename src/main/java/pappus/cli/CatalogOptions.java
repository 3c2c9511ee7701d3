package pappus.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import pappus.catalog.CatalogFolder;
import picocli.CommandLine.Option;

/** Which catalogue folders a command reads, the same for all commands. */
final class CatalogOptions {
  private static final String SHIPPED = "(shipped)";

  @Option(
      names = "--catalog",
      paramLabel = "FOLDER",
      description =
          "Further catalogue folder, after the shipped one; a later part replaces an earlier one by id.")
  private List<Path> catalogs = new ArrayList<>();

  @Option(names = "--no-shipped-catalog", description = "Only the folders given with --catalog.")
  private boolean withoutShipped;

  /** Whether they are as a result told, and not as the user says. */
  private boolean areTold;

  /** Whether the user says which. */
  boolean areNamed() {
    return !areTold && (!catalogs.isEmpty() || withoutShipped);
  }

  /** Folders as they were told in a result, unless the user names others. */
  void takeAsTold(List<String> names) {
    if (!areNamed()) {
      areTold = true;
      catalogs.clear();
      withoutShipped = !names.contains(SHIPPED);
      names.stream().filter(name -> !name.equals(SHIPPED)).map(Path::of).forEach(catalogs::add);
    }
  }

  /** In the order in which later ones replace parts of earlier ones. */
  List<CatalogFolder> folders() {
    var folders = new ArrayList<CatalogFolder>();
    if (!withoutShipped) {
      folders.add(CatalogFolder.shipped());
    }
    catalogs.forEach(folder -> folders.add(CatalogFolder.of(folder)));
    return folders;
  }

  /** The folders as they are told in results. */
  List<String> names() {
    var names = new ArrayList<String>();
    if (!withoutShipped) {
      names.add(SHIPPED);
    }
    catalogs.forEach(folder -> names.add(folder.toString()));
    return names;
  }
}
