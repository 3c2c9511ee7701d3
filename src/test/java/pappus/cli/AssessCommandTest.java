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

class AssessCommandTest {
  private static final String BUILD = String.join(",", SmallShop.ONE_BUILD);

  @TempDir
  private Path folder;

  @BeforeEach
  void writeFewParts() throws IOException {
    CommandRun.write(folder, SmallShop.few(), "");
  }

  @Test
  void aBuildThatFitsIsAYesWithItsNumbers() {
    var run = assess(BUILD.replace("spikerush-1303-3400", "spikerush-1303-3400*4"));

    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .contains("\nEverything fits, and every limit is kept.\n")
        .contains(" min in hover, plan on ", "\nframe: Cottongrass 4 [cottongrass-4]\n")
        .contains("4 × motor, Spikerush 1303-3400", "kept    mass-cap: ");
  }

  @Test
  void theDocumentGoesIntoAFolderThatIsNamed() throws IOException {
    var run = assess(
        BUILD,
        "--format",
        "json",
        "--out",
        CommandRun.typed(folder).resolve("o").toString());

    assertThat(Files.readString(folder.resolve("o/assessment.json"))).isEqualTo(run.out());
    assertThat(folder.resolve("o/manifest.json")).exists();
  }

  @Test
  void aBuildThatClashesIsANoThatSaysWhy() {
    var run = assess(BUILD.replace("ligule-4x1.9x2", "awn-4.5x2.5x2"));

    assertThat(run.exitCode()).isEqualTo(ExitCode.NO);
    assertThat(run.out())
        .contains("\nNot feasible:\n")
        .contains("\n- Clash (propeller-clearance): ");
  }

  @Test
  void aBuildOnlyBegunSaysWhatIsMissing() {
    var run = assess("cottongrass-4,spikerush-1303-3400");

    assertThat(run.exitCode()).isEqualTo(ExitCode.NO);
    assertThat(run.out())
        .contains("- Clash (roles): There is no propeller, ")
        .contains("- No flight can be computed: there is no propeller");
  }

  @Test
  void theDocumentHasTheSameAnswer() {
    var yes = assess(BUILD, "--format", "json");
    var no = assess(BUILD.replace("ligule-4x1.9x2", "awn-4.5x2.5x2"), "--format=json");

    assertThat(yes.json().path("status").asString()).isEqualTo("feasible");
    assertThat(yes.json().path("build").path("band").path("lowSeconds").asDouble())
        .isPositive();
    assertThat(yes.json().path("build").path("roles").path("frame").asString())
        .isEqualTo("cottongrass-4");
    assertThat(no.exitCode()).isEqualTo(ExitCode.NO);
    assertThat(no.json().path("status").asString()).isEqualTo("infeasible");
    assertThat(no.json().path("build").path("findings"))
        .anyMatch(finding -> finding.path("rule").asString().equals("propeller-clearance")
            && finding.path("verdict").asString().equals("clashes")
            && finding.path("breaks").asBoolean());
  }

  @Test
  void whatCannotBeReadIsOneLine() {
    assertRefused(
        "no-such-part",
        "BUILD: Each part must be the id of a part in the catalogue, but is \"no-such-part\".");
    assertRefused(
        "hawthorn-m2x4,cottongrass-4",
        "BUILD: hawthorn-m2x4 is small hardware, which follows from the other parts: leave it out.");
    assertRefused(BUILD + "*3", "BUILD: 1 of the capacitor fly, but 3 are named.");
    assertRefused(
        BUILD + "*x",
        "BUILD: A count must be a whole number from 1 to 99, but \"dewpond-220-16*x\" has \"x\".");
    assertRefused(
        "cottongrass-4,thistledown-5",
        "BUILD: cottongrass-4 and thistledown-5 both fill the role of frame; name one.");
    assertRefused(
        "x\u001B[2Jy\n",
        "BUILD: Each part must be the id of a part in the catalogue, but is \"x\\u001b[2Jy\".");
    assertRefused("result.json#0", "BUILD: must end in # and a rank or a pick, but ends in #0.");
  }

  @Test
  void aResultThatIsNoneIsOneLine() throws IOException {
    var typed = CommandRun.typed(folder);
    Files.writeString(folder.resolve("other.json"), "not JSON");
    Files.writeString(folder.resolve("empty.json"), "{\"candidates\": [{}]}");

    var other = typed.resolve("other.json");
    assertRefused(
        other + "#1", "BUILD: " + other + " must be a result of this tool, but is not JSON.");
    var empty = typed.resolve("empty.json");
    assertRefused(empty + "#1", empty + ":1: candidates[0].roles is missing.");
    var one = typed.resolve("one.json");
    Files.writeString(
        folder.resolve("one.json"),
        "{\"candidates\": [{\"roles\": {\"frame\": \"cottongrass-4\"}}]}");
    assertRefused(one + "#2", "BUILD: " + one + " must hold a candidate 2, but has 1.");
    var missing = assess(typed.resolve("nowhere.json") + "#1");
    assertThat(missing.exitCode()).isEqualTo(ExitCode.NO_INPUT);
    assertThat(missing.errors()).hasSize(1);
  }

