package pappus.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import pappus.catalog.BuildText;
import pappus.catalog.Catalog;
import pappus.catalog.CatalogFolder;
import pappus.catalog.CatalogReader;
import pappus.files.InputException;
import pappus.files.Problem;
import pappus.files.Problems;
import pappus.part.Build;
import pappus.scenario.reading.Setting;

/** Builds as they are named on the command line: part ids with counts, or a row of a result. */
final class BuildArgument {
  /** For the help. */
  static final String DESCRIPTION =
      "Part ids with counts, id,id,id*4, or RESULT.json#2 for the second of a result, RESULT.json#thrifty for a pick.";

  /** As well. */
  static final String WITH_LUMP =
      DESCRIPTION + " Among part ids the name of a lump may stand, of the catalogue's lumps.json.";

  /**
   * A text without the lump in it.
   *
   * @param lump in the place of what the scenario has, if one is named
   */
  record Named(String parts, @Nullable Setting lump) {}

  private BuildArgument() {}

  /**
   * Takes out what is the name of a lump; a second stays and is refused as no part.
   *
   * @param folders of the catalogue
   */
  static Named withoutLump(String text, List<CatalogFolder> folders) {
    var words = new ArrayList<>(List.of(text.split(",", -1)));
    var lumps = CatalogReader.lumpNames(folders);
    for (var word : words) {
      var name = word.strip();
      if (lumps.contains(name)) {
        words.remove(word);
        return new Named(String.join(",", words), new Setting("lump", name, "BUILD"));
      }
    }
    return new Named(text, null);
  }

  /**
   * The builds of several texts.
   *
   * @throws InputException with every text that names none
   */
  static List<Build> readAll(List<String> texts, Catalog catalog) {
    var problems = new Problems();
    var builds = new ArrayList<Build>();
    for (var text : texts) {
      try {
        builds.add(read(text, catalog));
      } catch (InputException wrong) {
        problems.addAll(wrong);
      }
    }
    problems.throwIfAny();
    return builds;
  }

  /**
   * The build of a text.
   *
   * @throws InputException if it names none
   */
  static Build read(String text, Catalog catalog) {
    try {
      return BuildText.read(text, Path.of(""), catalog, read -> {});
    } catch (IllegalArgumentException wrong) {
      throw new InputException(
          InputException.Kind.BAD_DATA,
          List.of(Problem.ofFile("BUILD", String.valueOf(wrong.getMessage()))));
    }
  }
}
