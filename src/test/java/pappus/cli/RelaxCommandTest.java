package pappus.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pappus.shop.SmallShop;

class RelaxCommandTest {
  private static final String POOR = ", \"budget\": {\"amount\": 170, \"currency\": \"EUR\"}";

  /** Three things that the few parts cannot do. */
  private static final String HOPELESS = POOR + ", \"wants\": [\"gps\", \"buzzer\"]";

  @TempDir
  private Path folder;

  @BeforeEach
  void writeFewParts() throws IOException {
    CommandRun.write(folder, SmallShop.few(), POOR);
  }

  private void ask(String fields) throws IOException {
    Files.writeString(folder.resolve("marsh.json"), SmallShop.scenarioText(fields));
  }

  private CommandRun run(String... more) {
    return CommandRun.onParts(folder, "relax", List.of(), more);
  }

  private static String unwrapped(CommandRun run) {
    return run.out().replaceAll("\\n *(?=[^-!\\n ])", " ");
  }

  /** The cheapest build costs 178.84. */
  @Test
  void whatHelpsIsAYes() {
    var run = run();

    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(run.err()).isEmpty();
    assertThat(unwrapped(run))
        .startsWith("marsh: hover, 5 m above sea level; below 250 g;")
        .contains(
            "One demand alone rules out every build, even with nothing else asked for: a budget of EUR 170.",
            "Smallest change of each that helps on its own, and the best build then:\n- Budget 170 EUR → 179 EUR: Cottongrass 4, Spikerush 1303-3400, Ligule 4×1.9×2, Tidewell 2S 3400: ",
            ", T/W 2.2, EUR 179.",
            "\n- propeller-clearance: 2 of 6 pairs of frame and propeller (33 %).",
            "Proven: what is called impossible was searched to the end, in ",
            "\n! A mass cap that is law (Below 250 g at take-off) is not yours to raise,");
  }

  @Test
  void whatIsFeasibleIsAYes() throws IOException {
    ask("");
    var run = run();
    var json = run("--format", "json").json();

    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(unwrapped(run))
        .contains("Nothing is in the way: Thistledown 5, ")
        .endsWith("Proven: no other build from this catalogue does better.\n");
    assertThat(json.path("status").asString()).isEqualTo("feasible");
    assertThat(json.path("standing").path("proven").asBoolean()).isTrue();
    assertThat(json.path("best").path("feasible").asBoolean()).isTrue();
    assertThat(json.path("reliefs")).isEmpty();
  }

  @Test
  void whatHelpsTogetherIsAYes() throws IOException {
    ask(HOPELESS);
    var run = run();

    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(unwrapped(run))
        .contains(
            "One demand alone rules out every build, even with nothing else asked for: a budget of EUR 170.",
            "Changing one of them alone does not help: other demands are in the way too.\n- No two were found to; without all of these, none of which can stay: a GPS; a buzzer; a budget of EUR 170: ");
  }

  @Test
  void partsThatDoNotFitAtAllAreANo() throws IOException {
    Files.delete(folder.resolve("parts/motors.json"));
    var run = run();
    var json = run("--format", "json");

    assertThat(run.exitCode()).isEqualTo(ExitCode.NO);
    assertThat(unwrapped(run)).contains("No build goes together, even with nothing asked for");
    assertThat(json.exitCode()).isEqualTo(ExitCode.NO);
    assertThat(json.json().path("status").asString()).isEqualTo("infeasible");
    assertThat(json.json().path("standing").path("proven").asBoolean()).isTrue();
  }

  @Test
  void theDocumentHasTheSameAnswer() throws IOException {
    var out = CommandRun.typed(folder).resolve("o").toString();
    var run = run("--format", "json", "--out", out);
    var json = run.json();

    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(run.err()).isEmpty();
    assertThat(json.path("status").asString()).isEqualTo("relaxed");
    assertThat(json.path("standing").path("proven").asBoolean()).isTrue();
    assertThat(json.path("conflict"))
        .extracting(demand -> demand.path("demand").asString())
        .containsExactly("budget");
    var relief = json.path("reliefs").get(0);
    assertThat(relief.path("from").asString()).isEqualTo("170 EUR");
    assertThat(relief.path("to").asString()).isEqualTo("179 EUR");
    assertThat(relief.path("leastProven").asBoolean()).isTrue();
    assertThat(relief.path("build").path("cents").asLong()).isEqualTo(17_884);
    assertThat(Files.readString(folder.resolve("o/relaxation.json"))).isEqualTo(run.out());
  }

  @Test
  void aTextLeavesTheDocumentInAFolderThatIsNamed() throws IOException {
    var out = CommandRun.typed(folder).resolve("o").toString();

    assertThat(run("--out", out)).isEqualTo(run());
    assertThat(Files.readString(folder.resolve("o/relaxation.json")))
        .isEqualTo(run("--format", "json").out());
  }

  @Test
  void whatIsNoTableIsWrongUsage() {
    for (var format : List.of("csv", "markdown")) {
      var run = run("--format", format);

      assertThat(run.exitCode()).isEqualTo(ExitCode.USAGE);
      assertThat(run.out()).isEmpty();
      assertThat(run.errors().get(0))
          .isEqualTo("--format must be one of text, json here, but is " + format
              + "; pappus relax --help says more.");
    }
  }

  @Test
  void aWrongScenarioIsBadData() throws IOException {
    ask(", \"wants\": [\"wings\"]");
    var run = run();

    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_DATA);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains("wants[0]");
    assertThat(run("--format", "json").json().path("status").asString()).isEqualTo("bad-data");
  }

  @Test
  void namesDoNoHarm() throws IOException {
    HostileNames.write(folder);
    var run = run();

    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(unwrapped(run))
        .contains(
            "\n- Budget 170 EUR → 179 EUR: " + HostileNames.SCRIPT + ", ",
            ", " + HostileNames.FORMULA + ": ");
    var json = run("--format", "json");
    assertThat(json.json().path("status").asString()).isEqualTo("relaxed");
    assertThat(json.out()).contains("\"name\": \"" + HostileNames.FORMULA + "\"");
  }

  @Test
  void controlCharactersAreRefusedAndNotRepeated() throws IOException {
    var hostile = "a\\u001b[2J\\u202eb";
    Files.writeString(
        folder.resolve("marsh.json"),
        SmallShop.scenarioText(POOR).replace("Below 250 g at take-off", hostile));
    var rule = run();
    ask(POOR);
    HostileNames.rename(folder, "batteries.json", "Tidewell 2S 3400", hostile);

    for (var refused : List.of(rule, run())) {
      assertThat(refused.exitCode()).isEqualTo(ExitCode.BAD_DATA);
      assertThat(refused.out() + refused.err()).doesNotContain("\u001B", "\u202E");
    }
  }

  @Test
  void theSameInputGivesTheSameBytes() {
    for (var format : List.of("text", "json")) {
      assertThat(run("--format", format)).as(format).isEqualTo(run("--format", format));
    }
  }
}
