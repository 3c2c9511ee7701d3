package pappus.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Good files spoiled in one place, in a way drawn from a seed, and given to a command that reads them. What holds then
 * is {@link Workbench#broken}. Other seeds with {@code -Dpappus.fuzz.seed}, more with {@code -Dpappus.fuzz.mutations}; a
 * failure prints a line for a file in {@code src/test/resources/bad}.
 */
@Tag("slow")
class FuzzTest {
  private static final Pattern JSON_VALUE =
      Pattern.compile("\"(?:[^\"\\\\]|\\\\.)*\"(?!\\s*:)|-?[0-9][0-9.eE+-]*|true|false");
  private static final Pattern JSON_NAME = Pattern.compile("\"[A-Za-z]+\"(?=\\s*:)");
  private static final Pattern CELL = Pattern.compile("[^,\\n]+");

  private static final List<String> VALUES = List.of(
      "null",
      "true",
      "0",
      "-0",
      "-1",
      "1",
      "1e-9",
      "0.005",
      "1e9",
      "1e308",
      "1e999",
      "-1e308",
      "2147483648",
      "1e-320",
      "99999999999999999999999999999999999999999999999999999999999999999999",
      "\"\"",
      "\" \"",
      "\"\\u0000\"",
      "\"a\\u202eb\"",
      "\"a\\u00a0b\"",
      "\"\\ud800\"",
      "\"../../x\"",
      "\"-\"",
      "\"/dev/zero\"",
      "\"NaN\"",
      "\"=1+1\"",
      "[]",
      "{}",
      "[[]]",
      "[null]",
      "{\"a\": 1}",
      "NaN",
      "01",
      "'a'");
  private static final List<String> CELLS = List.of(
      "",
      "-1",
      "0",
      "1e3",
      "1e999",
      "NaN",
      "999999999999999",
      "0.0000001",
      "=1+1",
      "\"",
      "\"a\nb\"",
      "\u202E",
      "\u0000",
      "a;b",
      "x".repeat(70),
      "../..",
      "-",
      "٣");

  @TempDir
  private Path folder;

  @Test
  void noSpoiledFileIsABugWhateverReadsIt() throws IOException {
    var seed = Long.getLong("pappus.fuzz.seed", 20_260_101L);
    var mutations = Integer.getInteger("pappus.fuzz.mutations", 1600);
    var random = new Random(seed);
    var bench = Workbench.in(folder);
    var names = bench.files().keySet().stream()
        .filter(name -> !name.endsWith("manifest.json"))
        .toList();
    var small = names.stream().filter(name -> !name.startsWith("parts/")).toList();
    var failures = new ArrayList<String>();
    var codes = new int[256];
    for (var i = 0; i < mutations; i++) {
      // Files that are not a catalogue are the more, since each has more ways to be read.
      var pool = random.nextInt(3) == 0 ? names : small;
      var name = pool.get(random.nextInt(pool.size()));
      var good = bench.text(name);
      var bad = spoiled(good, name.endsWith(".json"), random);
      var readers = Workbench.reading(name);
      var command = readers.get(random.nextInt(readers.size()));
      var asksForJson = random.nextInt(4) == 0;
      Files.writeString(bench.file(name), bad);
      var run = asksForJson ? bench.run(command, "--format", "json") : bench.run(command);
      codes[run.exitCode()]++;
      var broken = bench.broken(run, asksForJson);
      if (bad.contains("NaN")) {
        // It may stand where words do, and is told as one.
        broken.remove("no number");
      }
      if (!broken.isEmpty()) {
        failures.add("mutation %s of seed %s: %s\n%s\n%s"
            .formatted(
                i,
                seed,
                broken,
                line(command, name, good, bad),
                run.err().lines().limit(6).toList()));
      }
      bench.restore(name);
      bench.clear();
    }

    assertThat(failures).as(failures.size() + " of " + mutations).isEmpty();
    // Where nearly all are refused, or none, little was tried.
    assertThat(codes[ExitCode.BAD_DATA]).isBetween(mutations / 4, mutations * 9 / 10);
    assertThat(codes[ExitCode.OK] + codes[ExitCode.NO]).isGreaterThan(mutations / 20);
  }

  private static String spoiled(String good, boolean isJson, Random random) {
    var at = good.isEmpty() ? 0 : random.nextInt(good.length());
    return switch (random.nextInt(isJson ? 12 : 8)) {
      case 0 -> good.substring(0, at);
      case 1 -> good.substring(0, at) + (char) random.nextInt(0x7F) + good.substring(at);
      case 2 ->
        good.substring(0, at) + good.substring(Math.min(good.length(), at + 1 + random.nextInt(9)));
      case 3 ->
        good.substring(0, at) + good.substring(random.nextInt(at + 1), at) + good.substring(at);
      case 4, 5, 6, 7 ->
        isJson ? replaced(good, JSON_VALUE, VALUES, random) : replaced(good, CELL, CELLS, random);
      case 8 ->
        replaced(
            good, JSON_NAME, List.of("\"x\"", "\"id\"", "\"name\"", "\"mass\"", "\"\""), random);
      default -> replaced(good, JSON_VALUE, VALUES, random);
    };
  }

  /** One match, drawn, in the place of which one of the values stands, drawn. */
  private static String replaced(String good, Pattern what, List<String> values, Random random) {
    var matches = what.matcher(good).results().toList();
    var match = matches.get(random.nextInt(matches.size()));
    return good.substring(0, match.start())
        + values.get(random.nextInt(values.size()))
        + good.substring(match.end());
  }

  /** As a case of the corpus, which wants to be filled in with exit code and line. */
  private static String line(String command, String name, String good, String bad) {
    var from = 0;
    while (from < Math.min(good.length(), bad.length()) && good.charAt(from) == bad.charAt(from)) {
      from++;
    }
    var tail = 0;
    while (tail < Math.min(good.length(), bad.length()) - from
        && good.charAt(good.length() - 1 - tail) == bad.charAt(bad.length() - 1 - tail)) {
      tail++;
    }
    var context = Math.max(0, from - 40);
    return BadInput.written(
        command,
        name,
        good.substring(context, good.length() - tail),
        bad.substring(context, bad.length() - tail));
  }
}
