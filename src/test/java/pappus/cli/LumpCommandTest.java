package pappus.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pappus.part.Kind;
import pappus.shop.SmallShop;

/** Parts already wired, told in one, through every command. */
class LumpCommandTest {
  private static final String WIRED = """
      , "lump": {"name": "wired stack", "grams": 24, "watts": 3,
        "price": {"amount": 12.5, "currency": "EUR"},
        "fills": ["board", "transmitter", "camera", "receiver", "video-antenna", "radio-antenna",
          "capacitor"]}""";

  @TempDir
  private Path folder;

  private CommandRun run(String command, List<String> words, String... more) throws IOException {
    if (!Files.exists(folder.resolve("marsh.json"))) {
      CommandRun.write(folder, SmallShop.few(), WIRED);
    }
    return CommandRun.onParts(folder, command, words, more);
  }

  private CommandRun recommend(String... more) throws IOException {
    CommandRun.write(folder, SmallShop.few(), WIRED);
    return CommandRun.recommend(CommandRun.typed(folder), more);
  }

  @Test
  void assessFliesFrameMotorsPropellersBatteryAndALump() throws IOException {
    var best = recommend("--format", "json").json().path("candidates").path(0);
    var build = best.path("build").asString();
    assertThat(build.split(",")).as(build).hasSize(4);

    var assessed = run("assess", List.of(build), "--format", "json");

    assertThat(assessed.exitCode()).as(assessed.err() + assessed.out()).isEqualTo(ExitCode.OK);
    var answer = assessed.json().path("build");
    assertThat(answer.path("milliseconds").asLong()).isPositive();
    assertThat(answer.path("milliseconds")).isEqualTo(best.path("milliseconds"));
    assertThat(answer.path("mass").toString()).contains("\"wired stack\"");
    assertThat(answer.path("cost").path("own").path(0).path("cents").asLong()).isEqualTo(1250);
    assertThat(run("assess", List.of(build)).out().replaceAll("\\s+", " "))
        .contains(
            "wired stack (24.0 g, 3.0 W) in place of flight board, video transmitter, camera, receiver, video antenna, radio antenna, capacitor")
        .doesNotContain("part-load loss");
  }

  @Test
  void isRankedTheSameByChanges() throws IOException {
    var exact = recommend("--format", "json").json().path("candidates").path(0);
    var changed = recommend("--format", "json", "--search", "heuristic", "--force")
        .json()
        .path("candidates")
        .path(0);

    assertThat(changed.path("build")).isEqualTo(exact.path("build"));
  }

  @Test
  void isOnReportSheetAndInEveryAnswer() throws IOException {
    assertThat(recommend("--report").exitCode()).isEqualTo(ExitCode.OK);
    var result = CommandRun.typed(folder).resolve("out/result.json").toString();

    for (var command : List.of("explain", "alternatives", "compare")) {
      var words = switch (command) {
        case "compare" -> List.of(result + "#1", result + "#2");
        case "alternatives" -> List.of(result + "#1", "--kind", "motor");
        default -> List.of(result + "#1");
      };
      var answer = run(command, words);
      assertThat(answer.exitCode()).as(command + answer.err()).isEqualTo(ExitCode.OK);
    }
    var sheet = CommandRun.of("sheet", result + "#1", "--out", CommandRun.typed(folder) + "/out");
    assertThat(sheet.exitCode()).as(sheet.err()).isEqualTo(ExitCode.OK);
    assertThat(sheet.out()).contains("wired stack");
    assertThat(run("vary", List.of("--over", "mass-cap=220,250")).exitCode())
        .isEqualTo(ExitCode.OK);
    assertThat(run("relax", List.of()).exitCode()).isIn(ExitCode.OK, ExitCode.NO);
  }

