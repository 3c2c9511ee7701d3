package pappus.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pappus.search.Enumeration;
import pappus.shop.SmallShop;
import pappus.whatif.sweep.Axes;

class VaryCommandTest {
  @TempDir
  private Path folder;

  @BeforeEach
  void writeFewParts() throws IOException {
    CommandRun.write(folder, SmallShop.few(), "");
  }

  private CommandRun run(String... more) {
    return CommandRun.onParts(folder, "vary", List.of(), more);
  }

  private void scenario(String fields) throws IOException {
    Files.writeString(folder.resolve("marsh.json"), SmallShop.scenarioText(fields));
  }

  /** The best build under a budget, by trying each. */
  private static String best(int euros) {
    var fields = ", \"budget\": {\"amount\": " + euros + ", \"currency\": \"EUR\"}";
    return Enumeration.best(SmallShop.question(SmallShop.few(), fields))
        .map(build -> build.build().toString())
        .orElse("");
  }

  @Test
  void helpNamesAllThatVaries() {
    var words = CommandRun.of("vary", "--help").out().replaceAll("\\s+", " ");

    assertThat(Axes.names())
        .allSatisfy(name -> assertThat(words).containsPattern("[ ]" + name + "(,| or)?"));
  }

  @Test
  void oneLimitIsATableOfItsSteps() {
    var run = run("--over", "mass-cap=190:202:4");

    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(run.err()).isEmpty();
    assertThat(run.out()).isEqualToNormalizingWhitespace("""
            marsh: hover, 5 m above sea level; below 250 g; T/W at least 2.0.
            Varied here: mass-cap. Flights in min.

            mass-cap g  plan on  expect    g  T/W  EUR    best build
            190                                           nothing is feasible; in the way: below 190 g
            194            31.0    38.5  188  2.2  188    Cottongrass 4, Spikerush 1303-3400, Ligule 4×1.9×2,
                                                          Tidewell 2S 3400
            198            32.0    39.5  191  2.3  190    Tidewell 2S 3500
            202            32.0    39.5  191  2.3  190    the same

            Proven at each step: no other build from this catalogue does better. 4 steps took 3 searches;
            the others follow from looser ones.

            ! Estimates: nothing here was measured. Lithium packs, propellers and radio power can hurt: assess
              prints the cautions for a build, and local rules come first.
            """);
  }

  @Test
  void aSpreadsheetHasTheBuildsOfTryingEach() {
    var run = run("--over", "budget=175:215:10", "--format", "csv");

    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    var lines = run.out().lines().toList();
    assertThat(lines).hasSize(6);
    for (var i = 0; i < 5; i++) {
      var build = best(175 + 10 * i);
      var line = lines.get(i + 1);
      assertThat(line).startsWith((175 + 10 * i) + ",");
      assertThat(line)
          .endsWith(
              build.isEmpty()
                  ? ",nothing is feasible; in the way: a budget of EUR " + (175 + 10 * i) + ",,,"
                  : ",\"" + build + "\"");
    }
    assertThat(lines.get(1))
        .isEqualTo("175,,,,,,,yes,nothing is feasible; in the way: a budget of EUR 175,,,");
    assertThat(lines.get(5)).contains("thistledown-5");
  }

  @Test
  void twoLimitsHaveARowForEachOfBoth() {
    var run = run("--over", "mass-cap=190,200", "--over", "budget=180,220", "--format", "markdown");

    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(run.out()).isEqualTo("""
            | mass-cap g | budget EUR | plan on, min | expect, min | g | T/W | EUR |  | best build |
            | --- | --- | ---: | ---: | ---: | ---: | ---: | --- | --- |
            | 190 | 180 |  |  |  |  |  |  | nothing is feasible; in the way&#58; below 190 g |
            | 190 | 220 |  |  |  |  |  |  | nothing is feasible; in the way&#58; below 190 g |
            | 200 | 180 | 31.0 | 38.0 | 188 | 2.2 | 179 |  | Cottongrass 4, Spikerush 1303-3400, Ligule 4×1.9×2, Tidewell 2S 3400 |
            | 200 | 220 | 32.0 | 39.5 | 191 | 2.3 | 190 |  | Tidewell 2S 3500, camera Newteye 14 Feather |
            """);
  }

