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

/** The sheet of a result's build, from the command line to its files. */
class SheetCommandTest {
  @TempDir
  private Path folder;

  private Path typed;
  private Path result;

  @BeforeEach
  void recommend() throws IOException {
    CommandRun.write(folder, SmallShop.catalog(SmallShop.ONE_BUILD), "");
    recommendAgain();
  }

  private void recommendAgain() {
    typed = CommandRun.typed(folder);
    var run = CommandRun.recommend(typed, "--force");
    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    result = typed.resolve("out/result.json");
  }

  private CommandRun sheet(String rank, String... more) {
    var args = new ArrayList<>(
        List.of("sheet", result + rank, "--out", typed.resolve("out").toString()));
    args.addAll(List.of(more));
    return CommandRun.of(args);
  }

  private String file(String name) throws IOException {
    return Files.readString(folder.resolve("out").resolve(name));
  }

  @Test
  void writesPageTableAndDocumentBesideTheResult() throws IOException {
    var run = sheet("#1");

    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .contains("To buy", "First power-up, propellers off", "First-flight card")
        .contains("cottongrass-4");
    assertThat(file("sheet.html"))
        .startsWith("<!doctype html>")
        .contains("Content-Security-Policy", "First-flight card")
        .doesNotContain("<script")
        .hasSizeLessThan(1_000_000);
    assertThat(file("sheet.json")).contains("\"firstFlight\"");
    assertThat(file("weighing.csv"))
        .startsWith("what,grams,pieces,step_g,expected_g\ncottongrass-4,,1,,");
  }

  @Test
  void saysTheSameEveryTime() throws IOException {
    var first = sheet("#1");
    var page = file("sheet.html");

    assertThat(sheet("#1").out()).isEqualTo(first.out());
    assertThat(file("sheet.html")).isEqualTo(page);
  }

  @Test
  void isOneDocumentATableOrMarkdownToo() throws IOException {
    var json = sheet("#1", "--format", "json");

    assertThat(json.json().path("status").asString()).isEqualTo("found");
    assertThat(json.json().path("bench").path("weighing").path("rows").size()).isPositive();
    assertThat(json.out()).isEqualTo(file("sheet.json"));
    assertThat(sheet("#1", "--format", "csv").out()).isEqualTo(file("weighing.csv"));
    assertThat(sheet("#1", "--format", "markdown").out())
        .contains(
            "## On the scale: what each line may weigh, and what it does\n\n| what |",
            "1. Propellers off.");
  }

  @Test
  void asksForARankThatIsThere() {
    assertThat(sheet("").exitCode()).isEqualTo(ExitCode.BAD_DATA);
    assertThat(sheet("").err())
        .contains("RESULT.json#N: must end in # and a rank or a pick, but is ");
    assertThat(sheet("#0").err())
        .contains("RESULT.json#N: must end in # and a rank or a pick, but is ");
    assertThat(sheet("#7").err()).isEqualTo("RESULT.json#N: must name 1, longest, but names 7.\n");
  }

  @Test
  void tellsWhatHasChangedSince() throws IOException {
    Files.writeString(
        folder.resolve("marsh.json"),
        SmallShop.scenarioText("").replace("\"altitudeMetres\": 5", "\"altitudeMetres\": 900"));

    var run = sheet("#1");

    assertThat(run.err())
        .contains("marsh.json has changed since, or was not read: ")
        .containsPattern("It flies [0-9.]+ s, but was told to fly [0-9.]+ s\\.");
    assertThat(file("sheet.html")).contains("marsh.json has changed since", "but was told to fly ");
  }

  @Test
  void takesBackWhatWasWrittenIntoItsTable() throws IOException {
    sheet("#1");
    var blank = file("weighing.csv");
    var filled = folder.resolve("filled.csv");
    Files.writeString(filled, blank.replace("cottongrass-4,,1,,", "cottongrass-4,31.4,1,0.1,"));

    var weighed = weigh(filled);
    var unweighed = weigh(folder.resolve("out/weighing.csv"));

    assertThat(weighed.err()).isEmpty();
    assertThat(weighed.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(weighed.out()).contains("31.4");
    assertThat(unweighed.exitCode()).isEqualTo(ExitCode.BAD_DATA);
    assertThat(unweighed.err()).contains("grams must be filled in in at least one row, but ");
  }

  private CommandRun weigh(Path masses) {
    return CommandRun.onParts(
        folder,
        "weigh",
        List.of(result + "#1"),
        "--masses",
        CommandRun.typed(masses).toString());
  }

  @Test
  void doesNotReplaceATableThatWasFilledIn() throws IOException {
    sheet("#1");
    Files.writeString(folder.resolve("out/weighing.csv"), "what,grams\ndry,80\n");

    Files.delete(folder.resolve("out/sheet.html"));

    var run = sheet("#1");

    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(run.err()).contains("weighing.csv was filled in and is left as it is");
    assertThat(file("weighing.csv")).isEqualTo("what,grams\ndry,80\n");
    assertThat(folder.resolve("out/sheet.html")).exists();
    assertThat(sheet("#1").err()).as("again").contains("is left as it is");

    Files.writeString(folder.resolve("out/weighing.csv"), "what,grams\nother-frame,80\n");
    assertThat(sheet("#1").exitCode()).as("of another build").isEqualTo(ExitCode.CANNOT_CREATE);
    assertThat(file("weighing.csv")).contains("other-frame");

    assertThat(sheet("#1", "--force").err()).isEmpty();
    assertThat(file("weighing.csv")).startsWith("what,grams,pieces");
  }

  @Test
  void takesNamesForNothingButNames() throws IOException {
    HostileNames.rename(folder, "frames.json", "Cottongrass 4", HostileNames.SCRIPT);
    HostileNames.rename(folder, "batteries.json", "Tidewell 2S 3500", HostileNames.FORMULA);
    HostileNames.rename(folder, "cameras.json", "Newteye 14 Feather", HostileNames.LINK);
    recommendAgain();

    var text = sheet("#1");
    var markdown = sheet("#1", "--format", "markdown").out();

    assertThat(text.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(file("sheet.html")).doesNotContain("<script").contains("&lt;script&gt;alert(1)");
    assertThat(file("weighing.csv")).doesNotContain("=cmd");
    assertThat(markdown).doesNotContain("<script").doesNotContain(HostileNames.LINK);
  }
}
