package pappus.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import pappus.shop.SmallShop;

/** The tool on a terminal, which {@code script} plays, though its answer goes into a file. */
@Tag("slow")
@EnabledOnOs(OS.LINUX)
class WatchedTest {
  private static final String CLEAR = "\r\u001b[K";

  @TempDir
  private Path folder;

  @BeforeAll
  static void mayPlayATerminal() throws InterruptedException {
    try {
      assumeTrue(new ProcessBuilder("script", "--version").start().waitFor() == 0);
    } catch (IOException noSuchProgram) {
      assumeTrue(false, "There is no script.");
    }
  }

  /**
   * What a terminal shows of a run.
   *
   * @param typed on it
   */
  private String shown(String typed, String... args) throws IOException, InterruptedException {
    var work = Files.createDirectories(folder.resolve("work"));
    SmallShop.write(work.resolve("parts"), SmallShop.few());
    Files.writeString(work.resolve("marsh.json"), SmallShop.scenarioText(""));
    Files.writeString(work.resolve("typed.txt"), typed);
    var words = ToolProcess.command(List.of(), List.of(args)).stream()
        .map(word -> "'" + word + "'")
        .collect(Collectors.joining(" "));
    Files.writeString(work.resolve("tool.sh"), "exec " + words + " > answer.txt\n");
    var ended =
        ToolProcess.run("script -qec 'sh tool.sh' /dev/null < typed.txt; exit $?", work, List.of());
    assertThat(ended.code()).as(ended.out()).isZero();
    return ended.out();
  }

  private String answer() throws IOException {
    return Files.readString(folder.resolve("work").resolve("answer.txt"));
  }

  private String recommended(String... more) throws IOException, InterruptedException {
    var words = Stream.concat(
        Stream.of("recommend", "marsh.json", "--no-shipped-catalog", "--catalog", "parts"),
        Stream.of(more));
    return shown("", words.toArray(String[]::new));
  }

  @Test
  void waitingIsToldThoughTheAnswerGoesIntoAFile() throws IOException, InterruptedException {
    assertThat(recommended())
        .matches("(?s)" + Pattern.quote(CLEAR) + "reading; [0-9]+ s, Ctrl-C ends it.*")
        .endsWith(CLEAR);
    assertThat(answer()).startsWith("marsh: ").doesNotContain("\u001b");
  }

  @Test
  void quietlyNothingIsTold() throws IOException, InterruptedException {
    assertThat(recommended("--quiet")).isEmpty();
  }

  @Test
  void newAsksOnATerminalAndPrintsTheScenarioAlone() throws IOException, InterruptedException {
    var shown = shown("heavy\n200\n\n300\n\n\n\n\n\n\n", "new", "--cells", "4");

    assertThat(shown)
        .contains("Mass cap, g: with everything aboard it weighs less [250 g]: ")
        .contains("massCap must be a number or an object, but is the text \"heavy\".")
        .contains("Propeller, inches: 2.5, 3, 3.5, 4, 4.5 or 5 [any]: ")
        .doesNotContain("Cells in series");
    var answer = answer();
    assertThat(answer)
        .startsWith("{\n")
        .contains("\"grams\": 200", "\"amount\": 300", "\"cellsInSeries\"");
  }
}
