package pappus.cli;

import java.util.Map;
import java.util.concurrent.Callable;
import pappus.ranking.Ranker;
import pappus.report.RankingJson;
import pappus.report.RankingText;
import pappus.report.Run;
import pappus.search.Ending;
import pappus.search.Pool;
import pappus.search.Question;
import pappus.search.timefold.TimefoldSearch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Which builds, and why these. */
@Command(
    name = "recommend",
    description =
        "Ranks builds for a scenario by flight time and says why they stand where they stand.")
final class RecommendCommand extends CatalogCommand implements Callable<Integer> {
  /** Changes tried in all; repeatable on any machine, unlike a time. */
  private static final long MOVES = 64_000;

  @Option(
      names = "--count",
      paramLabel = "N",
      description = "How many candidates; else as the scenario says.")
  private @org.jspecify.annotations.Nullable Integer count;

  @Override
  public Integer call() {
    if (count != null && (count < 1 || count > 100)) {
      throw new picocli.CommandLine.ParameterException(
          spec().commandLine(), "--count must be from 1 to 100, but is " + count + ".");
    }
    var inputs = read();
    var wanted = count == null ? inputs.scenario().count() : count;
    var question = Question.of(inputs.catalog(), inputs.assessor());
    var search = new TimefoldSearch(question, MOVES);
    try (var interruption = Interruption.watch(search::stop)) {
      return answer(inputs, wanted, question, search, interruption);
    }
  }

  private int answer(
      Inputs inputs,
      int wanted,
      Question question,
      TimefoldSearch search,
      Interruption interruption) {
    var pool = new Pool();
    var progress = new Progress(err(), isQuiet());
    var ending = search.run(
        pool, done -> progress.show("searching, start " + done + " of " + TimefoldSearch.STARTS));
    var ranker = new Ranker(question, pool);
    progress.show("improving part by part");
    ranker.improve(wanted, interruption::came);
    progress.clear();
    var ranking = ranker.rank(wanted, interruption.came() ? Ending.INTERRUPTED : ending);
    var run = new Run(Version.tool(), TimefoldSearch.SEED, MOVES, inputs.folders(), inputs.files());
    var json = new RankingJson(inputs.scenario(), run).of(ranking);
    output(inputs.scenario()).write(Map.of("result.json", json));
    out().print(wantsJson() ? json : new RankingText(inputs.scenario(), columns()).of(ranking));
    out().flush();
    return ranking.candidates().isEmpty() ? ExitCode.NO : ExitCode.OK;
  }
}
