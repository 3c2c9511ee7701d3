package pappus.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pappus.shop.SmallShop;

/** What commands make of a shelf. */
@Tag("slow")
class ShelfCommandsTest {
  @TempDir
  private Path folder;

  @BeforeEach
  void writeParts() throws IOException {
    CommandRun.write(folder, SmallShop.few(), "");
  }

  private void shelf(String entries) throws IOException {
    Files.writeString(
        Files.createDirectories(folder.resolve("shelf")).resolve("shelf.json"),
        "{\"shelf\": [" + entries + "]}");
  }

  private CommandRun run(String command, String... more) {
    var typed = CommandRun.typed(folder);
    var args = new ArrayList<>(List.of(command, typed.resolve("marsh.json").toString()));
    args.addAll(List.of(more));
    args.addAll(List.of(
        "--no-shipped-catalog",
        "--catalog",
        typed.resolve("parts").toString(),
        "--format",
        "json",
        "--out",
        typed.resolve("out").toString()));
    if (Files.exists(folder.resolve("shelf"))) {
      args.addAll(List.of("--catalog", typed.resolve("shelf").toString()));
    }
    return CommandRun.of(args);
  }

  private static String part(CommandRun run, String role) {
    return run.json().path("candidates").get(0).path("roles").path(role).asString();
  }

  @Test
  void recommendsWhatCanBeBought() throws IOException {
    var first = part(run("recommend"), "battery");
    shelf("{\"id\": \"" + first + "\", \"stock\": 0}");
    var second = run("recommend");

    assertThat(second.exitCode()).isZero();
    assertThat(part(second, "battery")).isNotEqualTo(first).startsWith("tidewell-2s-");
    assertThat(second.out()).doesNotContain(first);
  }

  @Test
  void recommendsWhatIsAtHandThoughNoneCanBeBought() throws IOException {
    var first = part(run("recommend"), "battery");
    shelf("{\"id\": \"" + first + "\", \"stock\": 0, \"owned\": 1}");

    assertThat(part(run("recommend"), "battery")).isEqualTo(first);
  }

  @Test
  void saysOfAFixedPartThatItCannotBeBought() throws IOException {
    var motor = part(run("recommend"), "motor");
    CommandRun.write(folder, SmallShop.few(), ", \"parts\": {\"fixed\": [\"" + motor + "\"]}");
    shelf("{\"id\": \"" + motor + "\", \"stock\": 3}");
    var run = run("recommend");

    assertThat(run.exitCode()).isEqualTo(ExitCode.NO);
    var build = run("recommend").json();
    assertThat(build.path("status").asString()).isEqualTo("infeasible");
  }

  @Test
  void saysOfARoleWhereNothingCanBeBoughtWhatIsShort() throws IOException {
    shelf(
        "{\"id\": \"tidewell-2s-3500\", \"stock\": 0}, {\"id\": \"tidewell-2s-3400\", \"stock\": 0}");
    var run = run("recommend");

    assertThat(run.exitCode()).isEqualTo(ExitCode.NO);
    assertThat(run.out())
        .contains("tidewell-2s-3500 in the build is 1 piece, but must be at most 0 pieces");
  }

  @Test
  void namesTheLimitAnAssessedBuildBreaks() throws IOException {
    var found = run("recommend");
    var motor = part(found, "motor");
    var ids = new ArrayList<String>();
    found
        .json()
        .path("candidates")
        .get(0)
        .path("roles")
        .properties()
        .forEach(role -> ids.add(role.getValue().asString()
            + (role.getKey().equals("motor") || role.getKey().equals("propeller") ? "*4" : "")));
    shelf("{\"id\": \"" + motor + "\", \"stock\": 3}");
    var run = run("assess", String.join(",", ids));

    assertThat(run.exitCode()).isEqualTo(ExitCode.NO);
    assertThat(run.out())
        .contains("Broken: " + motor + " in the build is 4 pieces, but must be at most 3 pieces.");
  }

  @Test
  void takesOtherHardwareWhereSomeIsOut() throws IOException {
    var screws = motorScrews();
    shelf("{\"id\": \"" + screws + "\", \"stock\": 0}");

    assertThat(motorScrews()).isNotEqualTo(screws).isNotEmpty();
  }

  private String motorScrews() {
    var lines = run("recommend").json().path("candidates").get(0).path("cost").path("lines");
    return lines
        .valueStream()
        .filter(line -> line.path("what").asString().equals("motor screws"))
        .map(line -> line.path("part").asString())
        .findFirst()
        .orElse("");
  }

