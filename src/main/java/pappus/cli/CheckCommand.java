package pappus.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.function.Predicate;
import pappus.answers.check.CheckJson;
import pappus.assessment.Supply;
import pappus.catalog.CatalogFolder;
import pappus.catalog.CatalogReader;
import pappus.catalog.ReadCatalog;
import pappus.compatibility.Rules;
import pappus.files.InputException;
import pappus.files.Problem;
import pappus.files.Problems;
import pappus.files.Source;
import pappus.inspection.Inspection;
import pappus.inspection.MeasureFirst;
import pappus.part.Kind;
import pappus.scenario.reading.ReadScenario;
import pappus.scenario.reading.ScenarioReader;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Is this data sound. */
@Command(
    name = "check",
    description =
        "Finds what is wrong and what is doubtful in catalogues and scenarios: a folder, or a file of one.",
    footer = {"pappus check", "pappus check scenarios --strict"})
final class CheckCommand implements Callable<Integer> {
  private static final Path SHIPPED = Path.of("catalog");
  private static final Path SCENARIOS = Path.of("scenarios");

  @Spec
  private CommandSpec spec;

  @Parameters(
      arity = "0..*",
      paramLabel = "FOLDER|FILE",
      description = "What to check; default: the shipped catalogue and the folder scenarios.")
  private List<Path> asked = new ArrayList<>();

  @Option(names = "--strict", description = "Warnings count: exit code 1 where there are some.")
  private boolean strict;

  @Option(
      names = "--no-shipped-catalog",
      description = "Do not fit the parts to those of the shipped catalogue.")
  private boolean withoutShipped;

  @Option(
      names = "--format",
      paramLabel = "text|json",
      defaultValue = "text",
      description = "How to print the answer.")
  private TextOrJson format;

  @Mixin
  private SetOption set = new SetOption();

  @Option(names = "--quiet", description = "No remarks on standard error.")
  private boolean quiet;

  /** What was asked about, by what it is. */
  private record Asked(
      List<CatalogFolder> catalogs, Predicate<String> isAskedAbout, List<Path> scenarioFiles) {}

  @Override
  public Integer call() {
    var found = new Problems();
    var settings = set.settings();
    var inputs = sort(found);
    var catalog = CatalogReader.read(inputs.catalogs(), found);
    var isWhole = found.isEmpty();
    var scenarios = new ArrayList<ReadScenario>();
    for (var file : inputs.scenarioFiles()) {
      try {
        scenarios.add(ScenarioReader.read(
            file, System.in, settings, catalog.catalog().currency(), catalog.lumps()));
      } catch (InputException wrong) {
        found.addAll(wrong);
      }
    }
    for (var scenario : scenarios) {
      found.addAll(scenario.problemsWithRules(Rules.waivableIds()));
      if (isWhole) {
        var parts = Supply.of(catalog).drafting(scenario.scenario()).catalog();
        found.addAll(scenario.problemsWith(parts));
        found.addAll(scenario.contradictions(catalog.catalog()));
        found.addAll(scenario.problemsWithAircraft(parts));
        found.addAll(scenario.problemsWithCurrency(parts));
      }
    }
    var warnings = warnings(catalog, inputs.isAskedAbout(), found.isEmpty());
    if (!quiet) {
      catalog
          .replacements()
          .forEach(replacement -> Printer.err(spec.commandLine()).line(replacement.toString()));
    }
    var measureFirst = found.isEmpty()
        ? Inspection.measureFirst(catalog, inputs.isAskedAbout())
        : List.<MeasureFirst>of();
    print(found.sorted(), warnings, measureFirst);
    if (!found.isEmpty()) {
      return ExitCode.of(found.worst());
    }
    return strict && !warnings.isEmpty() ? ExitCode.NO : ExitCode.OK;
  }

  /** Parts that could not be read are missing everywhere: then only what needs no other is told. */
  private static List<Problem> warnings(
      ReadCatalog catalog, Predicate<String> isAskedAbout, boolean isWhole) {
    var warnings = new ArrayList<Problem>();
    if (isWhole) {
      warnings.addAll(Inspection.of(catalog, isAskedAbout));
    }
    return warnings.stream().sorted().distinct().toList();
  }

  /** Tells catalogues from scenarios by the names of their files. */
  private Asked sort(Problems problems) {
    var catalogs = new ArrayList<CatalogFolder>();
    var names = new TreeSet<String>();
    var scenarioFiles = new ArrayList<Path>();
    var checksShipped = asked.isEmpty();
    var given = new ArrayList<>(asked);
    if (given.isEmpty() && Files.isDirectory(SCENARIOS)) {
      given.add(SCENARIOS);
    }
    for (var path : given) {
      var kind = Kind.ofFileName(String.valueOf(path.getFileName()));
      if (Files.isDirectory(path)) {
        var files = Source.namesIn(path, problems).orElse(List.of()).stream()
            .filter(name -> name.toLowerCase(Locale.ROOT).endsWith(".json"))
            .filter(name -> !name.startsWith("."))
            .toList();
        if (files.isEmpty() || files.stream().anyMatch(CatalogFolder::isFileName)) {
          catalogs.add(CatalogFolder.of(path));
          files.forEach(file -> names.add(path.resolve(file).toString()));
        } else {
          files.forEach(file -> scenarioFiles.add(path.resolve(file)));
        }
      } else if (kind.isPresent() && !withoutShipped && isInShipped(path)) {
        // It is read with the shipped catalogue: read again it would replace itself.
        names.add(SHIPPED.resolve(kind.get().fileName()).toString());
      } else if (CatalogFolder.isFileName(String.valueOf(path.getFileName()))) {
        catalogs.add(CatalogFolder.ofFile(path));
        names.add(path.toString());
      } else {
        scenarioFiles.add(path);
      }
    }
    if (checksShipped) {
      catalogs.add(0, CatalogFolder.shipped());
    } else if (!withoutShipped && given.stream().noneMatch(CheckCommand::isOfShipped)) {
      catalogs.add(0, CatalogFolder.shipped());
    }
    return new Asked(catalogs, file -> checksShipped || names.contains(file), scenarioFiles);
  }

  private static boolean isOfShipped(Path path) {
    return path.toAbsolutePath().normalize().equals(SHIPPED.toAbsolutePath().normalize());
  }

  private static boolean isInShipped(Path file) {
    var folder = file.toAbsolutePath().normalize().getParent();
    return folder != null && Files.isRegularFile(file) && isOfShipped(folder);
  }

  private void print(
      List<Problem> problems, List<Problem> warnings, List<MeasureFirst> measureFirst) {
    var out = Printer.out(spec.commandLine());
    if (format == TextOrJson.JSON) {
      out.document(CheckJson.of(problems, warnings, measureFirst));
    } else {
      warnings.forEach(out::line);
      if (!measureFirst.isEmpty()) {
        out.line("Worth measuring first, by its effect on a usual hover:");
        measureFirst.forEach(one -> out.line(one.inWords()));
      }
    }
    problems.forEach(Printer.err(spec.commandLine())::line);
  }
}
