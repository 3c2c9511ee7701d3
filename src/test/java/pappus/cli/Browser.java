package pappus.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.results.Rule;
import com.deque.html.axecore.selenium.AxeBuilder;
import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Assumptions;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.print.PageSize;
import org.openqa.selenium.print.PrintOptions;

/** A real browser without a window, with one page open. */
final class Browser implements AutoCloseable {
  private static final Path PICTURES = Path.of("target", "screens");
  private static final List<String> BROWSERS =
      List.of("chromium", "chromium-browser", "google-chrome", "google-chrome-stable");
  private static final int PHONE = 390;
  private static final int DESK = 1280;

  /** Kept, or its level would be forgotten: the driver warns of every browser that is newer than itself. */
  private static final Logger VERSIONS =
      Logger.getLogger("org.openqa.selenium.devtools.CdpVersionFinder");

  private static final String DRIVER = "chromedriver";

  private final ChromeDriver driver;

  private Browser(ChromeDriver driver) {
    this.driver = driver;
  }

  /** Where there is no browser, the test is skipped and says so. */
  static void assumeThere() {
    if (found(BROWSERS.stream()).isEmpty() || found(Stream.of(DRIVER)).isEmpty()) {
      var why =
          "SKIPPED: no Chromium and chromedriver on the PATH, so no page was tried in a browser.";
      System.out.println(why);
      Assumptions.abort(why);
    }
  }

  /** Opens a page, or skips the test. */
  static Browser on(Path page) {
    assumeThere();
    var binary = found(BROWSERS.stream());
    var chromedriver = found(Stream.of(DRIVER));
    VERSIONS.setLevel(Level.SEVERE);
    var options = new ChromeOptions();
    options.setBinary(binary.get().toFile());
    options.addArguments(
        "--headless",
        "--disable-gpu",
        "--disable-quic",
        "--no-first-run",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
        "--hide-scrollbars");
    if (System.getProperty("user.name").equals("root")) {
      // The browser refuses to run as root with its sandbox, as in most containers.
      options.addArguments("--no-sandbox", "--disable-dev-shm-usage");
    }
    var logs = new LoggingPreferences();
    logs.enable(LogType.BROWSER, Level.ALL);
    options.setCapability("goog:loggingPrefs", logs);
    var service = new ChromeDriverService.Builder()
        .usingDriverExecutable(chromedriver.get().toFile())
        .withTimeout(Duration.ofSeconds(60))
        .build();
    var browser = new Browser(new ChromeDriver(service, options));
    browser.wide(DESK, false);
    browser.driver.get(page.toUri().toString());
    return browser;
  }

  private static Optional<Path> found(Stream<String> names) {
    var folders = System.getenv("PATH").split(File.pathSeparator);
    return names
        .flatMap(name -> Stream.of(folders).map(folder -> Path.of(folder, name)))
        .filter(Files::isExecutable)
        .findFirst();
  }

  @Override
  public void close() {
    driver.quit();
  }

  List<WebElement> all(String selector) {
    return driver.findElements(By.cssSelector(selector));
  }

  WebElement one(String selector) {
    return driver.findElement(By.cssSelector(selector));
  }

  /** Texts of all that a selector finds. */
  List<String> texts(String selector) {
    return all(selector).stream().map(WebElement::getText).toList();
  }

  /** What a piece of script returns. */
  @Nullable
  Object run(String script, Object... arguments) {
    return driver.executeScript(script, arguments);
  }

  /** Moves a slider as a person does: it is told that it was moved. */
  void slide(String selector, double value) {
    run(
        "arguments[0].value = arguments[1]; arguments[0].dispatchEvent(new Event('input', {bubbles: true}));",
        one(selector),
        String.valueOf(value));
  }

  /** Whatever the page complained of, or its policy kept from it. */
  List<String> complaints() {
    return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
        .filter(entry -> entry.getLevel().intValue() >= Level.WARNING.intValue())
        .map(entry -> entry.getMessage())
        .toList();
  }

  /** What was fetched beside the page itself. */
  @Nullable
  Object fetched() {
    return run("return performance.getEntriesByType('resource').map(one => one.name);");
  }

  /**
   * What a keyboard or a screen reader would stumble over. Each width once, since widths move things; then the contrast
   * of the other colours, in the width whose tables have no shade beneath them.
   */
  void isAccessible() {
    wide(PHONE, true);
    assertThat(violations(new AxeBuilder())).isEmpty();
    wide(DESK, false);
    assertThat(violations(new AxeBuilder())).isEmpty();
    wide(DESK, true);
    assertThat(violations(new AxeBuilder().withRules(List.of("color-contrast"))))
        .isEmpty();
  }

