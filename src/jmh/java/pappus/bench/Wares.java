package pappus.bench;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import pappus.assessment.Supply;
import pappus.catalog.CatalogFolder;
import pappus.catalog.CatalogReader;
import pappus.catalog.Shelf;
import pappus.scenario.reading.ScenarioReader;
import pappus.search.Question;
import pappus.shop.Siblings;

/** Catalogues of any size, and questions to them. */
final class Wares {
  private Wares() {}

  /**
   * Folder of a catalogue that is written if it is not there; the shipped one for none of each kind.
   *
   * @param of flat, or rebranded: copies under other names beside every ten
   */
  static Path folder(int ofEachKind, long seed, String of) {
    if (ofEachKind == 0) {
      return Path.of("catalog");
    }
    var folder = Path.of("target", "bench", "%s-%s-%s".formatted(of, ofEachKind, seed));
    try {
      if (!Files.exists(folder)) {
        Siblings.write(folder, ofEachKind, seed, of.equals("rebranded"));
      }
    } catch (IOException unwritable) {
      throw new IllegalStateException(unwritable);
    }
    return folder;
  }

  static Path scenario(String name) {
    return Path.of("scenarios", name + ".json");
  }

  static Question question(String scenario, Path folder) {
    var catalog = CatalogReader.read(List.of(CatalogFolder.of(folder))).catalog();
    var read = ScenarioReader.read(scenario(scenario), InputStream.nullInputStream());
    return Question.of(catalog, new Supply(catalog, Shelf.EMPTY).assessor(read.scenario()));
  }
}
