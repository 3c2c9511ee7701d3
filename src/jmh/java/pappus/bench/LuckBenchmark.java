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
import pappus.luck.Luck;
import pappus.luck.World;

/** How lucky winners are in worlds whose truth is known; what counts here is not the time. */
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(1)
@Warmup(iterations = 0)
@Measurement(iterations = 1)
@State(Scope.Benchmark)
public class LuckBenchmark {
  private static final int MANY = 1000;

  /** Motors, propellers and batteries, as many of each. */
  @Param({"24", "120", "1000"})
  public int ofEach;

  @Param
  public World.Kind kind;

  /** Means and their standard errors, %. */
  @AuxCounters(AuxCounters.Type.EVENTS)
  @State(Scope.Thread)
  public static class Means {
    public double worlds;
    public double bias;
    public double biasError;
    public double lost;
    public double lostToCaution;
    public double lostToCautionError;

    @Setup(Level.Iteration)
    public void reset() {
      worlds = 0;
    }
  }

  @Benchmark
  public Object luck(Means means) {
    var worlds = ofEach < MANY ? 60 : 30;
    var luck = Luck.in(kind, ofEach, worlds);
    means.worlds = worlds;
    means.bias = 100 * luck.meanBias().value();
    means.biasError = 100 * luck.meanBias().error();
    means.lost = 100 * luck.meanLoss().value();
    means.lostToCaution = 100 * luck.meanLostToCaution().value();
    means.lostToCautionError = 100 * luck.meanLostToCaution().error();
    return luck;
  }
}