  @Test
  void whatIsTradedIsAsked() {
    var run = run("--front");

    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .containsIgnoringWhitespaces(
            "\n8 builds that none beats in flight, mass and price at once, mass at 95 %\nconfidence.\nProven: none is missing down to 50 % of the longest flight.\n",
            "\nCheaper step by step, whatever the mass, min\n",
            "\nLighter step by step, whatever the price, min\n",
            "\n--all shows smaller steps, --format csv every build.\n");
    var csv = run("--front", "--format", "csv").out().lines().toList();
    assertThat(csv).hasSize(9);
    assertThat(csv.get(0))
        .isEqualTo(
            "plan_min,flight_min,all_up_g,thrust_over_weight,price_eur,beyond_belief,names,needed_g,flown_w,build");
    assertThat(csv.get(1)).endsWith(",\"" + best(1000) + "\"");
    assertThat(run("--front", "--format", "markdown").out().lines()).hasSize(10);
  }

  @Test
  void bothAreInOneAnswer() {
    var text = run("--over", "mass-cap=190,250", "--front").out();
    assertThat(text.indexOf("mass-cap g ")).isPositive();
    assertThat(text.indexOf("\n8 builds that none beats "))
        .isGreaterThan(text.indexOf("mass-cap g "));

    var json = run("--over", "mass-cap=190,250", "--front", "--format", "json").json();
    assertThat(json.path("status").asString()).isEqualTo("varied");
    assertThat(json.path("standing").path("proven").asBoolean()).isTrue();
    assertThat(json.path("steps"))
        .extracting(step -> step.path("best").path("build").asString(""))
        .containsExactly("", best(1000));
    assertThat(json.path("front")).hasSize(8);
  }

  @Test
  void theDocumentGoesIntoAFolderThatIsNamed() throws IOException {
    var out = CommandRun.typed(folder).resolve("o").toString();
    var run = run("--over", "mass-cap=190,250", "--format", "json", "--out", out);

    assertThat(Files.readString(folder.resolve("o/variation.json"))).isEqualTo(run.out());
  }

  @Test
  void nothingAnywhereIsANo() throws IOException {
    assertThat(run("--over", "budget=10,20").exitCode()).isEqualTo(ExitCode.NO);
    assertThat(run("--over", "budget=10,1000").exitCode()).isEqualTo(ExitCode.OK);

    scenario(", \"budget\": {\"amount\": 10, \"currency\": \"EUR\"}");
    var front = run("--front", "--format", "csv");
    assertThat(front.exitCode()).isEqualTo(ExitCode.NO);
    assertThat(front.out().lines()).hasSize(1);
    // The sweep has the last word on what it varies.
    assertThat(run("--over", "budget=10,1000", "--front").exitCode()).isEqualTo(ExitCode.OK);
  }

  @Test
  void aFrameThatIsFixedIsAdvisedOn() throws IOException {
    scenario(", \"parts\": {\"fixed\": [\"cottongrass-4\"]}");

    var run = run("--over", "frame.mass=30,40");

    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(run.out())
        .contains(
            "\nFrom 30 to 40 g, the best build flies 14 s shorter per g on average.\n",
            "\nCottongrass 4 as it is drawn, 41.0 g: with its best build, proven, plan on 32.0\nmin, expect 39.5.\n",
            "\nEach gram off it gives 13 s.\n",
            "\n4.0     103.6     104.6          6.4  fits\n",
            "\n4.5     116.3     117.3         -6.3  does not fit\n",
            "\nNo other hole pattern or bolt circle of this catalogue would add anything.\n");
  }

