package pappus.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pappus.assessment.Supply;
import pappus.catalog.Shelf;
import pappus.files.json.JsonText;
import pappus.part.Frame;
import pappus.search.Enumeration;
import pappus.search.Question;
import pappus.shop.SmallShop;

/** A frame of the designer's own, in a scenario. */
class DraftFrameTest {
  @TempDir
  private Path folder;

  @BeforeEach
  void writeFewParts() throws IOException {
    CommandRun.write(folder, SmallShop.few(), fields("draft", "Draft", 35, ""));
  }

  /** A catalogue frame under another id, name and mass. */
  private static String fields(String id, String name, int grams, String more) {
    var frame = (Frame) SmallShop.few().part("cottongrass-4").orElseThrow();
    var text = JsonText.of(frame)
        .replace("\"cottongrass-4\"", "\"" + id + "\"")
        .replace("\"Cottongrass 4\"", "\"" + name + "\"")
        .replaceFirst("\"grams\": *41(\\.0)?", "\"grams\": " + grams);
    return ", \"draftFrame\": " + text.strip() + more;
  }

  private CommandRun run(String command, String... more) {
    var out = CommandRun.typed(folder).resolve("out").toString();
    return CommandRun.onParts(folder, command, List.of(more), "--out", out);
  }

  /** The best build by trying each. */
  private static String best(String fields) {
    var scenario = SmallShop.scenario(fields);
    var supply = new Supply(SmallShop.few(), Shelf.EMPTY).drafting(scenario);
    return Enumeration.of(Question.of(supply.catalog(), supply.assessor(scenario)))
        .bestFirst()
        .get(0)
        .build()
        .toString();
  }

  @Test
  void isTheFrameOfEveryBuild() {
    var run = run("recommend", "--format", "json");

    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(run.err()).isEmpty();
    var candidates = run.json().path("candidates");
    assertThat(candidates).isNotEmpty();
    assertThat(candidates)
        .allMatch(candidate -> candidate.path("roles").path("frame").asString().equals("draft"));
    assertThat(candidates.get(0).path("build").asString())
        .isEqualTo(best(fields("draft", "Draft", 35, "")))
        .startsWith("draft,");
  }