  @Test
  void wrongDataIsNamedByFileAndLine() throws IOException {
    var typed = CommandRun.typed(folder);
    var frames = folder.resolve("parts/frames.json");
    Files.writeString(frames, Files.readString(frames).replace("\"grams\": 41", "\"grams\": -3"));
    Files.writeString(
        folder.resolve("marsh.json"),
        SmallShop.scenarioText("")
            .replace("\"leastThrustToWeight\": 2", "\"leastThrustToWeight\": 0"));

    var run = assess(BUILD);

    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_DATA);
    assertThat(run.out()).isEmpty();
    assertThat(run.errors())
        .hasSize(2)
        .anyMatch(line -> line.startsWith(typed.resolve("marsh.json") + ":5: "))
        .anyMatch(line -> line.startsWith(typed.resolve("parts/frames.json") + ":10: frames[0]"));
  }

  @Test
  void wrongDataIsADocumentToo() throws IOException {
    Files.writeString(folder.resolve("marsh.json"), "{");

    var run = assess(BUILD, "--format", "json");

    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_DATA);
    assertThat(run.json().path("status").asString()).isEqualTo("bad-data");
    assertThat(run.json().path("problems"))
        .extracting(problem -> problem.asString())
        .containsExactlyElementsOf(run.errors());
  }

  @Test
  void controlCharactersInNamesDoNotReachTheTerminal() throws IOException {
    var frames = folder.resolve("parts/frames.json");
    Files.writeString(
        frames,
        Files.readString(frames).replace("\"Cottongrass 4\"", "\"Cotton\\u001b[2J\\u202egrass\""));

    var run = assess(BUILD);

    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_DATA);
    assertThat(run.out() + run.err()).doesNotContain("\u001B", "\u202E");
    assertThat(run.err()).contains("\\u001b[2J\\u202e");
  }

  @Test
  void aMissingFileIsMissingInput() throws IOException {
    Files.delete(folder.resolve("marsh.json"));

    var run = assess(BUILD);

    assertThat(run.exitCode()).isEqualTo(ExitCode.NO_INPUT);
    assertThat(run.errors()).hasSize(1);
    assertThat(run.err()).contains("marsh.json");
  }

  @Test
  void aBudgetInAnotherCurrencyIsRefused() throws IOException {
    Files.writeString(
        folder.resolve("marsh.json"),
        SmallShop.scenarioText(", \"budget\": {\"amount\": 20, \"currency\": \"CHF\"}"));

    var run = assess(BUILD);

    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_DATA);
    assertThat(run.errors())
        .containsExactly(CommandRun.typed(folder).resolve("marsh.json")
            + ":7: budget.currency must be that of the catalogue, EUR, but is CHF.");
  }

  @Test
  void theShippedCatalogueIsThereUnlessItIsNotWanted() {
    var build =
        "cottongrass-4,spikerush-1303-3400*4,ligule-4x1.9x2*4,tidewell-2s-3500,culvert-6-whole,newteye-14-feather,stipule-wire,chirp,dewpond-220-16";

    var run = CommandRun.of("assess", "scenarios/bird-survey.json", build);
    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(run.out())
        .startsWith("bird-survey\n")
        .contains("Everything fits, and every limit is kept.");

    var without =
        CommandRun.of("assess", "scenarios/bird-survey.json", "chirp", "--no-shipped-catalog");
    assertThat(without.exitCode()).isEqualTo(ExitCode.BAD_DATA);
    assertThat(without.errors()).allMatch(line -> line.startsWith("scenarios/bird-survey.json:"));
  }

  private void assertRefused(String build, String line) {
    var run = assess(build);
    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_DATA);
    assertThat(run.out()).isEmpty();
    assertThat(run.errors()).containsExactly(line);
  }

  private CommandRun assess(String build, String... more) {
    var typed = CommandRun.typed(folder);
    var args = new ArrayList<>(List.of(
        "assess",
        typed.resolve("marsh.json").toString(),
        build,
        "--no-shipped-catalog",
        "--catalog",
        typed.resolve("parts").toString()));
    args.addAll(List.of(more));
    return CommandRun.of(args);
  }
}
