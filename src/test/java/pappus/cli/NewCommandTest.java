package pappus.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pappus.shop.SmallShop;

/** A scenario to begin with, by options and by questions. */
class NewCommandTest {
  @TempDir
  private Path folder;

  private CommandRun recommended(CommandRun begun, String... more) throws IOException {
    assertThat(begun.exitCode()).as(begun.err()).isEqualTo(ExitCode.OK);
    CommandRun.write(folder, SmallShop.few(), "");
    Files.writeString(folder.resolve("marsh.json"), begun.out());
    var file = CommandRun.typed(folder).resolve("marsh.json").toString();
    assertThat(CommandRun.of("check", file).errors()).isEmpty();
    return CommandRun.recommend(CommandRun.typed(folder), more);
  }

  @Test
  void whatItPrintsIsSoundAndHasAnAnswer() throws IOException {
    var begun = CommandRun.of("new");

    assertThat(recommended(begun).out())
        .startsWith("marsh: hover, 0 m above sea level; below 250 g; T/W at least 2.0.");
    for (var opening : Opening.values()) {
      assertThat(begun.errors())
          .singleElement()
          .asString()
          .contains(opening.option() + " " + opening.usual());
    }
  }

  @Test
  void optionsGoIntoTheScenario() throws IOException {
    var begun = CommandRun.of(
        "new",
        "--mass-cap",
        "240",
        "--thrust",
        "2.1",
        "--budget",
        "300",
        "--flight",
        "loiter",
        "--goggles",
        "analogue",
        "--radio",
        "thrennel",
        "--cells",
        "2",
        "--propeller",
        "4",
        "--at-hand",
        "newteye-14,tidewell-2s-3500");

    assertThat(begun.err()).isEmpty();
    var json = begun.json();
    assertThat(json.at("/massCap/grams").asDouble()).isEqualTo(240);
    assertThat(json.at("/massCap/strict").asBoolean()).isTrue();
    assertThat(json.at("/leastThrustToWeight").asDouble()).isEqualTo(2.1);
    assertThat(json.at("/budget/amount").asDouble()).isEqualTo(300);
    assertThat(json.at("/budget/currency").asString()).isEqualTo("EUR");
    assertThat(json.at("/flight/style").asString()).isEqualTo("loiter");
    assertThat(json.at("/parts/owned")).hasSize(2);
    assertThat(recommended(begun).exitCode()).isLessThanOrEqualTo(ExitCode.NO);
    for (var row : CommandRun.of(
            "recommend", typed(), "--format", "json", "--quiet", "--out", typedOut())
        .json()
        .at("/candidates")) {
      assertThat(row.toString()).contains("-2s-");
    }
  }

  private String typed() {
    return CommandRun.typed(folder).resolve("marsh.json").toString();
  }

  private String typedOut() {
    return CommandRun.typed(folder).resolve("out2").toString();
  }

  @ParameterizedTest(name = "{0} {1}")
  @CsvSource(delimiter = '|', textBlock = """
      --mass-cap  | 5       | --mass-cap: massCap.grams must be from 20 to 25000, but is 5. Maybe it was written in kilograms.
      --thrust    | lots    | --thrust: leastThrustToWeight must be a number, but is the text "lots".
      --budget    | -1      | --budget: budget.amount must be from 0 to 1000000, but is -1.
      --flight    | profile | --flight: must be hover, loiter or cruise, but is profile. Maybe begin with cruise, and write the legs into the file.
      --flight    | hovr    | --flight: flight.style must be hover, loiter, cruise or profile, but is the text "hovr".
      --cells     | 9       | --cells: must be one that a part of the catalogue has, 1, 2, 3, 4, 5 or 6, but is "9".
      --at-hand   | nothing | --at-hand: parts.owned[0] must be the id of a part in the catalogue, but is the text "nothing".
      """)
  void whatWillNotDoIsWrongUsage(String option, String value, String line) {
    var run = CommandRun.of("new", option + "=" + value);

    assertThat(run.exitCode()).isEqualTo(ExitCode.USAGE);
    assertThat(run.out()).isEmpty();
    assertThat(run.errors()).first().isEqualTo(line);
  }

  @Test
  void quietlyNothingIsTold() {
    assertThat(CommandRun.of("new", "--quiet").err()).isEmpty();
  }

  private record Asked(Map<Opening, String> said, String shown) {}

  private static Asked ask(Map<Opening, String> said, String... lines) {
    var err = new StringWriter();
    var command = Main.commandLine().setErr(new PrintWriter(err, true));
    var answers = new EnumMap<Opening, String>(Opening.class);
    answers.putAll(said);
    var in = new BufferedReader(new StringReader(String.join("\n", lines)));
    new Questions(new Beginning(SmallShop.few()), in, Printer.err(command)).ask(answers);
    return new Asked(answers, err.toString());
  }

  @Test
  void asksForWhatIsLeftOpenUntilItWillDo() {
    var asked = ask(Map.of(Opening.THRUST, "3"), "heavy", "200", "", "loiter");

    assertThat(asked.said())
        .containsExactlyInAnyOrderEntriesOf(
            Map.of(Opening.MASS_CAP, "200", Opening.THRUST, "3", Opening.FLIGHT, "loiter"));
    assertThat(asked.shown())
        .contains("Mass cap, g: with everything aboard it weighs less [250 g]: ")
        .contains("massCap must be a number or an object, but is the text \"heavy\".")
        .contains("Budget, EUR [no bound]: ", "Parts at hand")
        .doesNotContain("Least thrust");
  }

  /** Where nobody answers, what is usual is taken. */
  @Test
  void endsWhereAnswersEnd() {
    assertThat(ask(Map.of()).said()).isEmpty();
    assertThat(Stream.of(Opening.values()).map(Opening::option)).doesNotHaveDuplicates();
  }
}
