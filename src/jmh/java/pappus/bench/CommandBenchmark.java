package pappus.bench;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Commands on the shipped scenarios, each once in a process of its own. */
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(0)
@Warmup(iterations = 0)
@Measurement(iterations = 1)
@State(Scope.Benchmark)
public class CommandBenchmark {
  private static final List<String> RESULT =
      List.of("recommend", "scenarios/bird-survey.json", "--out", "target/bench/told");

  @Param({
    "recommend scenarios/bird-survey.json",
    "recommend scenarios/causeway-patrol.json",
    "recommend scenarios/club-evening.json",
    "recommend scenarios/mountain-shelter.json",
    "recommend scenarios/offer-dike-long.json",
    "recommend scenarios/offer-dike-quick.json",
    "recommend scenarios/offer-dike-stout.json",
    "recommend scenarios/orchard-rounds.json",
    "recommend scenarios/bird-survey.json --search heuristic",
    "recommend scenarios/bird-survey.json --report",
    "explain scenarios/bird-survey.json target/bench/told/result.json#1",
    "compare scenarios/bird-survey.json target/bench/told/result.json#1 target/bench/told/result.json#2",
    "alternatives scenarios/bird-survey.json target/bench/told/result.json#1 --kind battery",
    "vary scenarios/bird-survey.json --over mass-cap=150:245:5",
    "vary scenarios/bird-survey.json --front",
    "fits cottongrass-4 --matrix"
  })
  public String command;

  @Setup
  public void recommend() throws IOException, InterruptedException {
    tell(RESULT, new ProcessBenchmark.Taken());
  }

  @Benchmark
  public void run(ProcessBenchmark.Taken taken) throws IOException, InterruptedException {
    var words = new ArrayList<>(List.of(command.split(" ")));
    if (command.startsWith("recommend")) {
      words.addAll(List.of("--out", "target/bench/out"));
    }
    tell(words, taken);
  }

  private static void tell(List<String> words, ProcessBenchmark.Taken taken)
      throws IOException, InterruptedException {
    var whole = new ArrayList<>(List.of("java", "-jar", "target/pappus.jar"));
    whole.addAll(words);
    whole.add("--quiet");
    if (words.contains("--out")) {
      whole.add("--force");
    }
    ProcessBenchmark.run(whole, taken);
    if (taken.exitCode != 0) {
      throw new IllegalStateException(String.join(" ", whole) + " ended with " + taken.exitCode);
    }
  }
}
