package pappus.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pappus.shop.SmallShop;

/** Files as people have them, and as strangers send them: an answer or a line that says what is wrong. */
class OrdinaryFilesTest {
  @TempDir
  private Path folder;

  private Path typed;

  @BeforeEach
  void write() throws IOException {
    CommandRun.write(folder, SmallShop.few(), "");
    typed = CommandRun.typed(folder);
  }

  private String result() throws IOException {
    assertThat(CommandRun.recommend(typed).exitCode()).isEqualTo(ExitCode.OK);
    return Files.readString(folder.resolve("out/result.json"));
  }

  private CommandRun told(String command, String result) throws IOException {
    var file = Files.writeString(folder.resolve("told.json"), result);
    var name = CommandRun.typed(file).toString();
    return switch (command) {
      case "verify" -> CommandRun.of("verify", name, "--effort", "2000", "--quiet");
      case "sheet" -> CommandRun.of("sheet", name + "#1", "--quiet", "--out", typed + "/sheet");
      default ->
        CommandRun.of(
            "offer",
            name,
            "--quiet",
            "--out",
            typed + "/sheet",
            "--settings",
            "src/main/shop/shop.json",
            "--date",
            "2026-05-31");
    };
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.5, 0.7, 1, 2})
  void everyPowerFactorOfTheDocumentedRangeIsFlown(double factor) throws IOException {
    Files.writeString(folder.resolve("parts/flown.json"), """
        {"flown": [{"style": "hover", "powerFactor": %s, "doubt": 0.1, "flights": 3, "source": "My own."}]}
        """.formatted(factor));

    assertThat(CommandRun.recommend(typed).exitCode()).isIn(ExitCode.OK, ExitCode.NO);
    for (var word : List.of("explain", "assess")) {
      var run = CommandRun.onParts(folder, word, List.of(String.join(",", SmallShop.ONE_BUILD)));
      assertThat(run.exitCode()).as(run.err()).isIn(ExitCode.OK, ExitCode.NO);
    }
  }

  @Test
  void aPayloadLighterThanAnyMassIsASlip() throws IOException {
    Files.writeString(
        folder.resolve("marsh.json"),
        SmallShop.scenarioText(
            ", \"payload\": {\"name\": \"dust\", \"massGrams\": 0.005, \"watts\": 0, \"xMillimetres\": 0}"));

    assertThat(CommandRun.recommend(typed).errors())
        .containsExactly(
            typed.resolve("marsh.json")
                + ":7: payload.massGrams must be 0 or at least 0.01, but is 0.005. Maybe it is not in grams.");
  }

  @ParameterizedTest
  @ValueSource(strings = {"verify", "sheet", "offer"})
  void aResultWhoseFieldsAreOfAnotherTypeIsRefusedWithItsPlace(String command) throws IOException {
    var result = result();
    for (var change : List.of(
        "\"candidates\": \\[~\"candidates\": [null, ",
        "\"roles\": \\{~\"roles\": 3, \"were\": {",
        "\"frame\": \"[a-z0-9.-]+\"~\"frame\": null",
        "\"frame\": \"[a-z0-9.-]+\"~\"frame\": 3",
        "\"milliseconds\": [0-9]+~\"milliseconds\": 1e99",
        "\"feasible\": true~\"feasible\": \"yes\"",
        "\"standing\": \\{~\"standing\": null, \"was\": {",
        "\"inputs\": \\[~\"inputs\": [], \"were\": [",
        "\"inputs\": \\[~\"inputs\": [null, ",
        "\"catalogs\": \\[~\"catalogs\": [[], ",
        "\"name\": \"[^\"]*marsh.json\"~\"name\": \"a\\\\u0000b\"",
        "\\}\\s*\\z~",
        "(?s)\\A.*\\z~[]",
        "(?s)\\A.*\\z~\"candidates\"")) {
      var parts = change.split("~", -1);
      var changed = result.replaceFirst(parts[0], parts[1]);
      assertThat(changed).isNotEqualTo(result);

      var run = told(command, changed);

      assertThat(run.exitCode()).as(change + run.err()).isEqualTo(ExitCode.BAD_DATA);
      assertThat(run.errors()).as(change).hasSize(1);
      assertThat(run.err()).contains("told.json");
      assertThat(folder.resolve("sheet")).doesNotExist();
    }
  }

  @ParameterizedTest
  @CsvSource({
    "inputs[0].name, -",
    "inputs[0].name, ''",
    "inputs[0].name, /dev/zero",
    "inputs[0].name, /dev/../proc/self/environ",
    "inputs[0].name, //elsewhere/marsh.json",
    "inputs[0].name, \\\\\\\\elsewhere\\\\marsh.json",
    "catalogs[0], /dev",
    "catalogs[0], //elsewhere/parts",
    "catalogs[0], -"
  })
  void aResultMayNameNothingThatIsNoFile(String field, String name) throws IOException {
    var result = field.startsWith("inputs")
        ? result()
            .replaceFirst(
                "(\"name\": )\"[^\"]*marsh.json\"", "$1\"" + name.replace("\\", "\\\\") + "\"")
        : result().replaceFirst("(\"catalogs\": \\[\\s*)\"[^\"]*\"", "$1\"" + name + "\"");

    for (var command : List.of("verify", "sheet", "offer")) {
      var run = told(command, result);
      assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_DATA);
      assertThat(run.err())
          .contains("told.json: " + field
              + " must be an ordinary file or folder of this machine, but is the text \"");
      assertThat(folder.resolve("sheet")).doesNotExist();
    }
  }

  @Test
  void aTextThatIsTooLongHidesNoOtherFault() throws IOException {
    var file = folder.resolve("parts/straps.json");
    Files.writeString(
        file,
        Files.readString(file)
            .replaceFirst("\"id\": \"", "\"id\": \"%")
            .replaceFirst("\"source\": \"", "\"source\": \"" + "x".repeat(20_001)));

    var run = CommandRun.recommend(typed);

    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_DATA);
    assertThat(run.err()).contains("Texts must have at most 20000 characters");
    assertThat(run.errors()).hasSize(1);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      a..b | must begin with a letter or digit
      a b | must be small letters
      .a | must begin with a letter or digit
      -a | must begin with a letter or digit
      a/b | must be small letters
      a\\u00a0b | must be text without control or hidden characters
      a\\u202eb | must be text without control or hidden characters
      a\\u200db | must be text without control or hidden characters
      a\\udb40\\udc41b | must be text without control or hidden characters
      """)
  void anIdIsAPlainWord(String id, String problem) throws IOException {
    var file = folder.resolve("parts/straps.json");
    Files.writeString(
        file,
        Files.readString(file)
            .replaceFirst("\"id\": \"[^\"]*", "\"id\": \"" + id.replace("\\", "\\\\")));

    assertThat(CommandRun.recommend(typed).err()).contains("straps[0].id " + problem);
  }

  @Test
  void idsAndNamesAreNotEndless() throws IOException {
    var file = folder.resolve("parts/straps.json");
    var text = Files.readString(file);
    var longest = text.replaceFirst("\"id\": \"[^\"]*", "\"id\": \"" + "x".repeat(64))
        .replaceFirst("\"name\": \"[^\"]*", "\"name\": \"" + "n".repeat(120));
    Files.writeString(file, longest);
    assertThat(CommandRun.recommend(typed).err()).doesNotContain("straps.json");
    Files.writeString(file, longest.replace("xxx", "xxxx").replace("nnn\"", "nnnn\""));

    assertThat(CommandRun.recommend(typed).err())
        .contains(
            "straps[0].id must have at most 64 characters, but has ",
            "straps[0].name must have at most 120 characters, but has 121.");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "con",
        "com1",
        "A",
        "a/b",
        "..",
        "-a",
        "aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa"
      })
  void aScenarioThatNamesNoFolderIsRefusedBeforeTheSearch(String name) throws IOException {
    Files.writeString(
        folder.resolve("marsh.json"),
        SmallShop.scenarioText("").replace("\"marsh\"", "\"" + name + "\""));
    var run = CommandRun.recommend(typed);

    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_DATA);
    assertThat(run.err()).contains(":2: name must be ");
    assertThat(folder.resolve("out")).doesNotExist();
  }

  @Test
  void whatIsTypedActsOnNoTerminal() {
    for (var sign :
        List.of("\u001B[31m", "\u00A0", "\u200D", "\u202E", Character.toString(0xE0041))) {
      var file = typed.resolve("marsh.json").toString();
      var parts = typed.resolve("parts").toString();
      for (var run : List.of(
          CommandRun.of("assess", file, "a" + sign, "--no-shipped-catalog", "--catalog", parts),
          CommandRun.of(
              "assess", file, "a" + sign + "#1", "--no-shipped-catalog", "--catalog", parts),
          CommandRun.of(
              "assess", file, "a" + sign + "#" + sign, "--no-shipped-catalog", "--catalog", parts),
          CommandRun.of("sheet", "a" + sign),
          CommandRun.of("recommend", "a" + sign, "--format", "json"),
          CommandRun.of("recom" + sign),
          CommandRun.of(
              "explain",
              file,
              String.join(",", SmallShop.ONE_BUILD),
              "--part",
              "a" + sign,
              "--no-shipped-catalog",
              "--catalog",
              parts))) {
        assertThat(run.exitCode()).isNotIn(ExitCode.OK, ExitCode.BUG);
        assertThat(run.out() + run.err()).doesNotContain(sign);
        assertThat(run.err()).contains("\\u");
      }
    }
  }

  @Test
  void aFileOfWordsIsNoCommandLine() throws IOException {
    var words = Files.writeString(folder.resolve("words"), "--version\n");
    var run = CommandRun.of("@" + words);

    assertThat(run.exitCode()).isEqualTo(ExitCode.USAGE);
    assertThat(run.out()).isEmpty();
  }

  @Test
  void whatFitsNowhereIsNotTriedALongTime() throws IOException {
    CommandRun.write(folder, SmallShop.all(), "");
    var scenario = SmallShop.scenarioText("").replace("\"grams\": 250", "\"grams\": 20");
    Files.writeString(folder.resolve("marsh.json"), scenario);
    var run = CommandRun.recommend(typed, "--format", "json");

    assertThat(run.exitCode()).isEqualTo(ExitCode.NO);
    assertThat(run.json().path("standing").path("proven").asBoolean()).isTrue();
    assertThat(run.json().path("closest").path("build").isMissingNode()).isFalse();
    assertThat(run.json().path("standing").path("assessed").asInt()).isBetween(100, 15_000);
  }

  @ParameterizedTest
  @Tag("slow")
  @CsvSource({
    "parts/motors.json, motors, 1, '', 999900",
    "parts/motors.json, motors, '{\"id\": \"a b\"}', '', -1",
    "marsh.json, parts, 1, fixed, -1"
  })
  void aMillionWrongElementsAreCountedWithinHalfAGigabyte(
      String file, String field, String element, String list, int more) throws Exception {
    var all =
        IntStream.range(0, 1_000_000).mapToObj(i -> element).collect(Collectors.joining(",\n"));
    Files.writeString(
        folder.resolve(file),
        list.isEmpty()
            ? "{\"" + field + "\": [" + all + "]}"
            : SmallShop.scenarioText(", \"parts\": {\"fixed\": [" + all + "]}"));
    // Seconds of the processor, which do not count what else the machine does.
    var run = ToolProcess.run(
        "ulimit -t 40 && exec \"$@\"",
        folder.resolve("parts"),
        List.of("-Xmx512m"),
        "recommend",
        "../marsh.json",
        "--no-shipped-catalog",
        "--catalog",
        ".");

    assertThat(run.code()).isEqualTo(ExitCode.BAD_DATA);
    assertThat(run.err().lines().count()).isEqualTo(101);
    assertThat(run.err().lines().reduce((one, other) -> other).orElseThrow())
        .matches(more < 0 ? ".*: and [0-9]+ more\\." : ".*: and " + more + " more\\.");
  }
}
