package pappus.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.Select;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** The report of a shipped scenario in a real browser: what a person does with it. */
@Tag("slow")
final class ReportInBrowserTest {
  private static final String SCENARIO = "scenarios/bird-survey.json";

  @TempDir
  private static Path folder;

  private static Browser browser;

  /** What the command wrote beside the page. */
  private static JsonNode answer;

  @BeforeAll
  static void opensTheReport() throws IOException {
    var run =
        CommandRun.of("recommend", SCENARIO, "--report", "--quiet", "--out", folder.toString());
    assertThat(run.exitCode()).isZero();
    answer = new ObjectMapper().readTree(folder.resolve("result.json").toFile());
    Browser.isLight(folder.resolve("report.html"));
    browser = Browser.on(folder.resolve("report.html"));
  }

  @AfterAll
  static void closes() {
    if (browser != null) {
      browser.close();
    }
  }

  @Test
  void loadsWithoutComplaintsAndWithoutANetwork() {
    assertThat(browser.complaints()).isEmpty();
    assertThat(browser.fetched()).isEqualTo(List.of());
    assertThat(browser.all(".plot > svg")).hasSize(2);
    assertThat(browser.texts("h1")).containsExactly("bird-survey");
  }

  @Test
  void runsNoScriptButItsOwn() {
    browser.run(
        "const one = document.createElement('script'); one.className = 'strange'; one.textContent = 'window.strange = 1'; document.body.append(one);"
            + "const two = document.createElement('img'); two.className = 'strange'; two.setAttribute('onerror', 'window.strange = 2'); two.src = 'data:,'; document.body.append(two);");

    assertThat(browser.run("return window.strange")).isNull();
    assertThat(browser.complaints()).anyMatch(said -> said.contains("Content Security Policy"));
    // Other tests look at the same page.
    browser.run("document.querySelectorAll('.strange').forEach(strange => strange.remove());");
  }

  @BeforeEach
  void asItIsOpenedFirst() {
    browser.desk();
    browser.openAgain("");
  }

  /** Whatever is read first stands on the first screen of a phone, and nothing of it beside the screen. */
  @Test
  void answersOnTheFirstScreen() {
    browser.phone();

    for (var selector : List.of(
        "h1",
        ".chips",
        "#chosen",
        "#chosen a.button",
        "#saving",
        "#trade-title",
        "#status",
        ".stage",
        "#limit-price")) {
      assertThat(edge(selector, "bottom")).as("bottom of %s", selector).isBetween(1.0, 844.0);
      assertThat(edge(selector, "right")).as("right of %s", selector).isBetween(1.0, 390.0);
      assertThat(edge(selector, "left")).as("left of %s", selector).isNotNegative();
    }
    var picks = answer.path("picks");
    assertThat(browser.one("#chosen-title").getText())
        .isEqualTo(minutes(picks.path(0).path("planWithSeconds").asDouble()) + " min to plan with");
    assertThat(browser.texts("#chosen .told strong").get(1))
        .isEqualTo(Math.round(picks.path(0).path("grams").asDouble()) + " g");
    assertThat(browser.texts("#saving tbody tr td:nth-of-type(1)"))
        .containsExactlyElementsOf(answer
            .path("givingUp")
            .valueStream()
            .map(one -> minutes(one.path("planWithSeconds").asDouble()))
            .toList());
  }

  /** Minutes to plan with, as they are told. */
  private static String minutes(double seconds) {
    return String.format(Locale.ROOT, "%.1f", Math.floor(seconds / 30) / 2);
  }

  /** An edge of what is drawn: "left", "right", "bottom". */
  private static double edge(String selector, String which) {
    return number(
        "return arguments[0].getBoundingClientRect()[arguments[1]]", browser.one(selector), which);
  }

