package pappus.cli;

import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import pappus.Inputs;
import pappus.answers.explain.WhyJson;
import pappus.answers.explain.WhyNotJson;
import pappus.answers.explain.WhyNotText;
import pappus.answers.explain.WhyText;
import pappus.assessment.Assessment;
import pappus.change.Why;
import pappus.change.WhyNot;
import pappus.files.Closest;
import pappus.files.Shown;
import pappus.part.Antenna;
import pappus.part.Part;
import pappus.part.Role;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;

/** Why a build is as it is, and why a part is not in it. */
@Command(
    name = "explain",
    description =
        "Says why a build is as it is: the tightest limit, what a gram and a watt cost, where grams can be saved, the best swap of each part; with --part, why a part is not in it.",
    footer = {
      "pappus explain scenarios/bird-survey.json out/bird-survey/result.json#1",
      "pappus explain scenarios/bird-survey.json out/bird-survey/result.json#1 \\",
      "  --part cottongrass-3.5"
    })
final class ExplainCommand extends ScenarioCommand implements Callable<Integer> {
  @Parameters(index = "1", paramLabel = "BUILD", description = BuildArgument.DESCRIPTION)
  private String buildText;

  @Option(
      names = "--part",
      paramLabel = "ID",
      description = "Why this part is not in the build, and the best build that has it.")
  private @Nullable String partId;

  @Override
  public Integer call() {
    format();
    var inputs = read();
    var build = BuildArgument.read(buildText, inputs.catalog());
    var assessment = inputs.assessor().assess(build);
    if (partId != null) {
      return whyNot(inputs, assessment, part(inputs, partId));
    }
    var best = finding(finder -> finder.best(inputs.question()));
    var why = Why.of(assessment, inputs.question());
    print(
        inputs,
        "why",
        () -> WhyJson.of(inputs.scenario(), run(inputs), assessment, why, best),
        () -> new WhyText(inputs.scenario(), columns()).of(assessment, why, best));
    return assessment.isFeasible() ? ExitCode.OK : ExitCode.NO;
  }

  private Part part(Inputs inputs, String id) {
    var part = inputs.catalog().part(id);
    if (part.isEmpty()) {
      throw new ParameterException(
          spec().commandLine(),
          "--part must be the id of a part in the catalogue, but is %s.%s"
              .formatted(Shown.text(id), Closest.advice(id, inputs.catalog().ids())));
    }
    if (!(part.get() instanceof Antenna) && part.get().fills().isEmpty()) {
      throw new ParameterException(
          spec().commandLine(),
          "--part must be a part that is chosen, but %s is small hardware, which follows from the others."
              .formatted(id));
    }
    return part.get();
  }

  private int whyNot(Inputs inputs, Assessment winner, Part part) {
    var why = finding(finder ->
        WhyNot.of(part, role(part, winner), winner, inputs.scenario(), inputs.supply(), finder));
    print(
        inputs,
        "why-not",
        () -> WhyNotJson.of(inputs.scenario(), run(inputs), why),
        () -> WhyNotText.of(inputs.scenario(), why, columns()));
    return why.best().build().isPresent() ? ExitCode.OK : ExitCode.NO;
  }

  /** An antenna is for the port of its band; video is asked first. */
  private static Role role(Part part, Assessment winner) {
    if (!(part instanceof Antenna antenna)) {
      return part.fills().get(0);
    }
    return winner
            .build()
            .port(Role.VIDEO_ANTENNA)
            .filter(port -> port.band() == antenna.band())
            .isPresent()
        ? Role.VIDEO_ANTENNA
        : Role.RADIO_ANTENNA;
  }
}
