package pappus.bench;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.CommandLineOptionException;
import org.openjdk.jmh.runner.options.CommandLineOptions;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;

/**
 * Runs benchmarks and writes them into the document of what was measured: a table for each class, with median and worst,
 * the day, the machine, and the command above it. Rows that did not run keep theirs.
 */
public final class Benchmarks {
  private static final Path INTO = Path.of("src", "site", "markdown", "measured.md");

  private Benchmarks() {}

  /**
   * Runs to its end.
   *
   * @param args as the library's command line has them; a name says which to run
   */
  public static void main(String[] args)
      throws CommandLineOptionException, RunnerException, IOException {
    var options = new OptionsBuilder()
        .parent(new CommandLineOptions(args))
        .timeout(TimeValue.minutes(20))
        .build();
    var when = List.of(LocalDate.now(ZoneOffset.UTC).toString(), machine());
    var rows = new TreeMap<String, List<List<String>>>();
    new Runner(options)
        .run()
        .forEach(
            result -> rows.computeIfAbsent(name(result).split("\\.")[0], key -> new ArrayList<>())
                .add(row(result)));
    var document = Files.readString(INTO);
    for (var table : rows.entrySet()) {
      document = MeasuredTable.renewed(
          document, table.getKey(), command(table.getKey()), table.getValue(), when);
    }
    Files.writeString(INTO, document);
  }

  /** As it is typed, so that the table tells where it comes from. */
  private static String command(String benchmark) {
    return "mvn -q -ntp -Pjmh -DskipTests -Djmh.only=%s verify".formatted(benchmark);
  }

  /** With what else it had to do: beside other work all but CPU time is longer. */
  private static String machine() {
    var system = ManagementFactory.getOperatingSystemMXBean();
    return String.format(
        Locale.ROOT,
        "%d cores, load %.1f, Java %s",
        system.getAvailableProcessors(),
        system.getSystemLoadAverage(),
        System.getProperty("java.version"));
  }

  /** Class and method. */
  private static String name(RunResult result) {
    return result.getParams().getBenchmark().replaceFirst(".*\\.(\\w+\\.\\w+)$", "$1");
  }

  private static List<String> row(RunResult result) {
    var parameters = new ArrayList<String>();
    for (var key : result.getParams().getParamsKeys()) {
      parameters.add(key + " " + result.getParams().getParam(key));
    }
    var times = result.getPrimaryResult().getStatistics();
    var besides = new TreeMap<String, String>();
    result
        .getSecondaryResults()
        .forEach((name, each) -> besides.put(name, number(each.getStatistics().getMean())));
    var isRate = result.getPrimaryResult().getScoreUnit().startsWith("ops");
    return List.of(
        name(result),
        String.join(", ", parameters),
        number(times.getPercentile(50)),
        number(isRate ? times.getMin() : times.getMax()),
        result.getPrimaryResult().getScoreUnit(),
        String.join(", ", entries(besides)));
  }

  private static List<String> entries(Map<String, String> besides) {
    return besides.entrySet().stream()
        .map(entry -> entry.getKey() + " " + entry.getValue())
        .toList();
  }

  private static String number(double number) {
    return String.format(Locale.ROOT, number < 100 ? "%.3g" : "%,.0f", number);
  }
}
