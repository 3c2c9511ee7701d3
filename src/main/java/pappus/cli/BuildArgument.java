package pappus.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import pappus.catalog.BuildText;
import pappus.catalog.Catalog;
import pappus.files.InputException;
import pappus.files.Problem;
import pappus.files.Problems;
import pappus.part.Build;

/** Builds as they are named on the command line: part ids with counts, or a row of a result. */
final class BuildArgument {
  /** For the help. */
  static final String DESCRIPTION =
      "Part ids with counts, id,id,id*4, or RESULT.json#2 for the second of a result, RESULT.json#thrifty for a pick.";

  private BuildArgument() {}

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
