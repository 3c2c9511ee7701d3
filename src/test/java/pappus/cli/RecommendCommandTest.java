package pappus.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pappus.search.Enumeration;
import pappus.shop.SmallShop;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class RecommendCommandTest {
  private static final String POOR = ", \"budget\": {\"amount\": 20, \"currency\": \"EUR\"}";

  @TempDir
  private static Path fewFolder;

  private static CommandRun few;

  @TempDir
  private Path folder;

  @BeforeAll
  static void recommendFromAFewParts() throws IOException {
    CommandRun.write(fewFolder, SmallShop.few(), "");
    few = CommandRun.recommend(CommandRun.typed(fewFolder));
  }

  @BeforeEach
  void writeOneBuild() throws IOException {
    CommandRun.write(folder, SmallShop.catalog(SmallShop.ONE_BUILD), "");
  }

  @Test
  void printsATableAndReasonsAndEndsWithZero() {
    assertThat(few.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(few.err()).isEmpty();
    assertThat(few.out())
        .startsWith("marsh: hover, 5 m above sea level; below 250 g;")
        .contains(
            "\nPicks, min  plan on expect    g  T/W    price\nlongest  ",
            "\nGiving up a little, against the longest\n",
            "\nRanking by minutes expected, proven, what differs from row 1\n",
            "\nThe longest in detail",
            "Tightest: ",
            "! Propellers off until the last step")
        .containsPattern("Written: .*result.json. Next:\\n  pappus explain .*#longest\\n");
    assertThat(CommandRun.recommend(CommandRun.typed(fewFolder), "--force", "--details", "2")
            .out())
        .contains("\n1. ", "\n2. ", "Ahead of the next by ", "Tightest limit: ")
        .doesNotContain("\n3. ");
  }

  @Test
  void writesWhatLaterCommandsNeed() throws IOException {
    var result = result(fewFolder);

    assertThat(result.propertyNames())
        .containsExactly(
            "status",
            "tool",
            "seed",
            "moves",
            "catalogs",
            "inputs",
            "scenario",
            "standing",
            "candidates",
            "picks",
            "givingUp",
            "parts");
    assertThat(result.path("status").asString()).isEqualTo("found");
    assertThat(result.path("tool").asString()).startsWith("pappus ");
    assertThat(result.path("seed").isIntegralNumber()).isTrue();
    assertThat(result.path("scenario").path("name").asString()).isEqualTo("marsh");
    assertThat(result.path("standing").path("proven").asBoolean()).isTrue();
    assertThat(result.path("inputs").get(0).path("name").asString()).endsWith("marsh.json");
    assertThat(result.path("inputs"))
        .allMatch(input -> input.path("sha256").asString().matches("[0-9a-f]{64}"));
  }

  @Test
  void tellsEverythingOfACandidate() throws IOException {
    var result = result(fewFolder);
    var candidates = result.path("candidates");

    assertThat(candidates.size()).isGreaterThan(1);
    for (var candidate : candidates) {
      assertThat(candidate.propertyNames())
          .contains(
              "rank",
              "build",
              "roles",
              "milliseconds",
              "mass",
              "cost",
              "flight",
              "limits",
              "findings",
              "installation",
              "reasons",
              "cautions",
              "band",
              "variants");
      assertThat(candidate.path("feasible").asBoolean()).isTrue();
      assertThat(candidate.path("limits")).allMatch(limit -> limit.path("met").asBoolean());
      assertThat(candidate.path("roles").properties())
          .allMatch(role -> result.path("parts").has(role.getValue().asString()));
      assertThat(candidate.path("mass").path("lines"))
          .allMatch(line ->
              !line.has("part") || result.path("parts").has(line.path("part").asString()));
    }
  }

  @Test
  void findsTheBestThatEnumerationFinds() throws IOException {
    var best =
        Enumeration.of(SmallShop.question(SmallShop.few(), "")).bestFirst().get(0);

    var first = result(fewFolder).path("candidates").get(0);

    assertThat(first.path("build").asString()).isEqualTo(best.build().toString());
    assertThat(first.path("milliseconds").asLong()).isEqualTo(best.milliseconds());
  }

  @Test
  void aResultIsABuildToAssess() throws IOException {
    var typed = CommandRun.typed(fewFolder);
    var second = result(fewFolder).path("candidates").get(1);
    var args = List.of(
        "assess",
        typed.resolve("marsh.json").toString(),
        typed.resolve("out/result.json") + "#2",
        "--no-shipped-catalog",
        "--catalog",
        typed.resolve("parts").toString(),
        "--format",
        "json");

    var run = CommandRun.of(args);

    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(run.json().path("build").path("build")).isEqualTo(second.path("build"));
    assertThat(run.json().path("build").path("flight")).isEqualTo(second.path("flight"));
    assertThat(run.json().path("build").path("band")).isEqualTo(second.path("band"));

    var beyond = new ArrayList<>(args);
    beyond.set(2, typed.resolve("out/result.json") + "#99");
    var none = CommandRun.of(beyond);
    assertThat(none.exitCode()).isEqualTo(ExitCode.BAD_DATA);
    assertThat(none.errors()).hasSize(1);
    assertThat(none.err()).contains("must hold a candidate 99, but has ");
  }

  @Test
  void printsTheSameDocumentAsItWritesAndTheSameBytesAgain() throws IOException {
    var typed = CommandRun.typed(folder);

    var first = CommandRun.recommend(typed, "--format", "json");
    var written = Files.readString(folder.resolve("out/result.json"));
    var again = CommandRun.recommend(typed, "--format", "json");

    assertThat(first.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(first.out()).isEqualTo(written).isEqualTo(again.out());
    assertThat(Files.readString(folder.resolve("out/result.json"))).isEqualTo(written);
    assertThat(first.json().path("candidates").size()).isEqualTo(1);
  }

  @Test
  void saysNothingOfTheMachineOrTheTime() {
    var typed = CommandRun.typed(folder);
    var here = Path.of("").toAbsolutePath().toString();

    for (var format : List.of("text", "json")) {
      assertThat(CommandRun.recommend(typed, "--format", format).out())
          .doesNotContain(here, System.getProperty("user.home") + "/")
          .doesNotContain("\"/")
          .doesNotContainPattern("\\d\\d:\\d\\d")
          .doesNotContain("\u001B");
    }
  }

  @Test
  void replacesItsOwnFileButNoneThatWasEdited() throws IOException {
    var typed = CommandRun.typed(folder);
    var file = folder.resolve("out/result.json");
    CommandRun.recommend(typed);
    var written = Files.readString(file);
    Files.writeString(folder.resolve("marsh.json"), SmallShop.scenarioText(", \"candidates\": 3"));
    assertThat(CommandRun.recommend(typed).exitCode()).isEqualTo(ExitCode.OK);
    assertThat(Files.readString(file)).isNotEqualTo(written);

    Files.writeString(file, "{}");
    var refused = CommandRun.recommend(typed);
    assertThat(refused.exitCode()).isEqualTo(ExitCode.CANNOT_CREATE);
    assertThat(refused.out()).isEmpty();
    assertThat(refused.errors())
        .containsExactly(typed.resolve("out/result.json")
            + ": must be as this tool wrote it, but was changed since."
            + " Maybe move it away, or replace it with --force.");
    assertThat(Files.readString(file)).isEqualTo("{}");

    assertThat(CommandRun.recommend(typed, "--force").exitCode()).isEqualTo(ExitCode.OK);
    assertThat(Files.readString(file)).contains("\"found\"");
  }

  @Test
  void nothingFeasibleIsANoThatNamesTheLimitInTheWay() throws IOException {
    CommandRun.write(folder, SmallShop.catalog(SmallShop.ONE_BUILD), POOR);

    var run = CommandRun.recommend(CommandRun.typed(folder));

    assertThat(run.exitCode()).isEqualTo(ExitCode.NO);
    assertThat(run.out())
        .contains("No build of this catalogue keeps every rule and limit.\n")
        .contains("In the way of the closest one (relax says what would help):\n")
        .contains("- Limit (budget): price to buy is ")
        .containsIgnoringWhitespaces("but must be at most 20.00 EUR.");
  }

  /** Two prices are no equals by the doubt of their flights, and what was asked for is answered first. */
  @Test
  void aRankingByPriceSpeaksOfPrices() throws IOException {
    CommandRun.write(folder, SmallShop.few(), ", \"goal\": \"price\", \"leastMinutes\": 20");

    var out = CommandRun.recommend(CommandRun.typed(folder), "--details", "1").out();
    var json = JsonMapper.shared().readTree(Files.readString(folder.resolve("out/result.json")));

    assertThat(out.indexOf("\ncheapest ")).isBetween(0, out.indexOf("\nlongest "));
    assertThat(out)
        .contains(
            "\nRanking by price, proven", "\nThe cheapest in detail", "Ahead of the next by EUR ")
        .doesNotContain(" = ", "within the doubt");
    assertThat(out.replace('\n', ' ')).contains("; ranked by price, the cheapest first. ");
    assertThat(json.path("candidates").size()).isGreaterThan(1);
    assertThat(json.path("candidates")).allMatch(row -> !row.has("equalTo"));
  }

  @Test
  void whatIsOwnedComesFirstOfWhatPlansWithNearlyAsMuch() throws IOException {
    CommandRun.write(folder, SmallShop.few(), "");
    var best =
        CommandRun.recommend(CommandRun.typed(folder), "--format", "json").json();
    var owned = best.at("/candidates/1/roles/motor").asString();
    var asked = ", \"prefer\": \"owned\", \"parts\": {\"owned\": [\"%s\"]}".formatted(owned);
    CommandRun.write(folder, SmallShop.few(), asked);

    var run = CommandRun.recommend(CommandRun.typed(folder), "--force");
    var json = JsonMapper.shared().readTree(Files.readString(folder.resolve("out/result.json")));

    assertThat(run.out().replace('\n', ' '))
        .contains(
            "; ranked by pieces to buy, the fewest first, of those that plan with 95 % of the best.",
            "Ranking by pieces to buy, proven", " to buy");
    var first = json.path("candidates").get(0);
    assertThat(json.at("/picks/0/planWithSeconds").asDouble()).isPositive();
    assertThat(first.at("/roles/motor").asString()).isEqualTo(owned);
    assertThat(first.path("planWithSeconds").asDouble())
        .isGreaterThanOrEqualTo(0.95 * json.at("/picks/0/planWithSeconds").asDouble() - 0.01);
    CommandRun.write(folder, SmallShop.few(), asked + ", \"goal\": \"price\", \"leastMinutes\": 9");
    assertThat(CommandRun.recommend(CommandRun.typed(folder), "--force").err())
        .contains("prefer must be left out where the goal is price, but is owned.");
  }

  @Test
  void nothingFeasibleIsADocumentToo() throws IOException {
    CommandRun.write(folder, SmallShop.catalog(SmallShop.ONE_BUILD), POOR);

    var run = CommandRun.recommend(CommandRun.typed(folder), "--format", "json");

    assertThat(run.exitCode()).isEqualTo(ExitCode.NO);
    assertThat(run.json().path("status").asString()).isEqualTo("infeasible");
    assertThat(run.json().path("candidates").size()).isZero();
    assertThat(run.json().path("closest").path("feasible").asBoolean()).isFalse();
    assertThat(run.json().path("closest").path("limits"))
        .filteredOn(limit -> !limit.path("met").asBoolean())
        .extracting(limit -> limit.path("id").asString())
        .containsExactly("budget");
  }

  @Test
  void aCatalogueWithoutFramesIsANoToo() throws IOException {
    Files.delete(folder.resolve("parts/frames.json"));

    var run = CommandRun.recommend(CommandRun.typed(folder));

    assertThat(run.exitCode()).isEqualTo(ExitCode.NO);
    assertThat(run.out()).contains("There is no frame.");
  }

  @Test
  void theCountIsFromOneToAHundred() {
    for (var wrong : List.of("0", "101", "-1", "many")) {
      var run = CommandRun.recommend(CommandRun.typed(folder), "--count=" + wrong);
      assertThat(run.exitCode()).isEqualTo(ExitCode.USAGE);
      assertThat(run.err()).contains("--count");
      assertThat(run.out()).isEmpty();
    }
  }

  @Test
  void laterFoldersReplaceByIdAndItIsSaidUnlessQuiet() throws IOException {
    SmallShop.write(folder.resolve("mine"), SmallShop.catalog(List.of("cottongrass-4")));
    var typed = CommandRun.typed(folder);
    var mine = typed.resolve("mine").toString();

    assertThat(CommandRun.recommend(typed, "--catalog", mine).errors())
        .anyMatch(line -> line.startsWith("cottongrass-4 at ") && line.contains("takes the place"));
    assertThat(CommandRun.recommend(typed, "--catalog", mine, "--quiet").err()).isEmpty();
  }

  @Test
  void theShippedCatalogueAnswersAShippedScenarioAsItAsks() {
    var run = CommandRun.of(
        "recommend",
        "scenarios/club-evening.json",
        "--format",
        "json",
        "--out",
        CommandRun.typed(folder).resolve("out").toString());

    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    var result = run.json();
    assertThat(result.path("catalogs").get(0).asString()).isEqualTo("(shipped)");
    assertThat(result.path("candidates").size()).isBetween(1, 6);
    var allowed = result.path("scenario").path("parts").path("allowed").get(0).path("parts");
    for (var candidate : result.path("candidates")) {
      assertThat(allowed).contains(candidate.path("roles").path("frame"));
      assertThat(candidate.path("cost").path("cents").asLong()).isLessThanOrEqualTo(18_000);
      assertThat(candidate.path("mass").path("grams").asDouble()).isLessThan(180);
    }
    assertThat(result.path("parts").has("bogbean-1103-15000")).isFalse();
  }

  private static JsonNode result(Path folder) throws IOException {
    return JsonMapper.shared().readTree(Files.readString(folder.resolve("out/result.json")));
  }
}
