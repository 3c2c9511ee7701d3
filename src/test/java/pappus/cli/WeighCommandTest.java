package pappus.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pappus.shop.SmallShop;

class WeighCommandTest {
  private static final String BUILD =
      String.join(",", SmallShop.ONE_BUILD).replace("3400,", "3400*4,").replace("x2,", "x2*4,");

  @TempDir
  private Path folder;

  private Path typed;

  @BeforeEach
  void writeParts() throws IOException {
    CommandRun.write(folder, SmallShop.few(), "");
    typed = CommandRun.typed(folder);
    write("m.csv", "what,grams,pieces\nspikerush-1303-3400,18.4,4\ndry,84,\nready,193,\n");
    write("f.csv", "style,minutes,charged_mah\nhover,10,800\n");
  }

  private void write(String name, String text) throws IOException {
    Files.writeString(folder.resolve(name), text);
  }

  private String path(String name) {
    return typed.resolve(name).toString();
  }

  private CommandRun run(String command, String... more) {
    return CommandRun.onParts(folder, command, List.of(BUILD), more);
  }

  private CommandRun weigh(String... more) {
    return run("weigh", more);
  }

  private CommandRun weighInto(String... more) {
    var args = new ArrayList<>(
        List.of("--masses", path("m.csv"), "--flights", path("f.csv"), "--into", path("mine")));
    args.addAll(List.of(more));
    return weigh(args.toArray(String[]::new));
  }

  private Map<String, String> texts() throws IOException {
    var texts = new TreeMap<String, String>();
    try (var files = Files.walk(folder)) {
      for (var file : files.filter(Files::isRegularFile).toList()) {
        texts.put(folder.relativize(file).toString(), Files.readString(file));
      }
    }
    return texts;
  }

  @Test
  void writesNothingUnlessToldWhere() throws IOException {
    var before = texts();
    var run = weigh("--masses", path("m.csv"), "--flights", path("f.csv"));

    assertThat(run.exitCode()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .containsIgnoringWhitespaces(
            "      17.6  0.4     18.4  0.2   0.8  motor, Spikerush 1303-3400                  within its doubt\n")
        .containsIgnoringWhitespaces(
            "     107.7  3.2    109.0  0.3   1.3  battery, Tidewell 2S 3500 (ready less dry)  within its doubt\n")
        .contains("- 10.0 min: the charger put back 800 mAh, the estimate says 740; ratio 1.11.\n")
        .containsIgnoringWhitespaces(
            "Nothing written: --into FOLDER keeps it, and --catalog FOLDER then counts with it.");
    assertThat(texts()).isEqualTo(before);
  }

  @Test
  void keepsMassesAndFlightsForAllCommands() throws IOException {
    write(
        "marsh.json",
        SmallShop.scenarioText("")
            .replace("\"hover\"}", "\"hover\", \"landingVoltsPerCell\": 2.8}"));
    var before = texts();
    var plain = run("assess", "--format", "json");
    var run = weighInto("--format", "json");

    assertThat(run.exitCode()).isZero();
    assertThat(run.json().path("written").valueStream().map(name -> name.asString()))
        .containsExactly(
            path("mine/batteries.json"), path("mine/flown.json"), path("mine/motors.json"));
    var after = texts();
    assertThat(after).containsAllEntriesOf(before);
    after.keySet().removeAll(before.keySet());
    assertThat(after.keySet())
        .containsExactly(
            "mine/batteries.json", "mine/flown.json", "mine/manifest.json", "mine/motors.json");
    var own = run("assess", "--catalog", path("mine"), "--format", "json");
    assertThat(own.exitCode()).isZero();
    // motors 0.8 g more, pack with leads 109 g in the place of 107.67 g
    assertThat(grams(plain)).isCloseTo(190.903885, within(1e-6));
    assertThat(grams(own)).isCloseTo(193.033885, within(1e-6));

    Files.delete(folder.resolve("mine/flown.json"));
    var massesAlone = run("assess", "--catalog", path("mine"), "--format", "json");
    assertThat(grams(massesAlone)).isEqualTo(grams(own));
    // 739 mAh in ten minutes become 800: all else equal a pack that is flown to its reserve lasts
    // so much shorter
    assertThat(milliseconds(own) / milliseconds(massesAlone)).isCloseTo(738.9 / 800, within(0.005));
  }

  private static double milliseconds(CommandRun run) {
    return run.json().path("build").path("milliseconds").asDouble();
  }

  private static double grams(CommandRun run) {
    return run.json().path("build").path("mass").path("grams").asDouble();
  }

  @Test
  void keepsWhatTheFolderHeld() throws IOException {
    assertThat(weighInto().exitCode()).isZero();
    write("m.csv", "what,grams\ncottongrass-4,42\n");
    write("f.csv", "style,minutes,charged_mah\nloiter,10,700\n");
    var motors = Files.readString(folder.resolve("mine/motors.json"));
    var run = weighInto("--format", "json");

    assertThat(run.exitCode()).isZero();
    assertThat(texts()).containsEntry("mine/motors.json", motors).containsKey("mine/frames.json");
    assertThat(Files.readString(folder.resolve("mine/flown.json")))
        .containsOnlyOnce("\"style\": \"hover\"")
        .containsOnlyOnce("\"style\": \"loiter\"");
  }

  @Test
  void replacesAnEditedFileByForceAlone() throws IOException {
    assertThat(weighInto().exitCode()).isZero();
    var edited = Files.readString(folder.resolve("mine/motors.json"))
        .replace("\"grams\": 4.6", "\"grams\": 4.5");
    write("mine/motors.json", edited);
    var before = texts();
    var run = weighInto();

    assertThat(run.exitCode()).isEqualTo(ExitCode.CANNOT_CREATE);
    assertThat(run.out()).isEmpty();
    assertThat(run.errors())
        .containsExactly(
            path("mine/motors.json")
                + ": must be as this tool wrote it, but was changed since. Maybe move it away, or replace it with --force.");
    assertThat(texts()).isEqualTo(before);

    assertThat(weighInto("--force").exitCode()).isZero();
    assertThat(Files.readString(folder.resolve("mine/motors.json"))).contains("\"grams\": 4.6");
  }

  @Test
  void needsMassesOrFlights() {
    var run = weigh();
    assertThat(run.exitCode()).isEqualTo(ExitCode.USAGE);
    assertThat(run.errors())
        .containsExactly("--masses or --flights must be given; pappus weigh --help says more.");
  }

  @Test
  void namesAllThatIsNotOfTheBuild() throws IOException {
    write("m.csv", "what,grams\nthistledown-5,40\nreadi,190\n");
    write(
        "f.csv",
        "style,minutes,charged_mah,pack\nhover,10,800,cottongrass-4\nprofile,10,700,\nhover,10,800,tidewell-2s-3600\n");
    var run = weighInto();

    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_DATA);
    assertThat(run.out()).isEmpty();
    assertThat(run.errors())
        .hasSize(5)
        .contains(
            path("m.csv")
                + ":3: what must be a part of the build, dry or ready, but is \"readi\". Maybe ready was meant.",
            path("f.csv")
                + ":3: style must be that of a scenario with legs, but is profile where the scenario has none.")
        .anyMatch(line -> line.startsWith(path("m.csv")
            + ":2: what must be a part of the build, dry or ready, but is \"thistledown-5\"."))
        .anyMatch(line -> line.startsWith(path("f.csv")
            + ":2: pack must be the id of a battery in the catalogue, but is \"cottongrass-4\"."))
        .anyMatch(
            line -> line.startsWith(
                path("f.csv")
                    + ":4: pack must be the id of a battery in the catalogue, but is \"tidewell-2s-3600\"."));
    assertThat(folder.resolve("mine")).doesNotExist();
  }