  /** What the title of the chart says is true of the answer: above that price, only so much more can be planned with. */
  @Test
  void theTitleOfTheChartIsTrueOfTheAnswer() {
    var bold = browser.all("#saving tr:has(td:nth-of-type(3) strong)").get(0);
    var build = Integer.parseInt(bold.getDomAttribute("data-build"));
    var price = Math.round(number("return pageData.builds[arguments[0]][1] / 100", build));
    var most = answer.path("picks").path(0).path("planWithSeconds").asDouble();
    var given = answer
        .path("givingUp")
        .valueStream()
        .filter(one -> Math.round(one.path("cents").asDouble() / 100) == price)
        .findFirst()
        .orElseThrow();
    var lost = Double.parseDouble(minutes(most))
        - Double.parseDouble(minutes(given.path("planWithSeconds").asDouble()));
    var words =
        lost == 0 ? "less than half a minute" : lost == 0.5 ? "half a minute" : lost + " min";

    assertThat(browser.one("#trade-title").getText())
        .isEqualTo("Above EUR " + price + ", money buys " + words + " to plan with.");
    browser.one("input[value=mass]").click();
    assertThat(browser.one("#trade-title").getText()).matches("Above [0-9]+ g, mass buys .*");
  }

  private static double number(String script, Object... arguments) {
    return ((Number) Objects.requireNonNull(browser.run(script, arguments))).doubleValue();
  }

  @Test
  void marksEachSetOfMainPartsOnceAndWhatIsTooGoodToBeTrueHollow() {
    var spots = browser.all(".trade .spot .dot[transform]").size();
    assertThat((double) spots)
        .isEqualTo(number("return new Set(pageData.builds.map(build => build[8])).size"));
    assertThat(browser.all(".trade .spot.ranked.hollow")).hasSize((int) answer
        .path("candidates")
        .valueStream()
        .filter(row -> row.path("flight").path("beyondBelief").asBoolean())
        .map(ReportInBrowserTest::mainParts)
        .filter(parts ->
            answer.path("picks").valueStream().noneMatch(pick -> mainParts(pick).equals(parts)))
        .count());
    assertThat(browser.all(".trade .spot .whisker").size())
        .isEqualTo(browser.all(".trade .spot.ranked").size() + 1);
    assertThat(browser.texts(".trade .label")).hasSize(2).contains("longest");
    assertThat(browser.all(".trade .doubt")).hasSize(1);
  }

  private static List<String> mainParts(JsonNode build) {
    return Stream.of("frame", "motor", "propeller", "battery")
        .map(role -> build.path("roles").path(role).asString(""))
        .toList();
  }

  @Test
  void sortsByAnyColumnBestFirst() {
    var heads = browser.all("table.ranked th button");
    heads.stream()
        .filter(head -> head.getText().equals("EUR"))
        .findFirst()
        .orElseThrow()
        .click();
    assertThat(column("price_eur")).isSorted().hasSize(10);
    assertThat(browser.one("th[aria-sort]").getDomAttribute("aria-sort")).isEqualTo("ascending");

    var plan = heads.stream()
        .filter(head -> head.getText().startsWith("plan on"))
        .findFirst()
        .orElseThrow();
    plan.click();
    assertThat(column("plan_min")).isSortedAccordingTo(Comparator.reverseOrder());
    plan.click();
    assertThat(column("plan_min")).isSorted();
    assertThat(browser.one("th[aria-sort]").getDomAttribute("aria-sort")).isEqualTo("ascending");

    browser.phone();
    assertThat(browser.one("table.ranked thead").getRect().getX()).isNegative();
    new Select(browser.one("#sort")).selectByVisibleText("g");
    assertThat(column("all_up_g")).isSorted();
  }

  /** Numbers of a column from top to bottom. */
  private static List<Double> column(String key) {
    var index = browser.all("table.ranked thead th").stream()
        .map(head -> head.getDomAttribute("data-key"))
        .toList()
        .indexOf(key);
    return browser.all("table.ranked tbody tr > :nth-child(" + (index + 1) + ")").stream()
        .map(cell -> Double.valueOf(Objects.requireNonNull(cell.getDomAttribute("data-value"))))
        .toList();
  }

