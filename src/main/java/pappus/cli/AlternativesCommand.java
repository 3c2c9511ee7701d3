package pappus.cli;

import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pappus.answers.swap.AlternativesReport;
import pappus.change.Alternatives;
import pappus.files.Shown;
import pappus.part.Role;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;

/** What could take the place of a part in a quad that is there. */
@Command(
    name = "alternatives",
    description =
        "Lists every part that could replace one in a quad: mass, flight, price, what changes with it; what does not fit comes below, with the reason.",
    footer = {
      "pappus alternatives scenarios/bird-survey.json out/bird-survey/result.json#1 \\",
      "  --kind battery",
      "pappus alternatives scenarios/bird-survey.json out/bird-survey/result.json#1 \\",
      "  --kind propeller --format csv"
    })
final class AlternativesCommand extends ScenarioCommand implements Callable<Integer> {
  @Parameters(index = "1", paramLabel = "BUILD", description = BuildArgument.DESCRIPTION)
  private String buildText;

  @Option(
      names = "--kind",
      paramLabel = "KIND",
      required = true,
      description = "What is to be replaced, such as battery, propeller or video-antenna.")
  private String kind;

  @Option(names = "--all", description = "Show every part; without it, a screen or two.")
  private boolean isAll;

  @Override
  public Integer call() {
    format(Format.CSV, Format.MARKDOWN);
    var role = Stream.of(Role.values())
        .filter(each -> each.key().equals(kind))
        .findFirst()
        .orElseThrow(() -> new ParameterException(
            spec().commandLine(),
            "--kind must be one of %s, but is %s."
                .formatted(
                    Stream.of(Role.values()).map(Role::key).collect(Collectors.joining(", ")),
                    Shown.text(kind))));
    var inputs = read();
    var base = inputs.assessor().assess(BuildArgument.read(buildText, inputs.catalog()));
    var found = Alternatives.of(base, role, inputs.catalog(), inputs.question());
    var report = new AlternativesReport(inputs.scenario(), base, role, found);
    print(
        inputs,
        "alternatives-" + role.key(),
        () -> report.json(run(inputs)),
        () -> report.text(columns(), isAll),
        report::csv,
        report::markdown);
    return found.stream().anyMatch(one -> one.swap().breaksNothing()) ? ExitCode.OK : ExitCode.NO;
  }
}
