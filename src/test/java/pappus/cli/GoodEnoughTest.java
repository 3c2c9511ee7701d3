package pappus.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pappus.shop.SmallShop;
import tools.jackson.databind.JsonNode;

/** Who asks for no more of a flight than is needed, and for the best of something else. */
class GoodEnoughTest {
  private static final String CRUISE =
      "{\"style\": \"cruise\", \"airspeedMetresPerSecond\": 9, \"windMetresPerSecond\": 2}";
  private static final String STAY =
      "{\"style\": \"profile\", \"legs\": [{\"metres\": 300}, {\"asLongAsPossible\": true, \"back\": true}]}";

  @TempDir
  private Path folder;

  @BeforeEach
  void write() throws IOException {
    SmallShop.write(folder.resolve("parts"), SmallShop.few());
  }

  private void ask(String fields) throws IOException {
    Files.writeString(folder.resolve("marsh.json"), SmallShop.scenarioText(fields));
  }

  private void ask(String flight, String fields) throws IOException {
    Files.writeString(
        folder.resolve("marsh.json"),
        SmallShop.scenarioText(fields).replace("{\"style\": \"hover\"}", flight));
  }

  private CommandRun run(String command, String... words) {
    var out = CommandRun.typed(folder).resolve("out").toString();
    return CommandRun.onParts(folder, command, List.of(words), "--out", out);
  }

  private JsonNode answer() {
    return run("recommend", "--format", "json", "--force").json();
  }

  private String result(String name) {
    return CommandRun.typed(folder).resolve("out/result.json") + "#" + name;
  }

  private static List<String> kinds(JsonNode answer) {
    var kinds = new ArrayList<String>();
    answer.path("picks").forEach(pick -> kinds.add(pick.path("pick").asString()));
    return kinds;
  }

  @ParameterizedTest
  @CsvSource({"price, cheapest, cents", "mass, lightest, grams", "thrust, strongest, thrust"})
  void whatWasAskedForIsThePickThatComesFirst(String goal, String kind, String figure)
      throws IOException {
    ask(", \"goal\": \"" + goal + "\", \"leastMinutes\": 15");
    var answer = answer();
    var text = run("recommend", "--force").out();

    var first = answer.path("picks").path(0);
    assertThat(kinds(answer)).startsWith(kind).hasSizeBetween(2, 4).doesNotHaveDuplicates();
    assertThat(kinds(answer)).contains("longest");
    assertThat(first.path("proven").asBoolean()).isTrue();
    assertThat(first.path("planWithSeconds").asDouble()).isGreaterThanOrEqualTo(15 * 60);
    assertThat(answer.path("picks"))
        .allSatisfy(
            pick -> assertThat(worth(pick, figure)).isLessThanOrEqualTo(worth(first, figure)));
    assertThat(text.indexOf("\n" + kind + " ")).isBetween(0, text.indexOf("\nRanking by "));
    assertThat(text)
        .contains("The " + kind + " in detail", "result.json#" + kind)
        .containsPattern("\nlongest .*\n.*\n  .*, gains [0-9.]+ min\\.\n");
    assertThat(run("assess", result(kind)).exitCode()).isEqualTo(ExitCode.OK);
  }

  private static double worth(JsonNode pick, String figure) {
    return switch (figure) {
      case "cents" -> -pick.path("cents").asDouble();
      case "grams" -> -pick.path("grams").asDouble();
      default -> pick.path("thrustToWeight").asDouble();
    };
  }

