package pappus.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pappus.shop.SmallShop;

class FitsCommandTest {
  @TempDir
  private Path folder;

  @BeforeEach
  void writeFewParts() throws IOException {
    CommandRun.write(folder, SmallShop.few(), "");
  }

  private CommandRun run(String... typed) {
    var args = new ArrayList<>(List.of("fits"));
    args.addAll(List.of(typed));
    args.addAll(List.of(
        "--no-shipped-catalog",
        "--catalog",
        CommandRun.typed(folder).resolve("parts").toString()));
    return CommandRun.of(args);
  }

  @Test
  void listsByKindWhatGoesWithAPart() {
    var run = run("cottongrass-4");

    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .containsIgnoringWhitespaces("""
            What goes with Cottongrass 4 [cottongrass-4], whatever the scenario:

            Motors: 2 with a note.
            note on cypsela-1404-2800, spikerush-1303-3400: Motor …: thread depth not known; turn the
              screws in by hand, none deeper than 2.5 mm.

            Propellers: 1 directly, 2 not.
            directly ligule-4x1.9x2
            not awn-4.5x2.5x2, frond-4.5x3.2x3: Propeller … is 4.5 inch, but frame cottongrass-4 takes 4
              inch.

            Batteries: 2 directly.
            directly tidewell-2s-3400, 2s-3500
            """)
        .containsIgnoringWhitespaces(
            "\nStraps: 8 directly, 2 not.\n",
            "\nnot bramble-20x220, bramble-20x250-grip: Strap … is 20 mm wide, but the slots of frame\n  cottongrass-4 take 16 mm.\n",
            "\nAdapters: 6 directly, 4 not.\n")
        .containsIgnoringWhitespaces("""

            Every part of the catalogue was checked by every fit rule that can judge these parts alone.

            ! Two parts that fit are not yet a quad: assess judges currents, ports, balance and mass of all of
              it. Check before you buy, and mind what lithium packs, propellers and radio power can do.
            """);
  }

  @Test
  void severalAreJudgedTogether() {
    var run = run("thistledown-5", "spikerush-1303-3400");

    assertThat(run.out())
        .containsIgnoringWhitespaces(
            "What goes with Thistledown 5 [thistledown-5] and Spikerush 1303-3400 [spikerush-1303-3400], whatever\nthe scenario:\nAmong themselves:\n- note on spikerush-1303-3400: Motor spikerush-1303-3400: thread depth not known; turn the\n  screws in by hand, none deeper than 2.5 mm.\n\nPropellers: 1 directly, 1 with an adapter, 1 with a note.\ndirectly ligule-4x1.9x2\nfrond-4.5x3.2x3: with Auricle rings (0.1 g, EUR 2.49). Propeller frond-4.5x3.2x3 goes on motor\n")
        .doesNotContain("\nMotors: ", "\nFrames: ")
        .containsIgnoringWhitespaces("\nScrews: ", "\nStraps: ");
  }

  @Test
  void aSpreadsheetHasALineForEachPart() {
    var lines = run("cottongrass-4", "--format", "csv").out().lines().toList();

    assertThat(lines.get(0)).isEqualTo("kind,name,id,fits,adapter,remarks");
    assertThat(lines)
        .contains(
            "propeller,Ligule 4×1.9×2,ligule-4x1.9x2,yes,,",
            "propeller,Awn 4.5×2.5×2,awn-4.5x2.5x2,no,,\"Propeller awn-4.5x2.5x2 is 4.5 inch, but frame cottongrass-4 takes 4 inch.\"",
            "motor,Spikerush 1303-3400,spikerush-1303-3400,with care,,\"Motor spikerush-1303-3400: thread depth not known; turn the screws in by hand, none deeper than 2.5 mm.\"");
    // 2 motors, 3 propellers, 2 batteries, a board, 2 cameras, 10 straps, 10 adapters.
    assertThat(lines).hasSize(31);
  }

  @Test
  void aPageHasTheSameTable() {
    var lines = run("cottongrass-4", "--format", "markdown").out().lines().toList();

    assertThat(lines.get(0)).isEqualTo("| kind | part | id | fits | with | remarks |");
    assertThat(lines.get(1)).isEqualTo("| --- | --- | --- | --- | --- | --- |");
    assertThat(lines)
        .contains("| propeller | Ligule 4×1.9×2 | ligule-4x1.9x2 | yes |  |  |")
        .hasSize(32);
  }

  @Test
  void theDocumentHasEachPartOnce() {
    var json = run("cottongrass-4", "--format", "json").json();

    assertThat(json.path("status").asString()).isEqualTo("matched");
    assertThat(json.path("with").get(0).asString()).isEqualTo("cottongrass-4");
    assertThat(json.path("kinds").path("propeller"))
        .extracting(row -> row.path("part").asString() + " " + row.path("fits").asString())
        .containsExactly("awn-4.5x2.5x2 not", "frond-4.5x3.2x3 not", "ligule-4x1.9x2 direct");
    assertThat(json.path("kinds").path("propeller").get(0).path("text").get(0).asString())
        .isEqualTo("Propeller awn-4.5x2.5x2 is 4.5 inch, but frame cottongrass-4 takes 4 inch.");
    assertThat(json.path("parts").path("ligule-4x1.9x2").path("diameterInches").asDouble())
        .isEqualTo(4);
    assertThat(json.path("parts").has("cottongrass-4")).isTrue();
    // The parts of 31 less one lines, and the frame itself.
    assertThat(json.path("parts")).hasSize(31);
  }

