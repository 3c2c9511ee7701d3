package pappus.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pappus.order.SmallOrders;
import pappus.shop.SmallShop;

/** Pages of answers that are no ranking, in a real browser. */
@Tag("slow")
final class FiguresInBrowserTest {
  private static final String BUILD =
      "cottongrass-4,spikerush-1303-3400*4,ligule-4x1.9x2*4,tidewell-2s-3500,culvert-6-whole,newteye-14-feather,stipule-wire,dewpond-220-16";

  /** What tells pages of one scenario apart in a list of them. */
  private static final Map<String, String> NAMES = Map.of(
      "variation", "marsh: what varies",
      "weighed", "marsh: weighed and flown",
      "offer", "Offer 2026-014 for Mara Fenn, Windlass Row Kites and Quads");

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
    look(page, title, charts, 0);
  }

  /**
   * @param drawn sheets of paper that a drawing takes beside what is told
   */
  private static void look(String page, String title, int charts, int drawn) throws IOException {
    var file = folder.resolve(page + ".html");
    Browser.isLight(file);
    try (var browser = Browser.on(file)) {
      assertThat(browser.complaints()).isEmpty();
      assertThat(String.valueOf(browser.run("return document.title;")))
          .contains(NAMES.getOrDefault(page, title));
      // What a row is about is its heading, for who hears it read.
      assertThat(browser.all("tbody tr:not(:has(th[scope=row])):has(td:first-child:not(:empty))"))
          .isEmpty();
      assertThat(browser.fetched()).isEqualTo(List.of());
      assertThat(browser.texts("h1")).containsExactly(title);
      assertThat(browser.all(".plot > svg")).hasSize(charts);
      browser.isAccessible();
      browser.picture(page);
      assertThat(browser.sheets(page)).isBetween(1 + drawn, 7 + drawn);
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

  /** A drawn frame: minutes, how stiff its arms are beside what shakes them, and price, over the width of an arm. */
  @Test
  void drawsStiffnessBesideMinutesOverTheWidthOfAnArm() throws IOException {
    var out = Files.createDirectory(folder.resolve("arms"));
    var run = CommandRun.of(
        "vary",
        "scenarios/bird-survey.json",
        "--set",
        "parts.fixed=arrowgrass-4",
        "--over",
        "frame.arm-width=4:12:4",
        "--report",
        "--quiet",
        "--out",
        out.toString());

    assertThat(run.exitCode()).isZero();
    var page = out.resolve("variation.html");
    try (var browser = Browser.on(page)) {
      assertThat(browser.complaints()).isEmpty();
      assertThat(browser.texts("figcaption strong"))
          .containsExactly(
              "Flight of the best build against frame.arm-width",
              "First bending frequency of the arms against frame.arm-width",
              "Price of the best build against frame.arm-width");
      var stiffness = "[data-chart=stiffness] ";
      assertThat(browser.texts(stiffness + ".legend span"))
          .containsExactly("softest arms of the best build", "its rotors in hover");
      assertThat(browser.texts(stiffness + ".mark text")).containsExactly("soft below 60 Hz");
      assertThat(browser.all(stiffness + "path.area")).hasSize(1);
      assertThat(browser.all(stiffness + "path.dot")).hasSize(6 + 2);
      browser.one("details:has([data-numbers=stiffness]) summary").click();
      assertThat(browser.texts("[data-numbers=stiffness] thead th"))
          .containsExactly("frame.arm-width mm", "arms Hz", "rotors Hz", "build");
      browser.picture("arms");
    }
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
        "--for",
        "Mara Fenn",
        "--number",
        "2026-014",
        "--pdf",
        "--out",
        folder.toString()));

    assertThat(CommandRun.of(args).err().lines())
        .as("lines for the shop alone")
        .allMatch(
            line -> line.matches("[ABC] costs EUR .*, above the scenario's budget of EUR 350\\."))
        .hasSize(3);

    look("offer", "Offer 2026-014", 0);
    cardsHaveOneScale();
    assertThat(sheets(Files.readAllBytes(folder.resolve("offer.pdf")))).isBetween(1, 2);
    var first = Files.readAllBytes(folder.resolve("offer.pdf"));
    assertThat(CommandRun.of(args).exitCode()).isZero();
    assertThat(folder.resolve("offer.pdf")).hasBinaryContent(first);
  }

  /** As many millimetres of an aircraft are as wide on each card, and what is over the budget is said on it. */
  private static void cardsHaveOneScale() {
    try (var browser = Browser.on(folder.resolve("offer.html"))) {
      var scales = browser.all(".small-plan").stream()
          .map(plan -> String.valueOf(browser.run(
              "return (arguments[0].getBoundingClientRect().width / arguments[0].viewBox.baseVal.width).toFixed(2)",
              plan)))
          .toList();
      assertThat(scales).hasSize(3);
      assertThat(scales.stream().distinct()).hasSize(1);
      assertThat(browser.texts(".compared th").subList(0, 3))
          .containsExactly("Plan with", "Ready to fly", "Price");
      assertThat(browser.all(".compared tr")).hasSize(9);
      assertThat(browser.texts(".over"))
          .hasSize(3)
          .allMatch(text -> text.contains("your budget of EUR 350"));
      assertThat(browser.one(".cautions").getText()).doesNotContain("current limiter");
    }
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
    look("sheet", "bird-survey: bench sheet", 0, 2);
    var page = folder.resolve("sheet.html");
    try (var browser = Browser.on(page)) {
      assertThat(browser.texts(".work > h2"))
          .containsExactly(
              "Before you buy",
              "Before you mount",
              "First power-up, propellers off",
              "First-flight card");
      assertThat(browser.all(".ticks input[type=checkbox]")).hasSizeGreaterThan(15);
      assertThat(browser.all("#stack .plan-board")).hasSize(1);
      assertThat(browser.all("#places .plan-disc, .tile .plan-bar")).hasSize(3);
      isSaidOnce(browser.one("main").getText());
    }
  }

  /** Sentences of the page that warn stand at one step each. */
  private static void isSaidOnce(String page) {
    for (var caution : List.of(
        "nothing of this build was measured",
        "charge at 1 C at most",
        "local rules set its power and channel",
        "is neither harmless nor exempt",
        "through a current limiter set to")) {
      assertThat(page.split(caution, -1)).as(caution).hasSize(2);
    }
  }

  /** A millimetre of the drawing is one on paper, on sheets that show all of it. */
  @Test
  void printsThePlanInItsTrueSizeOnSheetsToJoin() throws IOException {
    var run =
        CommandRun.of("sheet", folder.resolve("result.json") + "#2", "--out", folder.toString());
    assertThat(run.err()).isEmpty();
    var page = Files.readString(folder.resolve("sheet.html"));
    var whole = Pattern.compile("viewBox=\"0 0 ([0-9.]+) ([0-9.]+)\" width=\"([0-9.]+)mm\"")
        .matcher(page.substring(page.indexOf("id=\"places\"")));
    assertThat(whole.find()).isTrue();
    assertThat(number(whole, 1) / number(whole, 3)).isCloseTo(2, within(0.01));
    var tiles = Pattern.compile(
            "class=\"plan-sheet\" viewBox=\"([0-9.-]+) ([0-9.-]+) ([0-9.]+) ([0-9.]+)\" width=\"([0-9.]+)mm\" height=\"([0-9.]+)mm\"")
        .matcher(page);
    var area = 0.0;
    while (tiles.find()) {
      assertThat(number(tiles, 5)).isEqualTo(number(tiles, 3)).isLessThanOrEqualTo(186);
      assertThat(number(tiles, 6)).isEqualTo(number(tiles, 4)).isLessThanOrEqualTo(265);
      // Less what both sides show of each other.
      area += (number(tiles, 3) - 6) * (number(tiles, 4) - 6);
    }
    assertThat(area).isCloseTo(number(whole, 1) * number(whole, 2), within(10.0));
  }

  private static double number(Matcher found, int group) {
    return Double.parseDouble(found.group(group));
  }

  /** Two groups of one shop with postage, spares for all: bags, box and lists. */
  @Test
  void ordersForThoseWhoPack() throws IOException {
    var order = Files.createDirectory(folder.resolve("fens"));
    SmallOrders.read(order, SmallOrders.forTwo(order));

    var run = CommandRun.of(
        "order",
        order.resolve("order.json").toString(),
        "--no-shipped-catalog",
        "--catalog",
        order.resolve("parts").toString(),
        "--report",
        "--quiet",
        "--out",
        folder.toString());

    assertThat(run.err()).isEmpty();
    assertThat(run.exitCode()).isZero();
    look("order", "fens: order", 0);
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
