package pappus.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;

/** The report of a shipped scenario in a real browser: what a person does with it. */
@Tag("slow")
final class ReportInBrowserTest {
  private static final String SCENARIO = "scenarios/bird-survey.json";

  @TempDir
  private static Path folder;

  private static Browser browser;

  @BeforeAll
  static void opensTheReport() throws IOException {
    var run =
        CommandRun.of("recommend", SCENARIO, "--report", "--quiet", "--out", folder.toString());
    assertThat(run.exitCode()).isZero();
    assertThat(Files.size(folder.resolve("report.html"))).isLessThan(1_000_000);
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
    assertThat(browser.all(".plot > svg")).hasSizeGreaterThanOrEqualTo(7);
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

  @Test
  void sortsByAnyColumnBothWays() {
    var head = browser.all("table.sortable th button").stream()
        .filter(button -> button.getText().equals("EUR"))
        .findFirst()
        .orElseThrow();

    head.click();
    var rising = column();
    head.click();
    var falling = column();

    assertThat(rising).isSorted().hasSize(10);
    assertThat(falling).isSortedAccordingTo((one, other) -> Double.compare(other, one));
    assertThat(browser.one("th[aria-sort]").getDomAttribute("aria-sort")).isEqualTo("descending");
  }

  /** Prices from top to bottom. */
  private static List<Double> column() {
    return browser.all("table.sortable tbody tr").stream()
        .map(row -> row.findElements(By.tagName("td")).get(8).getDomAttribute("data-value"))
        .map(Double::valueOf)
        .toList();
  }

  @Test
  void comparesTwoCandidatesWithWhatDiffersFirst() {
    browser.one("input[data-compare='1']").click();
    browser.one("input[data-compare='2']").click();

    var rows = browser.all("#compared tbody tr");
    var texts = browser.texts("#compared tbody tr th");
    assertThat(texts).contains("frame", "all-up mass", "price");
    var alike = Stream.iterate(0, i -> i < rows.size(), i -> i + 1)
        .filter(i -> !"differs".equals(rows.get(i).getDomAttribute("class")))
        .findFirst()
        .orElseThrow();
    for (var i = 0; i < rows.size(); i++) {
      var cells = rows.get(i).findElements(By.tagName("td"));
      assertThat(cells.get(0).getText().equals(cells.get(1).getText())).isEqualTo(i >= alike);
    }
    assertThat(alike).isPositive();

    browser.one("input[data-compare='3']").click();

    assertThat(browser.texts("#compared caption").get(0)).startsWith("Candidates 2 and 3");
  }

  @Test
  void dialsGiveTheBuildsOfTheCommandAtTheSameLimits() throws IOException {
    for (var asked : List.of(
        new double[] {250, 330},
        new double[] {192, 330},
        new double[] {250, 170},
        new double[] {186, 180},
        new double[] {180, 175})) {
      browser.slide("#dial-mass", asked[0]);
      browser.slide("#dial-budget", asked[1]);

      assertThat(browser.one("#picked").getDomAttribute("data-build"))
          .as("%s g, EUR %s", asked[0], asked[1])
          .isEqualTo(recommended(asked[0], asked[1]));
    }
  }

  /** The best build that the command finds, by ids; empty if none. */
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
    return run.json().path("candidates").path(0).path("build").asString("");
  }

  @Test
  void saysWhenTheEdgeOfWhatIsProvenIsReached() throws IOException {
    browser.slide("#dial-mass", 250);
    browser.slide("#dial-budget", 200);
    assertThat(browser.texts("#picked .edge"))
        .containsExactly(
            "The mass dial is at the scenario's own cap: heavier builds were not looked for.");

    // The command finds what flies less than half as long as the best; the page says that it does
    // not know.
    browser.slide("#dial-mass", 150);
    browser.slide("#dial-budget", 165);
    assertThat(recommended(150, 165)).isNotEmpty();
    assertThat(browser.one("#picked").getText())
        .contains(
            "No build of the front keeps both.",
            "The front is proven down to a flight of 22.0 min: whether anything that flies less keeps both was not looked for.");

    browser.slide("#dial-budget", 200);
    browser.slide("#dial-mass", 240);
    assertThat(browser.texts("#picked .edge")).isEmpty();
  }

  @Test
  void isAccessible() {
    browser.isAccessible();
  }

  @Test
  void looksWellAtEveryWidthAndPrints() {
    browser.picture("report");

    assertThat(browser.sheets("report")).isBetween(4, 12);
  }
}
