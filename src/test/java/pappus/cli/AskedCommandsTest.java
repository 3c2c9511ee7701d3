package pappus.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pappus.shop.SmallShop;
import tools.jackson.databind.JsonNode;

/** What builders ask, as they ask it: a command on a scenario in a file. */
class AskedCommandsTest {
  private static final String STAY =
      "{\"style\": \"profile\", \"legs\": [{\"metres\": 300}, {\"asLongAsPossible\": true, \"back\": true}]}";

  @TempDir
  private Path folder;

  @BeforeEach
  void write() throws IOException {
    CommandRun.write(folder, SmallShop.few(), "");
  }

  private void ask(String text) throws IOException {
    Files.writeString(folder.resolve("marsh.json"), text);
  }

  private CommandRun run(String command, String... words) {
    var out = CommandRun.typed(folder).resolve("out").toString();
    return CommandRun.onParts(folder, command, List.of(words), "--out", out);
  }

  private String result(String name) {
    return CommandRun.typed(folder).resolve("out/result.json").toString() + "#" + name;
  }

  private static List<Double> each(JsonNode rows, ToDoubleFunction<JsonNode> figure) {
    var figures = new ArrayList<Double>();
    rows.forEach(row -> figures.add(figure.applyAsDouble(row)));
    return figures;
  }

  @Test
  void aCapAndABudgetAreANumberEach() throws IOException {
    ask(
        "{\"massCap\": 195, \"leastThrustToWeight\": 2, \"budget\": 200, \"air\": {\"altitudeMetres\": 5}, \"flight\": {\"style\": \"hover\"}}");

    var run = run("recommend");

    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(run.out().replace('\n', ' ')).contains("; below 195 g; ", "; at most EUR 200.");
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "mass, 'mass, the lightest first', No dearer part is lighter.",
    "thrust, 'T/W, the highest first', Cheapest to give up: "
  })
  void whatIsRankedByIsToldFirst(String goal, String ranked, String money) throws IOException {
    ask(SmallShop.scenarioText(", \"goal\": \"" + goal + "\", \"leastMinutes\": 20"));

    var run = run("recommend");
    var rows = run("recommend", "--format", "json", "--force").json().path("candidates");
    var compared = run("compare", result("1"), result("2"));
    var explained = run("explain", result("2")).out().replaceAll("\\s+", " ");

    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(run.out().replace('\n', ' ')).contains("; ranked by " + ranked + ".");
    var figures = each(
        rows,
        goal.equals("mass")
            ? row -> row.at("/mass/grams").asDouble()
            : row -> -row.at("/flight/thrustToWeight").asDouble());
    assertThat(figures).hasSizeGreaterThan(1).isSortedAccordingTo(Comparator.naturalOrder());
    assertThat(each(rows, row -> row.at("/planWithSeconds").asDouble()))
        .allMatch(seconds -> seconds >= 20 * 60 - 1e-6 || seconds == 0);
    assertThat(compared.out())
        .containsPattern(
            goal.equals("mass")
                ? "\n2 against 1: [0-9.]+ g heavier, "
                : "\n2 against 1: thrust-to-weight -[0-9.]+, ");
    assertThat(explained).contains(money).doesNotContain("s longer for EUR", "min longer for EUR");
  }

  @Test
  void comparedByPriceThePriceIsFirst() throws IOException {
    ask(SmallShop.scenarioText(", \"goal\": \"price\", \"leastMinutes\": 20"));

    assertThat(run("recommend").exitCode()).isEqualTo(ExitCode.OK);
    var compared = run("compare", result("1"), result("2")).out();

    assertThat(compared).containsPattern("\n2 against 1: EUR [0-9]+ dearer, ");
    assertThat(compared.indexOf("\nprice ")).isBetween(0, compared.indexOf("\nplan on "));
  }

  @ParameterizedTest
  @CsvSource({"price", "mass", "thrust"})
  void goodEnoughHasToBeSaid(String goal) throws IOException {
    ask(SmallShop.scenarioText(", \"goal\": \"" + goal + "\""));

    var run = run("recommend");

    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_DATA);
    assertThat(run.out()).isEmpty();
    assertThat(run.errors()).singleElement().asString().contains("leastMinutes");
  }

  @Test
  void aPickIsABuild() {
    assertThat(run("recommend").exitCode()).isEqualTo(ExitCode.OK);

    var assessed = run("assess", result("longest"), "--format", "json");

    assertThat(assessed.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(run("assess", result("fastest")).exitCode()).isEqualTo(ExitCode.BAD_DATA);
  }

  @Test
  void theStayIsRankedAndTheWayHomeIsKeptBack() throws IOException {
    ask(SmallShop.scenarioText("").replace("{\"style\": \"hover\"}", STAY));

    var run = run("recommend");
    var explained = run("explain", result("1"));
    var assessed = run("assess", result("1")).out().replaceAll("\\s+", " ");

    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(run.out().replaceAll("\\s+", " "))
        .contains("; ranked by time on leg 2 alone, with charge kept back for the legs after it.");
    assertThat(explained.out()).contains("The stay ends at ");
    assertThat(assessed)
        .containsPattern("The legs are flown once: .* as long as possible, ")
        .containsPattern(
            "[0-9.]+ min in the air in all\\. The stay ends with [0-9]+ % of the charge left");
  }

  /** None of the few packs does, and that is what stands in the way. */
  @Test
  void aPackMayHaveToStandFullThrottle() throws IOException {
    ask(SmallShop.scenarioText("")
        .replace(
            "{\"style\": \"hover\"}", "{\"style\": \"hover\", \"packStandsFullThrottle\": true}"));

    var run = run("recommend");

    assertThat(run.exitCode()).isEqualTo(ExitCode.NO);
    assertThat(run.out()).contains("- Limit (pack-throttle): ");
  }

  @Test
  void theBenchSheetLimitsMotorOutputInPercent() {
    assertThat(run("recommend").exitCode()).isEqualTo(ExitCode.OK);

    assertThat(CommandRun.of("sheet", result("1")).out().replaceAll("\\s+", " "))
        .containsPattern("Limit motor output to [0-9]+ % in the flight firmware: above that, ");
  }
}
