package pappus.bench;

import java.nio.file.Path;
import java.time.Duration;
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
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import pappus.catalog.CatalogFolder;
import pappus.order.OrderReader;
import pappus.order.plan.Planner;

/** Orders of clubs, each planned once in a fresh process; CP-SAT then has a minute for the same builds. */
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 0)
@Measurement(iterations = 1)
@State(Scope.Benchmark)
public class OrderBenchmark {
  private static final Duration MOST = Duration.ofMinutes(1);

  @Param({"neap-tarn", "twelve-groups"})
  public String order;

  /** How long it took without CP-SAT, and how good it is: percent for the worst share, best flights for the sums. */
  @AuxCounters(AuxCounters.Type.EVENTS)
  @State(Scope.Thread)
  public static class Answer {
    public double plannedSeconds;
    public double worst;
    public double worstAtMost;
    public double sum;
    public double sumAtMost;
    public double sumByCpSat;
    public double cpSatAtMost;
  }

  @Benchmark
  public void planned(Answer answer) {
    var start = System.nanoTime();
    var inputs = OrderReader.read(
        Path.of("src/jmh/orders", order, "order.json"), List.of(CatalogFolder.shipped()));
    var planner = new Planner(inputs, Planner.MOVES, said -> {});
    var plan = planner.plan(planner.askers());
    answer.plannedSeconds = (System.nanoTime() - start) / 1e9;
    answer.worst = plan.standing().worst() / 10.0;
    answer.worstAtMost = plan.bounds().worst().orElse(0) / 10.0;
    answer.sum = plan.standing().sum() / 1e6;
    answer.sumAtMost = plan.bounds().sum().orElse(0) / 1e6;
    var found = new CpSatOrder(plan.choice(), plan.standing().worst()).run(MOST);
    answer.sumByCpSat = found.sum() / 1e6;
    answer.cpSatAtMost = found.atMost() / 1e6;
  }
}
