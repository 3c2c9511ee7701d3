package pappus.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import pappus.answers.result.ResultFile;
import pappus.catalog.BuildText;
import pappus.catalog.Catalog;
import pappus.files.InputException;
import pappus.files.Problem;
import pappus.files.Problems;
import pappus.files.Source;
import pappus.part.Build;

/** Builds as they are named on the command line: part ids with counts, or a row of a result. */
final class BuildArgument {
  /** For the help. */
  static final String DESCRIPTION =
      "Part ids with counts, id,id,id*4, or RESULT.json#2 for the second of a result, RESULT.json#thrifty for a pick.";

  /** How a build of a result is named: its rank, or what it is picked for. */
  static final String NAME = "[1-9][0-9]{0,2}|[a-z]{1,20}";

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
    var hash = text.lastIndexOf('#');
    try {
      if (hash < 0) {
        return BuildText.parse(text, catalog);
      }
      var name = text.substring(0, hash);
      var which = text.substring(hash + 1);
      if (!which.matches(NAME)) {
        throw new IllegalArgumentException(
            "must end in # and a rank or a pick, but ends in #" + which + ".");
      }
      return BuildText.of(ResultFile.roles(Source.read(Path.of(name)), which), catalog);
    } catch (IllegalArgumentException wrong) {
      throw new InputException(
          InputException.Kind.BAD_DATA,
          List.of(Problem.ofFile("BUILD", String.valueOf(wrong.getMessage()))));
    }
  }
}
