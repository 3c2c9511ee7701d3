package pappus.bench;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
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
import pappus.assessment.Assessment;
import pappus.search.Ending;
import pappus.search.Incumbents;
import pappus.search.Question;
import pappus.search.exact.ExactSearch;
import pappus.search.flat.ChocoSearch;
import pappus.search.flat.FlatModel;
import pappus.search.plain.PlainSearch;
import pappus.search.timefold.TimefoldSearch;

/**
 * The best build by different searches of the same catalogue, each in a fresh process. Choco and CP-SAT work on a flat
 * model of it, which knows what motor, propeller and battery reach at most; both end after a minute. The plain search
 * is told the best and confirms it.
 */
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 0)
@Measurement(iterations = 1)
@State(Scope.Benchmark)
public class OthersBenchmark {
  private static final Duration MOST = Duration.ofMinutes(1);
  private static final long MOVES = 64_000;
  private static final long TABLE_ROWS = 100_000;

  @Param({"10", "40"})
  public int ofEachKind;

  @Param({"1", "2"})
  public long seed;

  private Question question;

  /** How good it is. */
  @AuxCounters(AuxCounters.Type.EVENTS)
  @State(Scope.Thread)
  public static class Answer {
    public double minutes;
    public int proven;

    void is(Optional<Assessment> best, boolean isProven) {
      minutes = best.map(Assessment::objective).orElse(0L) / 60e6;
      proven = isProven ? 1 : 0;
    }
  }

  @Setup
  public void read() {
    question = Wares.question("bird-survey", Wares.folder(ofEachKind, seed, "flat"));
  }

  @Benchmark
  public void exact(Answer answer) {
    var found = best();
    answer.is(found, true);
  }

  private Optional<Assessment> best() {
    var found = new ExactSearch(question, 2).run(1, Long.MAX_VALUE, new Incumbents(), looks -> {});
    if (found.ending() != Ending.PROVEN) {
      throw new IllegalStateException("not proven");
    }
    return found.rows().stream().findFirst().map(row -> row.assessment());
  }

  /** With the time of the search that gives it the best. */
  @Benchmark
  public void exactThenPlain(Answer answer) {
    var best = best();
    var rows = best.map(List::of).orElse(List.of());
    var found = new PlainSearch(question, rows, rows.isEmpty()).run(Long.MAX_VALUE, looks -> {});
    answer.is(best, found.better().isEmpty());
  }

  @Benchmark
  public void timefold(Answer answer) {
    var incumbents = new Incumbents();
    new TimefoldSearch(question, MOVES).run(incumbents, starts -> {});
    answer.is(incumbents.bestFirst().stream().findFirst(), false);
  }

  @Benchmark
  public void choco(Answer answer) {
    var found = new ChocoSearch(new FlatModel(question, TABLE_ROWS), true).run(MOST);
    answer.is(found.best(), found.isProven());
  }

  @Benchmark
  public void cpSat(Answer answer) {
    var found = new CpSatSearch(new FlatModel(question, TABLE_ROWS)).run(MOST);
    answer.is(found.best(), found.isProven());
  }
}