  /** A tap on a row of one table is seen in chart, panel and the other table; the state is the address. */
  @Test
  void pinsOneBuildEverywhere() {
    var row = browser.all("table.ranked tbody tr").get(2);
    var number = Objects.requireNonNull(row.getDomAttribute("data-build"));
    row.findElement(By.cssSelector(".pin")).click();

    assertThat(browser.texts(".trade .label").get(1)).contains("EUR", "min");
    assertThat(browser.all("tr.pinned"))
        .allMatch(one -> number.equals(one.getDomAttribute("data-build")));
    assertThat(row.findElement(By.cssSelector(".pin")).getDomAttribute("aria-pressed"))
        .isEqualTo("true");
    assertThat(browser.one("#beside").getDomAttribute("data-build"))
        .isEqualTo(answer.path("candidates").path(2).path("build").asString(""));
    assertThat(browser.one("#status").getText()).contains("EUR");

    var state = browser.state();
    var told = browser.one("#beside").getText();
    browser.openAgain("");
    assertThat(browser.all("tr.pinned")).isEmpty();
    browser.openAgain(state);
    assertThat(browser.one("#beside").getText()).isEqualTo(told);
    assertThat(browser.state()).isEqualTo(state);
  }

  @Test
  void pinsWhatIsTappedInTheChart() {
    browser.run(
        "const mark = document.querySelectorAll('.trade .spot.ranked .dot')[0].getBoundingClientRect();"
            + "document.querySelector('.trade svg').dispatchEvent(new MouseEvent('click', "
            + "{bubbles: true, clientX: mark.x + mark.width / 2, clientY: mark.y + mark.height / 2}));");

    assertThat(browser.one("#beside").getDomAttribute("data-build")).isNotEmpty();
    assertThat(browser.state()).contains("beside=");
  }

  /** Flight and price first, each with its sign, as both are told. */
  @Test
  void comparesAgainstThePickInSignedNumbers() {
    browser.all("#saving .pin").get(1).click();

    var rows = browser.all("#beside table").get(0).findElements(By.cssSelector("tbody tr"));
    assertThat(rows.stream()
            .map(row -> row.findElement(By.tagName("th")).getText())
            .limit(4))
        .containsExactly("plan on, min", "expect, min", "EUR", "g");
    for (var row : rows) {
      var cells =
          row.findElements(By.tagName("td")).stream().map(WebElement::getText).toList();
      var difference =
          new BigDecimal(cells.get(1)).subtract(new BigDecimal(cells.get(0))).stripTrailingZeros();
      assertThat(new BigDecimal(cells.get(2).replace('\u2212', '-')).stripTrailingZeros())
          .isEqualTo(difference);
      if (difference.signum() > 0) {
        assertThat(cells.get(2)).startsWith("+");
      }
    }
    var given = browser.texts("#saving tbody tr:nth-of-type(2) td");
    assertThat(rows.get(0).getText().replace('\u2212', '-')).endsWith(" " + given.get(1));
  }

  @Test
  void whatIsOpenStaysOpenAndStandsInTheAddress() {
    browser.one("#thrifty > summary").click();
    browser.one("#longest-room > summary").click();
    browser.all("table.ranked .pin").get(0).click();
    var heads = browser.all("table.ranked th button");
    heads.get(2).click();

    assertThat(browser.one("#thrifty").getDomAttribute("open")).isNotNull();
    browser.openAgain(browser.state());
    assertThat(browser.one("#longest-room").getDomAttribute("open")).isNotNull();
    assertThat(browser.all("#thrifty .plot > svg")).isNotEmpty();

    browser.openAgain("#candidate-2");
    assertThat(browser.one("#candidate-2").getDomAttribute("open")).isNotNull();

    browser.openAgain("#thrifty-parts");
    assertThat(browser.texts("#thrifty-parts tbody th")).contains("motor", "all of it");
  }