  @Test
  void isRefusedUnderTheIdOfAnyPartOfTheCatalogue() throws IOException {
    for (var id : List.of("cottongrass-4", "tidewell-2s-3400")) {
      Files.writeString(
          folder.resolve("marsh.json"), SmallShop.scenarioText(fields(id, "Draft", 35, "")));

      var run = run("recommend");

      assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_DATA);
      assertThat(run.errors())
          .containsExactly(CommandRun.typed(folder).resolve("marsh.json")
              + ":8: draftFrame.id must be an id that no part of the catalogue has, but is the text \"%s\"."
                  .formatted(id));
    }
  }

  @Test
  void isRefusedWhereTheScenarioLeavesItOut() throws IOException {
    var fields = fields(
        "draft",
        "Draft",
        35,
        ", \"parts\": {\"fixed\": [\"thistledown-5\"], \"excluded\": [\"draft\"]}");
    var file = CommandRun.typed(folder).resolve("marsh.json");
    Files.writeString(file, SmallShop.scenarioText(fields));
    var lines = SmallShop.scenarioText(fields).lines().toList();
    var last = lines.size() - 1;

    assertThat(run("recommend").errors())
        .containsExactly(
            file
                + ":8: draftFrame.id must be a part that is not excluded, but draft is in parts.excluded.");

    var beside = fields.replace(", \"excluded\": [\"draft\"]", "");
    Files.writeString(file, SmallShop.scenarioText(beside));
    assertThat(run("recommend").errors())
        .containsExactly(
            file + ":" + last
                + ": parts.fixed[0] must be the only part fixed for the role frame, but thistledown-5 is so beside draft.");

    var allowed = fields(
        "draft",
        "Draft",
        35,
        ", \"parts\": {\"allowed\": [{\"role\": \"frame\", \"parts\": [\"thistledown-5\"]}]}");
    Files.writeString(file, SmallShop.scenarioText(allowed));
    assertThat(run("recommend").errors())
        .containsExactly(
            file
                + ":8: draftFrame.id must be allowed for the role frame, but draft is not in parts.allowed.");
  }

  @Test
  void mayBeFixedAndAllowedByItsId() throws IOException {
    var fields = fields(
        "draft",
        "Draft",
        35,
        ", \"parts\": {\"fixed\": [\"draft\"], \"allowed\": [{\"role\": \"frame\", \"parts\": [\"draft\"]}, {\"role\": \"battery\", \"parts\": [\"tidewell-2s-3400\"]}], \"excluded\": [\"newteye-14-feather\"]}");
    Files.writeString(folder.resolve("marsh.json"), SmallShop.scenarioText(fields));

    var build =
        run("recommend", "--format", "json").json().path("candidates").get(0).path("build");

    assertThat(build.asString())
        .startsWith("draft,")
        .contains(",tidewell-2s-3400,", ",newteye-14,")
        .isEqualTo(best(fields));
    var file = CommandRun.typed(folder).resolve("marsh.json").toString();
    var parts = CommandRun.typed(folder).resolve("parts").toString();
    assertThat(CommandRun.of("check", "--no-shipped-catalog", parts, file).out())
        .doesNotContain("marsh.json");
  }

  @Test
  void isAssessedByItsId() {
    var build = String.join(",", SmallShop.ONE_BUILD).replace("cottongrass-4", "draft");

    var run = run("assess", build, "--format", "json");

    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(run.json().path("build").path("roles").path("frame").asString()).isEqualTo("draft");
  }

  @Test
  void isVariedAndAdvisedOn() {
    var run = run("vary", "--over", "frame.mass=30,35,40", "--format", "json");

    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    var json = run.json();
    assertThat(json.path("frame").path("frame").path("id").asString()).isEqualTo("draft");
    for (var i = 0; i < 3; i++) {
      var step = json.path("steps").get(i).path("best").path("build").asString();
      assertThat(step).isEqualTo(best(fields("draft", "Draft", 30 + 5 * i, "")));
    }
    var seconds = new ArrayList<Double>();
    json.path("steps")
        .forEach(step -> seconds.add(step.path("best").path("milliseconds").asDouble() / 1000));
    // A lighter frame flies longer, by what the advice says of a gram.
    assertThat((seconds.get(0) - seconds.get(2)) / 10)
        .isCloseTo(json.path("frame").path("lostPerGram").asDouble(), within(0.2));
  }

  private static final String PLATES =
      "\"plates\": [{\"name\": \"bottom\", \"thicknessMillimetres\": 2, \"outline\": %s}]";

  private static final String BOX =
      "[{\"xMillimetres\": -45, \"yMillimetres\": -20}, {\"xMillimetres\": 45, \"yMillimetres\": -20}, {\"xMillimetres\": 45, \"yMillimetres\": 20}, {\"xMillimetres\": -45, \"yMillimetres\": 20}]";

  private static final String ARMS =
      "\"arms\": [{\"pair\": \"front\", \"lengthMillimetres\": 60, \"endMillimetres\": 16}, {\"pair\": \"%s\", \"lengthMillimetres\": 60, \"endMillimetres\": 16}]";

  /** That frame without a mass of its own, but with a drawing. */
  private static String drawn(String outline, String other) {
    var plain = fields("draft", "Draft", 35, "");
    var mass = plain.substring(plain.indexOf("\"mass\""), plain.indexOf("\"frontSpacing"));
    var bay = "\"drawing\": {" + PLATES.formatted(outline) + ", " + ARMS.formatted(other) + "}, ";
    return plain.replace(mass, "").replace("\"source\"", bay + "\"source\"");
  }

  private void write(String fields) throws IOException {
    Files.writeString(folder.resolve("marsh.json"), SmallShop.scenarioText(fields));
  }

  /** 3600 mm² by 2 mm: 11.16 g; four arms of 60 mm, 7.8 to 5.8 wide (6.8) and 2.5 mm thick with ends of 16 mm. */
  @Test
  void weighsWhatItsDrawingSays() throws IOException {
    write(drawn(BOX, "rear"));
    var frame = (Frame) SmallShop.few().part("cottongrass-4").orElseThrow();
    var width = Objects.requireNonNull(frame.armWidthMillimetres());
    var arm = 1.55e-3
        * frame.armThicknessMillimetres()
        * (60 * width.mean() + Math.PI * 64 - width.tip() * 8);
    var build = String.join(",", SmallShop.ONE_BUILD).replace("cottongrass-4", "draft");

    var run = run("assess", build, "--format", "json");

    assertThat(run.err()).isEmpty();
    var line = run.json().path("build").path("mass").path("lines").get(0);
    assertThat(line.path("what").asString()).isEqualTo("frame");
    assertThat(line.path("grams").asDouble()).isCloseTo(11.16 + 4 * arm, within(0.006));
    var arms = run.json().path("build").path("arms");
    assertThat(arms).hasSize(2);
    assertThat(arms.get(0).path("hertz").asDouble()).isBetween(30.0, 200.0);
    assertThat(run("assess", build).out()).contains("Arms bend first at ");
  }

  @Test
  void weighsMoreWithThickerArmsAndFliesLess() throws IOException {
    write(drawn(BOX, "rear"));

    var run = run("vary", "--over", "frame.arm-thickness=2:4:1", "--format", "json");

    assertThat(run.err()).isEmpty();
    var steps = run.json().path("steps");
    var grams = new ArrayList<Double>();
    var hertz = new ArrayList<Double>();
    steps.forEach(step -> {
      grams.add(step.path("best").path("grams").asDouble());
      hertz.add(step.path("armHertz").asDouble());
    });
    assertThat(grams).isSorted().doesNotHaveDuplicates();
    assertThat(hertz).isSorted().doesNotHaveDuplicates();
    assertThat(run("vary", "--over", "frame.arm-thickness=2:4:1").out())
        .contains("arms Hz")
        .contains("An arm's root at 4 mm stands ")
        .contains("no promise");
  }

  @Test
  void aMassThatIsSetStands() throws IOException {
    write(drawn(BOX, "rear"));
    var build = String.join(",", SmallShop.ONE_BUILD).replace("cottongrass-4", "draft");

    var run = run(
        "assess",
        build,
        "--set",
        "draftFrame.mass={\"grams\": 30, \"known\": \"measured\"}",
        "--format",
        "json");

    assertThat(run.json()
            .path("build")
            .path("mass")
            .path("lines")
            .get(0)
            .path("grams")
            .asDouble())
        .isEqualTo(30);
  }

  @Test
  void aDrawingThatIsNoneIsToldInALine() throws IOException {
    var file = CommandRun.typed(folder).resolve("marsh.json").toString();
    write(drawn("[{\"xMillimetres\": 0, \"yMillimetres\": 0}]", "rear"));
    assertThat(run("recommend").errors())
        .singleElement()
        .asString()
        .startsWith(file)
        .endsWith("draftFrame.drawing.plates[0].outline must list 3 to 500 corners, but lists 1.");

    write(drawn(BOX.replace(" 45, \"yMillimetres\": 20}", " 44, \"yMillimetres\": -21}"), "rear"));
    assertThat(run("recommend").errors())
        .singleElement()
        .asString()
        .endsWith(
            "draftFrame.drawing.plates[0].outline must not cross itself, but two of its sides meet.");

    write(drawn(BOX, "front"));
    assertThat(run("recommend").errors())
        .singleElement()
        .asString()
        .endsWith(
            "draftFrame.drawing.arms must list a front and a rear pair, or none, but lists the front pair twice.");

    // Without a plate nothing tells the mass.
    write(drawn(BOX, "rear").replace(PLATES.formatted(BOX), "\"plates\": []"));
    assertThat(run("recommend").errors())
        .singleElement()
        .asString()
        .endsWith("draftFrame.mass is missing.");
  }

  private static final String WAYS =
      "\"options\": [{\"id\": \"lite\", \"name\": \"lite top plate\", \"addedGrams\": -8, "
          + "\"price\": {\"amount\": 6, \"currency\": \"EUR\"}}], ";

  /** That frame with a lighter plate for money. */
  private static String withWays(String more) {
    return fields("draft", "Draft", 35, more).replace("\"source\"", WAYS + "\"source\"");
  }

  private static String frameOf(CommandRun run) {
    return run.json().path("candidates").get(0).path("roles").path("frame").asString();
  }

  @Test
  void isOrderedWithWhatMakesItFlyLongestOrAsFixed() throws IOException {
    write(withWays(""));
    var chosen = run("recommend", "--format", "json");

    assertThat(chosen.err()).isEmpty();
    assertThat(frameOf(chosen)).isEqualTo("draft.lite");
    assertThat(chosen.json().path("candidates").get(0).path("build").asString())
        .isEqualTo(best(withWays("")));
    // Both ways are one frame: the other is no row of its own.
    assertThat(chosen.json().path("candidates"))
        .extracting(candidate -> candidate.path("roles"))
        .extracting(
            roles -> roles.path("motor").asString() + roles.path("battery").asString())
        .doesNotHaveDuplicates();
    assertThat(chosen.json().path("scenario").path("draftFrame").path("options"))
        .hasSize(1);

    for (var id : List.of("draft", "draft.lite")) {
      write(withWays(", \"parts\": {\"fixed\": [\"" + id + "\"]}"));
      assertThat(frameOf(run("recommend", "--format", "json"))).isEqualTo(id);
    }
    write(withWays(", \"parts\": {\"excluded\": [\"draft.lite\"]}"));
    assertThat(frameOf(run("recommend", "--format", "json"))).isEqualTo("draft");
  }

  @Test
  void sheetAndOfferNameWhatItIsOrderedWith() throws IOException {
    write(withWays(""));
    var out = CommandRun.typed(folder).resolve("out");
    assertThat(run("recommend").exitCode()).isEqualTo(ExitCode.OK);
    Files.writeString(folder.resolve("shop.json"), OfferCommandTest.SETTINGS);

    var result = out.resolve("result.json") + "#1";
    var sheet = CommandRun.of("sheet", result, "--out", out.toString());
    var offer = CommandRun.of(
        "offer",
        result,
        "--settings",
        CommandRun.typed(folder).resolve("shop.json").toString(),
        "--date",
        "2026-06-01",
        "--out",
        out.toString());

    assertThat(sheet.err()).isEmpty();
    assertThat(offer.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(sheet.out()).contains("Draft with lite top plate");
    assertThat(offer.out())
        .containsPattern(
            "Order the frame, Draft with\\s+lite top plate, with [0-9]+ mm standoffs.");
  }

  @Test
  void aWayToOrderItThatIsRuledOutIsToldInALine() throws IOException {
    var file = CommandRun.typed(folder).resolve("marsh.json").toString();
    write(withWays(", \"parts\": {\"excluded\": [\"draft\", \"draft.lite\"]}"));
    assertThat(run("recommend").errors())
        .containsExactly(
            file
                + ":8: draftFrame.id must be a part that is not excluded, but draft is in parts.excluded.");

    write(withWays(", \"parts\": {\"fixed\": [\"draft\", \"draft.lite\"]}"));
    assertThat(run("recommend").errors())
        .singleElement()
        .asString()
        .contains("parts.fixed[1] must be the only part fixed for the role frame, but draft.lite");

    // What its drawing weighs leaves less than the option takes off.
    write(drawn(BOX, "rear").replace("\"source\"", WAYS.replace("-8", "-30") + "\"source\""));
    assertThat(run("recommend").errors())
        .singleElement()
        .asString()
        .startsWith(file + ":")
        .contains(": draftFrame.options must leave the frame a mass above 0 g");
  }

  @Test
  void isVariedInEveryWayToOrderIt() throws IOException {
    write(withWays(""));

    var run = run("vary", "--over", "frame.mass=30,40", "--format", "json");

    assertThat(run.err()).isEmpty();
    for (var i = 0; i < 2; i++) {
      var step = run.json().path("steps").get(i).path("best").path("build").asString();
      assertThat(step)
          .startsWith("draft.lite,")
          .isEqualTo(
              best(withWays("").replaceFirst("\"grams\": 35", "\"grams\": " + (30 + 10 * i))));
    }
  }

  @Test
  void withoutADraftNothingIsFixed() {
    var scenario = SmallShop.scenario("");

    assertThat(scenario.draftFrame()).isNull();
    assertThat(scenario.choice().fixedIds()).isEmpty();
    assertThat(new Supply(SmallShop.few(), Shelf.EMPTY)
            .drafting(scenario)
            .catalog()
            .parts())
        .containsExactlyElementsOf(SmallShop.few().parts());
  }

  @Test
  void aWrongDraftIsToldWithItsPlace() throws IOException {
    Files.writeString(
        folder.resolve("marsh.json"),
        SmallShop.scenarioText(fields("draft", "a\\u001b[2Jb", 35, "")));

    var run = run("recommend");

    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_DATA);
    assertThat(run.err()).contains("draftFrame").doesNotContain("\u001B");
  }
}
