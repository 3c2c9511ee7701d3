package pappus.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pappus.files.json.JsonText;
import pappus.shop.SmallShop;
import tools.jackson.databind.JsonNode;

/** A quad that is there, through the commands. */
class AircraftCommandsTest {
  private static final String QUAD =
      String.join(",", SmallShop.ONE_BUILD).replace("tidewell-2s-3500", "tidewell-2s-3400");

  @TempDir
  private Path folder;

  @BeforeEach
  void writeParts() throws IOException {
    SmallShop.write(folder.resolve("parts"), SmallShop.few());
  }

  private void ask(String build, String mayChange, String fields) throws IOException {
    Files.writeString(
        folder.resolve("marsh.json"),
        SmallShop.scenarioText(", \"aircraft\": {\"build\": \"%s\", \"mayChange\": [%s]}"
                .formatted(build, mayChange)
                .replace('\'', '"')
            + fields.replace('\'', '"')));
  }

  private CommandRun run(String command, String... more) {
    return CommandRun.onParts(folder, command, List.of(), more);
  }

  private static List<JsonNode> list(JsonNode node) {
    var list = new ArrayList<JsonNode>();
    node.forEach(list::add);
    return list;
  }

  private static String unwrapped(String text) {
    return text.replaceAll("\\n *(?=[^-!\\n ])", " ");
  }

  @Test
  void theAnswerBeginsWithTheQuadAsItIs() throws IOException {
    ask(QUAD, "'battery', 'propeller'", "");

    var run = run("recommend");

    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(unwrapped(run.out()))
        .startsWith(
            "The quad as it is: Cottongrass 4, Spikerush 1303-3400, Ligule 4×1.9×2, Tidewell 2S 3400.")
        .containsSubsequence(
            "What a change gains for its price, min",
            "EUR 0",
            "as it is",
            "Tidewell 2S 3500",
            "What a change gains for its mass, min",
            "Proven: no change gains more for as little money or mass.",
            "marsh: ",
            "Picks, ");
  }

  /** Of the parts that change only the new pack is paid: everything else is aboard. */
  @Test
  void onlyWhatChangesIsPaidAndTheRestStays() throws IOException {
    ask(QUAD, "'battery'", ", 'budget': {'amount': 40, 'currency': 'EUR'}");
    var pack = SmallShop.few().part("tidewell-2s-3500").orElseThrow().price().cents();

    var json = run("recommend", "--format", "json").json();

    var first = json.path("candidates").get(0);
    assertThat(first.at("/roles/battery").asString()).isEqualTo("tidewell-2s-3500");
    assertThat(first.at("/roles/motor").asString()).isEqualTo("spikerush-1303-3400");
    assertThat(first.at("/cost/cents").asLong()).isEqualTo(pack);
    var aircraft = json.path("aircraft");
    assertThat(aircraft.at("/asItIs/cents").asLong()).isZero();
    assertThat(aircraft.path("proven").asBoolean()).isTrue();
    var change = aircraft.path("byPrice").get(0);
    assertThat(change.path("changed").size()).isEqualTo(1);
    assertThat(change.at("/changed/0/after").asString()).isEqualTo("tidewell-2s-3500");
    assertThat(change.path("gained").asDouble())
        .isCloseTo(
            (first.path("milliseconds").asLong()
                    - aircraft.at("/asItIs/milliseconds").asLong())
                / 1000.0,
            within(0.01));
    assertThat(list(json.path("candidates")))
        .allSatisfy(
            row -> assertThat(row.at("/roles/propeller").asString()).isEqualTo("ligule-4x1.9x2"));
  }

  @Test
  void aRowOfAResultBesideTheScenarioIsTheQuad() throws IOException {
    CommandRun.write(folder, SmallShop.few(), "");
    run("recommend", "--out", CommandRun.typed(folder).resolve("out").toString());
    ask("out/result.json#1", "'propeller'", "");

    var run = run("recommend", "--format", "json");

    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    var json = run.json();
    // It is the best already, so that nothing gains anything.
    assertThat(json.at("/aircraft/byPrice").size()).isZero();
    assertThat(json.at("/aircraft/proven").asBoolean()).isTrue();
    assertThat(
            list(json.path("inputs")).stream().map(input -> input.path("name").asString()))
        .anyMatch(name -> name.endsWith("out/result.json"));
  }