  /** What is written when it is opened is what the command told. */
  @Test
  void writesABuildWhenItIsOpened() {
    assertThat(browser.all("#candidate-2 table, #candidate-2 svg")).isEmpty();
    browser.one("#candidate-2 > summary").click();
    // What opens says so a little later.
    browser.desk();

    var row = answer.path("candidates").path(1);
    assertThat(browser.texts("#candidate-2 .told-of figure figcaption strong"))
        .containsExactly("What it weighs", "From above, forward up");
    assertThat(browser.all("#candidate-2 svg .plan-disc")).hasSize(4);
    browser.one("#candidate-2-parts > summary").click();
    assertThat(browser.texts("#candidate-2-parts tbody td:nth-of-type(2)"))
        .contains(row.path("roles").path("motor").asString());
    browser.one("#candidate-2-curves > summary").click();
    browser.run(
        "document.querySelectorAll('#candidate-2-curves figure details').forEach(one => one.open = true);");
    browser.desk();
    assertThat(browser.all("#candidate-2-curves .plot > svg")).hasSize(4);
    assertThat(browser.texts("#candidate-2-curves figure:nth-of-type(2) tbody th"))
        .hasSizeGreaterThan(15);
    assertThat(browser.complaints()).isEmpty();
  }

  /** Small numbers of the table and the panel are those of the command. */
  @Test
  void tellsNumbersAsTheCommandDoes() {
    browser.all("table.ranked .pin").get(3).click();

    var cells = browser.texts("table.ranked tbody tr:nth-of-type(4) > *");
    assertThat(
            browser.texts("#beside table:first-of-type tbody td:nth-of-type(2)").subList(0, 3))
        .containsExactly(cells.get(2), cells.get(3), cells.get(6));
  }

  @Test
  void slidersGiveTheBuildsOfTheCommandAtTheSameLimits() throws IOException {
    for (var asked : List.of(
        new double[] {250, 330},
        new double[] {192, 330},
        new double[] {250, 170},
        new double[] {186, 180},
        new double[] {180, 175},
        new double[] {205, 214},
        new double[] {201, 260},
        new double[] {250, 231})) {
      browser.slide("#limit-mass", asked[0]);
      browser.slide("#limit-price", asked[1]);

      assertThat(browser.one("#beside").getDomAttribute("data-build"))
          .as("%s g, EUR %s", asked[0], asked[1])
          .isEqualTo(recommended(asked[0], asked[1]));
    }
  }

  /**
   * Other scenarios: another rule of mass, and goals that are no flight, which a page looks up alike; {@code FinderTest}
   * holds what it is given to trying every build, for thrust too.
   */
  @ParameterizedTest
  @CsvSource({
    "club-evening, endurance, 131, 179",
    "club-evening, endurance, 126, 180",
    "withy-loan, price, 250, 250",
    "withy-loan, price, 203, 190",
    "withy-loan, price, 160, 214",
    "withy-loan, mass, 210, 219",
    "withy-loan, mass, 230, 190"
  })
  void slidersOfOtherScenariosGiveTheFirstPickOfTheCommand(
      String name, String goal, double grams, double euros) throws IOException {
    // By mass with one frame only: with all of them a front of every build takes half a minute
    // more.
    var scenario = List.of(
        "recommend",
        "scenarios/" + name + ".json",
        "--quiet",
        "--set",
        "parts.fixed=" + (goal.equals("mass") ? "cottongrass-4" : ""),
        "--set");
    var page = folder.resolve(name + "-" + goal);
    if (!Files.exists(page)) {
      assertThat(run(scenario, "goal=" + goal, "--report", "--out", page.toString())
              .exitCode())
          .isZero();
      Browser.isLight(page.resolve("report.html"));
    }
    var picked = run(
            scenario,
            "goal=" + goal,
            "--set",
            "massCap.grams=" + grams,
            "--set",
            "budget.amount=" + euros,
            "--count",
            "1",
            "--format",
            "json",
            "--out",
            folder.resolve("other").toString())
        .json()
        .path("picks")
        .path(0);
    try (var other = Browser.on(page.resolve("report.html"))) {
      other.slide("#limit-mass", grams);
      other.slide("#limit-price", euros);

      assertThat(other.one("#beside").getDomAttribute("data-build"))
          .isNotEmpty()
          .isEqualTo(picked.path("build").asString(""));
      assertThat(other.one("#status").getText())
          .contains("the " + picked.path("pick").asString());
    }
  }

