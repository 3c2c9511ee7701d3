package pappus.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import pappus.answers.match.MatchReport;
import pappus.answers.match.MatrixReport;
import pappus.catalog.Catalog;
import pappus.catalog.CatalogReader;
import pappus.compatibility.Matcher;
import pappus.files.Closest;
import pappus.files.InputException;
import pappus.files.Problem;
import pappus.files.Shown;
import pappus.part.Part;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What goes with a part. */
@Command(
    name = "fits",
    description =
        "Lists by kind every part that goes with one, or with several together: directly, with an adapter, with a note, not, not known; --matrix has a column for each part by itself.",
    footer = {
      "pappus fits cottongrass-4",
      "pappus fits cottongrass-4 spikerush-1303-3400 --matrix --format csv"
    })
final class FitsCommand implements JsonAnswer, Callable<Integer> {
  @Spec
  private CommandSpec spec;

  @Mixin
  private CatalogOptions catalogs = new CatalogOptions();

  @Parameters(arity = "1..*", paramLabel = "PART", description = "Ids of parts of the catalogue.")
  private List<String> ids;

  @Option(names = "--matrix", description = "One column a part, for a product page.")
  private boolean isMatrix;

  @Option(names = "--all", description = "Name every part; without it, a screen or two.")
  private boolean isAll;

  @Option(
      names = "--format",
      paramLabel = "text|json|csv|markdown",
      defaultValue = "text",
      description = "How to print the answer.")
  private CatalogCommand.Format format;

  @Option(names = "--quiet", description = "No remarks on standard error.")
  private boolean quiet;

  @Override
  public Integer call() {
    var read = CatalogReader.read(catalogs.folders());
    if (!quiet) {
      read.replacements().forEach(replacement -> err().line(replacement.toString()));
    }
    var given = parts(read.catalog());
    var matcher = new Matcher(read.catalog());
    if (isMatrix) {
      var matrix = new MatrixReport(
          given, given.stream().map(part -> matcher.with(List.of(part))).toList());
      print(
          matrix::json, matrix::csv, matrix::markdown, () -> matrix.text(CatalogCommand.columns()));
    } else {
      var report = new MatchReport(given, matcher.among(given), matcher.with(given));
      print(
          report::json,
          report::csv,
          report::markdown,
          () -> report.text(CatalogCommand.columns(), isAll));
    }
    return ExitCode.OK;
  }

  private List<Part> parts(Catalog catalog) {
    var problems = new ArrayList<Problem>();
    var parts = new ArrayList<Part>();
    for (var id : ids.stream().distinct().toList()) {
      catalog
          .part(id)
          .ifPresentOrElse(
              parts::add,
              () -> problems.add(Problem.ofFile(
                  "PART",
                  "must be the id of a part in the catalogue, but is %s.%s"
                      .formatted(Shown.text(id), Closest.advice(id, catalog.ids())))));
    }
    for (var i = 1; i < parts.size() && !isMatrix; i++) {
      var part = parts.get(i);
      parts.subList(0, i).stream()
          .filter(other -> other.kind() == part.kind())
          .findFirst()
          .ifPresent(other -> problems.add(Problem.ofFile(
              "PART",
              "must be of different kinds, but %s and %s are both of the kind %s. Maybe --matrix was meant."
                  .formatted(other.id(), part.id(), part.kind().key()))));
    }
    if (!problems.isEmpty()) {
      throw new InputException(InputException.Kind.BAD_DATA, problems);
    }
    return parts;
  }

  private void print(
      Supplier<String> json,
      Supplier<String> csv,
      Supplier<String> markdown,
      Supplier<String> text) {
    var out = Printer.out(spec.commandLine());
    out.document(
        switch (format) {
          case JSON -> json.get();
          case CSV -> csv.get();
          case MARKDOWN -> markdown.get();
          case TEXT -> text.get();
        });
  }

  private Printer err() {
    return Printer.err(spec.commandLine());
  }

  @Override
  public boolean wantsJson() {
    return format == CatalogCommand.Format.JSON;
  }
}
