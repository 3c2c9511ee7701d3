package pappus.bench;

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
import pappus.assessment.Assessment;
import pappus.search.Incumbents;
import pappus.search.Question;
import pappus.search.exact.ExactSearch;

/** Whole assessments a second, on one thread, of builds that fly. */
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@State(Scope.Thread)
public class AssessmentBenchmark {
  @Param({"bird-survey", "causeway-patrol", "orchard-rounds"})
  public String scenario;

  private Question question;
  private List<Assessment> builds;
  private int next;

  @Setup
  public void read() {
    question = Wares.question(scenario, Wares.folder(0, 0, "shipped"));
    var hovers = Wares.question("bird-survey", Wares.folder(0, 0, "shipped"));
    builds = new ExactSearch(hovers, 2)
        .run(10, Long.MAX_VALUE, new Incumbents(), looks -> {}).rows().stream()
            .map(row -> row.assessment())
            .toList();
  }

  @Benchmark
  public Assessment assess() {
    next = (next + 1) % builds.size();
    return question.assessor().assess(builds.get(next).build());
  }
}
