package pappus.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import pappus.answers.calibration.CalibrationCsv;
import pappus.answers.calibration.CalibrationJson;
import pappus.answers.calibration.CalibrationPage;
import pappus.answers.calibration.CalibrationRecords;
import pappus.answers.calibration.CalibrationText;
import pappus.calibration.BenchReader;
import pappus.calibration.BenchRow;
import pappus.calibration.Calibration;
import pappus.calibration.Calibrator;
import pappus.calibration.Comparison;
import pappus.calibration.MakersTable;
import pappus.catalog.Catalog;
import pappus.catalog.CatalogFolder;
import pappus.catalog.CatalogReader;
import pappus.catalog.OwnFolder;
import pappus.files.InputException;
import pappus.files.Problem;
import pappus.files.Problems;
import pappus.files.Source;
import pappus.files.output.OutputFolder;
import pappus.part.Kind;
import pappus.part.Motor;
import pappus.part.Propeller;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Coefficients from thrust-stand rows. */
@Command(
    name = "calibrate",
    description =
        "Fits motors, propellers and controllers to thrust-stand rows, and says how well they predict others.",
    footer = {
      "pappus calibrate bench.csv --against other.csv",
      "pappus calibrate bench.csv --into my-parts --part a=achene-2105-2650",
      "pappus calibrate table.csv --motor achene-2105-2650 --propeller bract-5x4x3"
    })
final class CalibrateCommand implements Callable<Integer>, JsonAnswer {
  /** Ways to print the answer; CSV holds every row beside what is predicted of it. */
  enum Format {
    TEXT,
    JSON,
    CSV
  }

  @Spec
  private CommandSpec spec;

  @Parameters(
      arity = "1..*",
      paramLabel = "CSV",
      description = "Thrust-stand rows; - reads standard input.")
  private List<Path> files = new ArrayList<>();

  @Option(
      names = "--against",
      paramLabel = "CSV",
      description = "Rows in the same columns whose power is predicted and compared.")
  private @Nullable Path against;

  @Option(
      names = "--into",
      paramLabel = "FOLDER",
      description =
          "Catalogue folder for measured records of the parts whose ids are the keys of motors and propellers.")
  private @Nullable Path into;

  @Option(
      names = "--part",
      paramLabel = "KEY=ID",
      description = "Which part of the catalogue a key of the rows is; may be given again.")
  private Map<String, String> partIds = new LinkedHashMap<>();

  @Option(
      names = "--motor",
      paramLabel = "ID",
      description =
          "The files are makers' thrust tables of this motor of the catalogue with that propeller, as they are printed.")
  private @Nullable String motorId;

  @Option(names = "--propeller", paramLabel = "ID", description = "The propeller of the tables.")
  private @Nullable String propellerId;

  @Mixin
  private CatalogOptions catalogs = new CatalogOptions();

  @Option(
      names = "--format",
      paramLabel = "text|json|csv",
      defaultValue = "text",
      description = "How to print the answer.")
  private Format format;

  @Option(
      names = "--force",
      description = "Replace files in the folder that this tool did not write.")
  private boolean force;

  @Mixin
  private ReportOption page = new ReportOption();

  @Option(
      names = "--out",
      paramLabel = "FOLDER",
      description = "Folder for the page of --report; default out/calibration.")
  private @Nullable Path outFolder;

  @Option(names = "--quiet", description = "No remarks on standard error.")
  private boolean quiet;

  @Override
  public Integer call() {
    if (into == null && !partIds.isEmpty()) {
      throw new ParameterException(spec.commandLine(), "--part needs --into.");
    }
    if ((motorId == null) != (propellerId == null)) {
      throw new ParameterException(
          spec.commandLine(), "--motor and --propeller must be given together, but one is.");
    }
    var problems = new Problems();
    var rows = new ArrayList<BenchRow>();
    files.forEach(file -> rows.addAll(read(file, problems)));
    var others = against == null ? List.<BenchRow>of() : read(against, problems);
    checkKeys(rows);
    problems.throwIfAny();
    var calibration = fitted(() -> Calibrator.fit(rows));
    var comparison = against == null
        ? Optional.<Comparison>empty()
        : Optional.of(Comparison.of(calibration, others));
    if (into != null) {
      write(into, rows);
    }
    if (page.isWanted()) {
      new OutputFolder(outFolder == null ? Path.of("out", "calibration") : outFolder, force)
          .write(Map.of(
              "calibration.html",
              CalibrationPage.of(calibration, rows, others, comparison, Version.tool())));
    }
    var out = Printer.out(spec.commandLine());
    out.document(
        switch (format) {
          case TEXT -> CalibrationText.of(calibration, comparison, CatalogCommand.columns());
          case JSON -> CalibrationJson.of(calibration, comparison);
          case CSV -> CalibrationCsv.of(calibration, rows, others);
        });
    return ExitCode.OK;
  }

