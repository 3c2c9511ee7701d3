package pappus.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.AuxCounters;
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

/** Whole processes as people run them: a bare machine's start, {@code java -jar} and the launcher. */
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(0)
@Warmup(iterations = 1)
@Measurement(iterations = 3)
@State(Scope.Benchmark)
public class ProcessBenchmark {
  private static final int LOOK_AGAIN_MILLIS = 10;
  private static final double TICKS_PER_SECOND = 100;

  /** 0 is the shipped catalogue. */
  @Param({"0", "1000", "5000"})
  public int ofEachKind;

  @Param({"1"})
  public long seed;

  @Param({"flat"})
  public String wares;

  @Param({"bird-survey"})
  public String scenario;

  private Path folder;

  /** What it took besides time. */
  @AuxCounters(AuxCounters.Type.EVENTS)
  @State(Scope.Thread)
  public static class Taken {
    public double peakMebibytes;
    public double cpuSeconds;
    public int exitCode;
  }

  @Setup
  public void write() {
    folder = Wares.folder(ofEachKind, seed, wares);
  }

  /** The start of a machine that does nothing. */
  @Benchmark
  public void bare(Taken taken) throws IOException, InterruptedException {
    run(List.of("java", "-version"), taken);
  }

  @Benchmark
  public void jar(Taken taken) throws IOException, InterruptedException {
    run(recommend("java", "-jar", "target/pappus.jar"), taken);
  }

  @Benchmark
  public void launcher(Taken taken) throws IOException, InterruptedException {
    run(recommend("target/pappus"), taken);
  }

  private List<String> recommend(String... tool) {
    var command = new ArrayList<>(List.of(tool));
    command.addAll(List.of("recommend", Wares.scenario(scenario).toString()));
    if (ofEachKind > 0) {
      command.addAll(List.of("--no-shipped-catalog", "--catalog", folder.toString()));
    }
    command.addAll(List.of("--out", "target/bench/out", "--quiet", "--force"));
    return command;
  }

  static void run(List<String> command, Taken taken) throws IOException, InterruptedException {
    var before = childrenSeconds();
    var process = new ProcessBuilder(command)
        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
        .redirectError(ProcessBuilder.Redirect.DISCARD)
        .start();
    var status = Path.of("/proc", Long.toString(process.pid()), "status");
    taken.peakMebibytes = 0;
    while (!process.waitFor(LOOK_AGAIN_MILLIS, TimeUnit.MILLISECONDS)) {
      taken.peakMebibytes = Math.max(taken.peakMebibytes, peak(status));
    }
    taken.exitCode = process.exitValue();
    taken.cpuSeconds = childrenSeconds() - before;
  }

  /** What processes that have ended took of all processors; 0 where the system does not tell. */
  private static double childrenSeconds() {
    try {
      // The name of the program, in brackets, may hold blanks.
      var fields =
          Files.readString(Path.of("/proc/self/stat")).replaceAll("^.*\\) ", "").split(" ");
      return (Long.parseLong(fields[13]) + Long.parseLong(fields[14])) / TICKS_PER_SECOND;
    } catch (IOException elsewhere) {
      return 0;
    }
  }

  /** Most resident memory so far; 0 where the system does not tell. */
  private static double peak(Path status) {
    try {
      return Files.readAllLines(status).stream()
          .filter(line -> line.startsWith("VmHWM:"))
          .mapToDouble(line -> Double.parseDouble(line.replaceAll("\\D", "")) / 1024)
          .findFirst()
          .orElse(0);
    } catch (IOException goneOrElsewhere) {
      return 0;
    }
  }
}
