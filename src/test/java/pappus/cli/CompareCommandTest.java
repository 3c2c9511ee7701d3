package pappus.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pappus.shop.SmallShop;

class CompareCommandTest {
  private static final String BUILD = String.join(",", SmallShop.ONE_BUILD);
  private static final String SMALLER = BUILD.replace("2s-3500", "2s-3400");
  private static final String CLASHES = BUILD.replace("ligule-4x1.9x2", "awn-4.5x2.5x2");

  @TempDir
  private Path folder;

  @BeforeEach
  void writeFewParts() throws IOException {
    CommandRun.write(folder, SmallShop.few(), "");
  }

  private CommandRun run(List<String> builds, String... more) {
    return CommandRun.onParts(folder, "compare", builds, more);
  }

  @Test
  void putsBuildsBesideEachOther() {
    var run = run(List.of(BUILD, SMALLER));

    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .containsIgnoringWhitespaces(
            "\n1. Cottongrass 4, Spikerush 1303-3400, Ligule 4×1.9×2, Tidewell 2S 3500: ",
            "\n2. Cottongrass 4, Spikerush 1303-3400, Ligule 4×1.9×2, Tidewell 2S 3400: ",
            "\nbattery",
            "\nThe same in all: frame: Cottongrass 4; motor: Spikerush 1303-3400; ",
            "\n2 against 1: 1 min shorter, 2.8 g lighter, EUR 2 cheaper.",
            "\nBest of these: The best build here, proven, reaches 43.0 min, 3.5 min more.\n");
  }

  /** The same antenna and sender in both: how far both links reach is told once. */
  @Test
  void tellsHowFarLinksReach() {
    assertThat(run(List.of(BUILD, SMALLER)).out().replaceAll("\\s+", " "))
        .containsPattern("video reaches: [0-9.]+ k?m to [0-9.]+ k?m, likeliest [0-9.]+ k?m")
        .containsPattern("control reaches: [0-9.]+ k?m to [0-9.]+ k?m, likeliest [0-9.]+ k?m");
  }

  @Test
  void theBestOfAllIsProvenToBe() {
    var best = BUILD
        .replace("cottongrass-4", "thistledown-5")
        .replace("ligule-4x1.9x2", "frond-4.5x3.2x3");

    assertThat(run(List.of(SMALLER, best)).out())
        .contains("\nBest of these: Proven: no other build from this catalogue does better.\n");
  }

  @Test
  void aBuildThatIsNoCandidateIsANo() {
    var run = run(List.of(BUILD, CLASHES));

    assertThat(run.exitCode()).isEqualTo(ExitCode.NO);
    assertThat(run.out().replaceAll("\\s+", " ")).contains(" no: a rule");
  }

  @Test
  void theSameBuildTwiceIsTheSame() {
    assertThat(run(List.of(BUILD, BUILD)).out())
        .contains(
            "\nThey do not differ in anything told here.\n",
            "\n2 against 1: as long, as heavy, at the same price.");
  }

  @Test
  void theDocumentHoldsBuildsRowsAndStanding() throws IOException {
    var out = CommandRun.typed(folder).resolve("o").toString();
    var run = run(List.of(BUILD, SMALLER), "--format", "json", "--out", out);
    var json = run.json();

    assertThat(json.path("status").asString()).isEqualTo("compared");
    assertThat(json.path("standing").path("proven").asBoolean()).isTrue();
    assertThat(json.path("standing").path("text").asString()).startsWith("Best of these: ");
    assertThat(json.path("standing").path("endedBy").asString()).isEqualTo("proven");
    assertThat(json.path("builds")).hasSize(2);
    assertThat(json.path("builds").get(0).path("band").path("lowSeconds").asDouble())
        .isPositive();
    assertThat(json.path("rows").get(0).path("what").asString()).isEqualTo("battery");
    assertThat(json.path("rows").get(0).path("differs").asBoolean()).isTrue();
    assertThat(json.path("rows").get(0).path("values"))
        .extracting(value -> value.asString())
        .containsExactly("Tidewell 2S 3500", "Tidewell 2S 3400");
    assertThat(Files.readString(folder.resolve("o/comparison.json"))).isEqualTo(run.out());
  }

