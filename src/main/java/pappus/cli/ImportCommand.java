package pappus.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pappus.catalog.Kind;
import pappus.catalog.Part;
import pappus.files.JsonText;
import pappus.files.Problem;
import pappus.files.Problems;
import pappus.files.Shown;
import pappus.files.Source;
import pappus.spreadsheet.RecordSheet;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** A spreadsheet's rows as records. */
@Command(
    name = "import",
    description =
        "Turns a spreadsheet saved as CSV into records of a catalogue folder; describe KIND --columns names the columns.")
final class ImportCommand implements Callable<Integer>, JsonAnswer {
  @Spec
  private CommandSpec spec;

  @Parameters(
      paramLabel = "CSV",
      description =
          "Column titles in the first line, with units; one part a row; - reads standard input.")
  private Path file;

  @Option(
      names = "--kind",
      paramLabel = "KIND",
      required = true,
      description = "What the rows are, such as motor or battery.")
  private String kindKey;

  @Option(
      names = "--into",
      paramLabel = "FOLDER",
      required = true,
      description =
          "Catalogue folder for the records; it may hold others, of which those with the same id are replaced.")
  private Path folder;

  @Option(
      names = "--format",
      paramLabel = "text|json",
      defaultValue = "text",
      description = "How to print what was written.")
  private CatalogCommand.Format format;

  @Option(
      names = "--force",
      description =
          "Replace a file in the folder that this tool did not write, or that was edited.")
  private boolean force;

  @Option(names = "--quiet", description = "No remarks on standard error.")
  private boolean quiet;

  @Override
  public Integer call() {
    var kind = kind();
    var problems = new Problems();
    var source = file.toString().equals("-")
        ? Optional.of(Source.read("-", System.in))
        : Source.find(file, problems);
    var entries = source
        .map(found -> RecordSheet.read(found, kind.listName(), kind.recordClass(), problems))
        .orElse(List.of());
    problems.throwIfAny();
    var own = OwnFolder.at(folder);
    checkIds(entries, own, problems);
    problems.throwIfAny();
    var parts = entries.stream().<Part>map(RecordSheet.Entry::value).toList();
    own.add(parts, force);
    print(kind, parts, own);
    return ExitCode.OK;
  }

  @Override
  public boolean wantsJson() {
    return format == CatalogCommand.Format.JSON;
  }

  private Kind kind() {
    return Kind.ofKey(kindKey)
        .orElseThrow(() -> new ParameterException(
            spec.commandLine(),
            "--kind must be %s, but is %s."
                .formatted(
                    Shown.choice(Stream.of(Kind.values()).map(Kind::key).toList()),
                    Shown.text(kindKey))));
  }

  /** An id stands for one part of one kind. */
  private void checkIds(
      List<? extends RecordSheet.Entry<? extends Part>> entries, OwnFolder own, Problems problems) {
    if (entries.isEmpty()) {
      problems.add(Problem.ofFile(file.toString(), "must have a row for each part, but has none."));
    }
    var rows = new HashMap<String, Integer>();
    for (var entry : entries) {
      var id = entry.value().id();
      var earlier = rows.putIfAbsent(id, entry.row());
      if (earlier != null) {
        problems.add(new Problem(
            file.toString(),
            entry.line(),
            "row %s: id must be there once, but %s is in row %s too."
                .formatted(entry.row(), id, earlier)));
      }
      own.before()
          .part(id)
          .filter(other -> other.kind() != entry.value().kind())
          .ifPresent(other -> problems.add(new Problem(
              file.toString(),
              entry.line(),
              "row %s: id must be new or that of another %s, but %s is a %s in %s."
                  .formatted(
                      entry.row(),
                      entry.value().kind().key(),
                      id,
                      other.kind().key(),
                      own.file(other)))));
    }
  }

  private void print(Kind kind, List<Part> parts, OwnFolder own) {
    var replaced = new ArrayList<String>();
    var added = new ArrayList<String>();
    parts.forEach(
        part -> (own.before().part(part.id()).isPresent() ? replaced : added).add(part.id()));
    var out = spec.commandLine().getOut();
    if (wantsJson()) {
      var document = new LinkedHashMap<String, Object>();
      document.put("status", "written");
      document.put("file", folder.resolve(kind.fileName()).toString());
      document.put("added", added);
      document.put("replaced", replaced);
      out.print(JsonText.of(document));
    } else {
      out.println(Shown.name(folder.resolve(kind.fileName()).toString())
          + ": "
          + Stream.of(counted("added", added), counted("replaced", replaced))
              .flatMap(Optional::stream)
              .collect(Collectors.joining("; "))
          + ".");
    }
    out.flush();
    if (!quiet) {
      spec.commandLine()
          .getErr()
          .println("Use them with --catalog %s; check %s says what is doubtful in them."
              .formatted(Shown.name(folder.toString()), Shown.name(folder.toString())));
    }
  }

  private static Optional<String> counted(String word, List<String> ids) {
    return ids.isEmpty()
        ? Optional.empty()
        : Optional.of("%s %s: %s".formatted(ids.size(), word, String.join(", ", ids)));
  }
}
