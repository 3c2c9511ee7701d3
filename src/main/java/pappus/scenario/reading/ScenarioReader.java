package pappus.scenario.reading;

import java.io.InputStream;
import java.nio.file.Path;
import pappus.files.Problems;
import pappus.files.Source;
import pappus.files.json.JsonPlaces;
import pappus.files.json.JsonReader;
import pappus.scenario.Scenario;

/** Reads a scenario. */
public final class ScenarioReader {
  private static final String SCHEMA = "scenario";

  private ScenarioReader() {}

  /**
   * Reads a file, or standard input for a hyphen.
   *
   * @throws pappus.files.InputException with all that is wrong
   */
  public static ReadScenario read(Path file, InputStream standardInput) {
    var source = file.toString().equals("-") ? Source.read("-", standardInput) : Source.read(file);
    return read(source);
  }

  /**
   * Reads bytes at hand.
   *
   * @throws pappus.files.InputException with all that is wrong
   */
  public static ReadScenario read(Source source) {
    var problems = new Problems();
    var scenario = JsonReader.readRecord(source, SCHEMA, Scenario.class, problems);
    problems.throwIfAny();
    return new ReadScenario(scenario.orElseThrow(), source.fingerprint(), JsonPlaces.of(source));
  }
}