  @Test
  void whatIsAboardAndNotWantedMayBeDropped() throws IOException {
    SmallShop.write(folder.resolve("parts"), SmallShop.all());
    ask(QUAD + ",chirp", "'buzzer'", "");
    var dropped = run("recommend", "--format", "json").json();
    ask(QUAD + ",chirp", "'buzzer'", ", 'wants': ['buzzer']");
    var kept = run("recommend", "--format", "json").json();
    ask(QUAD, "'buzzer'", ", 'wants': ['buzzer']");
    var added = run("recommend", "--format", "json").json();

    assertThat(dropped.at("/candidates/0/roles/buzzer").isMissingNode()).isTrue();
    assertThat(dropped.at("/candidates/0/cost/cents").asLong()).isPositive();
    assertThat(dropped.at("/aircraft/byMass/0/changed/0/role").asString()).isEqualTo("buzzer");
    assertThat(kept.at("/candidates/0/roles/buzzer").isMissingNode()).isFalse();
    assertThat(added.at("/candidates/0/roles/buzzer").isMissingNode()).isFalse();
    assertThat(added.at("/candidates/0/cost/cents").asLong()).isPositive();
  }

  /** The propeller aboard is too large for the frame; a new pack is none of that rule's business. */
  @Test
  void whatIsBrokenAboardIsARemarkUntilItIsTouched() throws IOException {
    var clashing = QUAD.replace("ligule-4x1.9x2", "awn-4.5x2.5x2");
    ask(clashing, "'battery'", "");
    var run = run("recommend");

    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(unwrapped(run.out()))
        .contains("- Set aside (propeller-clearance, it is so aboard already): ");

    ask(clashing, "'propeller'", "");
    var anew = run("recommend", "--format", "json").json();
    assertThat(list(anew.path("candidates")))
        .isNotEmpty()
        .allSatisfy(row -> assertThat(row.at("/roles/propeller").asString())
            .isIn("ligule-4x1.9x2", "awn-4.5x2.5x2"));
    ask(QUAD, "'propeller'", "");
    var whole = run("recommend", "--format", "json").json();
    assertThat(list(whole.path("candidates")))
        .allSatisfy(
            row -> assertThat(row.at("/roles/propeller").asString()).isEqualTo("ligule-4x1.9x2"));
  }

  @Test
  void weighedMassesAndFlownFactorsComeAlong() throws IOException {
    ask(QUAD, "'battery'", "");
    Files.writeString(folder.resolve("m.csv"), "what,grams,pieces\nspikerush-1303-3400,20.4,4\n");
    Files.writeString(folder.resolve("f.csv"), "style,minutes,charged_mah\nhover,10,900\n");
    var typed = CommandRun.typed(folder);
    var before = run("recommend", "--format", "json").json();
    var weighed = CommandRun.onParts(
        folder,
        "weigh",
        List.of(QUAD),
        "--masses",
        typed.resolve("m.csv").toString(),
        "--flights",
        typed.resolve("f.csv").toString(),
        "--into",
        typed.resolve("mine").toString());
    assertThat(weighed.exitCode()).isEqualTo(ExitCode.OK);

    var after = run("recommend", "--catalog", typed.resolve("mine").toString(), "--format", "json")
        .json();

    assertThat(after.at("/aircraft/asItIs/grams").asDouble()
            - before.at("/aircraft/asItIs/grams").asDouble())
        .isCloseTo(20.4 - 17.6, within(0.05));
    assertThat(after.at("/aircraft/asItIs/milliseconds").asLong())
        .isLessThan(before.at("/aircraft/asItIs/milliseconds").asLong() * 9 / 10);
    assertThat(after.at("/aircraft/asItIs/cents").asLong()).isZero();
  }

  @ParameterizedTest
  @ValueSource(strings = {"explain", "assess", "alternatives"})
  void whatFollowsARankingKnowsTheQuad(String command) throws IOException {
    ask(QUAD, "'battery'", ", 'budget': {'amount': 40, 'currency': 'EUR'}");
    var more = command.equals("alternatives") ? new String[] {"--kind", "battery"} : new String[0];

    var run = CommandRun.onParts(folder, command, List.of(QUAD), more);

    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
  }

