package pappus.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pappus.shop.SmallShop;

/** Values of a scenario set on the command line, from there to the files that are written. */
class SetOptionTest {
  private static final String NAME = "set-option-test";
  private static final Path OUT = Path.of("out", NAME);
  private static final String NAMED = "name=" + NAME;

  @TempDir
  private Path folder;

  @BeforeEach
  void write() throws IOException {
    CommandRun.write(folder, SmallShop.few(), "");
  }

  /** Where results go by themselves is below the folder that everything runs in. */
  @AfterEach
  void clean() throws IOException {
    if (Files.exists(OUT)) {
      try (var files = Files.walk(OUT)) {
        for (var file : files.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(file);
        }
      }
    }
  }

  private CommandRun run(String command, String... more) {
    return CommandRun.onParts(folder, command, List.of(), more);
  }

  @Test
  void changesTheAnswerAndLeavesThatToTheFileAsItIs() throws IOException {
    var marsh = folder.resolve("marsh.json");
    Files.writeString(marsh, SmallShop.scenarioText("").replace("marsh", NAME));
    var asItIs = run("recommend");
    var written = Files.readString(OUT.resolve("result.json"));

    var lighter = run("recommend", "--set", "massCap=195", "--set", "budget=250");

    assertThat(lighter.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(lighter.out())
        .startsWith(NAME + ": ")
        .contains("; below 195 g; ")
        .containsIgnoringWhitespaces("; at most EUR 250.")
        .isNotEqualTo(asItIs.out());
    assertThat(Files.readString(OUT.resolve("result.json"))).isEqualTo(written);
    assertThat(written).doesNotContain("massCap=195");
    assertThat(Files.readString(OUT.resolve("what-if/result.json")))
        .contains("\"set\": [\n    \"massCap=195\",\n    \"budget=250\"\n  ]");
  }

  /** The sheet of what was asked otherwise is of that, and is written beside it. */
  @Test
  void whatFollowsAResultAsksAsItDid() throws IOException {
    var recommended = run("recommend", "--set", NAMED, "--set", "massCap=195");
    assertThat(recommended.exitCode()).isEqualTo(ExitCode.OK);
    var result = OUT.resolve("what-if/result.json");

    var sheet = CommandRun.of("sheet", result + "#1");
    var verified = CommandRun.of("verify", result.toString());

    assertThat(sheet.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(sheet.err()).isEmpty();
    assertThat(sheet.out()).contains("Below 195 g with 95 % confidence");
    assertThat(OUT.resolve("what-if/sheet.html")).exists();
    assertThat(OUT.resolve("sheet.html")).doesNotExist();
    assertThat(verified.exitCode()).isEqualTo(ExitCode.OK);
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"recommend", "relax"})
  void everythingWrongIsToldAtOnce(String command) throws IOException {
    Files.writeString(
        folder.resolve("marsh.json"),
        SmallShop.scenarioText("").replace("\"altitudeMetres\": 5", "\"altitudeMetres\": 9000"));

    var run = run(command, "--set", "massCap=5", "--set", "flight.resrve=0.1");

    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_DATA);
    assertThat(run.out()).isEmpty();
    assertThat(run.errors())
        .containsExactlyInAnyOrder(
            "--set flight.resrve=0.1: flight.resrve is not a field. Maybe reserve was meant.",
            "--set massCap=5: massCap.grams must be from 20 to 25000, but is 5. Maybe it was written in kilograms.",
            CommandRun.typed(folder).resolve("marsh.json")
                + ":6: air.altitudeMetres must be from -430 to 6000, but is 9000. Maybe it was written in feet.");
  }

  @Test
  void whatIsNoSettingIsWrongUsage() {
    var run = run("recommend", "--set", "massCap");

    assertThat(run.exitCode()).isEqualTo(ExitCode.USAGE);
    assertThat(run.errors())
        .containsExactly(
            "--set must be PATH=VALUE, such as massCap.grams=200 or flight.legs[0].seconds=30, but is \"massCap\"; pappus recommend --help says more.");
  }

  @Test
  void isTakenByEveryCommandThatReadsAScenario() {
    var readers = Main.commandLine().getSubcommands().entrySet().stream()
        .filter(command -> command.getValue().getCommandSpec().positionalParameters().stream()
            .anyMatch(word -> word.paramLabel().equals("SCENARIO")))
        .toList();

    assertThat(readers)
        .hasSizeGreaterThan(6)
        .allSatisfy(command ->
            assertThat(command.getValue().getCommandSpec().optionsMap()).containsKey("--set"));
    assertThat(CommandRun.of("check", "--help").out()).contains("--set=PATH=VALUE");
  }

  @Test
  void checkTakesItForTheScenariosItChecks() {
    var scenario = "scenarios/bird-survey.json";

    assertThat(CommandRun.of("check", scenario, "--set", "candidates=0").errors())
        .containsExactly("--set candidates=0: candidates must be from 1 to 100, but is 0.");
    assertThat(CommandRun.of("check", scenario, "--set", "parts=null").exitCode())
        .isEqualTo(ExitCode.OK);
  }
}
