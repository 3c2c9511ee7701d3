package pappus.cli;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pappus.answers.check.ImportJson;
import pappus.catalog.OwnFolder;
import pappus.catalog.Shelf;
import pappus.catalog.ShelfEntry;
import pappus.evidence.filling.Filling;
import pappus.files.Problem;
import pappus.files.Problems;
import pappus.files.Shown;
import pappus.files.Source;
import pappus.files.json.JsonReader;
import pappus.files.json.JsonText;
import pappus.files.json.Listed;
import pappus.part.Kind;
import pappus.part.Part;
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
        "Turns a spreadsheet saved as CSV into records of a catalogue folder; describe KIND --columns names the columns.",
    footer = {
      "pappus import motors.csv --kind motor --into my-parts",
      "pappus import shelf.csv --kind shelf --into my-parts"
    })
final class ImportCommand implements Callable<Integer>, JsonAnswer {
  /** Of a long list the first ids tell what became of it; JSON has all. */
  private static final int MOST_NAMED = 20;

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
      description =
          "What the rows are: a kind of part such as motor, or shelf for what is at hand, in stock and its price.")
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
  private TextOrJson format;

  @Option(
      names = "--force",
      description =
          "Replace a file in the folder that this tool did not write, or that was edited.")
  private boolean force;

  @Option(names = "--quiet", description = "No remarks on standard error.")
  private boolean quiet;

  @Override
  public Integer call() {
    if (kindKey.equals(Shelf.NAME)) {
      addToShelf();
    } else {
      var kind = kind();
      addParts(kind, kind.recordClass());
    }
    return ExitCode.OK;
  }

  private void addToShelf() {
    var entries = values(read(
        Shelf.NAME,
        (source, problems) ->
            JsonReader.readList(source, Shelf.NAME, Shelf.NAME, ShelfEntry.class, problems),
        ShelfEntry::id));
    var own = OwnFolder.at(folder);
    own.addToShelf(entries, force);
    print(
        own.file(Shelf.FILE_NAME),
        entries.stream().map(ShelfEntry::id).toList(),
        id -> own.shelf().entry(id).isPresent());
  }

  private <P extends Part> void addParts(Kind kind, Class<P> record) {
    var entries = read(
        kind.listName(),
        (source, problems) -> Filling.read(source, kind, record, problems),
        Part::id);
    var own = OwnFolder.at(folder);
    checkKinds(entries, own);
    own.add(values(entries), force);
    print(
        own.file(kind.fileName()),
        values(entries).stream().map(Part::id).toList(),
        id -> own.parts().part(id).isPresent());
  }

  @Override
  public boolean wantsJson() {
    return format == TextOrJson.JSON;
  }

  private Kind kind() {
    return Kind.ofKey(kindKey)
        .orElseThrow(() -> new ParameterException(
            spec.commandLine(),
            "--kind must be %s, but is %s."
                .formatted(
                    Shown.choice(Stream.concat(
                            Stream.of(Kind.values()).map(Kind::key), Stream.of(Shelf.NAME))
                        .toList()),
                    Shown.text(kindKey))));
  }

  /** The records of the file; an id stands for one of them. */
  private <T> List<RecordSheet.Entry<T>> read(
      String list, BiFunction<Source, Problems, List<Listed<T>>> reading, Function<T, String> id) {
    var problems = new Problems();
    var entries = Source.find(file, System.in, problems)
        .map(found -> RecordSheet.read(found, list, reading, problems))
        .orElse(List.of());
    problems.throwIfAny();
    if (entries.isEmpty()) {
      problems.add(
          Problem.ofFile(file.toString(), "must have a row for each record, but has none."));
    }
    var rows = new HashMap<String, Integer>();
    for (var entry : entries) {
      var key = id.apply(entry.value());
      var earlier = rows.putIfAbsent(key, entry.row());
      if (earlier != null) {
        problems.add(new Problem(
            file.toString(),
            entry.line(),
            "row %s: id must be there once, but %s is in row %s too."
                .formatted(entry.row(), key, earlier)));
      }
    }
    problems.throwIfAny();
    return entries;
  }

  private static <T> List<T> values(List<RecordSheet.Entry<T>> entries) {
    return entries.stream().map(RecordSheet.Entry::value).toList();
  }

  /** An id stands for a part of one kind; two of one folder would make it unreadable. */
  private <P extends Part> void checkKinds(List<RecordSheet.Entry<P>> entries, OwnFolder own) {
    var problems = new Problems();
    for (var entry : entries) {
      var part = entry.value();
      own.parts()
          .part(part.id())
          .filter(other -> other.kind() != part.kind())
          .ifPresent(other -> problems.add(new Problem(
              file.toString(),
              entry.line(),
              "row %s: id must be new or that of another %s, but %s is a %s in %s."
                  .formatted(
                      entry.row(),
                      part.kind().key(),
                      part.id(),
                      other.kind().key(),
                      own.file(other.kind().fileName())))));
    }
    problems.throwIfAny();
  }

  private void print(Path written, List<String> ids, Predicate<String> wasThere) {
    var replaced = ids.stream().filter(wasThere).toList();
    var added = ids.stream().filter(wasThere.negate()).toList();
    var out = Printer.out(spec.commandLine());
    if (wantsJson()) {
      out.document(JsonText.of(new ImportJson("written", written.toString(), added, replaced)));
    } else {
      out.line(written.toString()
          + ": "
          + Stream.of(counted("added", added), counted("replaced", replaced))
              .flatMap(Optional::stream)
              .collect(Collectors.joining("; "))
          + ".");
    }
    if (!quiet) {
      var name = folder.toString();
      Printer.err(spec.commandLine())
          .line("Use it with --catalog %s; check %s says what is doubtful in it."
              .formatted(name, name));
    }
  }

  private static Optional<String> counted(String word, List<String> ids) {
    return ids.isEmpty()
        ? Optional.empty()
        : Optional.of("%s %s: %s%s"
            .formatted(
                ids.size(),
                word,
                ids.stream().limit(MOST_NAMED).collect(Collectors.joining(", ")),
                ids.size() > MOST_NAMED ? ", …" : ""));
  }
}
