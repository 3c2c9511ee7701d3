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

class ExplainCommandTest {
  private static final String BUILD = String.join(",", SmallShop.ONE_BUILD);
  private static final String CLASHES = BUILD.replace("ligule-4x1.9x2", "awn-4.5x2.5x2");

  @TempDir
  private Path folder;

  @BeforeEach
  void writeFewParts() throws IOException {
    CommandRun.write(folder, SmallShop.few(), "");
  }

  private CommandRun run(String build, String... more) {
    return CommandRun.onParts(folder, "explain", List.of(build), more);
  }

  private static String unwrapped(CommandRun run) {
    return run.out().replaceAll("\\n *(?=[^-\\n ])", " ");
  }

  @Test
  void saysWhyABuildIsAsItIs() {
    var run = run(BUILD);

    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(run.err()).isEmpty();
    assertThat(unwrapped(run))
        .contains(
            " The best build here, proven, reaches 43.0 min, 3.5 min more. Tightest limit: ",
            " Room left:",
            "\n- full thrust, mid-flight: 429.9 gf of at least 381.8 gf, 48.14 gf to spare.",
            " One more gram costs 13 s; one more watt of electronics costs 1.4 min.",
            " No dearer part flies longer. Cheapest to give up: Newteye 14 in place of Newteye 14 Feather saves EUR 9 for 6.2 s.",
            " Grams to save, cheapest first:",
            " Best swap of each part, the rest unchanged:",
            "\n- battery: Tidewell 2S 3400 in place of Tidewell 2S 3500: 1.1 min shorter, 2.8 g lighter, EUR 3 cheaper.");
  }

  @Test
  void aBuildThatIsNoCandidateIsANo() {
    var run = run(CLASHES);

    assertThat(run.exitCode()).isEqualTo(ExitCode.NO);
    assertThat(run.out())
        .containsIgnoringWhitespaces(
            "this one is no candidate.", "\n- Clash (propeller-clearance): Propeller ");
    assertThat(run(CLASHES, "--format", "json").json().path("status").asString())
        .isEqualTo("infeasible");
  }

  @Test
  void theDocumentHasTheSameAnswer() throws IOException {
    var out = CommandRun.typed(folder).resolve("o").toString();
    var run = run(BUILD, "--format", "json", "--out", out);
    var json = run.json();

    assertThat(json.path("status").asString()).isEqualTo("feasible");
    assertThat(json.path("standing").path("proven").asBoolean()).isTrue();
    assertThat(json.path("standing").path("text").asString())
        .isEqualTo("The best build here, proven, reaches 43.0 min, 3.5 min more.");
    assertThat(json.path("lostPerGram").asDouble()).isPositive();
    assertThat(json.path("lostPerWatt").asDouble()).isPositive();
    assertThat(json.path("margins")).isNotEmpty();
    assertThat(json.path("swaps"))
        .extracting(swap -> swap.path("role").asString())
        .containsExactly("frame", "motor", "propeller", "battery", "camera");
    assertThat(Files.readString(folder.resolve("o/why.json"))).isEqualTo(run.out());
  }

  @Test
  void saysWhyAPartIsNotInIt() {
    var run = run(BUILD, "--part", "newteye-14");

    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(run.err()).isEmpty();
    assertThat(unwrapped(run))
        .contains(
            " Why not Newteye 14 [newteye-14]? This build: Cottongrass 4, Spikerush 1303-3400, ",
            "\n- Fitted to this build as its camera: 6.2 s shorter, 0.1 g heavier, EUR 9 cheaper, ",
            "\n- The best build with Newteye 14, proven: ");
    var json = run(BUILD, "--part", "newteye-14", "--format", "json").json();
    assertThat(json.path("status").asString()).isEqualTo("found");
    assertThat(json.path("standing").path("proven").asBoolean()).isTrue();
    assertThat(json.path("part").asString()).isEqualTo("newteye-14");
    assertThat(json.path("role").asString()).isEqualTo("camera");
    assertThat(json.path("leftOutByTheScenario").asBoolean()).isFalse();
    assertThat(json.path("bestWithIt").path("roles").path("camera").asString())
        .isEqualTo("newteye-14");
  }

