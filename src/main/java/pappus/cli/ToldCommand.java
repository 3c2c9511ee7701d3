package pappus.cli;

import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import pappus.Inputs;
import pappus.answers.result.ToldResult;
import pappus.files.InputException;
import pappus.files.Problem;
import pappus.files.Source;

/** What commands on a result of recommend share: its scenario and its catalogues, read again. */
abstract class ToldCommand extends CatalogCommand {
  private @Nullable ToldResult told;

  /** Where the result is. */
  abstract Path resultFile();

  @Override
  Path scenarioFile() {
    return Path.of(told().inputs().get(0).name());
  }

  ToldResult told() {
    if (told == null) {
      try {
        told = ToldResult.of(Source.read(resultFile()));
      } catch (IllegalArgumentException wrong) {
        throw new InputException(
            InputException.Kind.BAD_DATA,
            List.of(Problem.ofFile(resultFile().toString(), String.valueOf(wrong.getMessage()))));
      }
    }
    return told;
  }

  /** Scenario and catalogues as they are now; those of the result, unless the user names other folders. */
  Inputs readAgain() {
    readAsTold(told().catalogs());
    return read();
  }
}