  @Test
  void littleEffortProvesLess() {
    var run = run("--over", "mass-cap=200", "--effort", "1", "--format", "json");

    assertThat(run.json().path("standing").path("proven").asBoolean()).isFalse();
    assertThat(run.json().path("standing").path("sweep").asString())
        .isEqualTo("Not proven at 1 of 1 steps: there may be something better.");
  }

  private static void assertUsage(CommandRun run, String line) {
    assertThat(run.exitCode()).isEqualTo(ExitCode.USAGE);
    assertThat(run.out()).isEmpty();
    assertThat(run.errors()).containsExactly(line + "; pappus vary --help says more.");
  }

  @Test
  void whatCannotBeAskedIsWrongUsageInOneLine() {
    assertUsage(run(), "--over or --front must be given");
    assertUsage(
        run("--over", "mass-cap=1,2", "--over", "budget=1", "--over", "cells=2"),
        "--over must be given at most twice, but is given 3 times");
    assertUsage(
        run("--over", "mass-cap=1,2", "--over", "mass-cap=3"),
        "--over must be over two things, but is twice over mass-cap");
    assertUsage(run("--front", "--effort", "0"), "--effort must be at least 1, but is 0");
    for (var format : List.of("csv", "markdown")) {
      assertUsage(
          run("--over", "mass-cap=1,2", "--front", "--format", format),
          "--front must be left out where --over is printed as a table");
    }
    assertUsage(
        run("--over", "mas-cap=1"),
        "--over must be over altitude, budget, cells, clear-view, least-kilometres, least-minutes, mass-cap, packs, payload, reach, temperature, thrust-to-weight, transmitter-power, a frame.PROPERTY or a where.ROLE.FIELD, but is over \"mas-cap\". Maybe mass-cap was meant");
    assertUsage(
        run("--over", "mass-cap=\u001B[2J\u202E"),
        "--over must have plain numbers, but has \"\\u001b[2J\\u202e\"");
    assertUsage(
        run("--over", "mass-cap=1:401:1"),
        "--over must have at most 400 steps, but \"1:401:1\" has more");
    assertUsage(
        run("--over", "mass-cap=1:21:1", "--over", "budget=1:20:1"),
        "--over must have at most 400 steps in all, but has 420");
    assertUsage(run("--over", "cells=9"), "--over cells must be from 1 to 8, but is \"9\"");
    assertUsage(
        run("--over", "frame.mass=30"),
        "--over must be over a limit where the scenario has no draftFrame and leaves 2 frames open");
  }

  @Test
  void namesDoNoHarm() throws IOException {
    HostileNames.write(folder);

    var csv = run("--over", "mass-cap=198", "--format", "csv");
    assertThat(csv.out())
        .contains(
            "\"<script>alert(1)</script>, Spikerush 1303-3400, Ligule 4×1.9×2, Tidewell | 2S\"");
    var page = run("--front", "--format", "markdown");
    assertThat(page.out())
        .contains(
            "| &#60;script&#62;alert\\(1\\)&#60;/script&#62;, Spikerush 1303-3400, Ligule 4×1.9×2, Tidewell \\| 2S |");
    assertThat(page.out()).doesNotContain("<script>");

    HostileNames.rename(folder, "batteries.json", HostileNames.TABLE, "a\\u001b[2J\\u202eb");
    var refused = run("--front");
    assertThat(refused.exitCode()).isEqualTo(ExitCode.BAD_DATA);
    assertThat(refused.out() + refused.err()).doesNotContain("\u001B", "\u202E");
  }

  @ParameterizedTest
  @ValueSource(strings = {"text", "json", "csv", "markdown"})
  void theSameInputGivesTheSameBytes(String format) {
    assertThat(run("--over", "mass-cap=190:202:4", "--format", format))
        .isEqualTo(run("--over", "mass-cap=190:202:4", "--format", format));
    assertThat(run("--front", "--format", format)).isEqualTo(run("--front", "--format", format));
  }
}