  @Test
  void saysOfAFileThatIsNotThere() {
    var run = weigh("--masses", path("none.csv"));
    assertThat(run.exitCode()).isEqualTo(ExitCode.NO_INPUT);
    assertThat(run.errors())
        .containsExactly(path("none.csv") + ": must be a file, but is missing.");
  }

  @Test
  void givesTheMassesToASpreadsheet() throws IOException {
    write("m.csv", "what,grams,pieces\nspikerush-1303-3400,18.4,4\n");
    var run = weigh("--masses", path("m.csv"), "--format", "csv");

    assertThat(run.exitCode()).isZero();
    assertThat(run.out().lines().toList().get(0))
        .isEqualTo("what,unit,estimate,estimate_doubt,measured,measured_doubt,says");
    assertThat(run.out().lines().toList().get(1))
        .startsWith("\"motor, Spikerush 1303-3400\",g,17.6,0.4,18.4,0.2020725942163690")
        .endsWith(",within its doubt");
  }

  @Test
  void refusesReadingsThatCannotBe() throws IOException {
    write("m.csv", "what,grams\ndry,193\nready,84\ndry,190\n");
    var run = weigh("--masses", path("m.csv"));

    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_DATA);
    assertThat(run.errors())
        .containsExactly(
            path("m.csv") + ":3: grams must be more than the dry aircraft's 193, but is 84.",
            path("m.csv") + ":4: what must be there once, but \"dry\" is in line 2 already.");
  }

  @Test
  void refusesMoreThanAPackHolds() throws IOException {
    write("f.csv", "style,minutes,charged_mah,landing_v\nhover,70,5200,9.9\n");
    var run = weigh("--flights", path("f.csv"));

    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_DATA);
    assertThat(run.errors())
        .containsExactly(
            path("f.csv")
                + ":2: charged_mah must be at most 3850, a tenth more than the label of tidewell-2s-3500, but is 5200.",
            path("f.csv")
                + ":2: landing_v must be at most the 8.4 V of tidewell-2s-3500 when full, but is 9.9.");
  }

  @Test
  void setsNothingBesideFlightsThatCannotFly() {
    var run = CommandRun.of(List.of(
        "weigh",
        path("marsh.json"),
        "tidewell-2s-3500",
        "--no-shipped-catalog",
        "--catalog",
        path("parts"),
        "--flights",
        path("f.csv")));

    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_DATA);
    assertThat(run.errors())
        .containsExactly(
            "BUILD: must fly to be set beside flights, but does not: there is no frame.");
  }

  @Test
  void namesTheLineOfAFlightThatNothingExplains() throws IOException {
    write("f.csv", "style,minutes,charged_mah\nhover,10,800\nhover,10,3000\n");
    var run = weigh("--flights", path("f.csv"));

    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_DATA);
    assertThat(run.errors())
        .singleElement()
        .asString()
        .startsWith(path("f.csv")
            + ":3: charged_mah must be what such a flight can take, but is 3000 where ");
  }

  @Test
  void saysWhereTheLogLandedOtherThanComputed() throws IOException {
    write("f.csv", "style,minutes,charged_mah,landing_v\nhover,10,800,6.5\n");
    var run = weigh("--flights", path("f.csv"));

    assertThat(run.out().replaceAll("\\s+", " "))
        .contains("1.12. Landed at 6.50 V; the estimate says 7.")
        .contains("the pack holds less or sags more than its record says;");
  }
}