  @Test
  void aMatrixHasAColumnForEachPart() {
    var csv = run("--matrix", "cottongrass-4", "thistledown-5", "--format", "csv");

    assertThat(csv.exitCode()).isEqualTo(ExitCode.OK);
    var lines = csv.out().lines().toList();
    assertThat(lines.get(0)).isEqualTo("kind,name,id,cottongrass-4,thistledown-5");
    assertThat(lines)
        .contains(
            "propeller,Ligule 4×1.9×2,ligule-4x1.9x2,yes,yes",
            "propeller,Awn 4.5×2.5×2,awn-4.5x2.5x2,\"no: Propeller awn-4.5x2.5x2 is 4.5 inch, but frame cottongrass-4 takes 4 inch.\",yes",
            "strap,Bramble 16×200,bramble-16x200,yes,\"no: Strap bramble-16x200 is 16 mm wide, but the slots of frame thistledown-5 take 12 mm.\"")
        .hasSize(31);
    var page = run("--matrix", "cottongrass-4", "thistledown-5", "--format", "markdown");
    assertThat(page.out().lines().toList())
        .startsWith(
            "| kind | part | id | Cottongrass 4 | Thistledown 5 |",
            "| --- | --- | --- | --- | --- |")
        .contains("| propeller | Ligule 4×1.9×2 | ligule-4x1.9x2 | yes | yes |");
    // Kinds that only one of them has something to say of leave the other's cell empty.
    assertThat(run("--matrix", "cottongrass-4", "ligule-4x1.9x2", "--format", "csv")
            .out())
        .contains("\nbattery,Tidewell 2S 3400,tidewell-2s-3400,yes,")
        .contains("\nstrap,Bindweed 10×130,bindweed-10x130,yes,\n");
  }

  @Test
  void theDocumentOfAMatrixHasEachColumn() {
    var json =
        run("--matrix", "cottongrass-4", "thistledown-5", "--format", "json").json();

    assertThat(json.path("columns"))
        .extracting(column -> column.path("with").asString() + " "
            + column.path("kinds").path("propeller").get(0).path("fits").asString())
        .containsExactly("cottongrass-4 not", "thistledown-5 direct");
    assertThat(json.path("parts").has("thistledown-5")).isTrue();
  }

  @Test
  void theTextOfAMatrixIsATable() {
    var text = run("--matrix", "newteye-14", "stipule-wire").out();

    assertThat(text)
        .containsIgnoringWhitespaces(
            "\nframe    Cottongrass 4     cottongrass-4     yes\n",
            "\n    but camera newteye-14 is 14 mm.\n",
            "\n! Two parts that fit are not yet a quad: ");
  }

  @Test
  void everyWrongIdIsBadData() {
    var run = run("cottongras-4", "x\u001B[2J", "newteye-14");

    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_DATA);
    assertThat(run.out()).isEmpty();
    assertThat(run.errors())
        .containsExactly(
            "PART: must be the id of a part in the catalogue, but is \"cottongras-4\". Maybe cottongrass-4 was meant.",
            "PART: must be the id of a part in the catalogue, but is \"x\\u001b[2J\".");
  }

  @Test
  void withoutAPartItIsWrongUsage() {
    var run = run();

    assertThat(run.exitCode()).isEqualTo(ExitCode.USAGE);
    assertThat(run.errors())
        .containsExactly("Missing required parameter: 'PART'; pappus fits --help says more.");
  }

  @Test
  void namesDoNoHarm() throws IOException {
    HostileNames.write(folder);

    assertThat(run("newteye-14", "--format", "csv").out())
        .contains("\nframe,<script>alert(1)</script>,cottongrass-4,yes,,\n");
    assertThat(run("culvert-6-whole", "--format", "csv").out())
        .contains("\nbattery,'" + HostileNames.FORMULA + ",tidewell-2s-3400,yes,,\n");
    assertThat(run("newteye-14", "--format", "markdown").out())
        .contains("| &#60;script&#62;alert\\(1\\)&#60;/script&#62; | cottongrass-4 | yes |")
        .doesNotContain("<script>");
    // Names in the titles of a matrix too.
    assertThat(run("--matrix", "cottongrass-4", "tidewell-2s-3500", "--format", "markdown")
            .out())
        .startsWith(
            "| kind | part | id | &#60;script&#62;alert\\(1\\)&#60;/script&#62; | Tidewell \\| 2S |\n");

    HostileNames.rename(folder, "batteries.json", HostileNames.TABLE, "a\\u001b[2J\\u202eb");
    var refused = run("cottongrass-4");
    assertThat(refused.exitCode()).isEqualTo(ExitCode.BAD_DATA);
    assertThat(refused.out() + refused.err()).doesNotContain("\u001B", "\u202E");
  }

  @ParameterizedTest
  @ValueSource(strings = {"text", "json", "csv", "markdown"})
  void theSameInputGivesTheSameBytes(String format) {
    assertThat(run("cottongrass-4", "--format", format))
        .isEqualTo(run("cottongrass-4", "--format", format));
    assertThat(run("--matrix", "cottongrass-4", "newteye-14", "--format", format))
        .isEqualTo(run("--matrix", "cottongrass-4", "newteye-14", "--format", format));
  }
}
