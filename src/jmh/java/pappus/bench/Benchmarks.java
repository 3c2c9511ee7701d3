package pappus.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collection;
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

/** Runs benchmarks and writes the command, the day, the machine, and a table with median and worst. */
public final class Benchmarks {
  private static final Path INTO = Path.of("target", "benchmarks.md");

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
    var table = command(args) + table(new Runner(options).run());
    Files.writeString(INTO, table);
    System.out.print(table);
  }

  /** As it is typed, so that the table tells where it comes from. */
  private static String command(String[] args) {
    return "`mvn -q -ntp -Pjmh -DskipTests -Djmh.only='%s' verify`\n\n"
        .formatted(String.join(" ", args));
  }

  private static String table(Collection<RunResult> results) {
    var lines = new ArrayList<String>();
    lines.add("%s, %s cores, Java %s"
        .formatted(
            LocalDate.now(ZoneOffset.UTC),
            Runtime.getRuntime().availableProcessors(),
            Runtime.version()));
    lines.add("");
    lines.add("| what | of | median | worst | unit | besides |");
    lines.add("| --- | --- | --- | --- | --- | --- |");
    for (var result : results) {
      lines.add(line(result));
    }
    return String.join("\n", lines) + "\n";
  }

  private static String line(RunResult result) {
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
    return "| %s | %s | %s | %s | %s | %s |"
        .formatted(
            result.getParams().getBenchmark().replaceFirst(".*\\.(\\w+\\.\\w+)$", "$1"),
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
