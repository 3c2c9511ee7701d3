package pappus.bench;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import pappus.search.Incumbents;
import pappus.search.Question;
import pappus.search.exact.ExactSearch;

/** The proof alone, of ten rows with their variants, on a catalogue that is read already; in a warm machine. */
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 2)
@Measurement(iterations = 3)
@State(Scope.Benchmark)
public class ProofBenchmark {
  private static final int ROWS = 10;
  private static final int THREADS = 2;

  /** 0 is the shipped catalogue. */
  @Param({"0", "40", "400", "1000"})
  public int ofEachKind;

  @Param({"1", "2"})
  public long seed;

  @Param({"flat", "rebranded"})
  public String wares;

  @Param({"bird-survey", "club-evening"})
  public String scenario;

  private Question question;

  /** What happened on the way. */
  @AuxCounters(AuxCounters.Type.EVENTS)
  @State(Scope.Thread)
  public static class Way {
    public double firstFeasibleMillis;
    public double bestMillis;
    public long choices;
    public long assessed;
    public double minutes;

    @Setup(Level.Iteration)
    public void reset() {
      firstFeasibleMillis = 0;
      bestMillis = 0;
    }
  }

  @Setup
  public void read() {
    question = Wares.question(scenario, Wares.folder(ofEachKind, seed, wares));
  }

  @Benchmark
  public Object proof(Way way) {
    var began = System.nanoTime();
    var incumbents = new Incumbents();
    var seen = new long[2];
    var found = new ExactSearch(question, THREADS).run(ROWS, Long.MAX_VALUE, incumbents, looks -> {
      if (incumbents.feasible() > seen[0]) {
        seen[0] = incumbents.feasible();
        var millis = (System.nanoTime() - began) / 1e6;
        way.firstFeasibleMillis = way.firstFeasibleMillis == 0 ? millis : way.firstFeasibleMillis;
        var best = incumbents.bestFirst().get(0).objective();
        if (best > seen[1]) {
          seen[1] = best;
          way.bestMillis = millis;
        }
      }
    });
    way.choices = found.nodes();
    way.assessed = incumbents.assessed();
    way.minutes = seen[1] / 60e6;
    return found;
  }
}
