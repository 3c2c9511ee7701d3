package pappus.cli;

import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.Callable;
import pappus.catalog.Build;
import pappus.catalog.BuildText;
import pappus.catalog.Catalog;
import pappus.doubt.Doubts;
import pappus.files.InputException;
import pappus.files.Problem;
import pappus.files.Source;
import pappus.report.AssessmentText;
import pappus.report.RankingJson;
import pappus.report.ResultFile;
import pappus.report.Run;
import pappus.search.timefold.TimefoldSearch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Everything about one build, feasible or not. */
@Command(
    name = "assess",
    description =
        "Judges one build for a scenario: what fits, what it weighs and costs, how long it flies.")
final class AssessCommand extends ScenarioCommand implements Callable<Integer> {
  @Parameters(
      index = "1",
      paramLabel = "BUILD",
      description =
          "Part ids with counts, id,id,id*4, or RESULT.json#2 for the second of a result.")
  private String buildText;

  @Override
  public Integer call() {
    var inputs = read();
    var build = build(inputs.catalog());
    var assessment = inputs.assessor().assess(build);
    var band = assessment
        .flight()
        .filter(flight -> flight.endurance().seconds() > 0)
        .map(flight -> new Doubts(inputs.assessor()).band(assessment));
    var run = new Run(Version.tool(), TimefoldSearch.SEED, 0, inputs.folders(), inputs.files());
    var json = new RankingJson(inputs.scenario(), run).of(assessment, band);
    if (hasOutputFolder()) {
      output(inputs.scenario()).write(Map.of("assessment.json", json));
    }
    out()
        .print(
            wantsJson()
                ? json
                : new AssessmentText(inputs.scenario(), columns()).of(assessment, band));
    out().flush();
    return assessment.isFeasible() ? ExitCode.OK : ExitCode.NO;
  }

  private Build build(Catalog catalog) {
    var hash = buildText.lastIndexOf('#');
    try {
      if (hash < 0) {
        return BuildText.parse(buildText, catalog);
      }
      var name = buildText.substring(0, hash);
      var rank = buildText.substring(hash + 1);
      if (!rank.matches("[1-9][0-9]{0,2}")) {
        throw new IllegalArgumentException("must end in # and a rank, but ends in #" + rank + ".");
      }
      return BuildText.of(
          ResultFile.roles(name, Source.read(Path.of(name)).text(), Integer.parseInt(rank)),
          catalog);
    } catch (IllegalArgumentException wrong) {
      throw new InputException(
          InputException.Kind.BAD_DATA,
          java.util.List.of(Problem.ofFile("BUILD", String.valueOf(wrong.getMessage()))));
    }
  }
}
