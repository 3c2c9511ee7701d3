package pappus.cli;

import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import pappus.ranking.Finder;
import pappus.ranking.Ranking;
import pappus.report.RankingJson;
import pappus.report.RankingText;
import pappus.report.Run;
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
  @Option(
      names = "--count",
      paramLabel = "N",
      description = "How many candidates; else as the scenario says.")
  private @Nullable Integer count;

  @Option(
      names = "--search",
      paramLabel = "auto|exact|heuristic",
      defaultValue = "auto",
      description =
          "exact proves that nothing does better; heuristic tries changes and proves nothing; auto proves where it can, and says so (default).")
  private Finder.Way way;

  @Option(
      names = "--effort",
      paramLabel = "N",
      description =
          "How many choices a proof looks into at most; ends with the best so far and what more is possible.")
  private @Nullable Long effort;

  @Override
  public Integer call() {
    format();
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
    var question = inputs.question();
    var obstacle = ExactSearch.obstacle(question);
    if (way == Finder.Way.EXACT && obstacle.isPresent()) {
      throw new ParameterException(
          spec().commandLine(),
          "--search must be auto or heuristic here, but is exact: " + obstacle.get() + ".");
    }
    var ranking = finding(
        way,
        effort == null ? Finder.EFFORT : effort,
        Finder.MOVES,
        finder -> finder.rank(question, wanted));
    return answer(inputs, wanted, ranking);
  }

  private int answer(Inputs inputs, int wanted, Ranking ranking) {
    var run = new Run(
        Version.tool(), TimefoldSearch.SEED, Finder.MOVES, inputs.folders(), inputs.files());
    var json = new RankingJson(inputs.scenario(), run).of(ranking, wanted);
    output(inputs.scenario()).write(Map.of("result.json", json));
    out().print(wantsJson() ? json : new RankingText(inputs.scenario(), columns()).of(ranking));
    out().flush();
    return ranking.candidates().isEmpty() ? ExitCode.NO : ExitCode.OK;
  }
}