  @Test
  void aPartThatIsInIsSaidToBe() {
    assertThat(run(BUILD, "--part", "stipule-wire").out())
        .contains("\n- Stipule Wire is in this build already.\n");
  }

  @Test
  void aPartThatNoBuildCanHaveIsANo() throws IOException {
    Files.writeString(
        folder.resolve("marsh.json"),
        SmallShop.scenarioText(", \"budget\": {\"amount\": 195, \"currency\": \"EUR\"}"));

    var run = run(BUILD, "--part", "thistledown-5");

    assertThat(run.exitCode()).isEqualTo(ExitCode.NO);
    assertThat(unwrapped(run))
        .contains(
            "\n- Proven: no build with Thistledown 5 keeps every rule and limit.",
            "\n- Kept down by the limit budget: at EUR 234 its best build is 3.5 min longer, ");
    var json = run(BUILD, "--part", "thistledown-5", "--format", "json").json();
    assertThat(json.path("status").asString()).isEqualTo("infeasible");
    assertThat(json.path("looser").get(0).path("limit").asString()).isEqualTo("budget");
    assertThat(json.path("looser").get(0).path("at").asDouble()).isEqualTo(234);
    assertThat(json.path("looser").get(0).path("keepsDown").asBoolean()).isTrue();
  }

  @Test
  void whatCannotBeAskedIsWrongUsage() {
    assertUsage(
        run(BUILD, "--part", "no-such-part"),
        "--part must be the id of a part in the catalogue, but is \"no-such-part\".");
    assertUsage(
        run(BUILD, "--part", "newteye-41"),
        "--part must be the id of a part in the catalogue, but is \"newteye-41\". Maybe newteye-14 was meant.");
    assertUsage(
        run(BUILD, "--part", "hawthorn-m2x4"),
        "--part must be a part that is chosen, but hawthorn-m2x4 is small hardware, which follows from the others.");
    assertUsage(
        run(BUILD, "--format", "csv"), "--format must be one of text, json here, but is csv.");
    assertUsage(
        run(BUILD, "--format", "markdown"),
        "--format must be one of text, json here, but is markdown.");
    assertUsage(
        run(BUILD, "--part", "x\u001B[2Jy"),
        "--part must be the id of a part in the catalogue, but is \"x\\u001b[2Jy\".");
  }

  private static void assertUsage(CommandRun run, String line) {
    assertThat(run.exitCode()).isEqualTo(ExitCode.USAGE);
    assertThat(run.out()).isEmpty();
    assertThat(run.errors())
        .containsExactly(line.replaceAll("\\.$", "") + "; pappus explain --help says more.");
  }

  @Test
  void aWrongBuildIsBadData() {
    var run = run("no-such-part");

    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_DATA);
    assertThat(run.errors())
        .containsExactly(
            "BUILD: Each part must be the id of a part in the catalogue, but is \"no-such-part\".");
  }

  @Test
  void namesDoNoHarm() throws IOException {
    HostileNames.write(folder);
    assertThat(run(BUILD).exitCode()).isEqualTo(ExitCode.OK);
    assertThat(run(BUILD, "--format", "json").json().path("status").asString())
        .isEqualTo("feasible");

    HostileNames.rename(folder, "batteries.json", HostileNames.TABLE, "a\\u001b[2J\\u202eb");
    for (var refused : List.of(run(BUILD), run(BUILD, "--part", "tidewell-2s-3400"))) {
      assertThat(refused.exitCode()).isEqualTo(ExitCode.BAD_DATA);
      assertThat(refused.out() + refused.err()).doesNotContain("\u001B", "\u202E");
    }
  }

  @Test
  void theSameInputGivesTheSameBytes() {
    for (var format : List.of("text", "json")) {
      assertThat(run(BUILD, "--format", format))
          .as(format)
          .isEqualTo(run(BUILD, "--format", format));
      assertThat(run(BUILD, "--part", "newteye-14", "--format", format))
          .as(format)
          .isEqualTo(run(BUILD, "--part", "newteye-14", "--format", format));
    }
  }
}