  private List<String> violations(AxeBuilder rules) {
    return rules.analyze(driver).getViolations().stream().map(Browser::told).toList();
  }

  private static String told(Rule rule) {
    return "%s: %s at %s"
        .formatted(
            rule.getId(),
            rule.getHelp(),
            rule.getNodes().stream().map(node -> node.getHtml()).limit(3).toList());
  }

  /** Pictures of the whole page, 390 and 1280 wide, light and dark, in target/screens. */
  void picture(String name) {
    for (var width : List.of(PHONE, DESK)) {
      for (var dark : List.of(false, true)) {
        wide(width, dark);
        var file = "%s-%s-%s.png".formatted(name, width, dark ? "dark" : "light");
        var taken = driver.executeCdpCommand(
            "Page.captureScreenshot", Map.of("format", "png", "captureBeyondViewport", true));
        write(file, Base64.getDecoder().decode(String.valueOf(taken.get("data"))));
        assertThat(run("return document.documentElement.scrollWidth <= innerWidth"))
            .as("%s does not scroll sideways", file)
            .isEqualTo(true);
      }
    }
    wide(DESK, false);
  }

  private void wide(int width, boolean dark) {
    wide(width, 900, dark);
  }

  /** A phone in a hand, 390 by 844. */
  void phone() {
    wide(PHONE, 844, false);
  }

  /** A desk again. */
  void desk() {
    wide(DESK, false);
  }

  /** The same page as another opens it, with what stands behind # in its address. */
  void openAgain(String state) {
    var page = driver.getCurrentUrl().replaceAll("#.*", "");
    driver.get("about:blank");
    driver.get(page + state);
    driver.executeAsyncScript(
        "const done = arguments[0]; requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(done, 50)));");
  }

  /** What stands behind # in its address, with it. */
  String state() {
    var address = driver.getCurrentUrl();
    return address.contains("#") ? address.substring(address.indexOf('#')) : "";
  }

  private void wide(int width, int height, boolean dark) {
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
    driver.executeCdpCommand(
        "Emulation.setEmulatedMedia",
        Map.of(
            "features",
            List.of(
                Map.of("name", "prefers-color-scheme", "value", dark ? "dark" : "light"),
                // Else a click may come while the page still scrolls to what is clicked.
                Map.of("name", "prefers-reduced-motion", "value", "reduce"))));
    // Charts are drawn anew when their room changes: two frames later at the latest.
    driver.executeAsyncScript(
        "const done = arguments[0]; requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(done, 50)));");
  }

  /** The page on paper: how many sheets of A4. */
  int sheets(String name) {
    var options = new PrintOptions();
    options.setPageSize(new PageSize(29.7, 21));
    var pdf = Base64.getDecoder().decode(driver.print(options).getContent());
    write(name + ".pdf", pdf);
    var text = new String(pdf, StandardCharsets.ISO_8859_1);
    assertThat(text).startsWith("%PDF-").contains("%%EOF");
    return text.split("/Type\\s*/Page\\b", -1).length - 1;
  }

  /** How heavy a page may be, bytes: all of it with charts, what is not style or script of one, and one without. */
  private static final int MOST_DRAWING = 350_000;

  private static final int MOST_TOLD = 190_000;
  private static final int MOST_STILL = 80_000;

  /** A page is sent as a file, and opened on a phone. */
  static void isLight(Path page) throws IOException {
    var text = Files.readString(page);
    var told = text.replaceAll("(?s)<style>.*?</style>", "")
        .replaceAll("(?s)<script>.*?</script>", "")
        .getBytes(StandardCharsets.UTF_8);
    var isDrawing = text.contains("<script>");
    assertThat(Files.size(page))
        .as("bytes of %s", page.getFileName())
        .isLessThanOrEqualTo(isDrawing ? MOST_DRAWING : MOST_STILL);
    assertThat(told.length)
        .as("bytes of HTML and data in %s", page.getFileName())
        .isLessThanOrEqualTo(MOST_TOLD);
  }

  private static void write(String name, byte[] bytes) {
    try {
      Files.createDirectories(PICTURES);
      Files.write(PICTURES.resolve(name), bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
