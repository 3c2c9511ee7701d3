package pappus.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class MeasuredTableTest {
  private static final String BEFORE = """
      Prose before.

      <!-- measured: Walk -->

      `run Walk`

      | what | of | median | worst | unit | besides | day | machine |
      | --- | --- | --- | --- | --- | --- | --- | --- |
      | Walk.fast | a | 1 | 2 | s |  | 2026-01-01 | old |
      | Walk.slow | a | 3 | 4 | s |  | 2026-01-01 | old |

      <!-- end: Walk -->

      Prose after.
      """;

  private static final List<String> NOW = List.of("2026-02-02", "new");

  @Test
  void renewsWhatRanAndLeavesTheOthersTheirDay() {
    var after = MeasuredTable.renewed(
        BEFORE,
        "Walk",
        "run Walk",
        List.of(
            List.of("Walk.slow", "a", "5", "6", "s", ""),
            List.of("Walk.slow", "b", "7", "8", "s", "")),
        NOW);

    assertThat(after)
        .isEqualTo(BEFORE.replace("| Walk.slow | a | 3 | 4 | s |  | 2026-01-01 | old |", """
            | Walk.slow | a | 5 | 6 | s |  | 2026-02-02 | new |
            | Walk.slow | b | 7 | 8 | s |  | 2026-02-02 | new |"""));
  }

  @Test
  void fillsATableThatIsEmpty() {
    var after = MeasuredTable.renewed(
        "<!-- measured: Walk -->\n<!-- end: Walk -->\n",
        "Walk",
        "run Walk",
        List.of(List.of("Walk.fast", "a", "1", "2", "s", "")),
        NOW);

    assertThat(after).contains("`run Walk`\n\n| what |", "| 2026-02-02 | new |\n\n<!-- end");
  }

  @Test
  void refusesADocumentWithoutTheTable() {
    assertThatThrownBy(() -> MeasuredTable.renewed("Prose.\n", "Walk", "run Walk", List.of(), NOW))
        .hasMessageContaining("<!-- measured: Walk -->");
  }

  /** A benchmark without a table would be run for nothing. */
  @Test
  void everyBenchmarkHasItsTable() throws Exception {
    var document = Files.readString(Path.of("src/site/markdown/measured.md"));

    try (var files = Files.list(Path.of("src/jmh/java/pappus/bench"))) {
      var benchmarks = files
          .map(file -> file.getFileName().toString().replace(".java", ""))
          .filter(name -> name.endsWith("Benchmark"))
          .toList();
      assertThat(benchmarks)
          .isNotEmpty()
          .allSatisfy(name -> assertThat(document)
              .contains("<!-- measured: " + name + " -->", "<!-- end: " + name + " -->"));
    }
  }
}
