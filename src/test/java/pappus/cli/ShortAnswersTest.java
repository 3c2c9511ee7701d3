package pappus.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.json.JsonMapper;

/** What a person reads of the shipped catalogue and scenarios is short unless all of it is asked for. */
class ShortAnswersTest {
  private static final int MOST_LINES = 60;
  private static final int COLUMNS = 80;

  /** Finds a front that is long enough, if not all of it. */
  private static final String EFFORT = "100000";

  static List<Path> scenarios() throws IOException {
    try (var files = Files.list(Path.of("scenarios"))) {
      return files.filter(Files::isRegularFile).sorted().toList();
    }
  }

  private static void isShort(CommandRun run) {
    var lines = run.out().lines().toList();
    assertThat(lines.size()).isBetween(10, MOST_LINES);
    assertThat(lines).allMatch(line -> line.length() <= COLUMNS);
    assertThat(lines).allMatch(line -> line.equals(line.stripTrailing()));
  }

  /** What is traded for what, and what could take the place of a part of the longest of it. */
  @Tag("slow")
  @ParameterizedTest
  @MethodSource("scenarios")
  void whatIsTradedAndWhatCouldTakeAPlace(Path scenario, @TempDir Path folder) throws IOException {
    var file = scenario.toString();
    var written = folder.toString();
    isShort(
        CommandRun.of("vary", file, "--front", "--effort", EFFORT, "--report", "--out", written));
    var json = JsonMapper.shared().readTree(Files.readString(folder.resolve("variation.json")));
    var build = json.path("front").path(0).path("build").stringValue();

    for (var kind : List.of("battery", "propeller", "board")) {
      var run = CommandRun.of("alternatives", file, build, "--kind", kind);
      isShort(run);
      assertThat(run.out()).contains(", as it is\n");
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "cottongrass-4",
        "spikerush-1303-3400",
        "ligule-4x1.9x2",
        "tidewell-2s-3500",
        "penstock-20-smooth",
        "newteye-14-feather"
      })
  void whatGoesWithAPart(String id) {
    var brief = CommandRun.of("fits", id);
    var all = CommandRun.of("fits", id, "--all");

    isShort(brief);
    assertThat(all.out().lines().count()).isGreaterThan(MOST_LINES);
    // Every part of a spreadsheet is named where all are asked for.
    CommandRun.of("fits", id, "--format", "csv")
        .out()
        .lines()
        .skip(1)
        .map(line -> line.replaceFirst("^[^,]*,(\"[^\"]*\"|[^,]*),([^,]*),.*", "$2"))
        .forEach(part -> assertThat(all.out()).contains(part));
  }
}
