package pappus.cli;

import java.util.List;
import java.util.concurrent.Callable;
import pappus.answers.build.Against;
import pappus.answers.explain.ComparisonJson;
import pappus.answers.explain.ComparisonText;
import pappus.assessment.Assessment;
import pappus.doubt.Doubts;
import pappus.search.Incumbents;
import picocli.CommandLine.Command;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;

/** Builds beside each other. */
@Command(
    name = "compare",
    description =
        "Puts two to six builds beside each other, differences first; each is a row of a result or typed as part ids, candidates or not.",
    footer = {
      "pappus compare scenarios/bird-survey.json out/bird-survey/result.json#1 \\",
      "  out/bird-survey/result.json#2",
      "pappus compare scenarios/bird-survey.json out/bird-survey/result.json#1 \\",
      "  out/bird-survey/result.json#3 --format markdown"
    })
final class CompareCommand extends ScenarioCommand implements Callable<Integer> {
  private static final int MOST = 6;

  @Parameters(
      index = "1",
      arity = "2..*",
      paramLabel = "BUILD",
      description = BuildArgument.DESCRIPTION)
  private List<String> buildTexts;

  @Override
  public Integer call() {
    format(Format.CSV, Format.MARKDOWN);
    if (buildTexts.size() > MOST) {
      throw new ParameterException(
          spec().commandLine(),
          "At most %s builds can be compared, but %s are given."
              .formatted(MOST, buildTexts.size()));
    }
    var inputs = read();
    var builds = BuildArgument.readAll(buildTexts, inputs.catalog()).stream()
        .map(build -> inputs.assessor().assess(build))
        .toList();
    var doubts = new Doubts(inputs.assessor());
    var bands = builds.stream()
        .map(build -> build
            .flight()
            .filter(flight -> flight.endurance().seconds() > 0)
            .map(flight -> doubts.band(build)))
        .toList();
    var best = finding(finder -> finder.best(inputs.question()));
    var first = builds.stream().filter(Assessment::isFeasible).min(Incumbents.BEST_FIRST);
    var standing =
        "Best of these: " + new Against(inputs.scenario()).of(first.orElse(builds.get(0)), best);
    var text = new ComparisonText(inputs.scenario(), builds, bands);
    print(
        inputs,
        "comparison",
        () -> ComparisonJson.of(inputs.scenario(), run(inputs), builds, bands, best, standing),
        () -> text.text(standing, columns()),
        text::csv,
        text::markdown);
    return builds.stream().allMatch(Assessment::isFeasible) ? ExitCode.OK : ExitCode.NO;
  }
}
