package pappus.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The corpus of bad inputs: each ends with its code and says its line. {@code -Dpappus.writeBad=true} fills in what the
 * tool says of cases that want nothing yet, to be read before they are kept.
 */
@Tag("slow")
class BadInputsTest {
  private static final Path CORPUS = Path.of("src/test/resources/bad");

  @TempDir
  private Path folder;

  private static List<Path> corpus() throws IOException {
    try (var all = Files.list(CORPUS)) {
      return all.sorted().toList();
    }
  }

  @Test
  void eachEndsWithItsCodeAndSaysItsLine() throws IOException {
    var bench = Workbench.in(folder);
    var failures = new ArrayList<String>();
    var codes = new TreeSet<Integer>();
    var number = 0;
    for (var file : corpus()) {
      for (var bad : BadInput.read(file)) {
        number++;
        var run = run(bench, bad);
        var broken = bench.broken(run, false);
        var says = (run.err() + run.out())
            .replace(CommandRun.typed(folder).toString(), "@")
            .lines()
            .toList();
        if (run.exitCode() != bad.code()
            || !broken.isEmpty()
            || says.stream().noneMatch(bad::isSaid)) {
          failures.add(
              bad + "\n  but ends with " + run.exitCode() + " " + broken + " and says " + says);
        }
        codes.add(run.exitCode());
        restore(bench, bad);
      }
    }

    assertThat(failures).isEmpty();
    assertThat(number).isGreaterThanOrEqualTo(150);
    assertThat(codes).contains(ExitCode.USAGE, ExitCode.BAD_DATA, ExitCode.NO_INPUT);
  }

  private static CommandRun run(Workbench bench, BadInput bad) throws IOException {
    bad.spoil(bench);
    return bench.run(bad.command());
  }

  private static void restore(Workbench bench, BadInput bad) throws IOException {
    if (bench.files().containsKey(bad.file())) {
      bench.restore(bad.file());
    } else if (!bad.file().isEmpty()) {
      Files.delete(bench.file(bad.file()));
    }
    bench.clear();
  }

  @Test
  void whatIsNotYetWantedIsWritten() throws IOException {
    if (!Boolean.getBoolean("pappus.writeBad")) {
      for (var file : corpus()) {
        assertThat(BadInput.read(file)).allSatisfy(bad -> assertThat(bad.line()).isNotEmpty());
      }
      return;
    }
    var bench = Workbench.in(folder);
    for (var file : corpus()) {
      var lines = new ArrayList<String>();
      for (var line : Files.readAllLines(file)) {
        if (!line.endsWith("\t\t") || line.startsWith("#")) {
          lines.add(line);
          continue;
        }
        var bad = BadInput.of(line.substring(0, line.length() - 1) + "0\t");
        var run = run(bench, bad);
        var first = run.err().lines().findFirst().orElse("");
        var said = first.replace(CommandRun.typed(folder).toString(), "@");
        lines.add(line.substring(0, line.length() - 1)
            + run.exitCode()
            + "\t"
            + (said.length() > 200 ? said.substring(0, 199) + "…" : said));
        restore(bench, bad);
      }
      Files.write(file, lines);
    }
  }
}
