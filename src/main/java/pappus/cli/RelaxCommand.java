package pappus.cli;

import java.util.concurrent.Callable;
import pappus.answers.whatif.RelaxationReport;
import pappus.whatif.relax.Relaxer;
import picocli.CommandLine.Command;

/** What stands in the way of a scenario. */
@Command(
    name = "relax",
    description =
        "Says what stands in the way where no build is feasible: the demands in conflict, and the smallest change of each that helps by itself.",
    footer = {
      "sed s/330.00/110.00/ scenarios/bird-survey.json | pappus relax -",
      "pappus relax scenarios/club-evening.json --format json"
    })
final class RelaxCommand extends ScenarioCommand implements Callable<Integer> {
  @Override
  public Integer call() {
    format();
    var inputs = read();
    var relaxation = finding(finder -> new Relaxer(inputs.asked(), finder).relax());
    var report = new RelaxationReport(inputs.scenario(), relaxation);
    print(inputs, "relaxation", () -> report.json(run(inputs)), () -> report.text(columns()));
    return relaxation.helps() ? ExitCode.OK : ExitCode.NO;
  }
}
