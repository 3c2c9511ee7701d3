package pappus.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import pappus.answers.weighing.WeighPage;
import pappus.answers.weighing.WeighReport;
import pappus.catalog.OwnFolder;
import pappus.files.InputException;
import pappus.files.Problem;
import pappus.files.Problems;
import pappus.files.Source;
import pappus.weighing.FlightRow;
import pappus.weighing.MassRow;
import pappus.weighing.WeighIn;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;

/** Estimate against scale and flights. */
@Command(
    name = "weigh",
    description =
        "Sets the estimate of a build against what a scale and flights say, and keeps both in a folder of the builder's own.",
    footer = {
      "pappus weigh scenarios/bird-survey.json out/bird-survey/result.json#1 \\",
      "  --masses masses.csv",
      "pappus weigh scenarios/bird-survey.json out/bird-survey/result.json#1 \\",
      "  --masses masses.csv --flights flights.csv --into mine"
    })
final class WeighCommand extends ScenarioCommand implements Callable<Integer> {
  @Parameters(index = "1", paramLabel = "BUILD", description = BuildArgument.DESCRIPTION)
  private String buildText;

  @Option(
      names = "--masses",
      paramLabel = "CSV",
      description =
          "What was weighed: columns what (id of a part, dry or ready), grams, and where wanted pieces and step_g.")
  private @Nullable Path massFile;

  @Option(
      names = "--flights",
      paramLabel = "CSV",
      description =
          "What was flown: columns style, minutes, charged_mah, and where wanted pack, age, air_c, pack_c, landing_v, sensor_mah.")
  private @Nullable Path flightFile;

  @Option(
      names = "--into",
      paramLabel = "FOLDER",
      description = "Folder of one's own for weighed masses and power factors.")
  private @Nullable Path into;

  @Mixin
  private ReportOption page = new ReportOption();

  @Override
  public Integer call() {
    format(Format.CSV, Format.MARKDOWN);
    if (massFile == null && flightFile == null) {
      throw new ParameterException(spec().commandLine(), "--masses or --flights must be given.");
    }
    var inputs = read();
    var build = BuildArgument.read(buildText, inputs.catalog());
    var problems = new Problems();
    var files = new ArrayList<>(inputs.files());
    List<MassRow> masses = List.of();
    List<FlightRow> flights = List.of();
    if (massFile != null) {
      var source = Source.read(massFile);
      files.add(source.fingerprint());
      masses = MassRow.read(source, problems);
      MassRow.check(masses, inputs.assessor(), build, problems);
    }
    if (flightFile != null) {
      var source = Source.read(flightFile);
      files.add(source.fingerprint());
      flights = FlightRow.read(source, problems);
      FlightRow.check(flights, inputs.catalog(), inputs.assessor(), build, problems);
    }
    problems.throwIfAny();
    WeighIn result;
    try {
      result = WeighIn.of(inputs.scenario(), inputs.supply(), build, masses, flights);
    } catch (IllegalArgumentException outsideTheModel) {
      throw new InputException(
          InputException.Kind.BAD_DATA,
          List.of(Problem.ofFile("BUILD", String.valueOf(outsideTheModel.getMessage()))));
    }
    var written = write(result);
    var report = new WeighReport(inputs.scenario(), result);
    var told = inputs.from(files);
    if (page.isWanted()) {
      writePage(
          told,
          "weighed",
          WeighPage.of(result, report, written, inputs.assessor(), Version.tool()));
    }
    print(
        told,
        "weighed",
        () -> report.json(run(told), written),
        () -> report.text(written, columns()),
        report::csv,
        report::markdown);
    return ExitCode.OK;
  }

  private List<String> write(WeighIn result) {
    if (into == null) {
      return List.of();
    }
    return OwnFolder.at(into).add(result.records(), result.flown(), isForced());
  }
}
