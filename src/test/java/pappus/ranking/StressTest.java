package pappus.ranking;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pappus.catalog.Catalog;
import pappus.files.json.Altered;
import pappus.part.Motor;
import pappus.part.Part;
import pappus.search.Ending;
import pappus.shop.SmallShop;

/**
 * Catalogues that leave a search nothing to hold on to: it is proven all the same, within counted choices and half a
 * gigabyte.
 */
@Tag("slow")
class StressTest {
  /** The few parts, and so many more motors like one of them, each with other values in some fields. */
  private static Catalog withMotors(int number, IntFunction<Map<String, Object>> changes) {
    var parts = new ArrayList<Part>(SmallShop.few().parts());
    var motor = (Motor) SmallShop.few().part("spikerush-1303-3400").orElseThrow();
    for (var i = 0; i < number; i++) {
      parts.add(Altered.record(Motor.class, motor, changes.apply(i)));
    }
    return Catalog.of(parts);
  }

  private static Ranking rank(Catalog catalog, String grams, String thrust) {
    var scenario = SmallShop.scenarioText("")
        .replace("\"grams\": 250", "\"grams\": " + grams)
        .replace("\"leastThrustToWeight\": 2", "\"leastThrustToWeight\": " + thrust);
    var question = SmallShop.questionOf(catalog, scenario);
    return new Finder(Finder.Way.AUTO, Finder.EFFORT, Finder.MOVES, said -> {}).rank(question, 10);
  }

  private static void assertProven(Ranking ranking, long choices) {
    assertThat(ranking.coverage().proof().ending()).isEqualTo(Ending.PROVEN);
    assertThat(ranking.coverage().proof().looks()).isLessThan(choices);
  }

  private static void twoThousandMotorsThatAreTheSame() {
    var ranking = rank(withMotors(2000, i -> Map.of("id", "same-" + i)), "250", "2");

    assertProven(ranking, 20_000);
    assertThat(ranking.candidates()).isNotEmpty();
  }

  private static void twoThousandMotorsThatDifferInMassAlone() {
    var ranking = rank(
        withMotors(2000, i -> Map.of("id", "other-" + i, "mass.grams", 4 + i * 0.002)), "250", "2");

    assertProven(ranking, 200_000);
    assertThat(ranking.candidates()).isNotEmpty();
  }

  private static void nothingThatBinds() {
    var ranking = rank(
        withMotors(500, i -> Map.of("id", "free-" + i, "mass.grams", 4 + i * 0.01)), "25000", "1");

    assertProven(ranking, 200_000);
    assertThat(ranking.candidates()).isNotEmpty();
  }

  private static void nothingThatIsFeasible() {
    var ranking = rank(
        withMotors(2000, i -> Map.of("id", "heavy-" + i, "mass.grams", 40 + i * 0.01)), "20", "2");

    assertProven(ranking, 20_000);
    assertThat(ranking.candidates()).isEqualTo(List.of());
    assertThat(ranking.closest()).isPresent();
  }

  @Test
  void allAreProvenInLittleMemory(@TempDir Path folder) throws Exception {
    var told = folder.resolve("told").toFile();
    var child = new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-Xmx512m",
            "-cp",
            System.getProperty("java.class.path"),
            StressTest.class.getName())
        .redirectErrorStream(true)
        .redirectOutput(told)
        .start();

    assertThat(child.waitFor()).as(Files.readString(told.toPath())).isZero();
    assertThat(Files.readString(told.toPath())).endsWith("four are proven");
  }

  /** In a process of its own, whose memory is its own. */
  public static void main(String[] args) {
    twoThousandMotorsThatAreTheSame();
    twoThousandMotorsThatDifferInMassAlone();
    nothingThatBinds();
    nothingThatIsFeasible();
    System.out.print("four are proven");
  }
}
