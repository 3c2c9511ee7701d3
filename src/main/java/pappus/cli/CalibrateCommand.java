package pappus.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import pappus.calibration.BenchReader;
import pappus.calibration.BenchRow;
import pappus.calibration.Calibration;
import pappus.calibration.Calibrator;
import pappus.calibration.Comparison;
import pappus.files.InputException;
import pappus.files.Problem;
import pappus.files.Problems;
import pappus.files.Source;
import pappus.report.CalibrationJson;
import pappus.report.CalibrationText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Coefficients from thrust-stand rows. */
@Command(
    name = "calibrate",
    description =
        "Fits motors, propellers and controllers to thrust-stand rows, and says how well they predict others.")
final class CalibrateCommand implements Callable<Integer> {
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
      names = "--format",
      paramLabel = "text|json",
      defaultValue = "text",
      description = "How to print the answer.")
  private CatalogCommand.Format format;

  @Override
  public Integer call() {
    var problems = new Problems();
    var rows = new ArrayList<BenchRow>();
    files.forEach(file -> rows.addAll(read(file, problems)));
    var others = against == null ? List.<BenchRow>of() : read(against, problems);
    problems.throwIfAny();
    var calibration = fit(rows);
    var comparison = against == null
        ? Optional.<Comparison>empty()
        : Optional.of(Comparison.of(calibration, others));
    var out = spec.commandLine().getOut();
    out.print(
        wantsJson()
            ? CalibrationJson.of(calibration, comparison)
            : CalibrationText.of(calibration, comparison));
    out.flush();
    return ExitCode.OK;
  }

  boolean wantsJson() {
    return format == CatalogCommand.Format.JSON;
  }

  private Calibration fit(List<BenchRow> rows) {
    try {
      return Calibrator.fit(rows);
    } catch (IllegalArgumentException wrong) {
      throw InputException.badData(
          Problem.ofFile(files.get(0).toString(), String.valueOf(wrong.getMessage())));
    }
  }

  private static List<BenchRow> read(Path file, Problems problems) {
    var source = file.toString().equals("-")
        ? Optional.of(Source.read("-", System.in))
        : Source.find(file, problems);
    return source.map(found -> BenchReader.read(found, problems)).orElse(List.of());
  }
}