  @ParameterizedTest
  @ValueSource(strings = {"frame", "motor", "propeller", "battery"})
  void neverStandsForWhatDecidesHowItFlies(String role) throws IOException {
    CommandRun.write(folder, SmallShop.few(), WIRED.replace("\"capacitor\"", "\"" + role + "\""));
    var run = CommandRun.recommend(CommandRun.typed(folder));

    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_DATA);
    assertThat(run.err())
        .contains("lump.fills must leave out what decides how it flies, but has " + role + ".");
  }

  private static final String NAMED = ", \"lump\": \"wired stack\"";

  /** The lump of the scenario as one of the catalogue. */
  private void keepInCatalogue() throws IOException {
    var lump = WIRED.substring(WIRED.indexOf('{'));
    Files.writeString(folder.resolve("parts/lumps.json"), "{\"lumps\": [\n" + lump + "\n]}\n");
  }

  @Test
  void aScenarioMayNameOneOfTheCatalogue() throws IOException {
    var written = recommend("--format", "json").json();
    CommandRun.write(folder, SmallShop.few(), NAMED);
    keepInCatalogue();

    var named = CommandRun.recommend(CommandRun.typed(folder), "--format", "json");

    assertThat(named.exitCode()).as(named.err()).isEqualTo(ExitCode.OK);
    assertThat(named.json().path("candidates")).isEqualTo(written.path("candidates"));
    assertThat(named.json().path("scenario").path("lump").path("grams").asDouble())
        .isEqualTo(24);
    assertThat(named.json().path("inputs").toString()).contains("lumps.json");
  }

  @Test
  void aBuildMayNameOneOfTheCatalogue() throws IOException {
    var best = recommend("--format", "json").json().path("candidates").path(0);
    CommandRun.write(folder, SmallShop.few(), "");
    keepInCatalogue();
    var build = best.path("build").asString() + ",wired stack";

    var assessed = run("assess", List.of(build), "--format", "json");

    assertThat(assessed.exitCode()).as(assessed.err() + assessed.out()).isEqualTo(ExitCode.OK);
    assertThat(assessed.json().path("build").path("milliseconds"))
        .isEqualTo(best.path("milliseconds"));
    assertThat(run("assess", List.of(best.path("build").asString())).exitCode())
        .isEqualTo(ExitCode.NO);
    assertThat(run("assess", List.of(build + ",wired stack")).err())
        .contains("must be the id of a part in the catalogue, but is \"wired stack\"");
  }

  @Test
  void aNameThatNoLumpHasIsRefusedWithItsPlace() throws IOException {
    CommandRun.write(folder, SmallShop.few(), ", \"lump\": \"wired stak\"");
    keepInCatalogue();

    var refused = CommandRun.recommend(CommandRun.typed(folder));
    assertThat(refused.exitCode()).isEqualTo(ExitCode.BAD_DATA);
    assertThat(refused.errors())
        .singleElement()
        .asString()
        .contains("marsh.json:")
        .contains(
            ": lump must be the name of one in a catalogue's lumps.json, or an object, but is the text \"wired stak\". Maybe wired stack was meant.");
  }

  @Test
  void aLumpOfACatalogueIsCheckedAndOneTwiceRefused() throws IOException {
    CommandRun.write(folder, SmallShop.few(), NAMED);
    var lump = WIRED.substring(WIRED.indexOf('{'));
    var file = folder.resolve("parts/lumps.json");
    Files.writeString(file, "{\"lumps\": [\n" + lump + ",\n" + lump + "\n]}\n");
    assertThat(checked().errors())
        .anySatisfy(
            line -> assertThat(line)
                .contains(
                    "lumps.json:6: lumps[1].name must be there once, but wired stack is in line 2 too."));

    Files.writeString(file, "{\"lumps\": [\n" + lump.replace("24", "0") + "\n]}\n");
    assertThat(checked().errors())
        .anySatisfy(line -> assertThat(line)
            .contains("lumps.json:2: lumps[0].grams must be from 0.01 to 1000, but is 0."));

    keepInCatalogue();
    assertThat(checked().exitCode()).isEqualTo(ExitCode.OK);
  }

  private CommandRun checked() {
    var typed = CommandRun.typed(folder);
    return CommandRun.of(
        "check", typed + "/parts", typed + "/marsh.json", "--no-shipped-catalog", "--quiet");
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      where.camera.widthMillimetres | "where": {"camera": {"widthMillimetres": {"atLeast": 1}}}
      parts.allowed[0].role | "parts": {"allowed": [{"role": "board", "parts": ["%s"]}]}
      parts.fixed[0] | "parts": {"fixed": ["%s"]}
      """)
  void whatIsAskedOfAFilledRoleIsRefused(String path, String fields) throws IOException {
    var board = SmallShop.few().ofKind(Kind.BOARD).get(0).id();
    CommandRun.write(folder, SmallShop.few(), WIRED + ",\n" + fields.formatted(board));

    for (var refused : List.of(CommandRun.recommend(CommandRun.typed(folder)), checked())) {
      assertThat(refused.exitCode()).isEqualTo(ExitCode.BAD_DATA);
      assertThat(refused.errors())
          .singleElement()
          .asString()
          .matches(".*marsh\\.json:[0-9]+: \\Q" + path
              + "\\E must be (about|for) a role that the lump does not fill, but .*");
    }
  }

  @Test
  void aFixedPartForAFilledRoleIsRefused() throws IOException {
    var board = SmallShop.oneBuild().board().orElseThrow().id();
    CommandRun.write(
        folder, SmallShop.few(), WIRED + ", \"parts\": {\"fixed\": [\"%s\"]}".formatted(board));
    var run = CommandRun.recommend(CommandRun.typed(folder));

    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_DATA);
    assertThat(run.err())
        .contains("parts.fixed[0] must be for a role that the lump does not fill, but " + board);
  }
}
