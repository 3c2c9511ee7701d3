package pappus.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.json.JsonMapper;

/** The command {@code check} from its arguments to its exit code. */
final class CheckCommandTest {
  @TempDir
  private Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int check(String... arguments) {
    var all = new String[arguments.length + 1];
    all[0] = "check";
    System.arraycopy(arguments, 0, all, 1, arguments.length);
    return Main.commandLine()
        .setOut(new PrintWriter(out, true))
        .setErr(new PrintWriter(err, true))
        .execute(all);
  }

  private Path write(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text);
  }

  @Test
  void theShippedDataIsSoundButForWarnings() {
    assertThat(check()).isEqualTo(ExitCode.OK);
    assertThat(err.toString()).isEmpty();
    assertThat(out.toString()).contains(": rushlight-600: ").doesNotContain("scenarios");
  }

  @Test
  void warningsCountWhenStrict() {
    assertThat(check("--strict")).isEqualTo(ExitCode.NO);
  }

  @Test
  void aFileWithoutWarningsIsSoundEvenWhenStrict() {
    assertThat(check("--strict", "scenarios/bird-survey.json")).isEqualTo(ExitCode.OK);
    assertThat(out.toString()).isEmpty();
  }

  @Test
  void aFileOfTheShippedCatalogueDoesNotReplaceItself() {
    assertThat(check("catalog/transmitters.json")).isEqualTo(ExitCode.OK);
    assertThat(err.toString()).isEmpty();
    assertThat(out.toString().lines().takeWhile(line -> !line.startsWith("Worth measuring")))
        .isNotEmpty()
        .allMatch(line -> line.startsWith("catalog/transmitters.json:"));
  }

  /** A motor of a page, of which the winding is a law's, and a propeller without a test. */
  @Test
  void saysWhatToMeasureFirstByWhatItCosts() throws IOException {
    write("motors.json", """
        {"motors": [{"id": "paged", "name": "Paged 1404", "price": {"amount": 15, "currency": "EUR"},
          "mass": {"grams": 9.3}, "statorDiameterMillimetres": 14, "statorHeightMillimetres": 4,
          "speedConstantRpmPerVolt": 2800, "boltCirclesMillimetres": [9],
          "propellerSeat": "screws-1.5mm"}]}
        """);
    write("propellers.json", """
        {"propellers": [{"id": "paged-4", "name": "Paged 4", "price": {"amount": 4, "currency": "EUR"},
          "mass": {"grams": 2}, "diameterInches": 4, "pitchInches": 2.5, "blades": 2,
          "seats": ["screws-1.5mm"]}]}
        """);

    assertThat(check(folder.toString())).isEqualTo(ExitCode.OK);

    var lines = out.toString().lines().toList();
    var first = lines.indexOf("Worth measuring first, by its effect on a usual hover:");
    assertThat(first).isNotNegative();
    assertThat(lines.subList(first + 1, lines.size()))
        .anyMatch(line -> line.matches(
            "±[0-9.]+ %  figure of merit of paged-4: a minute of hover with the current sensor"))
        .anyMatch(line -> line.matches("±[0-9.]+ %  winding resistance of paged: a multimeter"))
        .anyMatch(line -> line.matches("±[0-9.]+ %  mass of paged.*: a scale"))
        .isSortedAccordingTo(Comparator.<String>comparingDouble(
                line -> Double.parseDouble(line.substring(1, line.indexOf(' '))))
            .reversed());
  }

  @Test
  void allThatIsWrongInAllFilesIsToldWithItsLine() throws IOException {
    var motors = write("motors.json", """
        {
          "motors": [
            {"id": "one"}
          ]
        }
        """);
    var straps = write("straps.json", "{\n\"straps\": 3}\n");

    assertThat(check(folder.toString())).isEqualTo(ExitCode.BAD_DATA);
    assertThat(err.toString()).contains(motors + ":3: ").contains(straps + ":2: ");
  }

  @Test
  void anUnknownPartInAScenarioIsRefusedAsElsewhere() throws IOException {
    var scenario = write(
        "survey.json",
        Files.readString(Path.of("scenarios/bird-survey.json"))
            .replace("rushlight-600", "rushlight-601"));

    assertThat(check(scenario.toString())).isEqualTo(ExitCode.BAD_DATA);
    assertThat(err.toString())
        .startsWith(scenario + ":15: parts.excluded[0] must be the id of a part")
        .contains("rushlight-600");
  }

  @Test
  void aWaiverOfARuleThereIsNotIsAnError() throws IOException {
    var text = Files.readString(Path.of("scenarios/bird-survey.json"));
    var scenario = write(
        "survey.json",
        text.replace(
            "\"wants\":",
            "\"waivers\": [{\"rule\": \"luck\", \"parts\": [\"rushlight-600\"], \"reason\": \"hope\"}],\n\"wants\":"));

    assertThat(check(scenario.toString())).isEqualTo(ExitCode.BAD_DATA);
    assertThat(err.toString()).contains("waivers[0].rule must be the id of a fit rule");
  }

  @Test
  void whatIsNotThereIsMissingInput() {
    assertThat(check(folder.resolve("none.json").toString())).isEqualTo(ExitCode.NO_INPUT);
  }

  @Test
  void jsonIsOneDocumentWithFileLineAndText() throws IOException {
    var straps = write("straps.json", "{\n\"straps\": 3}\n");

    assertThat(check("--format", "json", straps.toString())).isEqualTo(ExitCode.BAD_DATA);
    var document = JsonMapper.shared().readTree(out.toString());
    assertThat(document.get("status").asString()).isEqualTo("bad-data");
    assertThat(document.get("warnings").size()).isZero();
    var problem = document.get("problems").get(0);
    assertThat(problem.get("file").asString()).isEqualTo(straps.toString());
    assertThat(problem.get("line").asInt()).isEqualTo(2);
    assertThat(problem.get("column").asInt()).isEqualTo(1);
    assertThat(problem.get("text").asString()).startsWith("straps must be");
  }

  @Test
  void jsonTellsTheColumnOfAFieldAndOfASlip() throws IOException {
    var first = Files.readString(Path.of("catalog/straps.json"))
        .lines()
        .filter(line -> line.contains("\"mass\""))
        .findFirst()
        .orElseThrow();
    var text = Files.readString(Path.of("catalog/straps.json"))
        .replace("Bindweed 10×130", "Bindweed über 10×130");
    var straps = write(
        "straps.json",
        text.replaceFirst("\"price\": [^\n]*", "\"price\": 3, \"sort\": 1,")
            .replaceFirst("\"unit\": \"bag\"", "\"unit\": \"sack\""));
    check("--format", "json", straps.toString());
    var problems = JsonMapper.shared().readTree(out.toString()).get("problems");

    assertThat(first).startsWith("      \"mass\"");
    assertThat(problems.valueStream().map(problem -> problem.get("column").asInt()))
        .containsExactly(7, 19, 16);
    assertThat(problems.valueStream().map(problem -> problem.get("text").asString()))
        .satisfiesExactly(
            price -> assertThat(price).startsWith("straps[0].price must be an object"),
            sort -> assertThat(sort).startsWith("straps[0].sort is not a field."),
            unit -> assertThat(unit).startsWith("straps[0].sold.unit must be each"));

    out.getBuffer().setLength(0);
    check("--format", "json", write("straps.json", "{\n \"straps\": [,]}\n").toString());
    var slip = JsonMapper.shared().readTree(out.toString()).get("problems").get(0);
    assertThat(slip.get("line").asInt()).isEqualTo(2);
    assertThat(slip.get("column").asInt()).isEqualTo(13);
  }
}
