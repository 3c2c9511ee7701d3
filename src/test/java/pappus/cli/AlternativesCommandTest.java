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

class AlternativesCommandTest {
  private static final String BUILD = String.join(",", SmallShop.ONE_BUILD);

  @TempDir
  private Path folder;

  @BeforeEach
  void writeFewParts() throws IOException {
    CommandRun.write(folder, SmallShop.few(), "");
  }

  private CommandRun run(String build, String kind, String... more) {
    return CommandRun.onParts(folder, "alternatives", List.of(build, "--kind", kind), more);
  }

  @Test
  void aPartThatDropsInIsAYes() {
    var run = run(BUILD, "battery");

    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .startsWith("marsh: hover, 5 m above sea level; below 250 g; ")
        .contains(
            "\nIn place of Tidewell 2S 3500 [tidewell-2s-3500] as battery of Cottongrass 4,",
            ": 1 drop in.\n",
            "   tidewell-2s-3500, as it is\n",
            "\nDrop in: nothing else changes but where the pack sits\n",
            "   tidewell-2s-3400\n",
            "\nThe one other part for this role was tried in this quad;");
  }

  @Test
  void nothingThatFitsIsANoWithItsReasons() {
    var run = run(BUILD, "propeller");

    assertThat(run.exitCode()).isEqualTo(ExitCode.NO);
    assertThat(run.out())
        .contains(
            ": 2 do not fit.\n",
            "\nDo not fit, by reason\n",
            "\nfrond-4.5x3.2x3, awn-4.5x2.5x2: Propeller … is 4.5 inch, but frame cottongrass-4\n  takes 4 inch")
        .doesNotContain("Drop in");
    assertThat(run(BUILD, "gps").exitCode()).isEqualTo(ExitCode.NO);
  }

  @Test
  void theDocumentHasTheSameAnswer() {
    var yes = run(BUILD, "battery", "--format", "json").json();
    var no = run(BUILD, "propeller", "--format", "json");

    assertThat(yes.path("status").asString()).isEqualTo("found");
    assertThat(yes.path("standing").path("proven").asBoolean()).isTrue();
    assertThat(yes.path("role").asString()).isEqualTo("battery");
    assertThat(yes.path("alternatives")).hasSize(1);
    var pack = yes.path("alternatives").get(0);
    assertThat(pack.path("part").asString()).isEqualTo("tidewell-2s-3400");
    assertThat(pack.path("asks").asString()).isEqualTo("drop-in");
    assertThat(pack.path("inStock").asBoolean()).isTrue();
    assertThat(pack.path("centsToBuy").asLong()).isEqualTo(1240);
    assertThat(no.exitCode()).isEqualTo(ExitCode.NO);
    assertThat(no.json().path("status").asString()).isEqualTo("infeasible");
    assertThat(no.json().path("alternatives"))
        .allMatch(one -> one.path("asks").asString().equals("does-not-fit"));
  }

  @Test
  void theDocumentGoesIntoAFolderThatIsNamed() throws IOException {
    var out = CommandRun.typed(folder).resolve("o").toString();
    var run = run(BUILD, "battery", "--format", "json", "--out", out);

    assertThat(Files.readString(folder.resolve("o/alternatives-battery.json")))
        .isEqualTo(run.out());
  }

  @Test
  void aSpreadsheetHasOneLineForEachPart() {
    var lines = run(BUILD, "propeller", "--format", "csv").out().lines().toList();

    assertThat(lines).hasSize(3);
    assertThat(lines.get(0))
        .isEqualTo(
            "asks,part,id,plan_min,flight_min,beyond_belief,all_up_g,chance_under_cap_percent,thrust_over_weight,to_buy_eur,s_per_unit,what");
    assertThat(lines.get(1)).startsWith("does-not-fit,Frond 4.5×3.2×3,frond-4.5x3.2x3,");
    assertThat(lines.get(2)).startsWith("does-not-fit,Awn 4.5×2.5×2,awn-4.5x2.5x2,");
  }

  @Test
  void aPageHasTheSameTable() {
    var lines = run(BUILD, "battery", "--format", "markdown").out().lines().toList();

    assertThat(lines).hasSize(3);
    assertThat(lines.get(0))
        .isEqualTo(
            "| kind | part | id | plan on, min | expect, min |  | g | % under cap | T/W | EUR | s/EUR | changes with it |");
    assertThat(lines.get(1))
        .isEqualTo(
            "| --- | --- | --- | ---: | ---: | --- | ---: | ---: | ---: | ---: | ---: | --- |");
    assertThat(lines.get(2)).startsWith("| drop-in | Tidewell 2S 3400 | tidewell-2s-3400 | ");
  }

  @Test
  void whatCannotBeAskedIsWrongUsage() {
    var wrong = run(BUILD, "wing");
    assertThat(wrong.exitCode()).isEqualTo(ExitCode.USAGE);
    assertThat(wrong.out()).isEmpty();
    assertThat(wrong.err())
        .startsWith(
            "--kind must be one of frame, motor, propeller, battery, board, transmitter, camera, receiver, video-antenna, radio-antenna, gps, buzzer, payload-camera, capacitor, lead, but is \"wing\"; pappus alternatives --help says more.");
    assertThat(run(BUILD, "x\u001B[2Jy").err()).contains("\\u001b[2J").doesNotContain("\u001B");
    assertThat(CommandRun.of("alternatives", "marsh.json", BUILD).exitCode())
        .isEqualTo(ExitCode.USAGE);
  }

  @Test
  void aWrongIdIsBadData() {
    var run = run("no-such-part", "battery");

    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_DATA);
    assertThat(run.out()).isEmpty();
    assertThat(run.errors())
        .containsExactly(
            "BUILD: Each part must be the id of a part in the catalogue, but is \"no-such-part\".");
    var json = run("no-such-part", "battery", "--format", "json");
    assertThat(json.json().path("status").asString()).isEqualTo("bad-data");
  }

  @Test
  void aBuildWithoutThePartIsAnswered() {
    var run = run("cottongrass-4", "battery");

    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(run.out())
        .contains("\nIn place of nothing as battery of Cottongrass 4: ")
        .contains("\nAs it is, this quad breaks a rule (");
  }

  @Test
  void namesDoNoHarm() throws IOException {
    HostileNames.write(folder);

    var csv = run(BUILD, "battery", "--format", "csv").out();
    var page = run(BUILD, "battery", "--format", "markdown").out();
    assertThat(csv).contains("\ndrop-in,'" + HostileNames.FORMULA + ",tidewell-2s-3400,");
    assertThat(page)
        .contains("| =cmd\\|&#39; /C calc&#39;\\!A0 | tidewell-2s-3400 |")
        .doesNotContain("cmd|");
    assertThat(run(BUILD, "battery", "--format", "json").json().path("status").asString())
        .isEqualTo("found");
    assertThat(run(BUILD, "battery").exitCode()).isEqualTo(ExitCode.OK);

    HostileNames.rename(folder, "batteries.json", HostileNames.FORMULA, "a\\u001b[2J\\u202eb");
    var refused = run(BUILD, "battery");
    assertThat(refused.exitCode()).isEqualTo(ExitCode.BAD_DATA);
    assertThat(refused.out() + refused.err()).doesNotContain("\u001B", "\u202E");
  }

  @Test
  void theSameInputGivesTheSameBytes() {
    for (var format : List.of("text", "json", "csv", "markdown")) {
      assertThat(run(BUILD, "battery", "--format", format))
          .as(format)
          .isEqualTo(run(BUILD, "battery", "--format", format));
    }
  }
}
