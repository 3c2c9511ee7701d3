package pappus.cli;

import java.nio.file.Path;
import picocli.CommandLine.Parameters;

/** What commands on a scenario share. */
abstract class ScenarioCommand extends CatalogCommand {
  @Parameters(
      index = "0",
      paramLabel = "SCENARIO",
      description = "What is wanted, a JSON file; - reads standard input.")
  private Path scenarioFile;

  @Override
  Path scenarioFile() {
    return scenarioFile;
  }
}
