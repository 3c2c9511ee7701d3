package pappus.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import pappus.Inputs;
import pappus.answers.weighing.WeighPage;
import pappus.answers.weighing.WeighReport;
import pappus.files.Closest;
import pappus.files.InputException;
import pappus.files.Problem;
import pappus.files.Problems;
import pappus.files.Shown;
import pappus.files.Source;
import pappus.part.Battery;
import pappus.part.Build;
import pappus.part.Part;
import pappus.quantity.Require;
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
  /** Labels are hardly ever too low by more: engineering estimate. */
  private static final double MOST_OF_LABEL = 1.1;

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
      check(masses, inputs, build, problems);
    }
    if (flightFile != null) {
      var source = Source.read(flightFile);
      files.add(source.fingerprint());
      flights = FlightRow.read(source, problems);
      checkFlights(flights, inputs, build, problems);
      checkFlies(inputs, build, problems);
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
      writePage(told, "weighed", WeighPage.of(result, report, written, Version.tool()));
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

  private static void checkFlies(Inputs inputs, Build build, Problems problems) {
    inputs
        .assessor()
        .assess(build)
        .whyNoFlight()
        .ifPresent(why -> problems.add(Problem.ofFile(
            "BUILD",
            "must fly to be set beside flights, but does not: %s."
                .formatted(why.replaceFirst("\\.$", "")))));
  }

  /** What was weighed must be of the build. */
  private static void check(List<MassRow> rows, Inputs inputs, Build build, Problems problems) {
    var known = new ArrayList<String>();
    inputs.assessor().assess(build).mass().lines().stream()
        .flatMap(line -> line.part().stream())
        .forEach(part -> known.add(part.id()));
    known.add(MassRow.DRY);
    known.add(MassRow.READY);
    var lines = new HashMap<String, Integer>();
    for (var row : rows) {
      var earlier = lines.putIfAbsent(row.what(), row.line());
      if (earlier != null) {
        problems.add(new Problem(
            row.file(),
            row.line(),
            "what must be there once, but %s is in line %s already."
                .formatted(Shown.text(row.what()), earlier)));
      }
      if (!known.contains(row.what())) {
        problems.add(new Problem(
            row.file(),
            row.line(),
            "what must be a part of the build, dry or ready, but is %s.%s"
                .formatted(Shown.text(row.what()), Closest.advice(row.what(), known))));
      }
    }
    var dry = row(rows, MassRow.DRY);
    var ready = row(rows, MassRow.READY);
    if (dry.isPresent()
        && ready.isPresent()
        && ready.get().gramsEach() <= dry.get().gramsEach()) {
      problems.add(new Problem(
          ready.get().file(),
          ready.get().line(),
          "grams must be more than the dry aircraft's %s, but is %s."
              .formatted(
                  Require.plain(dry.get().gramsEach()),
                  Require.plain(ready.get().gramsEach()))));
    }
    if (build.battery().isEmpty()) {
      problems.add(Problem.ofFile("BUILD", "must have a battery, but has none."));
    }
  }

  private static Optional<MassRow> row(List<MassRow> rows, String what) {
    return rows.stream().filter(row -> row.what().equals(what)).findFirst();
  }

  private static void checkFlights(
      List<FlightRow> rows, Inputs inputs, Build build, Problems problems) {
    var batteries = inputs.catalog().parts().stream()
        .filter(Battery.class::isInstance)
        .map(part -> part.id())
        .toList();
    for (var row : rows) {
      row.pack()
          .filter(id -> !(inputs.catalog().part(id).orElse(null) instanceof Battery))
          .ifPresent(id -> problems.add(new Problem(
              row.file(),
              row.line(),
              "pack must be the id of a battery in the catalogue, but is %s.%s"
                  .formatted(Shown.text(id), Closest.advice(id, batteries)))));
      row.pack()
          .flatMap(id -> inputs.catalog().part(id))
          .or(build::battery)
          .ifPresent(pack -> checkPack(row, pack, problems));
      if (!WeighIn.canBeFlown(row.style(), inputs.scenario())) {
        problems.add(
            new Problem(
                row.file(),
                row.line(),
                "style must be that of a scenario with legs, but is profile where the scenario has none."));
      }
    }
  }

  /** No pack takes so much more than its label says, nor has so many volts. */
  private static void checkPack(FlightRow row, Part pack, Problems problems) {
    if (!(pack instanceof Battery battery)) {
      return;
    }
    var most = MOST_OF_LABEL * battery.capacityMilliampHours();
    if (row.chargedMilliampHours() > most) {
      problems.add(new Problem(
          row.file(),
          row.line(),
          "charged_mah must be at most %s, a tenth more than the label of %s, but is %s."
              .formatted(
                  Require.plain(Math.rint(most)),
                  battery.id(),
                  Require.plain(row.chargedMilliampHours()))));
    }
    var full = battery.cellsInSeries() * battery.chemistry().fullVolts();
    row.landingVolts().ifPresent(volts -> {
      if (volts > full) {
        problems.add(new Problem(
            row.file(),
            row.line(),
            "landing_v must be at most the %s V of %s when full, but is %s."
                .formatted(
                    Require.plain(Math.rint(100 * full) / 100),
                    battery.id(),
                    Require.plain(volts))));
      }
    });
  }
}
