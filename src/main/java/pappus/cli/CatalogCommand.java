package pappus.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import pappus.Inputs;
import pappus.Pappus;
import pappus.answers.result.Run;
import pappus.catalog.CatalogFolder;
import pappus.files.output.OutputFolder;
import pappus.ranking.Finder;
import pappus.scenario.Scenario;
import pappus.scenario.reading.Setting;
import pappus.search.timefold.TimefoldSearch;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What commands on a scenario and catalogues share: their options and their reading. */
abstract class CatalogCommand implements JsonAnswer {
  /** Ways to print an answer; not every command knows all of them. */
  enum Format {
    TEXT,
    JSON,
    CSV,
    MARKDOWN;

    String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  private static final String WHAT_IF = "what-if";

  @Spec
  private CommandSpec spec;

  @Mixin
  private CatalogOptions catalogs = new CatalogOptions();

  @Option(
      names = "--format",
      paramLabel = "text|json|csv|markdown",
      defaultValue = "text",
      description = "How to print the answer; csv and markdown where it is a table.")
  private Format format;

  @Option(
      names = "--out",
      paramLabel = "FOLDER",
      description =
          "Folder for result files; default out/ and the scenario's name, and in it what-if/ where --set changes something.")
  private @Nullable Path outFolder;

  @Option(names = "--force", description = "Replace files in it that this tool did not write.")
  private boolean force;

  @Option(names = "--quiet", description = "No progress and no remarks on standard error.")
  private boolean quiet;

  /** Where the scenario is. */
  abstract Path scenarioFile();

  /** What it is to have in place of what it says. */
  abstract List<Setting> settings();

  /** Whether the user says which catalogues are to be read. */
  boolean namesCatalogs() {
    return catalogs.areNamed();
  }

  /** The folders of catalogues, in the order of reading. */
  List<CatalogFolder> catalogFolders() {
    return catalogs.folders();
  }

  /** Catalogues as they were told in a result, unless the user names others. */
  void readAsTold(List<String> names) {
    catalogs.takeAsTold(names);
  }

  /** Reads everything; all problems of all files come in one exception. */
  Inputs read() {
    var remarks = new ArrayList<String>();
    // A line of ours would overwrite what somebody types.
    var isTyped = scenarioFile().toString().equals("-");
    var progress = Progress.of(err(), quiet || isTyped, "reading", Progress.ENDS);
    try {
      return Pappus.read(
          scenarioFile(),
          System.in,
          settings(),
          catalogs.folders(),
          catalog -> catalog.remarks().forEach(remark -> remarks.add(remark.toString())));
    } finally {
      progress.close();
      if (!quiet) {
        remarks.forEach(err()::line);
      }
    }
  }

  /** Runs searches that Ctrl-C ends early. */
  <T> T finding(Finder.Way way, long effort, long moves, Function<Finder, T> run) {
    var progress = Progress.of(err(), quiet, "searching", Progress.KEEPS);
    var finder = new Finder(way, effort, moves, progress::show);
    var interruption = Interruption.watch(finder::stop);
    try {
      return run.apply(finder);
    } finally {
      interruption.close();
      progress.close();
    }
  }

  /** Runs searches that Ctrl-C ends early, with proof where it can be had. */
  <T> T finding(Function<Finder, T> run) {
    return finding(Finder.Way.AUTO, Finder.EFFORT, Finder.FEWER_MOVES, run);
  }

  /** What an answer is made from, with fewer changes tried where there is no proof. */
  Run run(Inputs inputs) {
    return run(inputs, Finder.FEWER_MOVES);
  }

  /**
   * What an answer is made from.
   *
   * @param moves changes tried where there is no proof
   */
  Run run(Inputs inputs, long moves) {
    var set = settings().stream().map(Setting::toString).toList();
    return new Run(
        Version.tool(), TimefoldSearch.SEED, moves, catalogs.names(), inputs.files(), set);
  }

  /**
   * The way to print an answer.
   *
   * @param also what this command can do beside text and JSON
   */
  Format format(Format... also) {
    var known = EnumSet.of(Format.TEXT, Format.JSON);
    known.addAll(List.of(also));
    if (!known.contains(format)) {
      var words = known.stream().map(Format::word).toList();
      throw new ParameterException(
          spec.commandLine(),
          "--format must be one of %s here, but is %s."
              .formatted(String.join(", ", words), format.word()));
    }
    return format;
  }

  /**
   * Prints an answer, after its JSON is written where a folder was asked for.
   *
   * @param name of the file, without its ending
   * @param other the answer in the way asked for, if that is not JSON
   */
  void print(Inputs inputs, String name, Supplier<String> json, Supplier<String> other) {
    var document = hasOutputFolder() || wantsJson() ? json.get() : "";
    if (hasOutputFolder()) {
      output(inputs.scenario()).write(Map.of(name + ".json", document));
    }
    out().document(wantsJson() ? document : other.get());
  }

  /** Prints an answer that is a table, too, after its JSON is written where a folder was asked for. */
  void print(
      Inputs inputs,
      String name,
      Supplier<String> json,
      Supplier<String> text,
      Supplier<String> csv,
      Supplier<String> markdown) {
    print(inputs, name, json, inFormat(text, csv, markdown));
  }

  /** Prints an answer whose files are written already. */
  void print(
      Supplier<String> json,
      Supplier<String> text,
      Supplier<String> csv,
      Supplier<String> markdown) {
    out().document(wantsJson() ? json.get() : inFormat(text, csv, markdown).get());
  }

  private Supplier<String> inFormat(
      Supplier<String> text, Supplier<String> csv, Supplier<String> markdown) {
    return switch (format) {
      case TEXT, JSON -> text;
      case CSV -> csv;
      case MARKDOWN -> markdown;
    };
  }

  /** Writes a page with pictures beside the other results. */
  void writePage(Inputs inputs, String name, String page) {
    output(inputs.scenario()).write(Map.of(name + ".html", page));
  }

  /** Where result files of a scenario go. */
  OutputFolder output(Scenario scenario) {
    return new OutputFolder(folder(scenario), force);
  }

  /** Where files of an answer go, as it was asked for. */
  Path folder(Scenario scenario) {
    return outFolder == null ? ownFolder(scenario) : outFolder;
  }

  /** What is asked otherwise than the file says does not replace the answer to that. */
  private Path ownFolder(Scenario scenario) {
    var folder = Path.of("out", scenario.name());
    return settings().isEmpty() ? folder : folder.resolve(WHAT_IF);
  }

  /** Whether one was asked for. */
  boolean hasOutputFolder() {
    return outFolder != null;
  }

  @Override
  public boolean wantsJson() {
    return format == Format.JSON;
  }

  boolean isForced() {
    return force;
  }

  boolean isQuiet() {
    return quiet;
  }

  /** Columns of the terminal. */
  static int columns() {
    return Terminal.columns();
  }

  Printer out() {
    return Printer.out(spec.commandLine());
  }

  Printer err() {
    return Printer.err(spec.commandLine());
  }

  CommandSpec spec() {
    return spec;
  }
}
