package pappus.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import pappus.Pappus;
import pappus.answers.build.AssessmentText;
import pappus.answers.result.AssessedJson;
import pappus.doubt.Doubts;
import pappus.scenario.reading.Setting;
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
  @Parameters(index = "1", paramLabel = "BUILD", description = BuildArgument.WITH_LUMP)
  private String buildText;

  private @Nullable Setting lump;

  /** A lump in a build is asked for as in a scenario: of all that tell of the run it is one more setting. */
  @Override
  List<Setting> settings() {
    var settings = new ArrayList<>(super.settings());
    if (lump != null) {
      settings.add(lump);
    }
    return settings;
  }

  @Override
  public Integer call() {
    format();
    var named = BuildArgument.withoutLump(buildText, catalogFolders());
    lump = named.lump();
    var inputs = read();
    var build = BuildArgument.read(named.parts(), inputs.catalog());
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