  @Test
  void aSweepOverWhatMayNotChangeIsNoSweep() throws IOException {
    ask(QUAD, "'battery'", "");

    var run = run("vary", "--over", "where.motor.maker=Ollerwick");

    assertThat(run.exitCode()).isEqualTo(ExitCode.USAGE);
    assertThat(run.errors())
        .containsExactly(
            "--over must be over a role that may change, but motor may not; pappus vary --help says more.");
    assertThat(run("vary", "--over", "budget=10:40:30").exitCode()).isEqualTo(ExitCode.OK);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
      'battery'                       | 'parts': {'fixed': ['spikerush-1303-3400']} | parts.fixed[0] must be about a role that may change, but is about motor, which aircraft.mayChange does not name.
      'battery'                       | 'parts': {'excluded': ['awn-4.5x2.5x2']} | parts.excluded[0] must be about a role that may change, but is about propeller, which aircraft.mayChange does not name.
      'battery'                       | 'parts': {'allowed': [{'role': 'motor', 'parts': ['spikerush-1303-3400']}]} | parts.allowed[0].role must be about a role that may change, but is about motor, which aircraft.mayChange does not name.
      'battery'                       | 'where': {'propeller': {'diameterInches': {'atMost': 4}}} | where.propeller.diameterInches must be about a role that may change, but is about propeller, which aircraft.mayChange does not name.
      'battery'                       | 'wants': ['gps'] | wants[0] must be about a role that may change, but is about gps, which aircraft.mayChange does not name.
      'battery', 'rotor'              | 'candidates': 3 | aircraft.mayChange[1] must be frame, motor, propeller, battery, board, transmitter, camera, receiver, video-antenna, radio-antenna, gps, buzzer, payload-camera, capacitor or lead, but is the text "rotor".
      'battery', 'battery'            | 'candidates': 3 | aircraft.mayChange must name each role once, but names one twice.
      `` | 'candidates': 3 | aircraft.mayChange must list at least one, but is empty.
      """)
  void whatTouchesTheRestIsRefused(String mayChange, String fields, String said)
      throws IOException {
    ask(QUAD, mayChange, ", " + fields);

    var run = run("recommend");

    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_DATA);
    assertThat(run.err()).contains("marsh.json:7: " + said);
    var check = CommandRun.of(
        "check",
        "--no-shipped-catalog",
        CommandRun.typed(folder).resolve("parts").toString(),
        CommandRun.typed(folder).resolve("marsh.json").toString());
    assertThat(check.exitCode()).isEqualTo(ExitCode.BAD_DATA);
    assertThat(check.out() + check.err()).contains("marsh.json:7: " + said);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      cottongrass-4 | aircraft.build must name a motor, but names none.
      no-such-part | aircraft.build cannot be read: Each part must be the id of a part in the catalogue, but is "no-such-part".
      marsh.json#X | aircraft.build cannot be read: must end in # and a rank or a pick, but ends in #X.
      """)
  void aQuadThatCannotBeReadIsRefused(String build, String said) throws IOException {
    ask(build, "'battery'", "");

    var run = run("recommend");

    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_DATA);
    assertThat(run.err().replace(CommandRun.typed(folder).toString(), "FOLDER"))
        .contains("FOLDER/marsh.json:7: " + said);
  }

  @Test
  void aResultThatIsNotThereIsMissingInput() throws IOException {
    ask("nothing/result.json#1", "'battery'", "");

    var run = run("recommend");

    assertThat(run.exitCode()).isEqualTo(ExitCode.NO_INPUT);
    assertThat(run.err()).contains("nothing/result.json");
  }

  @Test
  void aDraftFrameNeedsAFrameThatMayChange() throws IOException {
    var frame = SmallShop.few().part("thistledown-5").orElseThrow();
    var draft = JsonText.of(frame)
        .replace("thistledown-5", "draft-5")
        .replace("\n", " ")
        .replace("'", "")
        .strip();
    ask(QUAD, "'battery'", ", 'draftFrame': " + draft);
    var refused = run("recommend");
    ask(QUAD, "'battery', 'frame', 'propeller'", ", 'draftFrame': " + draft);
    var taken = run("recommend", "--format", "json");

    assertThat(refused.exitCode()).isEqualTo(ExitCode.BAD_DATA);
    assertThat(refused.err())
        .contains("draftFrame.id must be about a role that may change, but is about frame");
    assertThat(taken.json().at("/candidates/0/roles/frame").asString()).isEqualTo("draft-5");
  }
}
