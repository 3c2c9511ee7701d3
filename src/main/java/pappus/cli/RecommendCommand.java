package pappus.cli;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import pappus.ranking.Ranker;
import pappus.ranking.Ranking;
import pappus.report.RankingJson;
import pappus.report.RankingText;
import pappus.report.Run;
import pappus.search.Ending;
import pappus.search.Pool;
import pappus.search.Question;
import pappus.search.Reach;
import pappus.search.exact.ExactSearch;
import pappus.search.timefold.TimefoldSearch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** Which builds, and why these. */
@Command(
    name = "recommend",
    description =
        "Ranks builds for a scenario by flight time and says why they stand where they stand.")
final class RecommendCommand extends ScenarioCommand implements Callable<Integer> {
  /** Changes tried in all; repeatable on any machine, unlike a time. */
  private static final long MOVES = 64_000;

  /** Choices that a proof may cost before changes are tried too. */
  private static final long MOST_EFFORT = 5_000_000;

  @Option(
      names = "--count",
      paramLabel = "N",
      description = "How many candidates; else as the scenario says.")
  private @Nullable Integer count;

  /** How the best builds are looked for. */
  enum Search {
    /** With proof where it can be had, else by trying changes. */
    AUTO,
    /** With proof, or as far towards it as the effort goes. */
    EXACT,
    /** By trying changes, which proves nothing. */
    HEURISTIC
  }

  @Option(
      names = "--search",
      paramLabel = "auto|exact|heuristic",
      defaultValue = "auto",
      description =
          "exact proves that nothing does better; heuristic tries changes and proves nothing; auto proves where it can, and says so (default).")
  private Search kind;

  @Option(
      names = "--effort",
      paramLabel = "N",
      description =
          "How many choices a proof looks into at most; ends with the best so far and what more is possible.")
  private @Nullable Long effort;

  @Override
  public Integer call() {
    if (count != null && (count < 1 || count > 100)) {
      throw new ParameterException(
          spec().commandLine(), "--count must be from 1 to 100, but is " + count + ".");
    }
    if (effort != null && effort < 1) {
      throw new ParameterException(
          spec().commandLine(), "--effort must be at least 1, but is " + effort + ".");
    }
    var inputs = read();
    var wanted = count == null ? inputs.scenario().count() : count;
    var question = Question.of(inputs.catalog(), inputs.assessor());
    var obstacle = ExactSearch.obstacle(question);
    if (kind == Search.EXACT && obstacle.isPresent()) {
      throw new ParameterException(
          spec().commandLine(),
          "--search must be auto or heuristic here, but is exact: " + obstacle.get() + ".");
    }
    var pool = new Pool();
    var ranker = new Ranker(question, pool);
    var progress = new Progress(err(), isQuiet());
    if (kind == Search.HEURISTIC || obstacle.isPresent()) {
      var ending = heuristic(question, pool, ranker, wanted, progress);
      progress.clear();
      var reach = Reach.of(ending);
      return answer(
          inputs,
          wanted,
          ranker.rank(wanted, kind == Search.AUTO ? reach.because(obstacle) : reach));
    }
    var found = exact(question, pool, wanted, progress);
    var reach = new Reach(found.ending(), found.atMost(), found.nodes(), Optional.empty());
    if (found.ending() == Ending.PROVEN) {
      if (found.rows().isEmpty()) {
        // A proof assesses nothing that cannot be feasible: changes find what comes closest.
        heuristic(question, pool, ranker, wanted, progress);
      }
      progress.clear();
      return answer(inputs, wanted, ranker.rank(found.rows(), reach));
    }
    if (found.ending() == Ending.EFFORT
        && (kind == Search.AUTO || pool.bestFirst().isEmpty())) {
      // What is not proven is not to be worse than what changes find, and never nothing.
      heuristic(question, pool, ranker, wanted, progress);
    }
    progress.clear();
    return answer(inputs, wanted, ranker.rank(wanted, reach));
  }

  private ExactSearch.Found exact(Question question, Pool pool, int wanted, Progress progress) {
    var search = new ExactSearch(question, Runtime.getRuntime().availableProcessors());
    try (var interruption = Interruption.watch(search::stop)) {
      if (interruption.came()) {
        search.stop();
      }
      return search.run(
          wanted,
          effort == null ? MOST_EFFORT : effort,
          pool,
          done ->
              progress.show(String.format(Locale.ROOT, "proving, %,d choices looked into", done)));
    }
  }

  /** Fills the pool by trying changes. */
  private static Ending heuristic(
      Question question, Pool pool, Ranker ranker, int wanted, Progress progress) {
    var search = new TimefoldSearch(question, MOVES);
    try (var interruption = Interruption.watch(search::stop)) {
      var ending = search.run(
          pool, done -> progress.show("searching, start " + done + " of " + TimefoldSearch.STARTS));
      progress.show("improving part by part");
      ranker.improve(wanted, interruption::came);
      return interruption.came() ? Ending.INTERRUPTED : ending;
    }
  }

  private int answer(Inputs inputs, int wanted, Ranking ranking) {
    var run = new Run(Version.tool(), TimefoldSearch.SEED, MOVES, inputs.folders(), inputs.files());
    var json = new RankingJson(inputs.scenario(), run).of(ranking, wanted);
    output(inputs.scenario()).write(Map.of("result.json", json));
    out().print(wantsJson() ? json : new RankingText(inputs.scenario(), columns()).of(ranking));
    out().flush();
    return ranking.candidates().isEmpty() ? ExitCode.NO : ExitCode.OK;
  }
}