  private static CommandRun run(List<String> command, String... more) {
    return CommandRun.of(Stream.concat(command.stream(), Stream.of(more)).toList());
  }

  /** The slider's thumb is where the limit is drawn, and it says what it stands at. */
  @Test
  void theSliderSitsOnTheLimitOfTheChart() {
    for (var euros : List.of(330.0, 231.0, 170.0)) {
      browser.slide("#limit-price", euros);

      var gap = number(
          "const input = document.querySelector('#limit-price'), box = input.getBoundingClientRect();"
              + "const share = (input.value - input.min) / (input.max - input.min);"
              + "const line = document.querySelector('.trade .mark line').getBoundingClientRect();"
              + "return Math.abs(box.x + 12 + share * (box.width - 24) - line.x);");
      assertThat(gap).isLessThan(2);
      assertThat(browser.one("#limit-price").getDomAttribute("aria-valuetext"))
          .isEqualTo("EUR " + Math.round(euros));
    }
    assertThat(browser.all("[role=status], [aria-live]")).hasSize(1);
    assertThat(browser.one("#status").getText()).startsWith("At most EUR 170 and below 250 g");
    browser.one("#limit-price").sendKeys(Keys.ARROW_RIGHT);
    assertThat(browser.one("#limit-price").getDomAttribute("aria-valuetext")).isEqualTo("EUR 171");
  }

  /** The first pick of the command, by ids; empty if there is none. */
  private static String recommended(double grams, double euros) throws IOException {
    var scenario = Files.readString(Path.of(SCENARIO))
        .replaceAll("\"grams\": 250", "\"grams\": " + grams)
        .replaceAll("\"amount\": 330.00", "\"amount\": " + euros);
    var file = folder.resolve("other.json");
    Files.writeString(file, scenario);
    var run = CommandRun.of(
        "recommend",
        file.toString(),
        "--count",
        "1",
        "--format",
        "json",
        "--quiet",
        "--out",
        folder.resolve("other").toString());
    return run.json().path("picks").path(0).path("build").asString("");
  }

  @Test
  void saysWhenTheEdgeOfWhatIsProvenIsReached() throws IOException {
    browser.slide("#limit-price", 200);
    assertThat(browser.texts("#beside .edge"))
        .containsExactly("The mass cap is the scenario's own: heavier builds were not looked for.");

    // The command finds what flies less than half as long as the best; the page says that it does
    // not know.
    browser.slide("#limit-mass", 150);
    browser.slide("#limit-price", 160);
    assertThat(recommended(150, 160)).isNotEmpty();
    assertThat(browser.one("#beside").getText())
        .contains(
            "No build of the front keeps both.",
            "The front is proven down to 19.0 min to plan with: whether anything that flies less, or is too good to be true, keeps both was not looked for.");

    browser.slide("#limit-price", 200);
    browser.slide("#limit-mass", 240);
    assertThat(browser.texts("#beside .edge")).isEmpty();
  }

  @Test
  void isAccessible() {
    browser.isAccessible();
    browser.all("#saving .pin").get(1).click();
    browser.one("#longest-room > summary").click();
    browser.one("#trade > details > summary").click();
    browser.isAccessible();
  }

  @Test
  void looksWellAtEveryWidthAndPrints() {
    browser.picture("report");

    assertThat(browser.sheets("report")).isBetween(4, 12);
  }
}
