package pappus.cli;

import java.util.Map;
import java.util.concurrent.Callable;
import pappus.Pappus;
import pappus.answers.build.AssessmentText;
import pappus.answers.result.AssessedJson;
import pappus.doubt.Doubts;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Everything about one build, feasible or not. */
@Command(
    name = "assess",
    description =
        "Judges one build for a scenario: what fits, what it weighs and costs, how long it flies.",
    footer = {
      "pappus assess scenarios/bird-survey.json out/bird-survey/result.json#1",
      "pappus assess scenarios/bird-survey.json out/bird-survey/result.json#2 \\",
      "  --format json"
    })
final class AssessCommand extends ScenarioCommand implements Callable<Integer> {
  @Parameters(index = "1", paramLabel = "BUILD", description = BuildArgument.DESCRIPTION)
  private String buildText;

  @Override
  public Integer call() {
    format();
    var inputs = read();
    var build = BuildArgument.read(buildText, inputs.catalog());
    var assessment = Pappus.assess(inputs, build);
    var band = assessment
        .flight()
        .filter(flight -> flight.endurance().seconds() > 0)
        .map(flight -> new Doubts(inputs.assessor()).band(assessment));
    var run = run(inputs, 0);
    var json = AssessedJson.of(inputs.scenario(), run, assessment, band);
    if (hasOutputFolder()) {
      output(inputs.scenario()).write(Map.of("assessment.json", json));
    }
    out()
        .document(
            wantsJson()
                ? json
                : new AssessmentText(inputs.scenario(), columns()).of(assessment, band));
    return assessment.isFeasible() ? ExitCode.OK : ExitCode.NO;
  }
}