  @Test
  void aSpreadsheetAndAPageHaveOneColumnForEachBuild() {
    assertThat(run(List.of(BUILD, SMALLER), "--format", "csv").out())
        .startsWith("what,build_1,build_2\nbattery,Tidewell 2S 3500,Tidewell 2S 3400\n");
    assertThat(run(List.of(BUILD, SMALLER), "--format", "markdown").out())
        .startsWith(
            "|  | build 1 | build 2 |\n| --- | --- | --- |\n| battery | Tidewell 2S 3500 | Tidewell 2S 3400 |\n");
  }

  @Test
  void takesRowsOfAResult() {
    var typed = CommandRun.typed(folder);
    assertThat(CommandRun.recommend(typed).exitCode()).isEqualTo(ExitCode.OK);
    var first = typed.resolve("out/result.json") + "#1";

    var run = run(List.of(first, BUILD));
    assertThat(run.err()).isEmpty();
    assertThat(run.out()).contains("\n1. Thistledown 5, Spikerush 1303-3400, ");
  }

  @Test
  void twoToSixBuildsCanBeCompared() {
    assertThat(run(List.of(BUILD)).exitCode()).isEqualTo(ExitCode.USAGE);
    var six = List.of(BUILD, SMALLER, BUILD, SMALLER, BUILD, SMALLER);
    assertThat(run(six).exitCode()).isEqualTo(ExitCode.OK);
    var seven = new ArrayList<>(six);
    seven.add(BUILD);
    var run = run(seven);
    assertThat(run.exitCode()).isEqualTo(ExitCode.USAGE);
    assertThat(run.errors())
        .containsExactly(
            "At most 6 builds can be compared, but 7 are given; pappus compare --help says more.");
  }

  @Test
  void everyBuildThatNamesNoneIsALine() {
    var run = run(List.of("no-such-part", BUILD, "other-part"));

    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_DATA);
    assertThat(run.errors())
        .containsExactly(
            "BUILD: Each part must be the id of a part in the catalogue, but is \"no-such-part\".",
            "BUILD: Each part must be the id of a part in the catalogue, but is \"other-part\".");
  }

  @Test
  void namesDoNoHarm() throws IOException {
    HostileNames.write(folder);

    assertThat(run(List.of(BUILD, SMALLER), "--format", "csv").out())
        .contains(
            "\nbattery," + HostileNames.TABLE + ",'" + HostileNames.FORMULA + "\n",
            "\nframe," + HostileNames.SCRIPT + "," + HostileNames.SCRIPT + "\n");
    assertThat(run(List.of(BUILD, SMALLER), "--format", "markdown").out())
        .contains(
            "\n| battery | Tidewell \\| 2S | =cmd\\|&#39; /C calc&#39;\\!A0 |\n",
            "| &#60;script&#62;alert\\(1\\)&#60;/script&#62; |",
            "| \\[x\\]\\(http&#58;//y\\) |")
        .doesNotContain("<script", "](");
    assertThat(run(List.of(BUILD, SMALLER)).exitCode()).isEqualTo(ExitCode.OK);

    HostileNames.rename(folder, "batteries.json", HostileNames.TABLE, "a\\u001b[2J\\u202eb");
    var refused = run(List.of(BUILD, SMALLER));
    assertThat(refused.exitCode()).isEqualTo(ExitCode.BAD_DATA);
    assertThat(refused.out() + refused.err()).doesNotContain("\u001B", "\u202E");
  }

  @Test
  void theSameInputGivesTheSameBytes() {
    for (var format : List.of("text", "json", "csv", "markdown")) {
      assertThat(run(List.of(BUILD, SMALLER), "--format", format))
          .as(format)
          .isEqualTo(run(List.of(BUILD, SMALLER), "--format", format));
    }
  }
}
