package pappus.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pappus.shop.SmallShop;

/** Pages of answers that are no ranking, in a real browser. */
@Tag("slow")
final class FiguresInBrowserTest {
  private static final String BUILD =
      "cottongrass-4,spikerush-1303-3400*4,ligule-4x1.9x2*4,tidewell-2s-3500,culvert-6-whole,newteye-14-feather,stipule-wire,dewpond-220-16";

  @TempDir
  private static Path folder;

  @BeforeAll
  static void writesAFewParts() throws IOException {
    var ids = new ArrayList<>(SmallShop.ONE_BUILD);
    ids.addAll(SmallShop.MORE);
    CommandRun.write(folder, SmallShop.catalog(ids), "");
  }

  /** A result that two tests only read, with a budget that some of its builds exceed with what a shop adds. */
  @BeforeAll
  static void recommendsOfTheShippedParts() throws IOException {
    var scenario = folder.resolve("bird-survey.json");
    Files.writeString(
        scenario,
        Files.readString(Path.of("scenarios/bird-survey.json"))
            .replace("\"amount\": 330.00", "\"amount\": 350.00"));
    var run = CommandRun.of(
        "recommend", scenario.toString(), "--count", "8", "--quiet", "--out", folder.toString());
    assertThat(run.exitCode()).isZero();
  }

  private static void look(String page, String title, int charts) throws IOException {
    var file = folder.resolve(page + ".html");
    assertThat(Files.size(file)).isLessThan(1_000_000);
    try (var browser = Browser.on(file)) {
      assertThat(browser.complaints()).isEmpty();
      assertThat(browser.fetched()).isEqualTo(List.of());
      assertThat(browser.texts("h1")).containsExactly(title);
      assertThat(browser.all(".plot > svg")).hasSize(charts);
      browser.isAccessible();
      browser.picture(page);
      assertThat(browser.sheets(page)).isBetween(1, 7);
    }
  }

  @Test
  void variesInPictures() throws IOException {
    var run = CommandRun.onParts(
        folder,
        "vary",
        List.of(
            "--over",
            "mass-cap=170:250:10",
            "--over",
            "cells=2,3",
            "--report",
            "--out",
            folder.toString()));

    assertThat(run.exitCode()).isZero();
    look("variation", "marsh", 2);
  }

  @Test
  void weighsInAPicture() throws IOException {
    Files.writeString(folder.resolve("masses.csv"), "what,grams\ndry,98\nready,204\n");
    Files.writeString(
        folder.resolve("flights.csv"), "style,minutes,charged_mah\nhover,20,1500\nhover,30,2300\n");

    var run = CommandRun.onParts(
        folder,
        "weigh",
        List.of(
            BUILD,
            "--masses",
            folder.resolve("masses.csv").toString(),
            "--flights",
            folder.resolve("flights.csv").toString(),
            "--report",
            "--out",
            folder.toString()));

    assertThat(run.err()).isEmpty();
    look("weighed", "marsh", 1);
  }

  /** Shop and stock as they are shipped, a part out of stock among them; the last build is within the budget. */
  @Test
  void offersThreeBuildsOnTwoSheets() throws IOException {
    Browser.assumeThere();
    var builds = List.of("#1", "#2", "#8").stream()
        .map(rank -> folder.resolve("result.json") + rank)
        .toList();
    var args = new ArrayList<>(List.of("offer"));
    args.addAll(builds);
    args.addAll(List.of(
        "--settings",
        "src/main/shop/shop.json",
        "--stock",
        "src/main/shop/stock.csv",
        "--date",
        "2026-05-31",
        "--pdf",
        "--out",
        folder.toString()));

    assertThat(CommandRun.of(args).err().lines())
        .as("lines for the shop alone")
        .allMatch(
            line -> line.matches("[ABC] costs EUR .*, above the scenario's budget of EUR 350\\."))
        .hasSize(3);

    look("offer", "Offer", 0);
    assertThat(sheets(Files.readAllBytes(folder.resolve("offer.pdf")))).isBetween(1, 2);
    var first = Files.readAllBytes(folder.resolve("offer.pdf"));
    assertThat(CommandRun.of(args).exitCode()).isZero();
    assertThat(folder.resolve("offer.pdf")).hasBinaryContent(first);
  }

  private static int sheets(byte[] pdf) {
    return new String(pdf, StandardCharsets.ISO_8859_1).split("/Type\\s*/Page\\b", -1).length - 1;
  }

  /** Names that try to be more than names stay names, in the page and in what is pasted elsewhere. */
  @Test
  void namesAreOnlyNames() throws IOException {
    var hostile = Files.createDirectory(folder.resolve("hostile"));
    var ids = new ArrayList<>(SmallShop.ONE_BUILD);
    ids.addAll(SmallShop.MORE);
    CommandRun.write(hostile, SmallShop.catalog(ids), "");
    HostileNames.write(hostile);
    HostileNames.rename(
        hostile, "frames.json", "Thistledown 5", "</script><script>alert(2)</script>");

    var typed = CommandRun.typed(hostile);
    assertThat(CommandRun.recommend(typed, "--report").exitCode()).isZero();

    var page = hostile.resolve("out/report.html");
    assertThat(Files.readString(page).toLowerCase(Locale.ROOT).split("<script", -1))
        .hasSize(3);
    try (var browser = Browser.on(page)) {
      assertThat(browser.complaints()).isEmpty();
      browser.all("table.ranked .pin").get(1).click();
      assertThat(browser.one("#beside").getText()).contains("<script>alert(");
      assertThat(browser.complaints()).isEmpty();
    }
    var csv = CommandRun.recommend(typed, "--format", "csv").out();
    assertThat(csv.lines()).noneMatch(line -> line.contains(",=") || line.contains(",\"="));
    var markdown = CommandRun.recommend(typed, "--format", "markdown").out();
    assertThat(markdown).doesNotContain("<script", "[x](").contains("&#60;script&#62;");
  }

  @Test
  void putsABuildOnTheBench() throws IOException {
    var run =
        CommandRun.of("sheet", folder.resolve("result.json") + "#1", "--out", folder.toString());

    assertThat(run.err()).isEmpty();
    look("sheet", "bird-survey: bench sheet", 0);
  }

  @Test
  void calibratesInPictures() throws IOException {
    var rows = "src/test/resources/pappus/calibration/motor_propeller_bench.csv";

    var run = CommandRun.of(
        "calibrate", rows, "--against", rows, "--report", "--out", folder.toString(), "--quiet");

    assertThat(run.exitCode()).isZero();
    look("calibration", "Thrust-stand rows and what the coefficients make of them", 4);
  }
}
