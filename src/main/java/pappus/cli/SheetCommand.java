package pappus.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import pappus.Inputs;
import pappus.answers.result.ToldRow;
import pappus.answers.sheet.BenchSheet;
import pappus.answers.sheet.SheetPage;
import pappus.answers.sheet.SheetReport;
import pappus.assessment.Assessment;
import pappus.catalog.BuildText;
import pappus.files.CsvTable;
import pappus.files.InputException;
import pappus.files.Problem;
import pappus.files.Problems;
import pappus.files.Shown;
import pappus.files.Source;
import pappus.files.output.OutputFolder;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** The page for the bench, and the card for the first flights. */
@Command(
    name = "sheet",
    description =
        "Writes the bench sheet of a build: what to buy, weigh, screw and wire, first power-up, and a card for the first flights.",
    footer = {
      "pappus sheet out/bird-survey/result.json#1",
      "pappus sheet out/bird-survey/result.json#1 --format markdown",
      "pappus sheet out/neap-tarn/order.json#dune-1"
    })
final class SheetCommand extends ToldCommand implements Callable<Integer> {
  private static final String ARGUMENT = "RESULT.json#N";
  private static final String MASSES = "weighing.csv";

  @Parameters(
      index = "0",
      paramLabel = ARGUMENT,
      description =
          "The N-th build of what recommend wrote, or a pick of it, such as #longest; of what order wrote a group's build, such as order.json#meadow.")
  private String told;

  @Override
  String buildName() {
    return told.substring(told.lastIndexOf('#') + 1);
  }

  @Override
  Path resultFile() {
    var hash = told.lastIndexOf('#');
    return Path.of(hash < 0 ? told : told.substring(0, hash));
  }

  @Override
  public Integer call() {
    format(Format.CSV, Format.MARKDOWN);
    var name = name();
    var place = place(name);
    var row = told().builds().get(place - 1);
    var inputs = readAgain();
    var changed = told().changed(inputs.files());
    var remarks = new ArrayList<String>();
    changed.forEach(file -> remarks.add(
        file + " has changed since, or was not read: this sheet is about it as it is now."));
    var assessment = assessment(inputs, row);
    unlike(assessment, row).ifPresent(remarks::add);
    if (!isQuiet()) {
      remarks.forEach(remark -> err().line(remark));
    }
    var sheet = BenchSheet.of(assessment, inputs.assessor(), label(name), remarks);
    var report = new SheetReport(inputs.scenario(), sheet);
    var json = report.json(run(inputs), place, changed);
    write(
        inputs,
        new TreeMap<>(Map.of(
            "sheet.html",
            new SheetPage(Version.tool()).of(sheet, inputs.scenario()),
            "sheet.json",
            json,
            MASSES,
            report.csv())));
    print(() -> json, () -> report.text(columns()), report::csv, report::markdown);
    return sheet.isSound() ? ExitCode.OK : ExitCode.NO;
  }

  private static String label(String name) {
    return Character.isDigit(name.charAt(0)) ? "Candidate " + name : "The " + name;
  }

  /** What was weighed of another build is refused with everything else, not left beside a sheet that it is not of. */
  private static boolean isOfSameParts(OutputFolder folder, Map<String, String> files) {
    var written = parts(Source.read(folder.file(MASSES)));
    var blank = parts(Source.of(MASSES, files.getOrDefault(MASSES, "").getBytes(UTF_8)));
    return !written.isEmpty() && blank.containsAll(written);
  }

  /** What the rows of a table are of; nothing if it cannot be read. */
  private static List<String> parts(Source source) {
    var unread = new Problems();
    var table = CsvTable.read(source, unread);
    return unread.isEmpty() && table.has("what")
        ? table.rows().stream().map(row -> table.text(row, "what", unread)).toList()
        : List.of();
  }

  /** What somebody wrote into the table of masses is their work: the rest is renewed without it. */
  private void write(Inputs inputs, Map<String, String> files) {
    var folder = output(inputs.scenario());
    if (!isForced() && folder.isEdited(MASSES) && isOfSameParts(folder, files)) {
      files.remove(MASSES);
      if (!isQuiet()) {
        err()
            .line("%s was filled in and is left as it is; --force writes it anew."
                .formatted(folder.file(MASSES).toString()));
      }
    }
    folder.write(files);
  }

  /** A rank, or what a build is picked for. */
  private String name() {
    var hash = told.lastIndexOf('#');
    var name = hash < 0 ? "" : told.substring(hash + 1);
    if (!name.matches(BuildText.NAME)) {
      throw refused("must end in # and a rank or a pick, but is %s.%s"
          .formatted(Shown.text(told), hash < 0 ? " Maybe " + told + "#1 was meant." : ""));
    }
    return name;
  }

  private int place(String name) {
    if (told().builds().isEmpty()) {
      throw refused("must have a build, but this result found none.");
    }
    return told()
        .place(name)
        .orElseThrow(
            () -> refused("must name %s, but names %s.".formatted(told().names(), name)));
  }

  private static Assessment assessment(Inputs inputs, ToldRow row) {
    try {
      return inputs.assessor().assess(BuildText.of(row.roles(), inputs.catalog()));
    } catch (IllegalArgumentException unknown) {
      throw refused(String.valueOf(unknown.getMessage()));
    }
  }

  private static Optional<String> unlike(Assessment assessment, ToldRow row) {
    return assessment.milliseconds() == row.milliseconds()
        ? Optional.empty()
        : Optional.of(String.format(
            Locale.ROOT,
            "It flies %.3f s, but was told to fly %.3f s.",
            assessment.milliseconds() / 1000.0,
            row.milliseconds() / 1000.0));
  }

  private static InputException refused(String what) {
    return new InputException(
        InputException.Kind.BAD_DATA, List.of(Problem.ofFile(ARGUMENT, what)));
  }
}