  @Test
  void aLeastRangeIsOneToPlanWith() throws IOException {
    ask(CRUISE, ", \"goal\": \"range\"");
    var farthest = answer().path("candidates").path(0);
    var metres = farthest.path("planWithMetres").asDouble();
    var enough = metres / 1000 * 0.9;

    ask(CRUISE, ", \"goal\": \"price\", \"leastKilometres\": " + enough);
    var rows = answer().path("candidates");
    assertThat(rows).isNotEmpty();
    assertThat(rows)
        .allSatisfy(row -> assertThat(row.path("planWithMetres").asDouble())
            .isGreaterThanOrEqualTo(enough * 1000 - 1e-3));
    assertThat(rows.path(0).at("/cost/cents").asLong())
        .isLessThanOrEqualTo(farthest.at("/cost/cents").asLong());

    ask(CRUISE, ", \"goal\": \"range\", \"leastKilometres\": " + metres / 1000 * 1.1);
    var none = run("recommend", "--force");
    assertThat(none.exitCode()).isEqualTo(ExitCode.NO);
    assertThat(none.out()).contains("least-kilometres");
    assertThat(run("relax").out().replaceAll("\\s+", " ")).contains("km to plan with");
  }

  /** A stay of so many minutes, and not a flight of so many. */
  @Test
  void leastMinutesOfAStayAreOfTheStay() throws IOException {
    ask(STAY, "");
    var row = answer().path("candidates").path(0);
    var stay = row.path("planWithSeconds").asDouble() / 60;
    var whole = row.path("milliseconds").asDouble() / 60_000;
    assertThat(stay).isLessThan(whole);

    ask(STAY, ", \"leastMinutes\": " + stay * 0.99);
    assertThat(answer().path("candidates")).isNotEmpty();

    // More than one may rely on for the stay, yet less than the flight lasts.
    ask(STAY, ", \"leastMinutes\": " + (stay + whole) / 2);
    assertThat(run("recommend", "--force").exitCode()).isEqualTo(ExitCode.NO);
  }

  @Nested
  class MostlyAtHand {
    @BeforeEach
    void own() throws IOException {
      ask(
          ", \"prefer\": \"owned\", \"parts\": {\"owned\": [\"spikerush-1303-3400\", \"tidewell-2s-3400\", \"cottongrass-4\"]}");
    }

    @Test
    void isThePickThatComesFirst() {
      var answer = answer();

      assertThat(kinds(answer)).startsWith("owned");
      assertThat(answer.at("/picks/0/build").asString())
          .isEqualTo(answer.at("/candidates/0/build").asString());
      // What it was searched by is no limit of the scenario's.
      assertThat(StreamSupport.stream(answer.at("/candidates/0/limits").spliterator(), false)
              .map(limit -> limit.path("id").asString()))
          .contains("mass-cap")
          .doesNotContain("belief", "least-minutes");
    }

    @Test
    void isArguedByPieces() {
      assertThat(run("recommend").exitCode()).isEqualTo(ExitCode.OK);
      var explained = run("explain", result("owned")).out();
      var longest = run("explain", result("longest")).out().replaceAll("\\s+", " ");
      var compared = run("compare", result("owned"), result("longest")).out();

      assertThat(explained).contains("Proven: no other build from this catalogue does better.");
      assertThat(longest)
          .containsPattern("The best build here, proven, leaves [0-9]+ to buy for EUR [0-9]+, ");
      assertThat(compared)
          .containsPattern("\npieces to buy +[0-9]+ +[0-9]+\n")
          .containsPattern("\n2 against 1: [0-9]+ to buy more, ");
    }
  }

  /** Of a pack whose record says how fast, and of one by its chemistry. */
  @Test
  void aPackChargesAsFastAsItsRecordSays() throws IOException {
    SmallShop.write(folder.resolve("parts"), SmallShop.catalog(SmallShop.ONE_BUILD));
    ask(", \"workday\": {\"minutesOnSite\": 240}");
    var usual = answer().at("/candidates/0/workday");
    var file = folder.resolve("parts/batteries.json");
    Files.writeString(
        file,
        Files.readString(file)
            .replace(
                "\"id\": \"tidewell-2s-3500\",",
                "\"id\": \"tidewell-2s-3500\", \"chargeRate\": 2,"));

    var fast = answer().at("/candidates/0/workday");

    assertThat(usual.path("chargeRate").asDouble()).isEqualTo(0.5);
    assertThat(fast.path("chargeRate").asDouble()).isEqualTo(2);
    assertThat(fast.path("chargeMinutes").asDouble())
        .isCloseTo(usual.path("chargeMinutes").asDouble() / 4, within(1e-9));
  }
}
