package pappus.cli;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pappus.Inputs;
import pappus.answers.result.ToldOrder;
import pappus.answers.result.ToldResult;
import pappus.files.InputException;
import pappus.files.Problem;
import pappus.files.Shown;
import pappus.files.Source;
import pappus.scenario.reading.Setting;

/** What commands on a result of recommend share: its scenario and its catalogues, read again. */
abstract class ToldCommand extends CatalogCommand {
  /** How paths on other machines begin. */
  private static final List<String> NETWORK = List.of("//", "\\\\");

  /** Where files are that are none, and some that never end. */
  private static final List<Path> SYSTEM =
      List.of(Path.of("/dev"), Path.of("/proc"), Path.of("/sys"));

  /** Results by their files: a command may take builds of several. */
  private final Map<Path, ToldResult> told = new HashMap<>();

  /** Where the result is. */
  abstract Path resultFile();

  /** The build that is asked for first: which scenario of an order is meant. */
  abstract String buildName();

  @Override
  Path scenarioFile() {
    return path(resultFile(), "inputs[0].name", told().inputs().get(0).name());
  }

  /** As it was asked then. */
  @Override
  List<Setting> settings() {
    try {
      return told().settings().stream().map(Setting::parse).toList();
    } catch (IllegalArgumentException wrong) {
      throw InputException.badData(
          Problem.ofFile(resultFile().toString(), "set " + wrong.getMessage()));
    }
  }

  /**
   * What a result names is read next, and the result may be a stranger's: no device, which may never end, nothing that
   * is typed, and nothing on another machine.
   */
  static Path path(Path result, String field, String name) {
    try {
      var path = Path.of(name);
      var real = path.toAbsolutePath().normalize();
      var isOrdinary =
          Files.isRegularFile(real) || Files.isDirectory(real) || Files.notExists(real);
      if (!name.equals("-")
          && !name.isBlank()
          && NETWORK.stream().noneMatch(name::startsWith)
          && SYSTEM.stream().noneMatch(real::startsWith)
          && isOrdinary) {
        return path;
      }
    } catch (InvalidPathException noPath) {
      // Refused below.
    }
    throw InputException.badData(Problem.ofFile(
        result.toString(),
        "%s must be an ordinary file or folder of this machine, but is the text %s."
            .formatted(field, Shown.text(name))));
  }

  ToldResult told() {
    return told.computeIfAbsent(resultFile(), file -> {
      try {
        var source = Source.read(file);
        return ToldOrder.isOne(source)
            ? ToldOrder.of(source).result(buildName())
            : ToldResult.of(source);
      } catch (IllegalArgumentException wrong) {
        throw new InputException(
            InputException.Kind.BAD_DATA,
            List.of(Problem.ofFile(file.toString(), String.valueOf(wrong.getMessage()))));
      }
    });
  }

  /** Scenario and catalogues as they are now; those of the result, unless the user names other folders. */
  Inputs readAgain() {
    if (!namesCatalogs()) {
      var names = told().catalogs();
      for (var i = 0; i < names.size(); i++) {
        path(resultFile(), "catalogs[" + i + "]", names.get(i));
      }
      readAsTold(names);
    }
    return read();
  }
}
