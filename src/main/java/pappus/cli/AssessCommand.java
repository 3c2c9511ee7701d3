package pappus.cli;

import java.util.Map;
import java.util.concurrent.Callable;
import pappus.answers.build.AssessmentText;
import pappus.answers.result.AssessedJson;
import pappus.answers.result.Run;
import pappus.doubt.Doubts;
import pappus.search.timefold.TimefoldSearch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Everything about one build, feasible or not. */
@Command(
    name = "assess",
    description =
        "Judges one build for a scenario: what fits, what it weighs and costs, how long it flies.")
final class AssessCommand extends ScenarioCommand implements Callable<Integer> {
  @Parameters(index = "1", paramLabel = "BUILD", description = BuildArgument.DESCRIPTION)
  private String buildText;

  @Override
  public Integer call() {
    format();
    var inputs = read();
    var build = BuildArgument.read(buildText, inputs.catalog());
    var assessment = inputs.assessor().assess(build);
    var band = assessment
        .flight()
        .filter(flight -> flight.endurance().seconds() > 0)
        .map(flight -> new Doubts(inputs.assessor()).band(assessment));
    var run = new Run(Version.tool(), TimefoldSearch.SEED, 0, inputs.folders(), inputs.files());
    var json = AssessedJson.of(inputs.scenario(), run, assessment, band);
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
}