  @Test
  void saysWhatIsAtHand() throws IOException {
    shelf("{\"id\": \"culvert-6-whole\", \"owned\": 1}");
    var typed = CommandRun.typed(folder);
    var run = CommandRun.recommend(typed, "--catalog", typed.resolve("shelf").toString());

    assertThat(run.out()).contains("  At hand, at no cost: 1 of 1 culvert-6-whole.\n");
  }

  /** Records keep their own price: the shelf's is for one builder, or one shop. */
  @Test
  void staysOutOfRecordsThatAreWritten() throws IOException {
    var mine = Files.createDirectories(folder.resolve("mine"));
    Files.writeString(
        mine.resolve("shelf.json"),
        "{\"shelf\": [{\"id\": \"reed\", \"price\": {\"amount\": 1, \"currency\": \"EUR\"}}]}");
    var titles =
        "id,maker,name,price (EUR),sold unit,sold pieces,mass (g),mass known,width (mm),length (mm),source\n";
    var row = ",Ousel,Reed,2.50,each,1,3,measured,16,200,my scale\n";
    for (var id : List.of("reed", "rush")) {
      var csv = Files.writeString(folder.resolve("straps.csv"), titles + id + row);
      var run = CommandRun.of(
          "import",
          CommandRun.typed(csv).toString(),
          "--kind",
          "strap",
          "--into",
          CommandRun.typed(mine).toString());
      assertThat(run.exitCode()).isZero();
    }

    assertThat(mine.resolve("straps.json")).content().containsOnlyOnce("\"reed\"");
    assertThat(Files.readString(mine.resolve("straps.json")).split("\"amount\": 2.50", -1))
        .hasSize(3);
  }

  @Test
  void tellsTheFirstEntriesOfNoPart() throws IOException {
    shelf(
        "{\"id\": \"a1\", \"stock\": 3}, {\"id\": \"a2\", \"stock\": 3}, {\"id\": \"a3\", \"stock\": 3}, {\"id\": \"a4\", \"stock\": 3}, {\"id\": \"a5\", \"stock\": 3}");
    var run = run("recommend");

    assertThat(run.errors())
        .hasSize(4)
        .last()
        .isEqualTo("And 2 more on the shelf; check names them.");
    var check = CommandRun.of(
        "check",
        CommandRun.typed(folder).resolve("parts").toString(),
        CommandRun.typed(folder).resolve("shelf").toString(),
        "--no-shipped-catalog");
    assertThat(check.exitCode()).isZero();
    assertThat(check.out().lines().filter(line -> line.contains("is in no catalogue")))
        .hasSize(5);
    var file = CommandRun.of(
        "check",
        CommandRun.typed(folder).resolve("shelf/shelf.json").toString(),
        "--no-shipped-catalog");
    assertThat(file.out().lines()).hasSize(5);
  }

  @Test
  void holdsPricesToOneCurrency() throws IOException {
    shelf("{\"id\": \"tidewell-2s-3500\", \"price\": {\"amount\": 9, \"currency\": \"CHF\"}}");
    var run = run("recommend");

    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_DATA);
    assertThat(run.err())
        .contains("prices in the catalogue must be in one currency, but are in CHF, EUR.");
  }

  @Test
  void comesFromASpreadsheetToo() throws IOException {
    var csv = Files.writeString(
        folder.resolve("stock.csv"),
        "id,stock,price (EUR),owned\ntidewell-2s-3500,0,21.5,\nculvert-6-whole,,,1\n");
    var run = CommandRun.of(
        "import",
        CommandRun.typed(csv).toString(),
        "--kind",
        "shelf",
        "--into",
        CommandRun.typed(folder.resolve("shelf")).toString());

    assertThat(run.out()).endsWith("shelf.json: 2 added: tidewell-2s-3500, culvert-6-whole.\n");
    assertThat(part(run("recommend"), "battery")).isEqualTo("tidewell-2s-3400");
  }

  @Test
  void isDescribedAsAKindIs() {
    assertThat(CommandRun.of("describe", "shelf").out().lines())
        .contains(
            "owned (whole number, optional): Pieces at hand, which cost nothing, 0 to 10000; absent: none.");
    assertThat(CommandRun.of("describe", "shelf", "--columns").out())
        .isEqualTo("id,owned,stock,price (EUR),note\n");
  }
}
