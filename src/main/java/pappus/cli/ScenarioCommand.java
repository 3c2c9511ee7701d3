package pappus.cli;

import java.nio.file.Path;
import java.util.List;
import pappus.scenario.reading.Setting;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** What commands on a scenario share. */
abstract class ScenarioCommand extends CatalogCommand {
  @Parameters(
      index = "0",
      paramLabel = "SCENARIO",
      description = "What is wanted, a JSON file; - reads standard input.")
  private Path scenarioFile;

  @Mixin
  private SetOption set = new SetOption();

  @Override
  Path scenarioFile() {
    return scenarioFile;
  }

  @Override
  List<Setting> settings() {
    return set.settings();
  }
}
