package pappus.scenario.reading;

import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import pappus.files.InputException;
import pappus.files.Problems;
import pappus.files.Source;
import pappus.files.json.JsonPlaces;
import pappus.files.json.JsonReader;
import pappus.part.Lump;
import pappus.scenario.Scenario;

/** Reads a scenario. */
public final class ScenarioReader {
  private static final String SCHEMA = "scenario";

  /** Of a budget without one, where no catalogue says what prices are in. */
  private static final String USUAL_CURRENCY = "EUR";

  private ScenarioReader() {}

  /**
   * Reads a file, or standard input for a hyphen.
   *
   * @throws pappus.files.InputException with all that is wrong
   */
  public static ReadScenario read(Path file, InputStream standardInput) {
    return read(file, standardInput, List.of(), "", Map.of());
  }

  /**
   * Reads a file, or standard input for a hyphen, with some of its values otherwise.
   *
   * @param settings in their order
   * @param currency of a budget that is a plain number: that of the catalogue; empty where it has none
   * @param lumps of the catalogue, by name
   * @throws pappus.files.InputException with all that is wrong
   */
  public static ReadScenario read(
      Path file,
      InputStream standardInput,
      List<Setting> settings,
      String currency,
      Map<String, Lump> lumps) {
    var source = file.toString().equals("-") ? Source.read("-", standardInput) : Source.read(file);
    return read(source, settings, currency, lumps);
  }

  /**
   * Reads bytes at hand.
   *
   * @throws pappus.files.InputException with all that is wrong
   */
  public static ReadScenario read(Source source) {
    return read(source, List.of(), "", Map.of());
  }

  /**
   * Reads bytes at hand, with some of their values otherwise.
   *
   * @param settings in their order
   * @param currency of a budget that is a plain number: that of the catalogue; empty where it has none
   * @param lumps of the catalogue, by name
   * @throws pappus.files.InputException with all that is wrong
   */
  public static ReadScenario read(
      Source source, List<Setting> settings, String currency, Map<String, Lump> lumps) {
    var problems = new Problems();
    var known = currency.isEmpty() ? USUAL_CURRENCY : currency;
    var completed = Completion.of(source, settings, known, lumps, problems);
    var scenario = JsonReader.readRecord(completed.source(), SCHEMA, Scenario.class, problems);
    problems.throwIfAny();
    var places = JsonPlaces.of(completed.source());
    try {
      return new ReadScenario(
          completed.undrawn().settled(scenario.orElseThrow()), source.fingerprint(), places);
    } catch (IllegalArgumentException tooLight) {
      // What a record refuses starts with the field.
      var words = String.valueOf(tooLight.getMessage()).split(" ", 2);
      throw InputException.badData(places.problem("draftFrame." + words[0], words[1]));
    }
  }
}