  @Override
  public boolean wantsJson() {
    return format == Format.JSON;
  }

  /** A mistyped key would leave the records that were asked for unwritten. */
  private void checkKeys(List<BenchRow> rows) {
    var keys = BenchRow.keys(rows);
    for (var key : partIds.keySet()) {
      if (!rows.isEmpty() && !keys.contains(key)) {
        throw new ParameterException(
            spec.commandLine(),
            "--part %s=%s must begin with a motor or propeller of the rows, but is none of %s."
                .formatted(key, partIds.get(key), String.join(", ", keys)));
      }
    }
  }

  private Calibration fitted(Supplier<Calibration> fit) {
    try {
      return fit.get();
    } catch (IllegalArgumentException wrong) {
      throw InputException.badData(
          Problem.ofFile(files.get(0).toString(), String.valueOf(wrong.getMessage())));
    }
  }

  /** Adds the records to those that the folder holds already. */
  private void write(Path folder, List<BenchRow> rows) {
    var own = OwnFolder.at(folder);
    var names = files.stream()
        .map(file ->
            file.toString().equals("-") ? "standard input" : file.getFileName().toString())
        .distinct()
        .collect(Collectors.joining(", "));
    var known = catalog(folder, own.parts());
    checkIds(rows, known);
    var flown = fitted(() -> Calibrator.fit(
        CalibrationRecords.withStators(rows, partIds, known), CalibrationRecords.FLOWN));
    var records = CalibrationRecords.of(flown, partIds, known, names);
    if (!quiet) {
      records.remarks().forEach(remark -> Printer.err(spec.commandLine()).line(remark));
    }
    if (records.parts().isEmpty()) {
      return;
    }
    own.add(records.parts(), force);
    if (!quiet) {
      Printer.err(spec.commandLine())
          .line("Written into %s: %s."
              .formatted(
                  folder,
                  records.parts().stream()
                      .map(part -> part.kind().key() + " " + part.id())
                      .collect(Collectors.joining(", "))));
    }
  }

  private void checkIds(List<BenchRow> rows, Catalog known) {
    var problems = new Problems();
    var motors = rows.stream().map(BenchRow::motorKey).collect(Collectors.toSet());
    partIds.forEach((key, id) -> known
        .wrong(motors.contains(key) ? Kind.MOTOR : Kind.PROPELLER, id)
        .ifPresent(
            wrong -> problems.add(Problem.ofFile("--part", "%s=%s %s".formatted(key, id, wrong)))));
    problems.throwIfAny();
  }

  /** What the parts are otherwise: the builder's own word on them counts last. */
  private Catalog catalog(Path folder, Catalog mine) {
    var folders = catalogs.folders();
    if (mine.size() > 0) {
      folders.add(CatalogFolder.of(folder));
    }
    return folders.isEmpty() ? mine : CatalogReader.records(folders).catalog();
  }

  private List<BenchRow> read(Path file, Problems problems) {
    var pair = pair();
    return Source.find(file, System.in, problems)
        .map(found -> pair.isPresent()
            ? MakersTable.read(found, pair.get(), problems)
            : BenchReader.read(found, problems))
        .orElse(List.of());
  }

  /** What tables of a maker do not say of themselves; absent where the rows say all. */
  private Optional<MakersTable.Pair> pair() {
    if (motorId == null || propellerId == null) {
      return Optional.empty();
    }
    var folders = catalogs.folders();
    var known = folders.isEmpty()
        ? Catalog.of(List.of())
        : CatalogReader.records(folders).catalog();
    var problems = new Problems();
    known
        .wrong(Kind.MOTOR, motorId)
        .ifPresent(
            wrong -> problems.add(Problem.ofFile("--motor", "%s %s".formatted(motorId, wrong))));
    known
        .wrong(Kind.PROPELLER, propellerId)
        .ifPresent(wrong ->
            problems.add(Problem.ofFile("--propeller", "%s %s".formatted(propellerId, wrong))));
    problems.throwIfAny();
    var motor = known.part(motorId, Motor.class).orElseThrow();
    return Optional.of(new MakersTable.Pair(
        motorId,
        motor.speedConstantRpmPerVolt(),
        motor.statorDiameterMillimetres(),
        propellerId,
        known.part(propellerId, Propeller.class).orElseThrow().diameterMillimetres()));
  }
}
